/** A whole report, with its budgets and remedies, of a pairing that fits, one that fouls and one where nothing is cut yet. */
import { bench, describe } from "vitest";
import motors from "#data/demo/motors.json" with { type: "json" };
import sterns from "#data/demo/sterns.json" with { type: "json" };
import { assess } from "#lib/fit/assess.ts";
import { examine } from "#lib/fit/examine.ts";
import type { Motor } from "#lib/rig/motor.ts";
import type { Stern } from "#lib/rig/stern.ts";

const motor = (id: string): Motor => (motors as unknown as Motor[]).find((one) => one.id === id)!;
const stern = (id: string): Stern => (sterns as unknown as Stern[]).find((one) => one.id === id)!;

const PAIRS = [
  ["fits", "15-hp-long-tiller-four-stroke", "vee-runabout-long-well", "fits"],
  ["fouls", "20-hp-long-tiller-four-stroke", "vee-tender-short-well", "fouls"],
  ["nothing cut yet", "9-9-hp-short-tiller-four-stroke", "vee-new-build-well-planned", "fouls"],
] as const;

describe.each(PAIRS)("%s", (_, motorId, sternId, verdict) => {
  const [one, other] = [motor(motorId), stern(sternId)];
  const { verdict: found, remedies } = assess(one, other);
  if (found !== verdict || (verdict === "fouls" && remedies.length === 0))
    throw new Error(`${motorId} on ${sternId} no longer is what this measures: ${found}`);

  bench("the report", () => {
    assess(one, other);
  });

  bench("the answers alone", () => {
    examine(one, other);
  });
});
