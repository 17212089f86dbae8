/** The rule from margin and spread to a verdict, at its edges and by hand; and which answer is the worst. */
import { describe, expect, test } from "vitest";
import type { Edge } from "#lib/checks/check.ts";
import type { Verdict } from "#lib/fit/report.ts";
import { assessEdge, byGravity, slopesOf, verdictOf } from "#lib/fit/verdict.ts";
import type { Rig, RigKey } from "#lib/rig/mounting.ts";
import type { Taken } from "#lib/rig/record.ts";

describe("Margin and spread", () => {
  test("fits from margin = U, fouls below margin = -U, between cannot be told (U = 2 u)", () => {
    const verdicts = (margins: readonly number[], u: number) => margins.map((margin) => verdictOf(margin, u));
    expect(verdicts([10.01, 10, 9.99, 0, -9.99, -10, -10.01], 5)).toEqual([
      "fits",
      "fits",
      "cannot tell",
      "cannot tell",
      "cannot tell",
      "cannot tell",
      "fouls",
    ]);
  });

  test("without spread the sign decides, and just at the limit fits; a hair of rounding is no foul", () => {
    expect([1e-6, 0, -1e-12, -1e-6].map((margin) => verdictOf(margin, 0))).toEqual([
      "fits",
      "fits",
      "fits",
      "fouls",
    ]);
  });

  test("what rests on like motors must hold at the far end of their intervals", () => {
    // u = 2, so U = 4; like motors can move the margin by 9, everything else has u 1: reach 9 + 2 = 11.
    expect([11, 10.99, -11, -11.01].map((margin) => verdictOf(margin, 2, 9, 1))).toEqual([
      "fits",
      "cannot tell",
      "cannot tell",
      "fouls",
    ]);
    // A far end nearer than U takes nothing off U.
    expect(verdictOf(3.9, 2, 1, 0.5)).toBe("cannot tell");
    expect(verdictOf(4, 2, 1, 0.5)).toBe("fits");
  });
});

/** Margin = 3 a - 2 b + 10 on two numbers borrowed for the purpose. */
const edgeOf = (extra: Partial<Edge> = {}): Edge => {
  const held = ({ motor, stern }: Rig) => 3 * motor.clampDepthMm! - 2 * stern.soleDropMm! + 10;
  return {
    room: 3 * 20 - 2 * 30 + 10,
    held,
    have: 0,
    need: 0,
    limit: { value: 0, unit: "mm", what: "", source: "", status: "common practice" },
    says: "",
    ...extra,
  };
};
const rig: Rig = { motor: { clampDepthMm: 20, pinAnglesDeg: [4, 8] }, stern: { soleDropMm: 30 } };
const takenAs =
  (halfWidths: Readonly<Record<string, number>>, like: readonly string[] = []) =>
  (key: RigKey): Taken | undefined =>
    key in halfWidths
      ? {
          value: 0,
          halfWidth: halfWidths[key]!,
          how: "measured",
          byDefault: false,
          fromLike: like.includes(key),
        }
      : undefined;

describe("An edge's spread", () => {
  test("by hand: slopes 3 and -2, half-widths 1 and 2", () => {
    // u^2 = (3^2 x 1 + 2^2 x 4)/3 = 25/3, u = 2.8868; worst 10 - 3 - 4 = 3; shares 9/25 and 16/25.
    const found = assessEdge(
      edgeOf(),
      rig,
      ["clampDepthMm", "soleDropMm"],
      takenAs({ clampDepthMm: 1, soleDropMm: 2 }),
    );
    expect(found.u).toBeCloseTo(5 / Math.sqrt(3), 6);
    expect(found.worstCase).toBeCloseTo(3, 6);
    expect(found.budget.map(({ key }) => key)).toEqual(["soleDropMm", "clampDepthMm"]);
    expect(found.budget[0]).toMatchObject({ key: "soleDropMm" });
    expect(found.budget[0]!.sensitivity).toBeCloseTo(-2, 6);
    expect(found.budget[0]!.share).toBeCloseTo(0.64, 6);
    expect(found.budget[1]!.share).toBeCloseTo(0.36, 6);
    expect([found.verdict, found.jumps]).toEqual(["fits", false]);
  });

  test("numbers it does not depend on, and numbers nobody took, are not in it", () => {
    const found = assessEdge(
      edgeOf(),
      rig,
      ["clampDepthMm", "soleDropMm", "pinAnglesDeg", "shaftClass", "steering", "rakeDeg"],
      takenAs({ clampDepthMm: 1, pinAnglesDeg: 5 }),
    );
    expect(found.budget.map(({ key }) => key)).toEqual(["clampDepthMm"]);
  });

  test("like motors: the far end rules where it reaches beyond U", () => {
    // Both from like motors: U = 5.7735, far end 3 + 4 = 7; margins 6.9 cannot be told, 7 fits.
    const like = takenAs({ clampDepthMm: 1, soleDropMm: 2 }, ["clampDepthMm", "soleDropMm"]);
    const at = (room: number) =>
      assessEdge(edgeOf({ room }), rig, ["clampDepthMm", "soleDropMm"], like).verdict;
    expect([7.001, 6.9, 5.8, -6.9, -7.01].map(at)).toEqual([
      "fits",
      "cannot tell",
      "cannot tell",
      "cannot tell",
      "fouls",
    ]);
  });

  test("what the straight line misses is added to U, and said where it is much", () => {
    // Anew the room falls to -4 where the line says 10 - U: U = 5.7735 alone (half-widths 1 and 2), so it
    // missed by 10 - 5.7735 + 4 = 8.2265 and U becomes 14.
    const known = takenAs({ clampDepthMm: 1, soleDropMm: 2 });
    const keys: readonly RigKey[] = ["clampDepthMm", "soleDropMm"];
    const found = assessEdge(edgeOf({ anew: () => -4 }), rig, keys, known);
    expect(2 * found.u).toBeCloseTo(14, 6);
    expect(found.worstCase).toBeCloseTo(3 - 8.2265, 3);
    expect([found.jumps, found.verdict]).toEqual([true, "cannot tell"]);
    // A room that falls less than the line says widens nothing.
    const mild = assessEdge(edgeOf({ anew: () => 9 }), rig, keys, known);
    expect([mild.jumps, 2 * mild.u]).toEqual([false, expect.closeTo(10 / Math.sqrt(3), 6)]);
    // A miss of 0.1 counts but is no jump.
    const little = assessEdge(edgeOf({ anew: () => 10 - 10 / Math.sqrt(3) - 0.1 }), rig, keys, known);
    expect([little.jumps, 2 * little.u]).toEqual([false, expect.closeTo(10 / Math.sqrt(3) + 0.1, 6)]);
  });

  test("the pairing looked at anew stands two standard uncertainties towards the foul", () => {
    // Each number moves by -2 x slope x (half-width^2 / 3) / u: 3: -2 x 3 x (1/3) / 2.8868 = -0.69282;
    // -2: +2 x 2 x (4/3) / 2.8868 = 1.84752. The line there: 10 - 3 x 0.69282 - 2 x 1.84752 = 10 - 5.7735.
    const seen: Rig[] = [];
    const anew = (other: Rig) => {
      seen.push(other);
      return 10;
    };
    assessEdge(
      edgeOf({ anew }),
      rig,
      ["clampDepthMm", "soleDropMm"],
      takenAs({ clampDepthMm: 1, soleDropMm: 2 }),
    );
    expect(seen).toHaveLength(1);
    expect(seen[0]!.motor.clampDepthMm).toBeCloseTo(20 - 0.69282, 4);
    expect(seen[0]!.stern.soleDropMm).toBeCloseTo(30 + 1.84752, 4);
  });

  test("slopes leave the rig as it was, and pin angles move together", () => {
    const frozen = JSON.stringify(rig);
    const sum = slopesOf(({ motor }) => motor.pinAnglesDeg!.reduce((total, angle) => total + angle, 0), rig);
    expect(sum("pinAnglesDeg")).toBeCloseTo(2, 6);
    expect(sum("clampDepthMm")).toBeCloseTo(0, 9);
    expect(JSON.stringify(rig)).toBe(frozen);
  });
});

describe("The worse first", () => {
  const ranked = (verdict: Verdict, margin?: number, u?: number) => ({ verdict, margin, u });

  test("fouls over cannot tell over fits, whatever the margins", () => {
    const some = [ranked("fits", 0, 0), ranked("fouls", -0.1, 0), ranked("cannot tell", 5, 9)];
    expect(some.sort(byGravity).map(({ verdict }) => verdict)).toEqual(["fouls", "cannot tell", "fits"]);
  });

  test("among those that cannot be told a missing number comes first", () => {
    const some = [ranked("cannot tell", -3, 2), ranked("cannot tell")];
    expect(some.sort(byGravity)[0]?.margin).toBeUndefined();
  });

  test("then the one least surely met: margin over standard uncertainty", () => {
    // 10/5 = 2 is less sure than 3/1 = 3; -8/2 = -4 is the surer foul than -9/3 = -3.
    expect([ranked("fits", 3, 1), ranked("fits", 10, 5)].sort(byGravity)[0]?.margin).toBe(10);
    expect([ranked("fouls", -9, 3), ranked("fouls", -8, 2)].sort(byGravity)[0]?.margin).toBe(-8);
  });

  test("beyond three times U (six standard uncertainties) one is as sure as another: lengths before angles, then the smaller margin", () => {
    expect([ranked("fits", 100, 1), ranked("fits", 7, 1)].sort(byGravity)[0]?.margin).toBe(7);
    expect([ranked("fits", 7, 1), ranked("fits", 50, 10)].sort(byGravity)[0]?.margin).toBe(50);
    const angle = { ...ranked("fits", 3, 0.4), unit: "deg" as const };
    expect([angle, ranked("fits", 50, 1)].sort(byGravity)[0]?.margin).toBe(50);
    expect([{ ...angle, u: 1 }, ranked("fits", 50, 1)].sort(byGravity)[0]?.margin).toBe(3);
  });

  test("without spread a margin is as sure as can be, in order of size", () => {
    expect([ranked("fits", 1, 0), ranked("fits", 100, 1)].sort(byGravity)[0]?.margin).toBe(1);
    expect([ranked("fits", 5, 0), ranked("fits", 1, 0)].sort(byGravity)[0]?.margin).toBe(1);
    expect([ranked("fouls", -5, 0), ranked("fouls", -1, 0)].sort(byGravity)[0]?.margin).toBe(-5);
  });
});
