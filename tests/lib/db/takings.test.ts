/** Several takings of one number: expected values worked by hand from the equations of lib/quantity/consensus.ts. */
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { agreement, type Taken } from "#lib/db/agreement.ts";
import { createRecord, getRecord, historyOf, takingsOf, updateRecord } from "#lib/db/records.ts";
import { takeAgain } from "#lib/db/retake.ts";
import { numbersTaken, sinceCorrected } from "#lib/db/takings.ts";
import type { How } from "#lib/quantity/measured.ts";
import { aMotor, aStern } from "#tests/lib/db/samples.ts";
import { temporaryStore } from "#tests/lib/db/temporary-store.ts";

const ROOT_3 = Math.sqrt(3);
/** As a record has them: to a thousandth. */
const ROOT_2 = Number(Math.SQRT2.toFixed(3));
const HALF_ROOT_2 = Number(Math.SQRT1_2.toFixed(3));
/** A taking with the standard uncertainty u. */
const taken = (value: number | readonly number[], u?: number, how: How = "measured"): Taken => ({
  value,
  ...(u === undefined ? {} : { plusMinus: u * ROOT_3 }),
  how,
});

describe("the agreement", () => {
  test("of one taking is that taking, as it was taken", () => {
    const only = { value: 430, how: "measured" } as const;
    expect(agreement("mm", [only])).toMatchObject({
      number: only,
      counted: 1,
      parts: ["counts"],
      between: 0,
    });
    expect(agreement("mm", [only]).number).not.toHaveProperty("plusMinus");
  });

  test("of two equal takings is their value; its spread shrinks by the root of 2", () => {
    const two = [
      { value: 430, plusMinus: 2, how: "measured" },
      { value: 430, plusMinus: 2, how: "measured" },
    ] as const;
    const { number, u, between } = agreement("mm", two);
    // u of each = 2 / root 3; u of both = 2 / root 6; half-width = u root 3 = root 2
    expect(number).toEqual({ value: 430, plusMinus: ROOT_2, how: "measured" });
    expect(u).toBeCloseTo(2 / Math.sqrt(6), 12);
    expect(between).toBe(0);
  });

  test("weighs the careful taker more", () => {
    // weights 1 and 1/4: (100 + 101/4) / 1.25 = 100.2; u = 1 / root 1.25
    const { number } = agreement("mm", [taken(100, 1), taken(101, 2)]);
    expect(number.value).toBe(100.2);
    expect(number.plusMinus).toBeCloseTo(ROOT_3 / Math.sqrt(1.25), 3);
  });

  test("of takings that differ by more than they claim has a spread between them", () => {
    // residuals 5 and 5: 50 / (1 + tau²) = 1, so tau = 7; u² = (1 + 49) / 2 = 25
    const { number, u, between, birgeRatio } = agreement("mm", [taken(430, 1), taken(440, 1)]);
    expect(number.value).toBe(435);
    expect(between).toBeCloseTo(7, 6);
    expect(u).toBeCloseTo(5, 6);
    expect(number.plusMinus).toBeCloseTo(5 * ROOT_3, 3);
    expect(birgeRatio).toBeCloseTo(Math.sqrt(50), 9);
  });

  test("keeps an outlying taking and names it", () => {
    const { number, parts } = agreement("mm", [taken(430, 1), taken(430, 1), taken(430, 1), taken(470, 1)]);
    expect(parts).toEqual(["counts", "counts", "counts", "outlying"]);
    expect(number.value).toBe(440);
  });

  test("takes the usual half-width where none was given, and where ± 0 was", () => {
    // declared lengths are ± 6 mm: 6 / root 2
    expect(agreement("mm", [taken(381, undefined, "declared"), taken(381, 0, "declared")]).number).toEqual({
      value: 381,
      plusMinus: 4.243,
      how: "declared",
    });
  });

  test("rests on the surest kind of taking alone", () => {
    const all = [taken(500, 1, "estimated"), taken(381, 1, "declared"), taken(430, 1), taken(430, 1)];
    const { number, parts } = agreement("mm", all);
    expect(number).toMatchObject({ value: 430, how: "measured" });
    expect(parts).toEqual(["less sure", "less sure", "counts", "counts"]);
    expect(agreement("mm", all.slice(0, 2)).number).toMatchObject({ value: 381, how: "declared" });
    expect(agreement("mm", [all[0]!, all[0]!]).number).toMatchObject({ value: 500, how: "estimated" });
  });

  test("of the trim-pin holes goes hole by hole; its spread is that of the least certain hole", () => {
    const { number, u, between } = agreement("deg", [taken([4, 10], 1), taken([4, 20], 1)]);
    // first hole: agree, u = 1 / root 2; second: 50 / (1 + tau²) = 1, u = 5
    expect(number.value).toEqual([4, 15]);
    expect(u).toBeCloseTo(5, 6);
    expect(between).toBeCloseTo(7, 6);
  });

  test("leaves aside lists with another number of holes than most, and at a tie the later", () => {
    const [four, five] = [taken([4, 8, 12, 16], 1), taken([4, 8, 12, 16, 20], 1)];
    expect(agreement("deg", [four, five]).parts).toEqual(["counts", "other holes"]);
    expect(agreement("deg", [four, five, five]).parts).toEqual(["other holes", "counts", "counts"]);
  });

  test("of nothing is a mistake of ours", () => {
    expect(() => agreement("mm", [])).toThrow(RangeError);
  });
});

test("takings count from the last correction on", () => {
  const one = (at: number, again?: true): { at: number; again?: true } => ({ at, ...(again && { again }) });
  const [a, b, c, d] = [one(1), one(2, true), one(3), one(4, true)];
  expect(sinceCorrected([a, b, c, d])).toEqual([c, d]);
  expect(sinceCorrected([a, b])).toEqual([a, b]);
  expect(sinceCorrected([b])).toEqual([b]);
  expect(sinceCorrected([])).toEqual([]);
});

describe("taking a number again", () => {
  let there: Awaited<ReturnType<typeof temporaryStore>>;
  beforeEach(async () => {
    there = await temporaryStore();
    await createRecord("motor", aMotor("m"), { shaftLengthMm: "430 mm" });
  });
  afterEach(() => there.remove());

  const shaft = (value: number, more: { how?: How; plusMinus?: number } = {}) =>
    ({ key: "shaftLengthMm", taken: { value, plusMinus: 2, how: "measured", ...more } }) as const;
  const standing = async () => (await getRecord("motor", "m"))!;
  const partsOf = async () => {
    const numbers = numbersTaken("motor", (await standing()).record, await takingsOf("motor", "m"));
    return numbers.find(({ key }) => key === "shaftLengthMm")!;
  };

  test("adds it beside the earlier one, and the record has the consensus", async () => {
    const done = await takeAgain("motor", "m", 1, { ...shaft(430), raw: "43 cm", comment: "In the frost" });
    const record = aMotor("m", { shaftLengthMm: { value: 430, plusMinus: ROOT_2, how: "measured" } });
    expect(done).toMatchObject({ record, version: 2 });
    expect(await standing()).toMatchObject({ record, version: 2 });
    expect((await takingsOf("motor", "m")).map(({ sequence: _, takenAt: __, ...rest }) => rest)).toEqual([
      { key: "shaftLengthMm", value: 430, plusMinus: 2, how: "measured", raw: "430 mm" },
      { key: "powerKw", value: 4.5, how: "declared" },
      {
        ...{ key: "shaftLengthMm", value: 430, plusMinus: 2, how: "measured", raw: "43 cm" },
        ...{ again: true, comment: "In the frost" },
      },
    ]);
    expect((await historyOf("motor", "m")).map(({ version, action }) => [version, action])).toEqual([
      [1, "create"],
      [2, "edit"],
    ]);
  });

  test("from a version somebody has changed is a conflict, and nothing is taken", async () => {
    await updateRecord("motor", "m", 1, aMotor("m", { label: "Blue" }));
    expect(await takeAgain("motor", "m", 1, shaft(440))).toMatchObject({
      conflict: true,
      current: { version: 2, record: { label: "Blue" } },
    });
    expect(await takingsOf("motor", "m")).toHaveLength(2);
    expect(await takeAgain("motor", "none", 1, shaft(440))).toBeNull();
  });

  test("by ten people at once is one taking; the others are told", async () => {
    const answers = await Promise.all(
      Array.from({ length: 10 }, (_, i) => takeAgain("motor", "m", 1, shaft(425 + i))),
    );
    expect(answers.filter((answer) => answer && "record" in answer)).toHaveLength(1);
    expect(answers.filter((answer) => answer && "conflict" in answer)).toHaveLength(9);
    expect(await takingsOf("motor", "m")).toHaveLength(3);
    expect((await standing()).version).toBe(2);
  });

  test("by eye leaves a measured number as it is, and is kept", async () => {
    const before = (await standing()).record;
    await takeAgain("motor", "m", 1, shaft(500, { how: "estimated" }));
    expect(await standing()).toMatchObject({ record: before, version: 2 });
    expect((await partsOf()).takings.map(({ part }) => part)).toEqual(["counts", "less sure"]);
  });

  test("counts from the last correction on; what was before is kept", async () => {
    await takeAgain("motor", "m", 1, shaft(432));
    const corrected = aMotor("m", { shaftLengthMm: { value: 510, plusMinus: 2, how: "measured" } });
    await updateRecord("motor", "m", 2, corrected);
    expect((await partsOf()).takings.map(({ part }) => part)).toEqual(["corrected", "corrected", "counts"]);
    await takeAgain("motor", "m", 3, shaft(510));
    expect((await standing()).record.shaftLengthMm).toEqual({
      value: 510,
      plusMinus: ROOT_2,
      how: "measured",
    });
    expect((await partsOf()).takings.map(({ value }) => value)).toEqual([430, 432, 510, 510]);
  });

  test("an edit of something else leaves the takings together", async () => {
    await takeAgain("motor", "m", 1, shaft(430));
    await updateRecord("motor", "m", 2, { ...(await standing()).record, label: "Blue" });
    expect((await partsOf()).takings.map(({ part }) => part)).toEqual(["counts", "counts"]);
  });

  test("of a number the record has not, or has no more, begins it", async () => {
    const mass = { key: "massKg", taken: { value: 20, how: "measured" } } as const;
    await takeAgain("motor", "m", 1, mass);
    expect((await standing()).record.massKg).toEqual({ value: 20, how: "measured" });
    const { massKg: _, ...without } = (await standing()).record;
    await updateRecord("motor", "m", 2, without);
    await takeAgain("motor", "m", 3, { ...mass, taken: { value: 30, how: "measured" } });
    expect((await standing()).record.massKg).toEqual({ value: 30, how: "measured" });
  });

  test("is refused where the record would be impossible with it, and nothing is taken", async () => {
    const bottom = { key: "cowlBottomMm", taken: { value: 200, how: "measured" } } as const;
    await takeAgain("motor", "m", 1, bottom);
    expect(
      await takeAgain("motor", "m", 2, { key: "cowlTopMm", taken: { value: 150, how: "measured" } }),
    ).toMatchObject({ impossible: [{ code: "impossible" }] });
    expect((await standing()).version).toBe(2);
    expect(await takingsOf("motor", "m")).toHaveLength(3);
  });

  test("is for sterns too", async () => {
    await createRecord("stern", aStern("s", { rakeDeg: { value: 12, plusMinus: 1, how: "measured" } }));
    await takeAgain("stern", "s", 1, {
      key: "rakeDeg",
      taken: { value: 12, plusMinus: 1, how: "measured" },
    });
    // 1 / root 2
    expect((await getRecord("stern", "s"))?.record.rakeDeg).toEqual({
      value: 12,
      plusMinus: HALF_ROOT_2,
      how: "measured",
    });
  });
});
