/** A well to build on a stern whose numbers are round, and a motor nothing of which gets in its way (both invented). */

import type { CutChoices } from "#lib/fit/cut-plan/choices.ts";
import { cutPlan } from "#lib/fit/cut-plan/cut-plan.ts";
import type { CutPart } from "#lib/fit/cut-plan/part.ts";
import type { CutPlan, WellPlan } from "#lib/fit/cut-plan/plan.ts";
import type { Motor } from "#lib/rig/motor.ts";
import type { Stern } from "#lib/rig/stern.ts";
import motorRecord from "#tests/pairs/fits-with-room/motor.json" with { type: "json" };
import sternRecord from "#tests/pairs/fits-with-room/stern.json" with { type: "json" };

export const motor = motorRecord as unknown as Motor;

const exactly = (value: number) => ({ value, plusMinus: 0, how: "measured" as const });

/** An uncut stern with the numbers of the bench stern but for those given; no well of its own. */
export function uncut(numbers: Partial<Record<string, number>> = {}): Stern {
  const { rakeDeg, transomThicknessMm, transomTopMm, keelDepthMm } = sternRecord as unknown as Stern;
  const own = Object.fromEntries(Object.entries(numbers).map(([key, value]) => [key, exactly(value!)]));
  return {
    id: "bench",
    label: "Bench stern, nothing cut",
    ...{ rakeDeg, transomThicknessMm, transomTopMm, keelDepthMm },
    ...own,
  } as Stern;
}

/** Choices for a plain well: 1400 wide, sides square, 800 long. */
export const WELL: CutChoices = {
  well: "build",
  soleDropMm: 200,
  wellDepthMm: 800,
  wellWidthAftMm: 1400,
  wellWidthFrontMm: 1400,
  sideFlareDeg: 0,
};

export const planned = (numbers: Partial<Record<string, number>> = {}, choices: CutChoices = {}): CutPlan =>
  cutPlan(motor, uncut(numbers), { ...WELL, ...choices });

export function wellOf(numbers: Partial<Record<string, number>> = {}, choices: CutChoices = {}): WellPlan {
  const { well } = planned(numbers, choices);
  if (!well) throw new Error("no well was planned");
  return well;
}

export function partOf(well: WellPlan, id: string): CutPart {
  const part = well.parts.find((one) => one.id === id);
  if (!part) throw new Error(`${id} is not among ${well.parts.map((one) => one.id).join(", ")}`);
  return part;
}

export const cutOf = (part: CutPart, id: string) => {
  const cut = part.cuts.find((one) => one.id === id);
  if (!cut) throw new Error(`${part.id} has no cut ${id}`);
  return cut;
};
