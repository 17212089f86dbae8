/** Generated motors and sterns for the laws: any keys, any hows, boxes, lists, and texts of every kind. */
import fc from "fast-check";
import type { z } from "zod";
import { MOST_BOXES } from "#lib/entry/box.ts";
import { impossibleMotor, motorSchema } from "#lib/entry/motor.ts";
import { impossibleStern, sternSchema } from "#lib/entry/stern.ts";
import { labelSchema, notesSchema } from "#lib/entry/text.ts";
import type { How } from "#lib/quantity/measured.ts";
import type { Field } from "#lib/rig/field.ts";
import { type Motor, motorFields, SHAFT_CLASSES, STEERINGS, STROKES } from "#lib/rig/motor.ts";
import { HULL_FORMS, type Stern, sternFields } from "#lib/rig/stern.ts";

const settle = (value: number): number => (Math.abs(value) < 1e-6 ? 0 : value);
const double = (min: number, max: number) =>
  fc.oneof(
    fc.double({ min, max, noNaN: true }).map(settle),
    fc.integer({ min: Math.ceil(min * 10), max: Math.floor(max * 10) }).map((tenths) => tenths / 10),
  );
const how = fc.constantFrom<How>("measured", "declared", "estimated");
const taken = <V>(value: fc.Arbitrary<V>) =>
  fc.record({ value, how, plusMinus: double(0, 500) }, { requiredKeys: ["value", "how"] });

const nasty = fc.constantFrom(
  "=1+1",
  "+44",
  "-5",
  "@x",
  "\t=x",
  "'quoted",
  "''=1",
  'say "15"',
  "a,b;c",
  "line\nline",
  "\r\n=2",
  "ﬁ é e\u0301",
  "＝1",
  "１５",
  "=cmd|' /C calc'!A0",
  "<script>alert(1)</script>",
  '{"a":1}',
  "15",
  "true",
  "null",
  "1,5",
  "#x",
  "日本語",
  "👍",
  "'-",
  "'",
  '"',
  "\\",
  "e\u0301",
);
const anyText = fc.oneof(
  nasty,
  fc.string({ unit: "grapheme", maxLength: 30 }),
  fc.array(fc.oneof(nasty, fc.string({ maxLength: 5 })), { maxLength: 5 }).map((list) => list.join("")),
);
const through = (schema: z.ZodType<string>) =>
  anyText
    .map((text) => schema.safeParse(text))
    .filter(({ success }) => success)
    .map(({ data }) => data as string);
export const anyLabel = through(labelSchema());
export const anyNotes = through(notesSchema).filter((text) => text !== "");
export const anyId = fc.stringMatching(/^[a-z0-9]{1,12}(-[a-z0-9]{1,8}){0,3}$/);

const coordinate = double(-3000, 3000);
const corner = fc.tuple(coordinate, coordinate, coordinate);
const box = fc
  .record({ label: anyLabel, fromMm: corner, toMm: corner })
  .filter(({ fromMm, toMm }) => fromMm.every((from, axis) => Math.abs(from - toMm[axis]!) >= 0.1));
const boxes = fc.uniqueArray(box, { maxLength: 4, selector: ({ label }) => label });
const motorBoxes = boxes.chain((list) =>
  fc.tuple(...list.map((one) => fc.constantFrom("tilting", "steered").map((group) => ({ ...one, group })))),
);

const numbers = (fields: Readonly<Record<string, Field>>) =>
  Object.fromEntries(Object.entries(fields).map(([key, { min, max }]) => [key, taken(double(min, max))]));
const angles = fc
  .uniqueArray(double(-30, 60), { minLength: 1, maxLength: 12 })
  .map((list) => list.sort((a, b) => a - b));
const common = { id: anyId, label: anyLabel };

/** A record without the numbers that would make it impossible. */
function possible<T extends object>(record: T, find: (record: T) => readonly { readonly at: string }[]): T {
  const bad = find(record).map(({ at }) => at);
  if (bad.length === 0) return record;
  return possible(
    Object.fromEntries(Object.entries(record).filter(([key]) => !bad.includes(key))) as T,
    find,
  );
}

export const anyMotor: fc.Arbitrary<Motor> = fc
  .record(
    {
      ...common,
      notes: anyNotes,
      ...numbers(motorFields),
      pinAnglesDeg: taken(angles),
      shaftClass: fc.constantFrom(...SHAFT_CLASSES),
      steering: fc.constantFrom(...STEERINGS),
      strokes: fc.constantFrom(...STROKES),
      year: fc.integer({ min: 1900, max: 2100 }),
      tillerFolds: fc.boolean(),
      extraSolids: motorBoxes,
    },
    { requiredKeys: ["id", "label"] },
  )
  .map((record) => possible(record as unknown as Motor, impossibleMotor))
  .filter((record) => motorSchema.safeParse(record).success);

export const anyStern: fc.Arbitrary<Stern> = fc
  .record(
    {
      ...common,
      notes: anyNotes,
      ...numbers(sternFields),
      hullForm: fc.constantFrom(...HULL_FORMS),
      hardChine: fc.boolean(),
      drainCount: fc.integer({ min: 0, max: MOST_BOXES }),
      obstacles: boxes,
      limits: fc.record(
        {
          plateHighMm: double(0, 200),
          plateLowMm: double(-300, 0),
          soleRoomMm: double(0, 1000),
          plateAttitudeDeg: double(0, 45),
        },
        { requiredKeys: [] },
      ),
    },
    { requiredKeys: ["id", "label"] },
  )
  .map((record) => possible(record as unknown as Stern, impossibleStern))
  .filter((record) => sternSchema.safeParse(record).success);
