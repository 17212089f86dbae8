/** The one scale of all margins. */
import { describe, expect, test } from "vitest";
import { beyond, type Margin, marginAxis, placeOn } from "#app/_parts/report/margin-axis.ts";
import { inches } from "#lib/quantity/length.ts";

const at = (margin: number, spread = 4): Margin => ({ margin, spread, worst: margin - 1.5 * spread });
const close = [at(14), at(-6), at(30, 8)];

describe("the axis of the margins", () => {
  test("always holds the limit, with room on either side", () => {
    for (const margins of [[at(14)], [at(-300)], [at(300)], close]) {
      const axis = marginAxis(margins, "mm");
      expect(axis.from).toBeLessThan(0);
      expect(axis.to).toBeGreaterThan(0);
    }
  });

  test("holds every close margin with its whiskers and its worst case", () => {
    const axis = marginAxis(close, "mm");
    for (const { margin, spread, worst } of close) {
      expect([margin - spread, margin + spread, worst].map((value) => beyond(axis, value))).toEqual([
        undefined,
        undefined,
        undefined,
      ]);
    }
  });

  test("does not grow with margins that are far off: those reach beyond it", () => {
    const near = marginAxis([...close, at(60), at(-60)], "mm");
    for (const far of [300, 3000]) {
      const axis = marginAxis([...close, at(far), at(-far)], "mm");
      expect([axis.from, axis.to]).toEqual([near.from, near.to]);
      expect([beyond(axis, far), beyond(axis, -far)]).toEqual(["spare", "short"]);
    }
  });

  test("is wide enough for a wide doubt about the limit", () => {
    const wide = at(10, 60);
    const axis = marginAxis([...close, wide], "mm");
    expect(beyond(axis, wide.margin - wide.spread)).toBeUndefined();
    expect(beyond(axis, wide.margin + wide.spread)).toBeUndefined();
  });

  test("bears figures in whole steps of the reader's lengths, the limit left out", () => {
    const { ticks } = marginAxis(close, "mm", "in");
    expect(ticks.length).toBeGreaterThan(1);
    for (const tick of ticks) {
      const quarters = (tick / inches(1)) * 4;
      expect(Math.abs(quarters - Math.round(quarters))).toBeLessThan(1e-9);
      expect(Math.abs(tick)).toBeGreaterThan(1);
    }
  });

  test("places more room further right, and what lies beyond it at its ends", () => {
    const axis = marginAxis(close, "mm");
    const places = [-500, axis.from, -10, 0, 10, axis.to, 500].map((value) => placeOn(axis, value));
    expect(places).toEqual(places.toSorted((a, b) => a - b));
    expect(places[0]).toBe(places[1]);
    expect(places.at(-1)).toBe(places.at(-2));
    expect(places[2]).toBeLessThan(places[3]!);
    expect(places[3]).toBeLessThan(places[4]!);
    expect(Math.min(...places)).toBeGreaterThan(0);
    expect(Math.max(...places)).toBeLessThan(100);
  });

  test("of degrees is one of its own, in degrees", () => {
    const { from, to } = marginAxis([{ margin: 1, spread: 0.8, worst: 0 }], "deg");
    expect(from).toBeGreaterThanOrEqual(-10);
    expect(to).toBeLessThanOrEqual(10);
  });
});
