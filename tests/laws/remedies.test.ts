/**
 * A remedy is a promise: put in place as the report words it, the pairing assessed again says what was
 * promised. The changes are taken from the report as rounded there, to 0.01 mm.
 */

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import motors from "#data/demo/motors.json" with { type: "json" };
import sterns from "#data/demo/sterns.json" with { type: "json" };
import { assess } from "#lib/fit/assess.ts";
import { type Assessment, examine } from "#lib/fit/examine.ts";
import { remediesOf } from "#lib/fit/remedies.ts";
import type { Report, ReportChange, ReportRemedy } from "#lib/fit/report.ts";
import { withNumber, withSeat } from "#lib/rig/alter.ts";
import type { Motor } from "#lib/rig/motor.ts";
import type { Handling } from "#lib/rig/mounting.ts";
import { type Stern, type SternKey, sternFields } from "#lib/rig/stern.ts";
import { type Pair, pair } from "#tests/laws/pair.ts";

interface Handled extends Pair {
  readonly handling: Handling;
}

/** One change of a report put in place. Moving the seat carries what is measured from it along; the report's own figures then stand. */
function changed({ motor, stern, handling }: Handled, { change, to }: ReportChange): Handled {
  if (change === "pinDeg")
    return { motor, stern, handling: { ...handling, hole: holeAt(motor, to as number) } };
  if (change === "straightWhileTilting") return { motor, stern, handling: { ...handling, [change]: true } };
  if (change === "seatMm") return { motor, stern: withSeat(stern, to as number), handling };
  if (change in sternFields)
    return { motor, stern: withNumber(stern, change as SternKey, to as number), handling };
  const value = change === "shaftLengthMm" ? { ...motor.shaftLengthMm, value: to } : to;
  return { motor: { ...motor, [change]: value } as Motor, stern, handling };
}

/** The hole whose angle the report gives, to the hundredth. */
const holeAt = (motor: Motor, pinDeg: number): number =>
  motor.pinAnglesDeg!.value.findIndex((angle) => Math.abs(angle - pinDeg) < 0.006);

/** The whole remedy, the seat first. */
function mended({ motor, stern }: Pair, { also = [], ...first }: ReportRemedy): Assessment {
  const seatFirst = [first, ...also].sort(
    (a, b) => Number(b.change === "seatMm") - Number(a.change === "seatMm"),
  );
  const after = seatFirst.reduce(changed, { motor, stern, handling: {} } as Handled);
  return examine(after.motor, after.stern, { handling: after.handling });
}

/** The demonstration's motors each on three of its sterns: among them other shafts and tillers that could fold. */
const club = (motors as unknown as Motor[]).flatMap((motor, number) =>
  [0, 1, 2].map((k) => ({
    motor,
    stern: (sterns as unknown as Stern[])[(number * 5 + k * 4) % sterns.length]!,
  })),
);

/** Reports of pairs that do not fit, worked out once for all the laws below. */
const trials = [...Array.from({ length: 150 }, (_, start) => pair(start * 13 + 5)), ...club];
const amiss = trials.flatMap((one) => {
  const report = assess(one.motor, one.stern);
  return report.verdict === "fits" ? [] : [{ one, report }];
});
const remedies = amiss.flatMap(({ one, report }) =>
  report.remedies.map((remedy) => ({ one, report, remedy })),
);

/** What a single cut is made for. */
const SAWN: Readonly<Record<string, readonly string[]>> = {
  notchWidthMm: ["steering-room", "bracket"],
  soleDropMm: ["clamp-depth", "screw-handles", "sole-room"],
  wellDepthMm: ["tilt-room"],
};

describe("Remedies", () => {
  test("are offered, of every kind", () => {
    const kinds = new Set(remedies.map(({ remedy }) => remedy.change));
    expect(remedies.length).toBeGreaterThan(60);
    for (const kind of [
      "seatMm",
      "notchWidthMm",
      "soleDropMm",
      "wellDepthMm",
      "straightWhileTilting",
      "shaftClass",
    ])
      expect([...kinds]).toContain(kind);
  });

  test("give, put in place, just what the report promised", () => {
    for (const { one, remedy } of remedies) {
      const { check, outcome, ruling } = mended(one, remedy).governing;
      const name = `${one.stern.id} ${JSON.stringify(remedy)}`;
      expect([outcome, check.id], name).toEqual([remedy.verdictAfter, remedy.governsAfter]);
      const margin = remedy.marginAfterMm ?? remedy.marginAfterDeg;
      const spread = remedy.expandedUncertaintyAfterMm ?? remedy.expandedUncertaintyAfterDeg;
      // No margin is promised where a number is missing.
      expect(margin === undefined, name).toBe(ruling === undefined);
      if (!ruling) continue;
      // Rounded to 0.01 twice, and certified to 0.01.
      expect(Math.abs(ruling.margin - margin!), name).toBeLessThan(0.03);
      expect(Math.abs(2 * ruling.u - spread!), name).toBeLessThan(0.05);
    }
  });

  test("never leave a foul, and turn doubt into nothing less than a fit", () => {
    for (const { report, remedy } of remedies) {
      expect(remedy.verdictAfter).not.toBe("fouls");
      if (report.verdict === "cannot tell") expect(remedy.verdictAfter).toBe("fits");
    }
  });

  test("are not offered where nothing is amiss", () => {
    let fitting = 0;
    for (let start = 0; start < 60; start += 1) {
      const { motor, stern } = pair(start);
      const report: Report = assess(motor, stern);
      if (report.verdict !== "fits") continue;
      fitting += 1;
      expect(report.remedies).toEqual([]);
    }
    expect(fitting).toBeGreaterThan(5);
  });

  test("come with the least change first", () => {
    for (const { one } of amiss.filter(({ report }) => report.remedies.length > 1)) {
      const found = remediesOf(one.motor, one.stern, examine(one.motor, one.stern));
      const efforts = found.map(({ effort }) => effort);
      expect(efforts).toEqual([...efforts].sort((a, b) => a - b));
    }
  });

  test("saw no more than the spread asks for", () => {
    let tried = 0;
    for (const { one } of amiss) {
      const before = examine(one.motor, one.stern);
      for (const { changes, after } of remediesOf(one.motor, one.stern, before)) {
        const answers = changes.length === 1 ? SAWN[changes[0]!.change] : undefined;
        if (!answers) continue;
        const rulings = ({ answers: all }: Assessment) =>
          all.flatMap(({ check, ruling }) => (answers.includes(check.id) && ruling ? [ruling] : []));
        // The question that is least surely met has its U and next to nothing over; the U it aimed at may
        // have been that of before.
        const over = Math.min(...rulings(after).map(({ margin, u }) => margin - 2 * u));
        const spread = Math.max(...rulings(before).map(({ u }) => 2 * u));
        expect(over, JSON.stringify(changes)).toBeLessThan(spread + 0.5);
        tried += 1;
      }
    }
    expect(tried).toBeGreaterThan(10);
  });

  test("name what was there before as it was", () => {
    for (const { one, remedy } of remedies) {
      for (const { change, from, to } of [remedy, ...(remedy.also ?? [])]) {
        const was = ({ ...one.stern, ...one.motor } as unknown as Readonly<Record<string, unknown>>)[change];
        const before = typeof was === "object" && was !== null && "value" in was ? was.value : was;
        if (typeof before === "number" && change !== "seatMm") expect(from, change).toBeCloseTo(before, 1);
        expect(to, change).not.toBe(from);
      }
    }
  });
});

test("the same pairing has the same remedies, however often it is asked", () => {
  fc.assert(
    fc.property(fc.constantFrom(...amiss), ({ one, report }) => {
      expect(assess(one.motor, one.stern)).toEqual(report);
    }),
    { seed: 75, numRuns: 15 },
  );
});
