/** What to measure next, by hand on the bench; and, on invented pairs, kept as a promise. */
import { describe, expect, test } from "vitest";
import { examine } from "#lib/fit/examine.ts";
import { measureNext } from "#lib/fit/measure-next.ts";
import type { RigKey } from "#lib/rig/mounting.ts";
import { type Pair, pair, withNumbers } from "#tests/laws/pair.ts";
import { ask, type Changes, taken } from "#tests/lib/checks/bench.ts";

const plate = (changes: Changes) => measureNext(ask("plate-height", changes));

describe("Measure next", () => {
  test("nothing, where the question is answered", () => {
    expect(plate({})).toBeUndefined();
    expect(plate({ seatMm: 600 })).toBeUndefined();
    expect(measureNext(ask("bracket", { seatMm: undefined, notchWidthMm: undefined }))).toBeUndefined();
  });

  test("the missing number, where there is one", () => {
    expect(plate({ steerAxisAftMm: undefined })).toEqual({ key: "steerAxisAftMm" });
    expect(measureNext(ask("sole-room", { steering: undefined }))).toEqual({ key: "steering" });
  });

  test("the largest part, with the half-width that would do", () => {
    // Plumb and parallel, seat 518 +- 1, shaft 520 +- 3: margin 2, u^2 = (1 + 9)/3. Settled when 4 u'^2 <= 4:
    // shaft's part at most 1 - 1/3 = 2/3, half-width sqrt(3 x 2/3) = 1.414; of the steps people can take, 1.
    expect(plate({ seatMm: taken(518, 1), shaftLengthMm: taken(520, 3) })).toEqual({
      key: "shaftLengthMm",
      goodEnough: 1,
    });
    // Margin 2.4: (1.2^2 - 1/3) x 3 = 3.32, half-width 1.822: still 1. Margin 2.7: (1.8225 - 1/3) x 3 = 4.47, 2.11.
    expect(plate({ seatMm: taken(517.6, 1), shaftLengthMm: taken(520, 3) })?.goodEnough).toBe(1);
    expect(plate({ seatMm: taken(517.3, 1), shaftLengthMm: taken(520, 3) })?.goodEnough).toBe(2);
    // A foul to be made sure of is settled the same way: margin -2.
    expect(plate({ seatMm: taken(522, 1), shaftLengthMm: taken(520, 3) })).toEqual({
      key: "shaftLengthMm",
      goodEnough: 1,
    });
  });

  test("no half-width is promised where even a perfect taking would not do", () => {
    // Margin 1.1: 0.3025 < 1/3 already for the seat alone. Margin 1.2: 0.0267 x 3 = 0.08, 0.283: finer than half a unit.
    for (const seat of [518.9, 518.8])
      expect(plate({ seatMm: taken(seat, 1), shaftLengthMm: taken(520, 3) })).toEqual({
        key: "shaftLengthMm",
      });
  });
});

/** The pair with one number taken again to a half-width, its value the same. */
function retaken({ motor, stern }: Pair, key: RigKey, plusMinus: number): Pair {
  const again = <R extends Pair["motor"] | Pair["stern"]>(record: R): R =>
    withNumbers(record, (entry, name) => (name === key ? { ...entry, plusMinus } : entry));
  return { motor: again(motor), stern: again(stern) };
}

describe("Measure next on invented pairs", () => {
  const doubtful = Array.from({ length: 250 }, (_, start) => pair(start)).flatMap((one) =>
    examine(one.motor, one.stern)
      .answers.filter(({ outcome }) => outcome === "cannot tell")
      .map((answer) => ({ one, answer, next: measureNext(answer)! })),
  );
  const again = ({ one, answer, next }: (typeof doubtful)[number], plusMinus: number) => {
    const { motor, stern } = retaken(one, next.key as RigKey, plusMinus);
    return examine(motor, stern).answers.find(({ check }) => check.id === answer.check.id)!;
  };

  test("taken again to the half-width named, the edge in question is settled", () => {
    const promised = doubtful.filter(({ next }) => next.goodEnough);
    expect(promised.length).toBeGreaterThan(30);
    let settled = 0;
    for (const one of promised) {
      const { ruling } = again(one, one.next.goodEnough!);
      const name = `${one.answer.check.id} ${one.next.key} ${one.next.goodEnough}`;
      // Another edge of the same question may then be the least sure one.
      if (ruling?.edge.says !== one.answer.ruling?.edge.says || ruling?.margin !== one.answer.ruling?.margin)
        continue;
      expect(ruling?.verdict, name).not.toBe("cannot tell");
      settled += 1;
    }
    expect(settled).toBeGreaterThan((promised.length * 9) / 10);
  });

  test("where none is named, a taking to half a unit leaves it open", () => {
    const open = doubtful.filter(({ next }) => next.goodEnough === undefined);
    expect(open.length).toBeGreaterThan(30);
    for (const one of open) expect(again(one, 0.5).outcome, one.answer.check.id).toBe("cannot tell");
  });
});
