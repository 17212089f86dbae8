/**
 * A number taken away moves an answer towards "cannot tell" and nowhere else, since nothing is put in its
 * place. Some absences are statements of the vocabulary, not want of knowledge; each is excused by name.
 */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { examine } from "#lib/fit/examine.ts";
import type { Outcome } from "#lib/fit/report.ts";
import { motorFields } from "#lib/rig/motor.ts";
import { keysOf, type Pair, pair } from "#tests/laws/pair.ts";

const FACTS = ["shaftClass", "steering", "strokes", "hullForm"];

/**
 * What an absent key says, and the answers it may therefore change:
 * - seatMm: nothing is cut to a seat, the motor sits on the uncut top: every question looks at another boat.
 * - notchCornerRadiusMm: the corners are square, so the flat is as wide as the notch.
 * - wellSideHeightMm: the sides go up without end, the safe reading: only ever less room.
 * - shaftLengthMm: the label's class, set aside while the leg itself was measured, speaks again.
 */
const SAYS: Readonly<Record<string, readonly string[]>> = {
  seatMm: ["*"],
  notchCornerRadiusMm: ["bracket"],
  wellSideHeightMm: ["side-room"],
  shaftLengthMm: ["shaft-class"],
};

const excused = (key: string, check: string): boolean =>
  SAYS[key]?.includes("*") === true || SAYS[key]?.includes(check) === true;

function without({ motor, stern }: Pair, key: string): Pair {
  const less = <R extends object>(record: R): R =>
    Object.fromEntries(Object.entries(record).filter(([name]) => name !== key)) as R;
  return { motor: less(motor), stern: less(stern) };
}

/** Certified to a hundredth, to a millimetre where they overlap. */
const slack = (mm: number): number => (mm < 0 ? 1.01 : 0.011);

/** The flat of the notch, and every clearance. */
function hung({ motor, stern }: Pair) {
  const { mounting, answers } = examine(motor, stern);
  const flat = answers.find(({ check }) => check.id === "bracket")?.ruling?.edge.have ?? 0;
  return { flat, ids: mounting.obstacleIds, clearance: (id: string) => mounting.clearance(id)!.mm };
}

const outcomes = ({ motor, stern }: Pair) => {
  const { answers, governing } = examine(motor, stern);
  return { answers, verdict: governing.outcome };
};

/** Same, or towards cannot tell. */
const towardsDoubt = (before: Outcome, after: Outcome): boolean =>
  after === before || after === "cannot tell";

describe("A number taken away", () => {
  test("moves every answer only towards cannot tell, and says what is missing", () => {
    let moved = 0;
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 100_000 }), fc.nat(9999), (start, which) => {
        const one = pair(start);
        const keys = [...keysOf(one.motor), ...keysOf(one.stern), ...FACTS];
        const key = keys[which % keys.length]!;
        const [before, after] = [outcomes(one), outcomes(without(one, key))];
        after.answers.forEach(({ check, outcome, missing, says }, number) => {
          const was = before.answers[number]!.outcome;
          if (excused(key, check.id)) return;
          expect(towardsDoubt(was, outcome), `${check.id}: ${was} to ${outcome} without ${key}`).toBe(true);
          if (was === "fits" && outcome === "cannot tell") {
            moved += 1;
            // An uncut top may be asked for by the name of the seat it stands for.
            const named =
              missing.includes(key as "seatMm") || (key === "transomTopMm" && missing.includes("seatMm"));
            expect(named, `${key} among ${missing}`).toBe(true);
            expect(says).toMatch(/^Not known: /);
          }
        });
        if (!SAYS[key]) expect(towardsDoubt(before.verdict, after.verdict), key).toBe(true);
      }),
      { seed: 73, numRuns: 500 },
    );
    expect(moved).toBeGreaterThan(200);
  });

  test("each of them from each of a dozen pairs", () => {
    for (let start = 0; start < 12; start += 1) {
      const one = pair(start);
      const before = outcomes(one);
      for (const key of [...keysOf(one.motor), ...keysOf(one.stern), ...FACTS]) {
        outcomes(without(one, key)).answers.forEach(({ check, outcome }, number) => {
          const was = before.answers[number]!.outcome;
          const fine = excused(key, check.id) || towardsDoubt(was, outcome);
          expect(fine, `pair ${start}, ${check.id}: ${was} to ${outcome} without ${key}`).toBe(true);
        });
      }
    }
  });

  test("excused absences keep to what they say", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 100_000 }), (start) => {
        const one = pair(start);
        const here = hung(one);
        const [square, endless, down] = ["notchCornerRadiusMm", "wellSideHeightMm", "tillerFolds"].map(
          (key) => hung(without(one, key)),
        );
        // Square corners never narrow the flat.
        expect(square!.flat).toBeGreaterThanOrEqual(here.flat);
        // Sides without end never widen the well; a tiller not said to fold is taken to stay down.
        for (const id of here.ids) {
          expect(endless!.clearance(id), id).toBeLessThan(here.clearance(id) + slack(here.clearance(id)));
          expect(down!.clearance(id), id).toBeLessThan(here.clearance(id) + slack(here.clearance(id)));
        }
      }),
      { seed: 74, numRuns: 150 },
    );
  });

  test("all the well's numbers gone, there is no well and no question about it", () => {
    const well = [
      "soleDropMm",
      "soleAngleDeg",
      "wellDepthMm",
      "wellFrontHeightMm",
      "wellWidthAftMm",
      "wellWidthFrontMm",
      "sideFlareDeg",
    ];
    for (let start = 0; start < 30; start += 1) {
      const dry = well.reduce(without, pair(start));
      for (const { check, outcome } of outcomes(dry).answers)
        if (["clamp-depth", "screw-handles", "tilt-room", "sole-room", "side-room"].includes(check.id))
          expect(outcome, check.id).toBe("not asked");
    }
  });

  test("everything gone, nothing is claimed", () => {
    const one = pair(3);
    const bare = [...keysOf(one.motor), ...keysOf(one.stern), ...FACTS, "obstacles"].reduce(without, one);
    const { answers, verdict } = outcomes(bare);
    expect(verdict).toBe("cannot tell");
    expect(new Set(answers.map(({ outcome }) => outcome))).toEqual(new Set(["cannot tell", "not asked"]));
    expect(Object.keys(motorFields).some((key) => key in bare.motor)).toBe(false);
  });
});
