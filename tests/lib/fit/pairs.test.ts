/**
 * Whole reports against answers worked by hand. Each folder of tests/pairs holds a motor, a stern and what
 * must be said of them, with the working in `why`. Every question is listed: one that is missing, unknown
 * or answered otherwise fails.
 */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { checks } from "#lib/checks/index.ts";
import { motorSchema } from "#lib/entry/motor.ts";
import { sternSchema } from "#lib/entry/stern.ts";
import { assess } from "#lib/fit/assess.ts";
import type { Outcome, Report, Verdict } from "#lib/fit/report.ts";

const ROOT = "tests/pairs";

/** A number of the report: where it stands, what it must be, and how near (mm or degrees; the hand's rounding and the certificate of a clearance). */
interface Figure {
  readonly at: string;
  readonly is: number;
  readonly within: number;
}

interface Expected {
  readonly shows: string;
  readonly why: readonly string[];
  readonly verdict: Verdict;
  readonly governs: string;
  readonly checks: Readonly<Record<string, Outcome>>;
  readonly numbers: readonly Figure[];
  readonly missing?: Readonly<Record<string, readonly string[]>>;
  readonly measureNext?: Readonly<Record<string, string>>;
}

const read = (folder: string, file: string): unknown =>
  JSON.parse(readFileSync(join(ROOT, folder, file), "utf8"));

const folders = readdirSync(ROOT).filter((name) => existsSync(join(ROOT, name, "expected.json")));
const expectedOf = (folder: string): Expected => read(folder, "expected.json") as Expected;
const reportOf = (folder: string): Report =>
  assess(motorSchema.parse(read(folder, "motor.json")), sternSchema.parse(read(folder, "stern.json")));

/** A number of a report by its path; checks and clearances are found by their id, list entries by their place. */
function figureAt(report: Report, path: string): unknown {
  let at: unknown = report;
  for (const step of steps(path)) {
    const entry = Array.isArray(at)
      ? (at.find(({ id, obstacle }) => step === (id ?? obstacle)) ?? at[Number(step)])
      : (at as Readonly<Record<string, unknown>> | undefined)?.[step];
    at = entry;
  }
  return at;
}

const steps = (path: string): readonly string[] => path.split(".");

test("every folder holds the three files, and the walk finds them", () => {
  expect(folders).toEqual(readdirSync(ROOT));
  expect(folders.length).toBeGreaterThan(20);
  for (const folder of folders)
    expect(readdirSync(join(ROOT, folder)).sort()).toEqual(["expected.json", "motor.json", "stern.json"]);
});

test("every question fouls in some pair, fits in some, and is left unasked or untold where it must be", () => {
  const seen = folders.flatMap((folder) => Object.entries(expectedOf(folder).checks));
  for (const { id } of checks) {
    const outcomes = new Set(seen.filter(([check]) => check === id).map(([, outcome]) => outcome));
    expect([...outcomes], id).toContain("fouls");
    if (id !== "obstacle-room") expect([...outcomes], id).toContain("fits");
    expect(outcomes.size, id).toBeGreaterThan(1);
  }
});

describe.each(folders)("%s", (folder) => {
  const expected = expectedOf(folder);
  const report = reportOf(folder);

  test(expected.shows, () => {
    expect(Object.fromEntries(report.checks.map(({ id, outcome }) => [id, outcome]))).toEqual(
      expected.checks,
    );
    expect(report.verdict).toBe(expected.verdict);
    expect(report.governs).toBe(expected.governs);
  });

  test("numbers worked by hand", () => {
    expect(expected.why.length).toBeGreaterThan(0);
    const figures = expected.numbers.map(({ at }) => [at, figureAt(report, at)]);
    expect(expected.numbers.length).toBeGreaterThan(0);
    for (const [number, { at, is, within }] of expected.numbers.entries()) {
      const found = figures[number]![1];
      expect(found, `${at} is not in the report`).toBeTypeOf("number");
      const off = Math.abs((found as number) - is);
      expect(off, `${at}: ${found} for ${is}, worked by hand`).toBeLessThanOrEqual(within + 1e-9);
    }
  });

  test("what is missing, and what to measure next", () => {
    const of = (key: "missing" | "measureNext", ids: object | undefined) =>
      Object.fromEntries(Object.keys(ids ?? {}).map((id) => [id, figureAt(report, `checks.${id}.${key}`)]));
    expect(of("missing", expected.missing)).toEqual(expected.missing ?? {});
    expect(of("measureNext", expected.measureNext)).toEqual(expected.measureNext ?? {});
  });
});
