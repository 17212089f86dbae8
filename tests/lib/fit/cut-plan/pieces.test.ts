/** Screws, sheets, marks, outlines with notches, and the check after the saw. */
import { describe, expect, test } from "vitest";
import { screwPositions } from "#lib/fit/cut-plan/fasteners.ts";
import { marked } from "#lib/fit/cut-plan/marked.ts";
import { without } from "#lib/fit/cut-plan/notching.ts";
import type { CutPart } from "#lib/fit/cut-plan/part.ts";
import { asBuilt } from "#lib/fit/cut-plan/sawn.ts";
import { stockPlan } from "#lib/fit/cut-plan/stock.ts";
import { motor, uncut } from "#tests/lib/fit/cut-plan/boat.ts";

describe("screws along a cleat", () => {
  test("850 long, ends 25, no farther apart than 100: 8 gaps of 100, nine screws", () => {
    const positions = screwPositions(850, 100, 25);
    expect(positions).toHaveLength(9);
    expect(positions[0]).toBe(25);
    expect(positions[8]).toBe(825);
    expect(positions[1]! - positions[0]!).toBeCloseTo(100, 9);
  });
  test("851 long needs one more", () => expect(screwPositions(851, 100, 25)).toHaveLength(10));
  test("a piece too short for two takes one in its middle", () =>
    expect(screwPositions(40, 100, 25)).toEqual([20]));
});

describe("marks", () => {
  test("up and down to the millimetre, a length on the step stays", () => {
    expect(marked(120.2, "up", "mm").text).toBe("121 mm");
    expect(marked(120.2, "down", "mm").text).toBe("120 mm");
    expect(marked(120, "up", "mm")).toMatchObject({ markMm: 120, rounded: "not at all" });
  });
  test("sixteenths: 100 mm = 3.937 in = 62.99 sixteenths, 3 7/8 below and 3 15/16 above", () => {
    expect(marked(100, "down", "in").text).toBe("3 7/8 in");
    expect(marked(100, "up", "in").text).toBe("3 15/16 in");
    expect(marked(15.5 * 25.4, "up", "in").text).toBe("15 1/2 in");
  });
});

describe("notches in an outline", () => {
  const square = [
    [0, 0],
    [10, 0],
    [10, 10],
    [0, 10],
  ] as const;
  const area = (outline: readonly (readonly [number, number])[]) =>
    outline.reduce((sum, [x, y], i) => {
      const [u, v] = outline[(i + 1) % outline.length]!;
      return sum + (x * v - u * y) / 2;
    }, 0);

  test("a corner of 3 by 2 leaves 94, in an L of six corners", () => {
    const left = without(square, [
      [-1, -1],
      [3, -1],
      [3, 2],
      [-1, 2],
    ]);
    expect(left).toHaveLength(6);
    expect(area(left)).toBeCloseTo(94, 9);
  });
  test("two notches one after the other, given either way round", () => {
    const once = without(square, [
      [-1, 2],
      [3, 2],
      [3, -1],
      [-1, -1],
    ]);
    const twice = without(once, [
      [8, 4],
      [12, 4],
      [12, 6],
      [8, 6],
    ]);
    expect(area(twice)).toBeCloseTo(90, 9);
    expect(twice).toHaveLength(10);
  });
  test("one that misses changes nothing; one that parts the piece is refused", () => {
    expect(
      without(square, [
        [20, 0],
        [30, 0],
        [30, 5],
        [20, 5],
      ]),
    ).toEqual(square.map((spot) => [...spot]));
    expect(() =>
      without(square, [
        [4, -1],
        [6, -1],
        [6, 11],
        [4, 11],
      ]),
    ).toThrow(RangeError);
  });
});

describe("stock", () => {
  const part = (id: string, kind: "sheet" | "board", size: [number, number]): CutPart =>
    ({
      id,
      stock: { kind, thicknessMm: 12, ...(kind === "board" && { widthMm: size[1] }) },
      overallMm: size,
    }) as unknown as CutPart;
  const bought = { sheetLongMm: 2440, sheetWideMm: 1220, boardLongMm: 2400, kerfMm: 3 };

  test("four panels of 1200 x 600 go on one sheet, with the saw's cut between them", () => {
    const { sheets, areaM2 } = stockPlan(
      ["a", "b", "c", "d"].map((id) => part(id, "sheet", [1200, 600])),
      bought,
    );
    expect(sheets).toHaveLength(1);
    expect(sheets[0]!.parts.map(({ atMm }) => atMm)).toEqual([
      [0, 0],
      [1203, 0],
      [0, 603],
      [1203, 603],
    ]);
    expect(areaM2).toBeCloseTo(2.88, 9);
  });
  test("parts on a sheet never overlap and never leave it", () => {
    const sizes: [number, number][] = [
      [1500, 760],
      [700, 330],
      [1400, 330],
      [600, 500],
      [900, 120],
      [300, 1100],
    ];
    const { sheets } = stockPlan(
      sizes.map((size, i) => part(`p${i}`, "sheet", size)),
      bought,
    );
    expect(sheets.flatMap(({ parts }) => parts)).toHaveLength(6);
    for (const { parts } of sheets) {
      for (const [i, a] of parts.entries()) {
        expect(a.atMm[0] + a.sizeMm[0]).toBeLessThanOrEqual(2440);
        expect(a.atMm[1] + a.sizeMm[1]).toBeLessThanOrEqual(1220);
        for (const b of parts.slice(i + 1)) {
          const apart = [0, 1].some(
            (k) =>
              a.atMm[k as 0]! + a.sizeMm[k as 0]! <= b.atMm[k as 0]! ||
              b.atMm[k as 0]! + b.sizeMm[k as 0]! <= a.atMm[k as 0]!,
          );
          expect(apart).toBe(true);
        }
      }
    }
  });
  test("boards: 1500, 1300, 800 and 700 take two of 2400, the saw's cut counted", () => {
    const { boards, lengthM } = stockPlan(
      [1500, 1300, 800, 700].map((long) => part(`b${long}`, "board", [long, 40])),
      bought,
    );
    expect(boards.map(({ parts }) => parts.map(({ lengthMm }) => lengthMm))).toEqual([
      [1500, 800],
      [1300, 700],
    ]);
    expect(lengthM).toBeCloseTo(4.3, 9);
  });
  test("1200 twice does not come out of 2400: the saw takes its part", () => {
    expect(
      stockPlan([part("a", "board", [1200, 40]), part("b", "board", [1200, 40])], bought).boards,
    ).toHaveLength(2);
  });
  test("what is too large is named", () => {
    expect(
      stockPlan([part("long", "board", [2500, 40]), part("wide", "sheet", [1300, 1250])], bought).tooLarge,
    ).toEqual(["wide", "long"]);
  });
});

describe("after the saw", () => {
  const taken = (value: number) => ({ value, plusMinus: 1, how: "measured" as const });

  test("a seat at 525 is 5 too high: from 5 to 30.4 may still come off (window 494.6 to 520)", () => {
    const { report, trim } = asBuilt(motor, uncut(), {
      seatMm: taken(525),
      notchWidthMm: taken(700),
      notchCornerRadiusMm: taken(25),
    });
    expect(report.checks.find(({ id }) => id === "plate-height")!.marginMm).toBeCloseTo(-5, 6);
    const seat = trim.find(({ cut }) => cut === "seat")!;
    expect(seat.fromMm).toBeCloseTo(5, 6);
    expect(seat.toMm).toBeCloseTo(30.4, 6);
    expect(seat.says).toContain("more has to come off");
  });
  test("a seat at 490 is cut too deep: nothing can come off", () => {
    const { trim } = asBuilt(motor, uncut(), { seatMm: taken(490), notchWidthMm: taken(700) });
    expect(trim.find(({ cut }) => cut === "seat")!.says).toContain("too deep");
  });
  test("a notch too narrow for the bracket says how much to take off each cheek", () => {
    // Bracket 240 and corners of 25: 290 is the least; 280 lacks 5 a side, or more where the motor moves.
    const { trim } = asBuilt(motor, uncut(), {
      seatMm: taken(508),
      notchWidthMm: taken(280),
      notchCornerRadiusMm: taken(25),
    });
    expect(trim.find(({ cut }) => cut === "cheeks")!.fromMm).toBeGreaterThanOrEqual(5 - 1e-6);
  });
});
