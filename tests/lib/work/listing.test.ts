/** Long lists beside the pages: the same rows as one by one, kept while nothing changes, told how far they are. */

import { describe, expect, test } from "vitest";
import { listing, within } from "#app/_work/listing.ts";
import demoMotors from "#data/demo/motors.json" with { type: "json" };
import sterns from "#data/demo/sterns.json" with { type: "json" };
import { rowOf } from "#lib/fit/shortlist.ts";
import type { Motor } from "#lib/rig/motor.ts";
import type { Stern } from "#lib/rig/stern.ts";
import { manyMotors } from "#tests/bench/many-motors.ts";

const all = sterns as unknown as Stern[];
const skiff = all.find(({ id }) => id === "flat-skiff-short")!;
const runabout = all.find(({ id }) => id === "vee-runabout-long-well")!;

describe("A long list", () => {
  const motors = manyMotors(700);

  test("has the rows its pairings have one by one, worked in threads", async () => {
    const rows = await listing({ name: "threads", motors, sterns: [skiff], whole: true }).rows;
    expect(rows).toHaveLength(700);
    for (const i of [0, 199, 200, 401, 699]) expect(rows[i]).toEqual(rowOf(motors[i]!, skiff));
  });

  test("leaves out what a standing part settles, and only that", async () => {
    const rows = await listing({ name: "short", motors: motors.slice(0, 150), sterns: [runabout] }).rows;
    const settled = rows.filter((row) => row === null).length;
    expect(settled).toBeGreaterThan(20);
    for (const [i, row] of rows.entries()) {
      const one = rowOf(motors[i]!, runabout);
      if (row === null) expect(one.verdict).toBe("fouls");
      else expect(row).toMatchObject({ verdict: one.verdict, governs: one.governs, missing: one.missing });
    }
  });

  test("is told motor by motor when there are several sterns, and counts to its total", async () => {
    const few = motors.slice(0, 4);
    const list = listing({ name: "square", motors: few, sterns: [skiff, runabout], whole: true });
    expect(list.total).toBe(8);
    const rows = await list.rows;
    expect(rows.map((row) => `${row!.motor} ${row!.stern}`)).toEqual(
      few.flatMap(({ id }) => [`${id} ${skiff.id}`, `${id} ${runabout.id}`]),
    );
    expect(list.done()).toBe(8);
  });

  test("asks for a changed motor again, and knows one of the same numbers under another id", async () => {
    const first = (demoMotors as unknown as Motor[]).find(
      ({ id }) => id === "6-hp-short-tiller-four-stroke",
    )!;
    const twin = { ...first, id: "a-twin" };
    const raised = { ...first, shaftLengthMm: { value: 900, how: "measured" as const } };
    const list = (motor: Motor, name: string) =>
      listing({ name, motors: [motor], sterns: [skiff], whole: true }).rows;
    const [row] = await list(first, "once");
    expect((await list(twin, "twin"))[0]).toEqual({ ...row, motor: "a-twin" });
    // A leg of 900 mm on a short-shaft seat fouls whatever it did before.
    expect((await list(raised, "raised"))[0]!.verdict).toBe("fouls");
  });

  test("is not there yet when asked too early", async () => {
    const list = listing({ name: "early", motors: manyMotors(900).slice(700), sterns: all });
    expect(await within(list, 0)).toBeUndefined();
    expect(await list.rows).toHaveLength(200 * all.length);
  });
});
