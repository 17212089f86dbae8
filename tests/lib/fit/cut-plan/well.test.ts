/** The well's parts: handedness, notches round posts, marks on the hull, the front against the sheer, drains. */
import { describe, expect, test } from "vitest";
import { cutPlan } from "#lib/fit/cut-plan/cut-plan.ts";
import type { CutPart } from "#lib/fit/cut-plan/part.ts";
import { spotInSpace } from "#lib/fit/cut-plan/place.ts";
import { cutOf, motor, partOf, planned, uncut, wellOf } from "#tests/lib/fit/cut-plan/boat.ts";

/** A post 60 x 80 in the port after corner: against the transom's inside (f from 45) and the side (y up to 700). */
const post = (side: 1 | -1) => ({
  label: "stern post",
  fromMm: [45, side * 620, -600] as const,
  toMm: [105, side * 700, 300] as const,
});

const rights = (spots: readonly (readonly [number, number])[]) => spots.map(([right]) => right);

describe("handedness", () => {
  test("the sole is drawn from above, forward up: its left side stands to port in the boat, its top forward", () => {
    const sole = partOf(wellOf(), "sole");
    const [f, y] = spotInSpace(sole.place, [-700, 800]);
    expect(y).toBeCloseTo(700, 6);
    expect(f).toBeCloseTo(45 + 800, 6);
    expect(sole.sides).toEqual({ left: "PORT", right: "STARBOARD", top: "FORWARD", bottom: "AFT" });
  });

  test("front beam and front cleat are drawn from aft, port left; the aft cleat from inside the boat, port right", () => {
    const well = wellOf();
    for (const id of ["front-beam", "front-cleat"]) {
      const part = partOf(well, id);
      expect(spotInSpace(part.place, [-100, 0])[1]).toBeCloseTo(100, 6);
      expect(part.sides.left).toBe("PORT");
    }
    const aft = partOf(well, "aft-cleat");
    expect(spotInSpace(aft.place, [100, 0])[1]).toBeCloseTo(100, 6);
    expect(aft.sides.right).toBe("PORT");
  });

  test("side cleats are drawn from inside the well: forward lies right on the port one and left on the starboard one", () => {
    const well = wellOf({}, { sideFlareDeg: 8, wellWidthFrontMm: 1300 });
    const forward = (id: string) => {
      const { place } = partOf(well, id);
      return spotInSpace(place, [500, 0])[0] - spotInSpace(place, [0, 0])[0];
    };
    expect(forward("side-cleat-port")).toBeGreaterThan(490);
    expect(forward("side-cleat-starboard")).toBeLessThan(-490);
    expect(partOf(well, "side-cleat-port").sides.right).toBe("FORWARD");
    expect(partOf(well, "side-cleat-starboard").sides.left).toBe("FORWARD");
  });

  test("port and starboard cleats are mirror images, not copies", () => {
    const well = wellOf({ rakeDeg: 14 }, { soleLies: "level", sideFlareDeg: 8, wellWidthFrontMm: 1240 });
    const [port, starboard] = [partOf(well, "side-cleat-port"), partOf(well, "side-cleat-starboard")];
    const sorted = (spots: readonly (readonly [number, number])[]) =>
      spots
        .map(([x, y]) => [Math.round(x * 10) / 10 + 0, Math.round(y * 10) / 10 + 0])
        .toSorted((a, b) => a[0]! - b[0]! || a[1]! - b[1]!);
    expect(sorted(starboard.outline)).toEqual(sorted(port.outline.map(([x, y]) => [-x, y])));
    expect(sorted(starboard.outline)).not.toEqual(sorted(port.outline));
  });

  test("the front faces are shorter than the back where the sides close in forward, and the sole is no bare rectangle", () => {
    const sole = partOf(wellOf({}, { wellWidthFrontMm: 1240 }), "sole");
    expect(sole.bottomMm).toBeCloseTo(1400, 2);
    expect(sole.topMm).toBeCloseTo(1240, 2);
  });
});

describe("posts", () => {
  // 1/16 in of room all round: 1.5875 mm.
  const room = 25.4 / 16;

  test("a post in the port corner notches the sole at its lower left, with room round it", () => {
    const sole = partOf(wellOf({}, { posts: [post(1)] }), "sole");
    expect(sole.round).toEqual(["stern post"]);
    expect(sole.outline).toHaveLength(6);
    // Seat moved from 628 to 508: the sole is 200 under the seat. Notch 60 + room deep, in to 620 - room.
    const inner = sole.outline.find(
      ([x, y]) => Math.abs(x + 620 - room) < 0.02 && Math.abs(y - 60 - room) < 0.02,
    );
    expect(inner).toBeDefined();
    expect(sole.outline.some(([x, y]) => Math.abs(x + 700) < 0.02 && Math.abs(y) < 0.02)).toBe(false);
    expect(sole.outline.some(([x, y]) => Math.abs(x - 700) < 0.02 && Math.abs(y) < 0.02)).toBe(true);
  });

  test("the same to starboard: the notch is at the lower right", () => {
    const sole = partOf(wellOf({}, { posts: [post(-1)] }), "sole");
    expect(sole.outline.some(([x, y]) => Math.abs(x - 700) < 0.02 && Math.abs(y) < 0.02)).toBe(false);
    expect(sole.outline.some(([x, y]) => Math.abs(x + 700) < 0.02 && Math.abs(y) < 0.02)).toBe(true);
  });

  test("the aft cleat stops at the post and the side cleat begins before it", () => {
    const well = wellOf({}, { posts: [post(1)] });
    const aft = well.parts.filter(({ id }) => id.startsWith("aft-cleat"));
    expect(aft).toHaveLength(1);
    expect(Math.max(...rights(aft[0]!.outline))).toBeCloseTo(620 - room, 2);
    expect(Math.min(...rights(aft[0]!.outline))).toBeCloseTo(-700, 2);
    const side = well.parts.filter(({ id }) => id.startsWith("side-cleat-port"));
    expect(side).toHaveLength(1);
    // From the post's forward face, f = 105 + room, to the front cleat's aft face, f = 845 - 38.1.
    expect(side[0]!.topMm).toBeCloseTo(845 - 38.1 - 105 - room, 1);
    expect(partOf(well, "side-cleat-starboard").topMm).toBeCloseTo(800 - 2 * 38.1, 1);
  });

  test("a frame midway along the side notches the sole's edge and parts its cleat in two", () => {
    const frame = { label: "frame", fromMm: [400, -700, -600] as const, toMm: [440, -650, 0] as const };
    const well = wellOf({}, { posts: [frame] });
    expect(partOf(well, "sole").outline).toHaveLength(8);
    expect(well.parts.filter(({ id }) => id.startsWith("side-cleat-starboard"))).toHaveLength(2);
    expect(well.parts.filter(({ id }) => id.startsWith("side-cleat-port"))).toHaveLength(1);
  });

  test("a post that stands free in the sole is refused in plain words", () => {
    const free = { label: "pump", fromMm: [300, -20, -600] as const, toMm: [340, 20, 0] as const };
    expect(() => wellOf({}, { posts: [free] })).toThrow(/does not reach the part's edge/);
  });
});

describe("marks on the hull and the front", () => {
  test("square to a plumb transom: the sole lies 200 under a seat of 508, level, at 308", () => {
    const { marks } = wellOf();
    for (const mark of marks) {
      expect(mark.topAboveDatumMm).toBeCloseTo(308, 3);
      expect(mark.underAboveDatumMm).toBeCloseTo(296, 3);
      expect(mark.acrossMm).toBeCloseTo(700, 3);
      // Sheer level through the top at 628.
      expect(mark.belowSheerMm).toBeCloseTo(320, 3);
    }
  });

  test("square to a transom raked 14 degrees it rises 800 sin 14 = 193.54 to the front", () => {
    const { marks } = wellOf({ rakeDeg: 14 });
    const at = (name: string) => marks.find((mark) => mark.at === name)!.topAboveDatumMm;
    expect(at("port side at the front") - at("port side at the transom")).toBeCloseTo(193.54, 1);
  });

  test("a front too high for the sheer is said, with the length that stays below", () => {
    const { front, shape } = wellOf({ rakeDeg: 14 }, { wellFrontHeightMm: 250 });
    expect(front.aboveSheerMm).toBeGreaterThan(0);
    expect(front.says).toContain("above the sheer");
    // Top of the front over the datum: foot + d sin 14 + 250 cos 14, against a level sheer at 628.
    const t = 45;
    const foot = shape.seatMm + t * 0.2419219 - shape.soleDropMm * 0.9702957;
    const longest = (628 - foot - 250 * 0.9702957) / 0.2419219;
    expect(front.depthBelowSheerMm).toBeCloseTo(longest, 1);
    const { front: shorter } = wellOf(
      { rakeDeg: 14 },
      { wellFrontHeightMm: 250, wellDepthMm: Math.floor(longest) },
    );
    expect(shorter.aboveSheerMm).toBeLessThanOrEqual(0);
  });

  test("left to itself the front comes up to the sheer and no further", () => {
    const { front } = wellOf({ rakeDeg: 14 });
    expect(front.aboveSheerMm).toBeLessThanOrEqual(1e-6);
    expect(front.aboveSheerMm).toBeGreaterThan(-1.01);
  });
});

describe("drains", () => {
  test("a sole that rises forward drains at the transom, one that falls at the front, a level one nowhere of itself", () => {
    expect(wellOf({ rakeDeg: 14 }).drain.lowest).toBe("transom");
    expect(wellOf({ rakeDeg: -5 }).drain.lowest).toBe("front");
    expect(wellOf({ rakeDeg: 14 }, { soleLies: "level" }).drain.lowest).toBe("level");
  });

  test("a 1 in tube: a hole of 28.575 just touching the sole, clear of the fillet in the corner", () => {
    const { drain } = wellOf({}, { tubeOutsideMm: 25.4 });
    expect(drain.hole.markMm).toBeCloseTo(28.575, 4);
    expect(drain.aboveSoleMm).toBeCloseTo(14.2875, 4);
    expect(drain.acrossMm).toBeCloseTo(700 - 14.2875 - 12.7, 3);
    expect(drain.belowSeatMm).toBeCloseTo(200 - 14.2875, 3);
  });

  test("a post in the corner moves it inboard of the post", () => {
    const { drain } = wellOf({}, { tubeOutsideMm: 25.4, posts: [post(1)] });
    expect(drain.acrossMm).toBeLessThan(620 - 14);
  });
});

test("for two motors one seat is planned, within both windows, and the wider notch", () => {
  const longer = { ...motor, id: "longer", shaftLengthMm: { ...motor.shaftLengthMm!, value: 532 } };
  const broader = { ...longer, bracketWidthMm: { ...motor.bracketWidthMm!, value: 500 } };
  const [both, alone] = [[motor, broader], [motor]].map(
    (motors) => cutPlan(motors, uncut(), { well: "leave" }).notch!,
  );
  // Windows 494.6 to 520 and 506.6 to 532.
  expect(both!.seatMm).toBeGreaterThanOrEqual(506.6);
  expect(both!.seatMm).toBeLessThanOrEqual(520);
  expect(both!.leastHalfMm).toBeGreaterThanOrEqual(250 + 25.4 - 1e-6);
  expect(alone!.leastHalfMm).toBeLessThan(250);
});

test("the checklist warns where it matters", () => {
  const steps = planned().checklist;
  const cautions = (id: string) => steps.find((step) => step.id === id)!.cautions.join(" ");
  expect(cautions("saw-notch")).toMatch(/plunge/);
  expect(cautions("saw-notch")).toMatch(/kicks back/);
  expect(cautions("bore-corners")).toMatch(/rings/);
  expect(cautions("fillets")).toMatch(/spirit/);
  expect(cautions("prop")).toMatch(/hull/);
  expect(cautions("hang")).toMatch(/motor falls/);
  const order = steps.map(({ id }) => id);
  expect(order.indexOf("saw-notch")).toBeGreaterThan(order.indexOf("bore-corners"));
  expect(order.indexOf("sole")).toBeGreaterThan(order.indexOf("cleats"));
});

describe("saw settings", () => {
  /** Sides of both faces of a part without notches: turn from up (ends) or from right (edges), tilt with plus = the back the longer, length. */
  function sidesOf({ outline, back, stock }: CutPart) {
    return outline.map((a, i) => {
      const b = outline[(i + 1) % outline.length]!;
      const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
      const long = Math.hypot(dx, dy);
      const out = ((back[i]![0] - a[0]) * dy - (back[i]![1] - a[1]) * dx) / long;
      const angle = (Math.atan2(dy, dx) * 180) / Math.PI;
      const folded = (degrees: number) => degrees - 180 * Math.round(degrees / 180);
      return {
        fromUp: folded(angle - 90),
        fromRight: folded(angle),
        tilt: (Math.atan(out / stock.thicknessMm) * 180) / Math.PI,
        long,
      };
    });
  }

  test.each(["square", "level"] as const)(
    "those of every cut are what the two outlines show, sole %s",
    (soleLies) => {
      const well = wellOf(
        { rakeDeg: 14 },
        { soleLies, sideFlareDeg: 8, wellWidthFrontMm: 1240, wellFrontHeightMm: 90 },
      );
      expect(well.parts).toHaveLength(6);
      for (const part of well.parts) {
        const sides = sidesOf(part);
        expect(part.cuts).toHaveLength(4);
        for (const cut of part.cuts) {
          const tilt = { marked: -cut.tiltDeg, back: cut.tiltDeg, neither: 0 }[cut.longFace];
          const shown = sides.find(
            (side) =>
              Math.abs((cut.runs === "end" ? side.fromUp : side.fromRight) - cut.tableDeg) < 0.05 &&
              Math.abs(side.tilt - tilt) < 0.05 &&
              Math.abs(side.long - cut.markedMm) < 0.05,
          );
          expect(shown, `${part.id}, ${cut.id}`).toBeDefined();
          expect(cut.tiltPer100Mm).toBeCloseTo(100 * Math.tan((cut.tiltDeg * Math.PI) / 180), 3);
        }
      }
    },
  );

  test("a sole that tapers 80 a side in 800: 5.711 degrees, anticlockwise to starboard and clockwise to port, 10 in 100", () => {
    const sole = partOf(wellOf({}, { wellWidthFrontMm: 1240 }), "sole");
    expect(cutOf(sole, "starboard edge").tableDeg).toBeCloseTo(5.7106, 3);
    expect(cutOf(sole, "port edge").tableDeg).toBeCloseTo(-5.7106, 3);
    expect(cutOf(sole, "port edge").tablePer100Mm).toBeCloseTo(10, 3);
  });

  test("a front beam in that well with 8 degrees of flare: ends lean out 8 degrees, blade asin(0.1 / sqrt(1.01 + tan2 8)) = 5.655, aft face the long one", () => {
    const beam = partOf(wellOf({}, { wellWidthFrontMm: 1240, sideFlareDeg: 8 }), "front-beam");
    const [port, starboard] = [cutOf(beam, "port end"), cutOf(beam, "starboard end")];
    expect(port.tableDeg).toBeCloseTo(8, 3);
    expect(starboard.tableDeg).toBeCloseTo(-8, 3);
    expect(port.tiltDeg).toBeCloseTo(5.655, 2);
    expect(port.longFace).toBe("marked");
  });
});
