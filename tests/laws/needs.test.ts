/**
 * What a motor needs, built: the stern then meets its limit with next to nothing over, and a little less
 * fails, unless the trade's fixed least rules. Without spread, so that the margin's sign decides.
 */
import { describe, expect, test } from "vitest";
import { limitOf } from "#lib/checks/check.ts";
import { examine } from "#lib/fit/examine.ts";
import { needsOf } from "#lib/fit/needs.ts";
import type { ReportNeeds } from "#lib/fit/report.ts";
import { cos } from "#lib/quantity/angle.ts";
import { withNumber, withSeat } from "#lib/rig/alter.ts";
import { isUncut } from "#lib/rig/obstacles.ts";
import { sternValues } from "#lib/rig/record.ts";
import type { Stern, SternKey } from "#lib/rig/stern.ts";
import { exact, type Pair, pair } from "#tests/laws/pair.ts";

/** A need keeps its limit by at most this, mm, where it does not jump; rounding on the other side. */
const OVER = 0.1;
const HAIR = 1e-6;

const pairs = Array.from({ length: 120 }, (_, start) => exact(pair(start * 7 + 3)));
const needs = ({ motor, stern }: Pair): ReportNeeds => needsOf(examine(motor, stern, { only: [] }).mounting);

const marginsOf = ({ motor, stern }: Pair, ids: readonly string[]): number[] =>
  examine(motor, stern, { only: ids }).answers.flatMap(({ ruling }) => (ruling ? [ruling.margin] : []));
const least = (one: Pair, ids: readonly string[]): number => Math.min(...marginsOf(one, ids));

const exactly = (stern: Stern, key: SternKey, value: number): Stern => ({
  ...stern,
  [key]: { value, plusMinus: 0, how: "measured" },
});

/** The pairs with their needs; where nothing is cut, cut to the seat the needs were asked of. */
const asked = pairs.map((one) => {
  const need = needs(one);
  const uncut = isUncut(sternValues(one.stern));
  return { need, one: uncut ? { ...one, stern: withSeat(one.stern, need.seatMm!) } : one };
});

interface Tally {
  met: number;
  fails: number;
  creeps: number;
  jumps: number;
}

/** Builds each need, and a fifth of a millimetre less of it. */
function tried(
  key: SternKey,
  need: (n: ReportNeeds) => number | undefined,
  ids: readonly string[],
  some = asked,
): Tally {
  const tally = { met: 0, fails: 0, creeps: 0, jumps: 0 };
  for (const { one, need: all } of some) {
    const value = need(all);
    if (value === undefined) continue;
    const built = { ...one, stern: exactly(one.stern, key, value) };
    const over = least(built, ids);
    expect(over, `${key} ${value}`).toBeGreaterThanOrEqual(-HAIR);
    if (over > OVER) tally.jumps += 1;
    else tally.met += 1;
    const less = least({ ...one, stern: exactly(one.stern, key, value - 0.2) }, ids);
    if (less < 0) tally.fails += 1;
    // Where the part leaves sideways a clearance grows more slowly than the notch: it stays next to its limit.
    else if (less < 0.03) tally.creeps += 1;
  }
  return tally;
}

describe("Needs", () => {
  test("a stern cut to its seat passes the plate's height, in the middle of the window", () => {
    for (const one of pairs) {
      const { seatMm, seatRangeMm } = needs(one);
      const at = (seat: number) =>
        examine(one.motor, withSeat(one.stern, seat), { only: ["plate-height"] }).answers[0]!;
      expect(at(seatMm!)).toMatchObject({ outcome: "fits" });
      expect(at(seatMm!).ruling?.margin).toBeCloseTo(12.7, 6);
      // Either end of the range still fits, a tenth beyond does not.
      const [low, high] = seatRangeMm!;
      expect([low, high, low - 0.1, high + 0.1].map((seat) => at(seat).outcome)).toEqual([
        "fits",
        "fits",
        "fouls",
        "fouls",
      ]);
    }
  });

  test("the notch's depth is the uncut top less the seat", () => {
    for (const one of pairs) {
      const { seatMm, notchDepthMm } = needs(one);
      expect(notchDepthMm).toBeCloseTo(one.stern.transomTopMm!.value - seatMm!, 9);
    }
  });

  test("notch width: its steering room and its bracket just fit, a fifth of a millimetre less fouls", () => {
    const { met, fails, creeps, jumps } = tried("notchWidthMm", (n) => n.notchWidthMm, [
      "steering-room",
      "bracket",
    ]);
    expect(met).toBeGreaterThan(90);
    expect(fails).toBeGreaterThan(80);
    expect(met - fails - creeps).toBe(0);
    expect(jumps).toBeLessThan(10);
  });

  test("sole drop: handles, pads and the tilting motor just fit, a fifth of a millimetre less fouls", () => {
    const built = asked.filter(({ one }) => one.stern.soleDropMm);
    const ids = ["clamp-depth", "screw-handles", "sole-room"];
    const { met, fails, creeps } = tried("soleDropMm", (n) => n.soleDropMm, ids, built);
    expect(met).toBe(built.length);
    expect(fails + creeps).toBe(built.length);
  });

  test("well depth: the bulkhead just clears, or the trade's least rules", () => {
    const built = asked.filter(({ one }) => one.stern.wellDepthMm);
    const { met, fails, creeps, jumps } = tried("wellDepthMm", (n) => n.wellDepthMm, ["tilt-room"], built);
    expect(met + jumps).toBe(built.length);
    expect(fails + creeps).toBeGreaterThan(built.length - 5);
    const fixed = built.filter(({ need }) => Math.abs(need.wellDepthMm! - 558.8) < 1e-6);
    expect(fixed.length).toBeGreaterThan(5);
    expect(fixed.length).toBeLessThan(built.length - 5);
  });

  test("where there is no well yet: built as the need supposes it, it fits", () => {
    const dry = asked.filter(({ one }) => !one.stern.wellDepthMm);
    expect(dry.length).toBeGreaterThan(10);
    for (const { one, need } of dry) {
      const { stern } = one;
      const front =
        need.soleDropMm! + (stern.transomTopMm!.value - stern.seatMm!.value) / cos(stern.rakeDeg!.value);
      const numbers: readonly (readonly [SternKey, number])[] = [
        ["soleDropMm", need.soleDropMm!],
        ["soleAngleDeg", 90],
        ["wellDepthMm", need.wellDepthMm!],
        ["wellFrontHeightMm", Math.max(0, front)],
      ];
      const built = numbers.reduce((sum, [key, value]) => exactly(sum, key, value), stern);
      const ids = ["clamp-depth", "screw-handles", "sole-room", "tilt-room"];
      for (const { check, outcome } of examine(one.motor, built, { only: ids }).answers)
        expect(outcome, check.id).toBe("fits");
    }
  });

  test("an owner's limit is the limit of the need too", () => {
    for (const { one } of asked.slice(0, 20)) {
      const own = { ...one, stern: { ...one.stern, limits: { steeringRoomMm: 60, bracketMm: 5 } } };
      const { mounting } = examine(own.motor, own.stern, { only: [] });
      expect(limitOf(mounting.rig, "steeringRoomMm").value).toBe(60);
      const wider = needsOf(mounting).notchWidthMm!;
      const built = { ...own, stern: withNumber(own.stern, "notchWidthMm", wider) };
      expect(least(built, ["steering-room", "bracket"])).toBeGreaterThanOrEqual(-HAIR);
      expect(wider).toBeGreaterThan(needs(one).notchWidthMm!);
    }
  });
});
