/**
 * Laws of the questions afloat: they stand beside the others and decide nothing there; a number taken away
 * moves them only towards "cannot tell"; more spread never makes a verdict out of a doubt.
 */
import { describe, expect, test } from "vitest";
import { assess } from "#lib/fit/assess.ts";
import { examine, verdictOfAnswer } from "#lib/fit/examine.ts";
import type { Motor } from "#lib/rig/motor.ts";
import type { Stern } from "#lib/rig/stern.ts";
import { motorOf, sternOf } from "#tests/lib/data/demo.ts";
import { spreadBy } from "./pair.ts";

const PAIRS = [
  ["15-hp-long-tiller-four-stroke", "vee-runabout-long-well"],
  ["60-hp-long-remote-two-stroke", "vee-runabout-long-well"],
  ["15-hp-short-tiller-two-stroke", "flat-skiff-short"],
  ["15-hp-long-tiller-four-stroke", "vee-tender-short-well"],
  ["9-9-hp-short-tiller-four-stroke", "vee-tender-short-well"],
  ["60-hp-long-remote-two-stroke", "vee-fast-boat-deep-notch"],
  ["9-9-hp-extra-long-remote-four-stroke", "vee-new-build-well-planned"],
  ["6-hp-long-tiller-four-stroke", "round-launch-long-keel"],
  ["8-hp-short-tiller-two-stroke", "flat-pram-steep-rake"],
] as const;
const pairs = PAIRS.map(([motor, stern]) => [motor, stern, motorOf(motor), sternOf(stern)] as const);

/** Numbers and facts that only the questions afloat use. */
const ONLY_AFLOAT = [
  "powerKw",
  "massKg",
  "propDiameterMm",
  "plateToPropCentreMm",
  "lengthOverallMm",
  "transomWidthMm",
  "beamMm",
  "waterlineMm",
  "waterlineLengthMm",
  "waterlineBeamMm",
  "hullForm",
  "hardChine",
  "drainDiameterMm",
  "drainCount",
  "ratedPowerKw",
  "ratedMotorMassKg",
  "ratedTotalMassKg",
];
const without = <R extends object>(record: R, keys: readonly string[]): R =>
  Object.fromEntries(Object.entries(record).filter(([key]) => !keys.includes(key))) as R;
const hung = ({ verdict, governs, checks, remedies }: ReturnType<typeof assess>) => ({
  verdict,
  governs,
  checks,
  remedies,
});
const outcomes = (motor: Motor, stern: Stern) =>
  Object.fromEntries(assess(motor, stern).afloat.map(({ id, outcome }) => [id, outcome]));

describe.each(pairs)("%s on %s", (_, __, motor, stern) => {
  test("nothing afloat changes the verdict, what governs, the questions or the remedies", () => {
    const whole = assess(motor, stern);
    const bare = assess(without(motor, ONLY_AFLOAT), without(stern, ONLY_AFLOAT));
    expect(hung(bare)).toEqual(hung(whole));
    const forbidding = {
      ...stern,
      ratedPowerKw: { value: 0.1, how: "declared" },
      ratedMotorMassKg: { value: 1, how: "declared" },
    } as const;
    const forbidden = assess(motor, forbidding);
    expect(forbidden.afloat.slice(0, 2).map(({ outcome }) => outcome)).toEqual(["fouls", "fouls"]);
    expect(hung(forbidden)).toEqual(hung(whole));
    const { governing } = examine(motor, stern);
    expect([whole.verdict, whole.governs]).toEqual([verdictOfAnswer(governing), governing.check.id]);
  });

  test("a number taken away moves an answer only towards cannot tell", () => {
    const before = outcomes(motor, stern);
    // A label that governs and a seat that is cut are answered by another number where they are taken away.
    const keys = ONLY_AFLOAT.filter((key) => !key.startsWith("rated") && key !== "beamMm");
    for (const key of keys) {
      const after = outcomes(without(motor, [key]), without(stern, [key]));
      for (const [id, outcome] of Object.entries(after))
        expect([before[id], "cannot tell"], `${id} without ${key}`).toContain(outcome);
    }
  });

  test("three times the spread never settles what could not be told", () => {
    const before = outcomes(motor, stern);
    const after = outcomes(spreadBy(motor, 3), spreadBy(stern, 3));
    for (const [id, outcome] of Object.entries(after))
      expect([before[id], "cannot tell"], id).toContain(outcome);
  });

  test("every answer says what it is, every missing number is named, every figure has a source", () => {
    for (const one of assess(motor, stern).afloat) {
      expect(one.is.length).toBeGreaterThan(20);
      if (
        one.outcome === "cannot tell" &&
        one.marginMm === undefined &&
        one.marginKg === undefined &&
        one.marginKw === undefined
      )
        expect(one.missing?.length ?? 0).toBeGreaterThan(0);
      for (const figure of one.figures) {
        expect(Number.isFinite(figure.value)).toBe(true);
        expect(figure.source.length).toBeGreaterThan(5);
      }
      if (one.outcome !== "not asked") expect(one.notes.map(({ id }) => id)).toContain("defers");
    }
  });
});

test("the demonstration holds a pairing that is too strong, one too heavy, one too low", () => {
  const all = pairs.map(([, , motor, stern]) => outcomes(motor, stern));
  for (const id of ["power", "motor-mass", "freeboard"])
    expect(all.some((one) => one[id] === "fouls")).toBe(true);
});
