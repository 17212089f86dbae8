/** Generated records: sound, plausible, the same every time, and open about what they are. */
import { expect, test } from "vitest";
import { generatedRecords } from "#app/_command/generated-records.ts";
import { motorSchema } from "#lib/entry/motor.ts";
import { sternSchema } from "#lib/entry/stern.ts";
import { assess } from "#lib/fit/assess.ts";
import type { Motor } from "#lib/rig/motor.ts";
import type { Stern } from "#lib/rig/stern.ts";

/** How many lengths and angles of a motor are known. */
const count = (motor: Motor) => Object.keys(motor).filter((key) => /(Mm|Deg)$/.test(key)).length;
const WANTED = { motors: 500, sterns: 200, seed: 3 };
const all = [...generatedRecords(WANTED)];
const motors = all.filter(({ kind }) => kind === "motor").map(({ record }) => record as Motor);
const sterns = all.filter(({ kind }) => kind === "stern").map(({ record }) => record as Stern);

test("every one is a record the forms would take, with an id of its own", () => {
  expect([motors.length, sterns.length]).toEqual([500, 200]);
  for (const motor of motors) expect(motorSchema.safeParse(motor)).toMatchObject({ success: true });
  for (const stern of sterns) expect(sternSchema.safeParse(stern)).toMatchObject({ success: true });
  expect(new Set(all.map(({ record }) => record.id)).size).toBe(700);
});

test("every one says that it is generated", () => {
  for (const { record } of all)
    expect(record.notes).toMatch(/^Generated for trials \(seed 3\); there is no such/);
});

test("one seed gives the same ones, however many are asked for; another gives others", () => {
  expect([...generatedRecords({ ...WANTED, motors: 20, sterns: 0 })].map(({ record }) => record)).toEqual(
    motors.slice(0, 20),
  );
  const [other] = generatedRecords({ ...WANTED, seed: 4 });
  expect({ ...other?.record, id: "", notes: "" }).not.toEqual({ ...motors[0], id: "", notes: "" });
});

test("powers, classes and completeness are mixed", () => {
  expect(new Set(motors.map(({ powerKw }) => powerKw?.value)).size).toBeGreaterThan(10);
  expect(new Set(motors.map(({ shaftClass }) => shaftClass))).toEqual(
    new Set(["short", "long", "extra-long", "ultra-long"]),
  );
  expect(motors.some((motor) => count(motor) > 25)).toBe(true);
  expect(motors.some((motor) => count(motor) < 5)).toBe(true);
});

test("tried against each other, some of those measured through fit and some foul", () => {
  const cut = sterns.filter(({ seatMm }) => seatMm).slice(0, 12);
  const verdicts = cut.flatMap((stern) => {
    const near = (motor: Motor) => Math.abs((motor.shaftLengthMm?.value ?? 0) - stern.seatMm!.value) < 40;
    const whole = motors.filter((motor) => near(motor) && count(motor) > 25);
    return whole.slice(0, 8).map((motor) => assess(motor, stern).verdict);
  });
  expect(verdicts).toEqual(expect.arrayContaining(["fits", "fouls"]));
});
