/**
 * The invented records are ones a boatyard could have taken: inside the proportions of real motors
 * (common practice, no source), each able to hang on a transom at all, and said to be invented.
 */
import { describe, expect, test } from "vitest";
import { HOWS } from "#lib/entry/measured.ts";
import { steeredToLeg } from "#lib/rig/frame.ts";
import { type Motor, motorFields, SHAFT_CLASSES, STEERINGS, STROKES } from "#lib/rig/motor.ts";
import { motorValues } from "#lib/rig/record.ts";
import { HULL_FORMS, sternFields } from "#lib/rig/stern.ts";
import { motors, sterns } from "#tests/lib/data/demo.ts";

const all = [...motors, ...sterns];

/** Saddle to plate of each class as found on real motors, inches: common practice, no source. */
const LEGS = {
  short: [15, 17.5],
  long: [20, 22],
  "extra-long": [25, 26.5],
  "ultra-long": [30, 31.5],
} as const;

describe("the set", () => {
  test("is large and various", () => {
    expect(motors.length).toBeGreaterThanOrEqual(32);
    expect(sterns.length).toBeGreaterThanOrEqual(9);
    expect(new Set(motors.map(({ shaftClass }) => shaftClass))).toEqual(
      new Set([...SHAFT_CLASSES, undefined]),
    );
    expect(new Set(motors.map(({ steering }) => steering))).toEqual(new Set([...STEERINGS, undefined]));
    for (const strokes of STROKES)
      expect(motors.filter((motor) => motor.strokes === strokes).length).toBeGreaterThanOrEqual(4);
    expect(new Set(sterns.map(({ hullForm }) => hullForm))).toEqual(new Set(HULL_FORMS));
    const hows = all.flatMap((record) => Object.values(record).map((entry) => entry?.how));
    for (const how of HOWS) expect(hows.filter((one) => one === how).length).toBeGreaterThanOrEqual(5);
  });

  test("holds motors known well, half and hardly", () => {
    const known = motors.map((motor) => Object.keys(motorFields).filter((key) => key in motor).length);
    expect(known.filter((count) => count >= 25).length).toBeGreaterThanOrEqual(20);
    expect(known.filter((count) => count <= 2).length).toBeGreaterThanOrEqual(3);
    const most = Object.keys(motorFields).length;
    expect(known.filter((count) => count > 2 && count < most - 5).length).toBeGreaterThanOrEqual(3);
  });

  test("holds sterns cut and uncut, with a well, without, with things in the way, with a keel, steep", () => {
    const some = (holds: (stern: (typeof sterns)[number]) => unknown) =>
      expect(sterns.filter(holds).length).toBeGreaterThanOrEqual(1);
    some((stern) => stern.notchWidthMm && stern.soleDropMm);
    some((stern) => stern.notchWidthMm && !stern.soleDropMm);
    some((stern) => stern.transomTopMm && !stern.seatMm && !stern.notchWidthMm && !stern.soleDropMm);
    some((stern) => stern.transomTopMm && !stern.seatMm && !stern.notchWidthMm && stern.soleDropMm);
    some((stern) => (stern.obstacles?.length ?? 0) >= 2);
    some((stern) => (stern.keelDepthMm?.value ?? 0) > 50);
    some((stern) => (stern.rakeDeg?.value ?? 0) >= 20);
    for (const { lengthOverallMm } of sterns) {
      expect(lengthOverallMm!.value).toBeGreaterThanOrEqual(3000);
      expect(lengthOverallMm!.value).toBeLessThanOrEqual(7000);
    }
  });

  test("every id and every label is its own", () => {
    expect(new Set(all.map(({ id }) => id)).size).toBe(all.length);
    expect(new Set(all.map(({ label }) => label)).size).toBe(all.length);
  });

  test("every number of the vocabulary is taken somewhere", () => {
    const taken = new Set(all.flatMap((record) => Object.keys(record)));
    const wanted = [...Object.keys(motorFields), ...Object.keys(sternFields)];
    // The owner's own window for the plate is a wish of one hull; these hulls take the usual one.
    expect(wanted.filter((key) => !taken.has(key))).toEqual(["plateHighMm", "plateLowMm"]);
  });
});

describe.each(all)("$label", ({ label, notes = "" }) => {
  test("says that it is invented, and names no maker, model or person", () => {
    expect(notes).toContain("Invented for the demonstration");
    // A name would be a capital inside a sentence. The fictitious club's is the only one.
    const words = `${label}. ${notes}`.replaceAll("Lake Fennimar", "");
    expect(words.match(/(?<![.:] |^|\p{L})\p{Lu}\S*/gu) ?? []).toEqual([]);
    // A model would be letters run together with figures ("xy250").
    expect(words.match(/\b(?:[a-z]+-?\d|\d+[a-z]{2,})\w*/giu) ?? []).toEqual([]);
  });
});

const measured = motors.filter(({ pinAnglesDeg, steerAxisAftMm }) => pinAnglesDeg && steerAxisAftMm);

describe.each(motors)("$label", (motor) => {
  const v = motorValues(motor);

  test("is a motor of 2 to 60 hp with the leg of its class", () => {
    expect(v.powerKw).toBeGreaterThanOrEqual(1.5);
    expect(v.powerKw).toBeLessThanOrEqual(45);
    if (v.massKg) {
      expect(v.massKg).toBeGreaterThanOrEqual(12);
      expect(v.massKg).toBeLessThanOrEqual(115);
    }
    if (!v.shaftLengthMm) return;
    const [least, most] = LEGS[v.shaftClass!];
    expect(v.shaftLengthMm / 25.4).toBeGreaterThanOrEqual(least);
    expect(v.shaftLengthMm / 25.4).toBeLessThanOrEqual(most);
  });

  test("has the parts a motor of its kind has", () => {
    if (v.steering === "remote") expect([v.tillerLengthMm, v.tillerFolds]).toEqual([undefined, undefined]);
    if (v.tillerLengthMm) {
      expect(v.tillerLengthMm).toBeGreaterThan(v.cowlFrontMm ?? 0);
      expect(v.tillerHeightMm).toBeGreaterThanOrEqual(60);
      expect(v.tillerHeightMm).toBeLessThanOrEqual(200);
    }
    if (v.clampOpeningMinMm) expect(v.clampOpeningMaxMm).toBeGreaterThan(v.clampOpeningMinMm + 20);
    if (v.screwDropMm) expect(v.clampDepthMm).toBeGreaterThan(v.screwDropMm);
    if (v.plateToPropCentreMm && v.propDiameterMm)
      expect(v.plateToSkegMm).toBeGreaterThan(v.plateToPropCentreMm + v.propDiameterMm / 3);
  });
});

/** How far into the boat the leg stands, level with the saddle or below it, over its pin holes and all steering; mm ahead of the transom's face. */
function legBeforeFace(motor: Motor): number {
  const v = motorValues(motor);
  const { tiltAxisForwardMm: forward, tiltAxisAboveMm: above, steerAxisAftMm: aft } = v;
  const half = v.midsectionWidthMm! / 2;
  const corners = [v.midsectionFrontMm!, -v.midsectionAftMm!].flatMap((x) => [
    [x, half, 0] as const,
    [x, -half, 0] as const,
  ]);
  const from = -v.steerStarboardDeg!;
  const steering = Array.from({ length: 181 }, (_, step) => from + ((v.steerPortDeg! - from) * step) / 180);
  const reach = v.pinAnglesDeg!.flatMap((pin) => {
    const [sin, cos] = [Math.sin((pin * Math.PI) / 180), Math.cos((pin * Math.PI) / 180)];
    return steering.flatMap((steer) =>
      corners.map((corner) => {
        const [x] = steeredToLeg(corner, steer, aft!);
        // The corner's line along the leg, where it passes the level of the saddle: above + z cos - x sin = 0.
        const z = (x * sin - above!) / cos;
        return forward! + x * cos + z * sin;
      }),
    );
  });
  return Math.max(...reach);
}

describe.each(measured)("$label hangs on a transom 45 mm thick", (motor) => {
  const v = motorValues(motor);

  test("the leg stays outside the face in every pin hole, however it is steered", () => {
    if (!v.midsectionFrontMm) return;
    expect(legBeforeFace(motor)).toBeLessThan(0);
  });

  test("the tilt tube stands over the wood, and the cowl above tube and bracket", () => {
    expect(v.tiltAxisAboveMm).toBeGreaterThan(10);
    expect(v.tiltAxisForwardMm).toBeGreaterThanOrEqual(15);
    expect(v.tiltAxisForwardMm).toBeLessThanOrEqual(60);
    // Turning about the tube, the cowl's underside passes the wood's two top corners at no less than this.
    if (!v.cowlBottomMm) return;
    const farther = Math.max(
      Math.hypot(v.tiltAxisForwardMm!, v.tiltAxisAboveMm!),
      Math.hypot(45 - v.tiltAxisForwardMm!, v.tiltAxisAboveMm!),
    );
    expect(v.cowlBottomMm - v.tiltAxisAboveMm! - farther).toBeGreaterThan(25.4);
  });

  test("one of its holes comes within 3 degrees of a rake of 12 to 14", () => {
    for (const rake of [12, 13, 14])
      expect(Math.min(...v.pinAnglesDeg!.map((pin) => Math.abs(pin - rake)))).toBeLessThanOrEqual(3);
  });
});

test("the tests of hanging look at most of the motors", () => {
  expect(measured.length).toBeGreaterThanOrEqual(30);
  expect(measured.filter(({ midsectionFrontMm }) => midsectionFrontMm).length).toBeGreaterThanOrEqual(30);
});
