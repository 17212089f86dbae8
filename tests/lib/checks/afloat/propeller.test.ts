/** Water over the blades by hand: plumb transom, leg parallel, datum at the bottom. Depths wanted are common practice, no source. */
import { describe, expect, test } from "vitest";
import { taken } from "../bench.ts";
import { afloat, figureOf, noteIds } from "./bench.ts";

describe("Propeller", () => {
  test("running: plate 12 below the bottom, tips 120 - 100 lower: 32 under the water", () => {
    // Seat 508, shaft 520.
    const found = afloat("propeller");
    expect(figureOf(found, "Upper blade tips under the water, running")).toBeCloseTo(32, 6);
    expect(found).toMatchObject({ outcome: "fits", marginMm: 32 });
    expect(afloat("propeller", { seatMm: 541 })).toMatchObject({ outcome: "fouls", marginMm: -1 });
    expect(afloat("propeller", { shaftLengthMm: taken(520, 30) }).outcome).toBe("cannot tell");
    expect(noteIds(found)).toEqual(expect.arrayContaining(["ventilation-running", "ventilation-at-rest"]));
  });

  test("a keel beside which the water leaves the bottom higher gives that much more", () => {
    expect(
      figureOf(afloat("propeller", { keelDepthMm: 40 }), "Upper blade tips under the water, running"),
    ).toBeCloseTo(72, 6);
  });

  test("at rest: the water 188.42 over the datum at the transom and a little higher abaft it", () => {
    // At x = -70: 188.4185 + 70 x 65.8135/4000 = 189.570; tips at -32: 221.57 cos 0.9426 = 221.54.
    const found = afloat("propeller");
    expect(figureOf(found, "Upper blade tips under the water, at rest")).toBeCloseTo(221.5, 1);
    // Skeg 250 under the plate: at -262: 451.57 x 0.999865 = 451.51.
    expect(figureOf(found, "Draught, motor down")).toBeCloseTo(451.5, 1);
    expect(figureOf(found, "Skeg below the keel line, motor down")).toBeCloseTo(262, 6);
  });

  test("kicked up 95 degrees the skeg stands 718.2 over the keel line, the blades lower", () => {
    // Skeg: D = 520 + 40 + 250 = 810: 508 + 40 cos 0 + 100 sin 95 - 810 cos 95 = 548 + 99.619 + 70.596 = 718.215.
    const found = afloat("propeller");
    expect(figureOf(found, "Skeg above the keel line, motor kicked up")).toBeCloseTo(718.2, 1);
    // Upper tip: D = 520 + 40 + 20 = 580: 548 + 99.619 + 50.550 = 698.17.
    expect(
      figureOf(found, "Lowest of skeg and blades above the keel line, kicked up (upper tip)"),
    ).toBeCloseTo(698.2, 1);
  });

  test("each number is needed; a foul stands though the rest is not known", () => {
    for (const key of [
      "propDiameterMm",
      "plateToPropCentreMm",
      "plateToSkegMm",
      "keelDepthMm",
      "waterlineMm",
      "massKg",
    ])
      expect(afloat("propeller", { [key]: undefined })).toMatchObject({
        outcome: "cannot tell",
        missing: [key],
      });
    expect(afloat("propeller", { seatMm: 560, waterlineMm: undefined })).toMatchObject({ outcome: "fouls" });
  });
});
