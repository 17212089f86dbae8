/**
 * Freeboard by hand. The bench's waterplane fills 0.85 of 4.0 x 1.5 m: 5.1 m2, 51 kg/cm. Its centre lies
 * 4000 / (2 x 1.15) = 1739.13 forward; its second moment 1.5 x 64 x (0.85 / 3.9 - 0.85 / (4 x 1.15^2)) =
 * 96 x (0.2179487 - 0.1606805) = 5.497750 m4; so 1000 x 5.497750 / 400 = 13.744375 kg m/cm.
 * 50 kg hung 70 mm aft of the transom: sinks 50/51 = 9.8039 mm; 50 x 1.80913 = 90.4565 kg m: 65.8135 mm of
 * trim, of which 1739.13/4000 at the transom: 28.6146. Water at the transom 150 + 38.4185 = 188.4185.
 */
import { describe, expect, test } from "vitest";
import { motorMassX } from "#lib/rig/afloat/freeboard.ts";
import { lying } from "#lib/rig/afloat/lying.ts";
import { taken } from "../bench.ts";
import { afloat, EMPTY, figureOf, noteIds } from "./bench.ts";

describe("Freeboard", () => {
  test("the bench motor hangs 70 mm aft of the transom", () => {
    const axes = { tiltAxisForwardMm: 30, tiltAxisAboveMm: 40, steerAxisAftMm: 100 };
    expect(motorMassX(axes, { rakeDeg: 0, seatMm: 508 }, 0)).toBeCloseTo(-70, 9);
  });

  test("the seat, before and after: 358 and 319.55", () => {
    const found = afloat("freeboard");
    expect(figureOf(found, "Seat above the water, without the motor and the load")).toBeCloseTo(358, 2);
    // (508 - 188.4185) cos 0.9426 = 319.5815 x 0.999865 = 319.538.
    expect(figureOf(found, "Seat above the water, all aboard")).toBeCloseTo(319.54, 1);
    expect(figureOf(found, "Sinks bodily")).toBeCloseTo(9.8, 1);
    expect(found.trim?.after.atTransomMm).toBeCloseTo(188.42, 1);
    expect(found.trim?.before).toEqual({ atTransomMm: 150, bowUpDeg: 0 });
  });

  test("a box of 4.0 x 1.5 m with 50 kg at the transom goes down 33.3 mm by the stern, through the same reckoning", () => {
    const rig = {
      motor: {
        massKg: 50,
        tiltAxisForwardMm: 100,
        tiltAxisAboveMm: 0,
        steerAxisAftMm: 100,
        pinAnglesDeg: [0],
      },
      stern: {
        hullForm: "flat",
        rakeDeg: 0,
        seatMm: 500,
        waterlineMm: 150,
        waterlineLengthMm: 4000,
        waterlineBeamMm: 1500,
      },
    } as const;
    // The usual flat bottom fills 0.85: 0.15 more is a box.
    const box = lying({ rig, aboard: EMPTY, fullnessShift: 0.15 })!;
    expect(box.after.atTransomMm - 150).toBeCloseTo(33.333, 2);
  });

  test("persons and fuel: 150 kg amidships and 20 kg aft", () => {
    // Masses 220 kg: sinks 43.137. Levers: 90.4565 + 150 x (1.73913 - 2) + 20 x (1.73913 - 0.6) = 90.4565 - 39.1304 + 22.7826 = 74.1087: 53.919 mm, 23.443 at the transom.
    const loaded = { persons: 2, personKg: 75, fuelKg: 20, fuelForwardMm: 600 };
    const found = afloat("freeboard", {}, loaded);
    expect(found.trim?.after.atTransomMm).toBeCloseTo(150 + 43.137 + 23.443, 1);
    expect(found.notes.find(({ id }) => id === "load")?.says).toContain("2 persons of 75 kg amidships");
    // One of them from 2000 to 500: 112.5 kg m, 81.852 mm, 35.588 at the transom.
    expect(figureOf(found, "One person coming aft to the motor takes from the seat")).toBeCloseTo(35.6, 0);
  });

  test("each named rule has its own answer; 4.5 m open: 150, 250, 250, 400, 400", () => {
    const found = afloat("freeboard");
    expect(found.rules?.map(({ id, least, outcome }) => [id, least, outcome])).toEqual([
      ["nscv-c6a", 150, "fits"],
      ["transom-cutout", 250, "fits"],
      ["uk-inland", 250, "fits"],
      ["uk-inland-open", 400, "fouls"],
      ["workboat-open", 400, "fouls"],
    ]);
    expect(found.outcome).toBe("cannot tell");
    expect(noteIds(found)).toContain("no-minimum");
  });

  test("fits above the greatest, fouls below the least; the hull's own level has a spread and the fullness too", () => {
    const at = (seatMm: number) => afloat("freeboard", { seatMm, transomTopMm: 900 });
    // Every mm of seat is a mm of freeboard: 400 is met from 508 + 80.5 on; U of the fullness alone is some 3 mm.
    expect([at(600).outcome, at(580).outcome, at(340).outcome, at(330).outcome]).toEqual([
      "fits",
      "cannot tell",
      "cannot tell",
      "fouls",
    ]);
    expect(at(600).limit?.value).toBe(400);
    expect(at(330).limit?.value).toBe(150);
    expect(at(508).restsOn?.map(({ key }) => key)).toEqual(["fullness"]);
    const spread = afloat("freeboard", { waterlineMm: taken(150, 10) });
    expect(spread.restsOn?.[0]?.key).toBe("waterlineMm");
    // U of 10 mm rectangular: 11.547, the fullness on top.
    expect(spread.expandedUncertaintyMm).toBeGreaterThan(11.54);
  });

  test("an open boat of 10 m: the Workboat Code asks 509.1", () => {
    const long = afloat("freeboard", { lengthOverallMm: 10_000, waterlineLengthMm: 9000 });
    expect(long.rules?.find(({ id }) => id === "workboat-open")?.least).toBeCloseTo(509.1, 1);
    expect(long.rules?.map(({ id }) => id)).toContain("mgn-280");
  });

  test("a well keeps the water that comes over the seat until it reaches its front", () => {
    const well = { soleDropMm: 200, soleAngleDeg: 90, wellDepthMm: 400, wellFrontHeightMm: 300 };
    const found = afloat("freeboard", well);
    // Front at x 445, z 508 - 200 + 300 = 608; the water there 188.42 - 445 x 65.8135/4000 = 181.10: 426.84.
    expect(figureOf(found, "Well's lowest edge above the water, all aboard")).toBeCloseTo(426.84, 1);
    expect(found.rules?.find(({ id }) => id === "workboat-open")?.outcome).toBe("fits");
    // The cutout's own rule looks at the seat whatever stands behind it.
    expect(found.rules?.find(({ id }) => id === "transom-cutout")?.marginMm).toBeCloseTo(69.5, 1);
    expect(found.says).toContain("Without the well water would come in over the seat");
    // Low sides spoil it: 508 - 200 + 180 = 488 is under the seat.
    expect(afloat("freeboard", { ...well, wellSideHeightMm: 180 }).says).toContain("it gains nothing");
  });

  test("what is missing is named, and a well half known never makes it fit on its own", () => {
    for (const key of [
      "waterlineMm",
      "waterlineLengthMm",
      "waterlineBeamMm",
      "hullForm",
      "massKg",
      "lengthOverallMm",
    ])
      expect(afloat("freeboard", { [key]: undefined })).toMatchObject({
        outcome: "cannot tell",
        missing: [key],
      });
    const half = { soleDropMm: 200, soleAngleDeg: 90, wellDepthMm: 400 };
    expect(afloat("freeboard", half)).toMatchObject({
      outcome: "cannot tell",
      missing: ["wellFrontHeightMm"],
    });
    expect(afloat("freeboard", { ...half, seatMm: 620, transomTopMm: 900 }).outcome).toBe("fits");
  });

  test("axes nobody took: the mass hangs 120 mm aft of the saddle, and that is said", () => {
    const found = afloat("freeboard", { steerAxisAftMm: undefined });
    expect(figureOf(found, "Motor's mass aft of the transom's foot")).toBeCloseTo(120, 6);
    expect(noteIds(found)).toContain("axes");
  });
});
