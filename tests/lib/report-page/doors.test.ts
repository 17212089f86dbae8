/** The tape and the estimates through the other two doors: the API and the command give what the engine gives. */
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, afterEach, beforeEach, describe, expect, test } from "vitest";
import * as fit from "#app/api/fit/route.ts";
import { allRecords, createRecord } from "#lib/db/records.ts";
import { motorSchema } from "#lib/entry/motor.ts";
import { sternSchema } from "#lib/entry/stern.ts";
import { assess } from "#lib/fit/assess.ts";
import { estimatesFor } from "#lib/fit/like-motors.ts";
import type { Report } from "#lib/fit/report.ts";
import type { Motor } from "#lib/rig/motor.ts";
import { ask, problemOf } from "#tests/lib/api/asking.ts";
import { temporaryStore } from "#tests/lib/db/temporary-store.ts";

const read = (name: string): Record<string, unknown>[] =>
  JSON.parse(readFileSync(`data/demo/${name}.json`, "utf8"));
const motors = read("motors").map((record) => motorSchema.parse(record));
const stern = sternSchema.parse(read("sterns").find(({ id }) => id === "vee-runabout-long-well"));
const whole = motors.find(({ id }) => id === "9-9-hp-long-tiller-four-stroke")!;
/** Three numbers nobody took, and two measured ones without a half-width of their own. */
const gappy: Motor = {
  ...whole,
  id: "gappy",
  shaftLengthMm: { value: 518, how: "measured" },
  bracketWidthMm: { value: 235, how: "measured" },
  tiltAxisAboveMm: undefined,
  cowlFrontMm: undefined,
  tillerLengthMm: undefined,
};
const sent = (record: object) => JSON.parse(JSON.stringify(record));
const spreadOf = (report: Report, id: string) =>
  report.checks.find((check) => check.id === id)?.expandedUncertaintyMm;

describe("the API", () => {
  let there: Awaited<ReturnType<typeof temporaryStore>>;
  beforeEach(async () => {
    there = await temporaryStore();
  });
  afterEach(() => there.remove());

  const asked = (more: object) =>
    ask(fit, "/api/fit", { method: "POST", body: { motor: sent(gappy), stern: sent(stern), ...more } });
  const reportOf = async (more: object): Promise<Report> => (await asked(more)).json() as Promise<Report>;

  test("reckons with the tape that was read: a coarser one leaves more doubt, and it is the engine's", async () => {
    const plain = await reportOf({});
    const usual = await reportOf({ tape: { tapeClass: "II", divisionMm: 1 } });
    const coarse = await reportOf({ tape: { tapeClass: "III", divisionMm: 5 } });
    expect(usual).toEqual(plain);
    expect(spreadOf(coarse, "bracket")).toBeGreaterThan(spreadOf(plain, "bracket")!);
    expect(coarse).toEqual(
      sent(assess(sent(gappy), stern, {}, { tape: { tapeClass: "III", divisionMm: 5 } })),
    );
  });

  test("fills gaps only when asked, from the motors kept, and keeps nothing of it", async () => {
    for (const motor of motors) await createRecord("motor", motor);
    expect((await reportOf({})).estimated).toBeUndefined();
    const filled = await reportOf({ estimateMissing: true });
    expect(filled.estimated?.map(({ key }) => key).sort()).toEqual([
      "cowlFrontMm",
      "tillerLengthMm",
      "tiltAxisAboveMm",
    ]);
    const kept = (await allRecords("motor")).map(({ record }) => record);
    expect(filled).toEqual(
      sent(assess(sent(gappy), stern, {}, { estimates: estimatesFor(sent(gappy), kept) })),
    );
    expect(kept).toHaveLength(motors.length);
    expect((await reportOf({ estimateMissing: false })).estimated).toBeUndefined();
  });

  test("with nothing kept fills nothing", async () => {
    expect((await reportOf({ estimateMissing: true })).estimated).toBeUndefined();
  });

  test.each([
    [{ tape: { tapeClass: "IV", divisionMm: 1 } }, "/tape/tapeClass"],
    [{ tape: { tapeClass: "II", divisionMm: 0 } }, "/tape/divisionMm"],
    [{ tape: { tapeClass: "II" } }, "/tape/divisionMm"],
    [{ tape: { tapeClass: "II", divisionMm: 1, colour: "red" } }, "/tape/colour"],
    [{ tape: "II-1" }, "/tape"],
    [{ estimateMissing: "yes" }, "/estimateMissing"],
  ])("says where %j is at fault", async (more, pointer) => {
    const { errors } = await problemOf(await asked(more), 422);
    expect(errors.map((each) => each.pointer)).toEqual([pointer]);
  });
});

describe("the command", () => {
  const folder = mkdtempSync(join(tmpdir(), "sternwright-fit-"));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  const file = (name: string, content: unknown): string => {
    const path = join(folder, name);
    writeFileSync(path, JSON.stringify(content));
    return path;
  };
  const [motorFile, sternFile] = [file("motor.json", gappy), file("stern.json", stern)];
  const run = (...words: string[]) => {
    const { status, stdout, stderr } = spawnSync(
      process.execPath,
      ["--import", "tsx", "app/_command/fit.ts", ...words],
      { encoding: "utf8" },
    );
    return { status, stdout, stderr };
  };

  test("called plainly gives the plain report and nothing else", () => {
    const { status, stdout, stderr } = run(motorFile, sternFile);
    expect([status, stderr]).toEqual([0, ""]);
    expect(JSON.parse(stdout)).toEqual(sent(assess(sent(gappy), stern)));
  });

  test("takes the tape and like motors wherever they stand", () => {
    const like = file("like.json", motors);
    const { status, stdout } = run("--tape", "III-1/4in", motorFile, "--like", like, sternFile);
    const estimates = estimatesFor(sent(gappy), motors);
    const tape = { tapeClass: "III", divisionMm: 6.35 } as const;
    expect(status).toBe(0);
    expect(JSON.parse(stdout)).toEqual(sent(assess(sent(gappy), stern, {}, { tape, estimates })));
    expect(estimates).toHaveLength(3);
  });

  test.each([
    [["--tape", "IV-1"], "“IV-1” is no tape known here"],
    [["--tape"], "--tape wants a value"],
    [["--like", motorFile], "must be an array of motors"],
    [["--like", "/nowhere.json"], "cannot be read"],
    [["--colour", "red"], "Give two files"],
  ])("ends with 2 and a reason for %j", (words, reason) => {
    const { status, stdout, stderr } = run(motorFile, sternFile, ...words);
    expect([status, stdout]).toEqual([2, ""]);
    expect(stderr).toContain(reason);
  });
});
