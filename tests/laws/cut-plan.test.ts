/**
 * A stern cut exactly to its plan fits the motor it was planned for: without spread surely, and with the
 * spread its numbers were taken with it does not foul. Over invented motors and sterns (see pair.ts).
 */
import { describe, expect, test } from "vitest";
import { assess } from "#lib/fit/assess.ts";
import type { CutChoices } from "#lib/fit/cut-plan/choices.ts";
import { cutPlan } from "#lib/fit/cut-plan/cut-plan.ts";
import { cutStern } from "#lib/fit/cut-plan/sawn.ts";
import type { Stern } from "#lib/rig/stern.ts";
import { exact, pair, spreadBy } from "#tests/laws/pair.ts";

/** The questions the notch answers, and those the well does; the rest no saw answers. */
const NOTCH = ["plate-height", "bracket", "steering-room"];
const WELL = ["clamp-depth", "screw-handles", "sole-room", "tilt-room"];
const PAIRS = 20;

/** The stern before anything was sawn, tall enough to be cut. */
function uncut({ seatMm, notchWidthMm, notchCornerRadiusMm, ...stern }: Stern): Stern {
  const top = stern.transomTopMm!;
  return { ...stern, transomTopMm: { ...top, value: top.value + 100 } };
}

const outcomes = (motor: Parameters<typeof assess>[0], stern: Stern) =>
  Object.fromEntries(assess(motor, stern).checks.map(({ id, outcome, says }) => [id, { outcome, says }]));

/** What a plan's stern answers wrongly. */
function broken(
  start: number,
  choices: CutChoices,
  spread: boolean,
  prepare: (stern: Stern) => Stern,
): string[] {
  const rig = spread ? pair(start) : exact(pair(start));
  const stern = prepare(rig.stern);
  const plan = cutPlan(rig.motor, stern, choices);
  if (!plan.notch) throw new Error(`pair ${start}: no notch was planned`);
  const cut = cutStern(plan, stern);
  const found = outcomes(rig.motor, spread ? cut : spreadBy(cut, 0));
  const asked = [...NOTCH, ...(plan.well ? WELL : [])];
  return asked
    .filter((id) => (spread ? found[id]!.outcome === "fouls" : found[id]!.outcome !== "fits"))
    .map((id) => `pair ${start}: ${id}: ${found[id]!.says}`);
}

const starts = Array.from({ length: PAIRS }, (_, k) => k);

describe("a stern cut to its plan", () => {
  for (const [name, spread] of [
    ["without spread fits", false],
    ["with spread does not foul", true],
  ] as const) {
    test(`nothing cut before, no well: ${name}`, () => {
      expect(starts.flatMap((start) => broken(start, { well: "leave" }, spread, uncut))).toEqual([]);
    });

    test(`in sixteenths of an inch: ${name}`, () => {
      expect(
        starts.flatMap((start) => broken(start, { well: "leave", lengths: "in" }, spread, uncut)),
      ).toEqual([]);
    });

    test(`a notch there already, deepened and widened as planned: ${name}`, () => {
      expect(starts.flatMap((start) => broken(start, { well: "leave" }, spread, (stern) => stern))).toEqual(
        [],
      );
    });

    for (const soleLies of ["square", "level"] as const) {
      test(`with a well to build, its sole ${soleLies}: ${name}`, () => {
        const choices: CutChoices = {
          well: "build",
          soleLies,
          wellWidthAftMm: 2400,
          wellWidthFrontMm: 2300,
          sideFlareDeg: 6,
        };
        expect(starts.flatMap((start) => broken(start, choices, spread, uncut))).toEqual([]);
      });
    }
  }

  test("cut a little deeper than the plan's tolerance allows, some plate leaves its window: the law has teeth", () => {
    const left = starts.filter((start) => {
      const { motor, stern } = exact(pair(start));
      const before = uncut(stern);
      const plan = cutPlan(motor, before, { well: "leave" });
      const seatMm = plan.notch!.seatMm - plan.notch!.tolerance.depth.moreMm - 2;
      const sawn = cutStern({ notch: { ...plan.notch!, seatMm } }, before);
      return outcomes(motor, spreadBy(sawn, 0))["plate-height"]!.outcome === "fouls";
    });
    expect(left.length).toBeGreaterThan(PAIRS / 2);
  });

  test("cheeks 2 mm inside the least half width foul", () => {
    const { motor, stern } = exact(pair(3));
    const before = uncut(stern);
    const plan = cutPlan(motor, before, { well: "leave" });
    const halfWidth = { ...plan.notch!.halfWidth, markMm: plan.notch!.leastHalfMm - 2 };
    const found = outcomes(motor, spreadBy(cutStern({ notch: { ...plan.notch!, halfWidth } }, before), 0));
    expect([found["steering-room"]!.outcome, found.bracket!.outcome]).toContain("fouls");
  });
});
