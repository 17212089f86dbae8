/** The notch worked by hand: a plumb transom 628 high, a 520 leg hung plumb, plate wanted 0 to 25.4 below the datum. */
import { describe, expect, test } from "vitest";
import { cutPlan } from "#lib/fit/cut-plan/cut-plan.ts";
import type { Stern } from "#lib/rig/stern.ts";
import { motor, uncut } from "#tests/lib/fit/cut-plan/boat.ts";

const notchOf = (stern: Stern, choices = {}) => {
  const { notch } = cutPlan(motor, stern, { well: "leave", ...choices });
  if (!notch) throw new Error("no notch");
  return notch;
};

describe("depth", () => {
  test("plate midway in its window asks a seat of 520 - 12.7 = 507.3: 120.7 down, marked 120 so that wood is left on", () => {
    const notch = notchOf(uncut());
    expect(notch.depth.along.markMm).toBeCloseTo(120, 6);
    expect(notch.depth.along.rounded).toBe("down");
    expect(notch.seatMm).toBeCloseTo(508, 6);
  });

  test("in inches the mark stands on a sixteenth: 120.7 mm is 4.752 in, marked 4 3/4", () => {
    const { depth, halfWidth } = notchOf(uncut(), { lengths: "in" });
    expect(depth.along.text).toBe("4 3/4 in");
    expect(depth.along.markMm).toBeCloseTo(4.75 * 25.4, 6);
    expect((halfWidth.markMm / 25.4) * 16).toBeCloseTo(Math.round((halfWidth.markMm / 25.4) * 16), 6);
    expect(halfWidth.markMm).toBeGreaterThanOrEqual(halfWidth.mm);
  });

  test("on 14 degrees of rake the depth down the face is the plumb depth over cos 14", () => {
    const notch = notchOf(uncut({ rakeDeg: 14 }));
    expect(notch.depth.along.markMm).toBeCloseTo(notch.depth.plumbMm / 0.9702957, 3);
  });

  test("the saw may stray to the ends of the window less the leg's spread, no further", () => {
    const { tolerance, seatMm } = notchOf(uncut());
    // Seats from 494.6 to 520 keep the plate in its window; the spread takes something off both ends.
    expect(tolerance.depth.moreMm).toBeGreaterThan(5);
    expect(tolerance.depth.moreMm).toBeLessThan(seatMm - 494.6);
    expect(tolerance.depth.lessMm).toBeLessThan(520 - seatMm);
  });

  test("a transom too low for the leg is not cut: it is built up by what is lacking", () => {
    const plan = cutPlan(motor, uncut({ transomTopMm: 480 }), { well: "leave" });
    // From 480 to 507.3 midway.
    expect(plan.raiseMm).toBeCloseTo(27.3, 1);
    expect(plan.warnings.map(({ about }) => about)).toContain("seat");
  });
});

describe("width and corners", () => {
  test("half the bracket and the corner is the least: 120 + 25.4, unless the moving motor asks for more", () => {
    expect(notchOf(uncut()).leastHalfMm).toBeGreaterThanOrEqual(145.4 - 1e-6);
  });

  test("the line runs from the port top, at the left, round both corners to the starboard top, and passes the seat level", () => {
    const { line, halfWidth, depth, corner } = notchOf(uncut());
    expect(line[0]).toEqual([-halfWidth.markMm, depth.along.markMm]);
    expect(line.at(-1)).toEqual([halfWidth.markMm, depth.along.markMm]);
    expect(Math.min(...line.map(([, up]) => up))).toBeCloseTo(0, 9);
    // Midway round the port corner the line stands r (1 - cos 45) = 0.29289 r off both cut and seat.
    const off = 0.2928932 * corner.radiusMm;
    const near = line.some(([x, y]) => Math.hypot(x + halfWidth.markMm - off, y - off) < 0.05);
    expect(near).toBe(true);
  });

  test("the saw stops where the bored corner begins, and the holes' centres stand a radius in from both cuts", () => {
    const { stops, holes, corner, depth, halfWidth } = notchOf(uncut());
    expect(corner.radiusMm).toBeCloseTo(25.4, 9);
    expect(stops.cheek.mm).toBeCloseTo(depth.along.markMm - 25.4, 3);
    expect(stops.cheek.markMm).toBeLessThanOrEqual(stops.cheek.mm);
    expect(holes.acrossMm).toBeCloseTo(halfWidth.markMm - 25.4, 3);
    expect(holes.downMm).toBeCloseTo(depth.along.markMm - 25.4, 3);
  });

  test("a notch that serves as it is keeps its width and corners, and nothing is sawn", () => {
    const plan = cutPlan(motor, uncut({ seatMm: 508, notchWidthMm: 900, notchCornerRadiusMm: 55 }), {
      well: "leave",
    });
    expect(plan.notch!.action).toBe("none");
    expect(plan.notch!.corner.radiusMm).toBe(55);
    expect(plan.checklist.map(({ id }) => id)).not.toContain("saw-notch");
  });
});

describe("what a tape is hooked on, and what stands near", () => {
  test("offsets from both edges of the transom: half its breadth less the half width, rounded down", () => {
    const notch = notchOf(uncut({ transomWidthMm: 1200 }));
    const [port, starboard] = ["port", "starboard"].map((side) =>
      notch.offsets.find(({ from, to }) => from.startsWith(`${side} edge`) && to === `${side} cheek`),
    );
    expect(port!.length.mm).toBeCloseTo(600 - notch.halfWidth.markMm, 3);
    expect(starboard!.length.markMm).toBeLessThanOrEqual(600 - notch.halfWidth.markMm + 1e-6);
  });

  test("a frame 20 mm outside the port cut is warned of, with its distance; one 90 mm off is not", () => {
    const { halfWidth } = notchOf(uncut());
    const frame = (off: number) => ({
      label: "quarter knee",
      fromMm: [45, halfWidth.markMm + off, -200] as const,
      toMm: [90, halfWidth.markMm + off + 40, 0] as const,
    });
    expect(notchOf(uncut(), { frames: [frame(20)] }).warnings[0]).toMatchObject({ about: "quarter knee" });
    expect(notchOf(uncut(), { frames: [frame(20)] }).warnings[0]!.says).toContain("20 mm");
    expect(notchOf(uncut(), { frames: [frame(90)] }).warnings).toEqual([]);
  });

  test("a fitting within the opening is to be taken off", () => {
    const block = { label: "stern light", fromMm: [-30, -20, -60] as const, toMm: [0, 20, -20] as const };
    expect(notchOf(uncut(), { frames: [block] }).warnings[0]!.says).toContain("take it off");
  });

  test("little wood left beside the notch is said, and none at all", () => {
    const { halfWidth } = notchOf(uncut());
    const says = (breadth: number) =>
      notchOf(uncut(), { transomTopWidthMm: breadth })
        .warnings.map((one) => one.says)
        .join(" ");
    expect(says(2 * halfWidth.markMm + 100)).toContain("50 mm of wood");
    expect(says(2 * halfWidth.markMm - 10)).toContain("cannot be cut");
  });
});

test("what is missing is named and nothing is planned", () => {
  const { rakeDeg, ...stern } = uncut();
  const plan = cutPlan(motor, stern, { well: "leave" });
  expect(rakeDeg).toBeDefined();
  expect(plan.notch).toBeUndefined();
  expect(plan.missing).toContain("rakeDeg");
});
