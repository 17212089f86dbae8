/**
 * The slope of a clearance with pose and direction held, against differences of the clearance solved anew
 * 0.02 mm (degrees) to either side, for every number of both records. Solved to a millionth of a
 * millimetre, so a difference is true to 1e-6 / 0.02 = 5e-5 and the curvature times 0.02; 0.01 mm per mm
 * or degree is allowed. Where the two sides differ by more than 0.02 the tightest place changes there and
 * no slope exists. Overlapping, a clearance is only solved to 1 mm, so there the depth is followed in the
 * pose itself.
 */
import { describe, expect, test } from "vitest";
import { slopesOf } from "#lib/fit/verdict.ts";
import { type Clearance, clearanceAt, leastClearance } from "#lib/geometry/clearance.ts";
import { clearanceHeld } from "#lib/rig/held.ts";
import { motorFields } from "#lib/rig/motor.ts";
import { handled, mount, type Rig, type RigKey } from "#lib/rig/mounting.ts";
import { keysOfObstacle, outlineOf, solidOf } from "#lib/rig/obstacles.ts";
import { keysOfPart, MOTION_KEYS, mechanismOf, partsOf } from "#lib/rig/parts.ts";
import { motorValues, sternValues } from "#lib/rig/record.ts";
import { keysOf, type Pair, pair } from "#tests/laws/pair.ts";

const STEP = 0.02;
const ALLOWED = 0.01;

const obstacleOf = ({ motor, stern }: Rig, id: string) => solidOf(outlineOf(stern, id, motor.bracketWidthMm));
const solved = (rig: Rig, id: string): Clearance =>
  leastClearance(mechanismOf(rig.motor)!, handled(partsOf(rig.motor), rig), obstacleOf(rig, id), {
    within: 1e-6,
  });

/** The rig with one number moved; pin angles together. */
function moved(rig: Rig, key: string, by: number): Rig {
  const side = key in motorFields ? "motor" : "stern";
  const record = rig[side] as Readonly<Record<string, number | readonly number[]>>;
  const was = record[key]!;
  const value = typeof was === "number" ? was + by : was.map((angle) => angle + by);
  return { ...rig, [side]: { ...record, [key]: value } };
}

const rigOf = ({ motor, stern }: Pair, straightWhileTilting: boolean): Rig => ({
  motor: motorValues(motor),
  stern: sternValues(stern),
  ...(straightWhileTilting && { handling: { straightWhileTilting } }),
});

interface Trial {
  readonly rig: Rig;
  readonly id: string;
  readonly found: Clearance;
  readonly keys: readonly RigKey[];
}

/** Every obstacle of pairs `from` to `to`; in every fourth pair the motor is held straight while tilting. */
function trials(from: number, to: number): Trial[] {
  return Array.from({ length: to - from }, (_, k) => from + k).flatMap((start) => {
    const one = pair(start);
    const rig = rigOf(one, start % 4 === 3);
    const keys = [...keysOf(one.motor), ...keysOf(one.stern)] as RigKey[];
    return mount(rig).obstacleIds.map((id) => ({ rig, id, found: solved(rig, id), keys }));
  });
}

describe("A clearance with pose and direction held", () => {
  const all = trials(0, 20);
  const apart = all.filter(({ found }) => found.mm >= 0);
  const overlapping = trials(0, 120).filter(({ found }) => found.mm < 0);

  test("is the clearance itself where nothing is changed", () => {
    expect(all.length).toBeGreaterThan(60);
    for (const { rig, id, found } of all) expect(clearanceHeld(found, id, rig)(rig)).toBeCloseTo(found.mm, 5);
  });

  test("has the slopes of the clearance solved anew, for every number of both records", () => {
    const wrong: string[] = [];
    const tally = { compared: 0, kinks: 0, sloping: new Set<string>() };
    for (const { rig, id, found, keys } of apart) {
      const slopeOf = slopesOf(clearanceHeld(found, id, rig), rig);
      for (const key of keys) {
        const above = (solved(moved(rig, key, STEP), id).mm - found.mm) / STEP;
        const below = (found.mm - solved(moved(rig, key, -STEP), id).mm) / STEP;
        if (Math.abs(above - below) > 2 * ALLOWED) {
          tally.kinks += 1;
          continue;
        }
        const slope = slopeOf(key);
        tally.compared += 1;
        if (Math.abs(slope) > 0.05) tally.sloping.add(key);
        if (Math.abs(slope - (above + below) / 2) > ALLOWED)
          wrong.push(`${id} ${key}: ${slope} for ${above}`);
      }
    }
    expect(wrong).toEqual([]);
    expect(tally.compared).toBeGreaterThan(3000);
    expect(tally.kinks).toBeLessThan(tally.compared / 100);
    // The angles that are easily forgotten were among them.
    for (const key of [
      "soleAngleDeg",
      "sideFlareDeg",
      "measuredAtDeg",
      "tiltArcDeg",
      "steerPortDeg",
      "rakeDeg",
    ])
      expect([...tally.sloping], key).toContain(key);
  });

  test("depends on no number but those of the part and the obstacle it names", () => {
    for (const { rig, id, found, keys } of all) {
      const named = new Set<string>([...keysOfPart(found.partId), ...keysOfObstacle(id)]);
      const slopeOf = slopesOf(clearanceHeld(found, id, rig), rig);
      const others = keys.filter((key) => !named.has(key) && Math.abs(slopeOf(key)) > 1e-9);
      expect(others, id).toEqual([]);
    }
  });

  test("follows the depth in the pose where they overlap", () => {
    expect(overlapping.length).toBeGreaterThan(20);
    const ranges: readonly string[] = ["pinAnglesDeg", "tiltArcDeg", "steerPortDeg", "steerStarboardDeg"];
    expect(MOTION_KEYS).toEqual(expect.arrayContaining([...ranges]));
    let compared = 0;
    for (const { rig, id, found, keys } of overlapping) {
      const at = (other: Rig) => {
        const part = partsOf(other.motor).find((one) => one.id === found.partId)!;
        return clearanceAt(mechanismOf(other.motor)!, part, obstacleOf(other, id), found.pose).mm;
      };
      const slopeOf = slopesOf(clearanceHeld(found, id, rig), rig);
      for (const key of keys.filter((one) => !ranges.includes(one))) {
        const above = (at(moved(rig, key, STEP)) - at(rig)) / STEP;
        const below = (at(rig) - at(moved(rig, key, -STEP))) / STEP;
        if (Math.abs(above - below) > 2 * ALLOWED) continue;
        compared += 1;
        expect(Math.abs(slopeOf(key) - (above + below) / 2), `${id} ${key}`).toBeLessThan(ALLOWED);
      }
    }
    expect(compared).toBeGreaterThan(500);
  });
});
