/** A margin and its doubt, said for somebody who never heard of uncertainty. */
import { describe, expect, test } from "vitest";
import {
  afterWords,
  clauseOf,
  effectWords,
  howWords,
  marginSentence,
  shareWords,
  spareWords,
} from "#app/_parts/report/plain-words.ts";
import { plusMinusWords, unbroken } from "#app/_parts/report/writing.ts";
import type { ReportCheck } from "#lib/fit/report.ts";
import { inches } from "#lib/quantity/length.ts";

const check = (more: Partial<ReportCheck>): ReportCheck => ({
  id: "steering-room",
  question: "Does it steer?",
  outcome: "fits",
  says: "The cowl passes 39 mm from the port cheek, 25 mm wanted: 14 mm to spare, give or take 4.3 mm.",
  marginMm: 14,
  expandedUncertaintyMm: 4.3,
  worstCaseMm: 8,
  limit: { value: 25.4, unit: "mm", source: "", status: "common practice" },
  ...more,
});

describe("room to spare in words", () => {
  test("names the unit once, and leaves out tenths beside a doubt of several millimetres", () => {
    expect(spareWords(14.2, 4.3, "mm", "mm")).toBe("14 mm to spare, give or take 4");
    expect(spareWords(-20.1, 3.2, "mm", "mm")).toBe("20 mm short, give or take 3");
  });

  test("keeps tenths where they tell something: a small doubt, or figures that would look alike or nothing", () => {
    expect(spareWords(4.2, 1.6, "mm", "mm")).toBe("4.2 mm to spare, give or take 1.6");
    expect(spareWords(4.1, 4.3, "mm", "mm")).toBe("4.1 mm to spare, give or take 4.3");
    expect(spareWords(0.3, 5.4, "mm", "mm")).toBe("0.3 mm to spare, give or take 5.4");
  });

  test("never says that nothing is the doubt where there is some, nor speaks of doubt where there is none", () => {
    expect(spareWords(30, 0.02, "mm", "mm")).toBe("30 mm to spare, give or take less than 0.1");
    expect(spareWords(inches(1), 0.5, "mm", "in")).toBe("1 in to spare, give or take less than 1/16 in");
    expect(spareWords(30, 0, "mm", "mm")).toBe("30 mm to spare");
  });

  test("gives inches and degrees with their signs", () => {
    expect(spareWords(inches(9 / 16), inches(3 / 16), "mm", "in")).toBe(
      "9/16 in to spare, give or take 3/16 in",
    );
    expect(spareWords(1, 0.82, "deg", "in")).toBe("1° to spare, give or take 0.8°");
  });
});

describe("a finding", () => {
  test("stands without its margin, which is said beside it", () => {
    expect(clauseOf(check({}), "mm")).toBe("The cowl passes 39 mm from the port cheek, 25 mm wanted.");
    expect(marginSentence(check({}), "mm")).toBe("14 mm to spare, give or take 4.");
  });

  test("without a margin stands as it is", () => {
    const unknown = check({ says: "Not known: cowl width.", marginMm: undefined, outcome: "cannot tell" });
    expect(clauseOf(unknown, "mm")).toBe("Not known: cowl width.");
    expect(marginSentence(unknown, "mm")).toBeUndefined();
  });

  test("that settles nothing says why", () => {
    const close = check({ outcome: "cannot tell", marginMm: 2 });
    expect(marginSentence(close, "mm")).toBe("2 mm to spare, give or take 4: too close to tell.");
    const line = {
      key: "cowlWidthMm",
      value: 300,
      plusMinus: 20,
      how: "estimated",
      byDefault: false,
    } as const;
    const like = check({
      outcome: "cannot tell",
      restsOn: [{ ...line, fromLike: true, sensitivity: -0.5, share: 1 }],
    });
    expect(marginSentence(like, "mm")).toContain("rests on numbers from like motors");
    expect(marginSentence(like, "mm")).not.toContain("too close");
  });
});

describe("what a number does to the room", () => {
  test("is told for one unit more of it, less room where the margin falls", () => {
    expect(effectWords(-0.8, "mm", "mm", "mm")).toBe("1 mm more of this is 0.8 mm less room");
    expect(effectWords(4.1, "deg", "mm", "mm")).toBe("1° more of this is 4.1 mm more room");
    expect(effectWords(-1, "deg", "deg", "mm")).toBe("1° more of this is 1° less room");
  });

  test("is the same share of an inch as of a millimetre, and an angle's is turned into inches", () => {
    expect(effectWords(-0.8, "mm", "mm", "in")).toBe("1 in more of this is 0.8 in less room");
    expect(effectWords(12.7, "deg", "mm", "in")).toBe("1° more of this is 0.5 in more room");
  });

  test("too small to tell is said to be", () => {
    expect(effectWords(0.001, "mm", "mm", "mm")).toBe("1 mm more of this hardly changes the room");
  });

  test("is a share of the doubt, never a bare nought", () => {
    expect([0.62, 0.01, 0.004, 0, 1].map(shareWords)).toEqual([
      "62 %",
      "1 %",
      "under 1 %",
      "under 1 %",
      "100 %",
    ]);
  });

  test("says how the number and its ± were come by", () => {
    const line = { key: "cowlWidthMm", value: 300, plusMinus: 2, sensitivity: 1, share: 1 } as const;
    expect(howWords({ ...line, how: "measured", byDefault: true })).toBe("measured; the ± as usual for that");
    expect(howWords({ ...line, how: "declared", byDefault: false })).toBe(
      "from papers or the seller; the ± as entered",
    );
    expect(howWords({ ...line, how: "estimated", byDefault: false, fromLike: true })).toBe(
      "not taken on this motor; from like motors",
    );
  });
});

describe("what a remedy comes to", () => {
  const remedy = {
    change: "notchWidthMm",
    from: 600,
    to: 636,
    governsAfter: "steering-room",
    says: "",
  } as const;

  test("is its verdict with its own margin, its doubt and the question it hangs on", () => {
    expect(
      afterWords(
        { ...remedy, verdictAfter: "fits", marginAfterMm: 4.2, expandedUncertaintyAfterMm: 3.1 },
        "mm",
      ),
    ).toBe("fits, with 4 mm to spare, give or take 3 (tightest: steering\u00a0room)");
    expect(
      afterWords(
        { ...remedy, verdictAfter: "cannot tell", marginAfterDeg: 1, expandedUncertaintyAfterDeg: 1.3 },
        "mm",
      ),
    ).toBe(
      "no longer surely fouls, but is too close to tell: 1° to spare, give or take 1.3° (tightest: steering\u00a0room)",
    );
  });

  test("says so where a number is missing for it", () => {
    expect(afterWords({ ...remedy, verdictAfter: "cannot tell" }, "mm")).toContain("a number is missing");
  });
});

describe("figures on the page", () => {
  test("are never parted from their fraction, their unit or their give-or-take", () => {
    expect(unbroken("1 1/16 in to spare, give or take 3/16 in")).toBe(
      "1\u00a01/16\u00a0in to spare, give\u00a0or\u00a0take\u00a03/16\u00a0in",
    );
    expect(unbroken("520 mm ± 2 mm")).toBe("520\u00a0mm ±\u00a02\u00a0mm");
  });

  test("a half-width keeps two figures, in inches the coarsest division that still tells it", () => {
    expect(plusMinusWords(2.236, "mm", "mm")).toBe("± 2.2 mm");
    expect(plusMinusWords(25.9, "mm", "mm")).toBe("± 26 mm");
    expect(plusMinusWords(inches(1), "mm", "in")).toBe("± 1 in");
    expect(plusMinusWords(inches(5 / 64), "mm", "in")).toBe("± 5/64 in");
    expect(plusMinusWords(0.5, "deg", "in")).toBe("± 0.5°");
  });
});
