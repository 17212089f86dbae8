/** The same pairing said otherwise gives the same answers: inches for millimetres, port for starboard. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type FormResult, readMotorForm, readSternForm, type TypedForm } from "#lib/entry/form.ts";
import { formOf } from "#lib/entry/form-of.ts";
import type { LengthSystem } from "#lib/entry/length-format.ts";
import { assess } from "#lib/fit/assess.ts";
import { examine } from "#lib/fit/examine.ts";
import type { Measured } from "#lib/quantity/measured.ts";
import type { Field } from "#lib/rig/field.ts";
import { type Corner, type Motor, motorFields } from "#lib/rig/motor.ts";
import { type Stern, sternFields } from "#lib/rig/stern.ts";
import { keysOf, type Pair, pair, withNumbers } from "#tests/laws/pair.ts";

const RUNS = { seed: 71, numRuns: 25 };
const anyPair = fc.integer({ min: 0, max: 100_000 }).map(pair);

/** A sixteenth of an inch is 25.4 / 16 = 1.5875 mm exactly. */
const SIXTEENTH_MM = 1.5875;
const fields: Readonly<Record<string, Field>> = { ...motorFields, ...sternFields };

/** As a tape reads: 20 3/16 in; and as a calculator does: 512.7625 mm. */
function typed(mm: number, system: LengthSystem): string {
  const sixteenths = Math.round(mm / SIXTEENTH_MM);
  if (system === "mm") return `${(sixteenths * SIXTEENTH_MM).toFixed(4)} mm`;
  const [sign, size] = [sixteenths < 0 ? "-" : "", Math.abs(sixteenths)];
  return `${sign}${Math.floor(size / 16)} ${size % 16}/16 in`.replace(" 0/16", "");
}

/** A record with every length typed to the nearest sixteenth, in one system or the other, and read as a form reads it. */
function read<R extends Motor | Stern>(
  record: R,
  system: LengthSystem,
  readForm: (
    form: TypedForm,
    kinds: ReturnType<typeof formOf>["kinds"],
    usual: LengthSystem,
  ) => FormResult<R>,
): R {
  const { typed: texts, kinds } = formOf(record, "mm");
  const lengths = keysOf(record)
    .filter((key) => fields[key]!.unit === "mm")
    .map((key) => {
      const entry = record[key as keyof R] as Measured;
      const plusMinus = typed(Math.max(entry.plusMinus ?? 2, SIXTEENTH_MM), system);
      return [key, { text: typed(entry.value, system), how: entry.how, plusMinus }];
    });
  const result = readForm({ ...texts, ...Object.fromEntries(lengths) }, kinds, system);
  if (!result.ok) throw new Error(JSON.stringify(result));
  return result.record;
}

describe("The same pairing", () => {
  test("typed in inches or in millimetres gives the same report, to the last digit", () => {
    fc.assert(
      fc.property(anyPair, ({ motor, stern }) => {
        const [mm, inches] = (["mm", "in"] as const).map((system) =>
          assess(read(motor, system, readMotorForm), read(stern, system, readSternForm)),
        );
        expect(inches).toEqual(mm);
        expect(mm!.checks.filter(({ outcome }) => outcome !== "not asked").length).toBeGreaterThan(4);
      }),
      RUNS,
    );
  });

  test("mirrored, swaps port and starboard and nothing else", () => {
    fc.assert(
      fc.property(anyPair, (one) => {
        const other = mirrored(one);
        const [here, there] = [one, other].map(({ motor, stern }) => examine(motor, stern));
        here!.answers.forEach((answer, number) => {
          const twin = there!.answers[number]!;
          expect(Math.abs((answer.ruling?.margin ?? 0) - (twin.ruling?.margin ?? 0))).toBeLessThan(
            slack(answer),
          );
          // A margin within the two certificates of its limit may fall to either side.
          const sure = answer.ruling && Math.abs(Math.abs(answer.ruling.margin) - 2 * answer.ruling.u) > 0.1;
          if (sure && !answer.ruling.jumps) expect(twin.outcome, answer.check.id).toBe(answer.outcome);
        });
        for (const id of here!.mounting.obstacleIds) {
          const [a, b] = [here!.mounting.clearance(id)!.mm, there!.mounting.clearance(swapped(id))!.mm];
          expect(Math.abs(a - b), id).toBeLessThan(Math.min(a, b) < 0 ? 1.02 : 0.02);
        }
      }),
      { ...RUNS, numRuns: 120 },
    );
  });
});

/** Two certified clearances may differ by both certificates: a hundredth each, a millimetre where they overlap. */
const slack = ({ ruling }: ReturnType<typeof examine>["answers"][number]): number =>
  ruling && ruling.edge.have < 0 && ruling.edge.anew ? 1.02 : 0.02;

const swapped = (id: string): string =>
  id.startsWith("obstacle:")
    ? id
    : id.replace(/port$|starboard$/, (side) => (side === "port" ? "starboard" : "port"));

const acrossCorner = ([x, y, z]: Corner): Corner => [x, -y, z];
const across = <B extends { readonly fromMm: Corner; readonly toMm: Corner }>(box: B): B => ({
  ...box,
  fromMm: acrossCorner(box.fromMm),
  toMm: acrossCorner(box.toMm),
});

function mirrored({ motor, stern }: Pair): Pair {
  const { steerPortDeg, steerStarboardDeg, extraSolids } = motor;
  const turned = withNumbers(motor, (entry, key) =>
    key === "tillerOffsetMm" ? ({ ...entry, value: -(entry as Measured).value } as Measured) : entry,
  );
  return {
    motor: {
      ...turned,
      steerPortDeg: steerStarboardDeg!,
      steerStarboardDeg: steerPortDeg!,
      ...(extraSolids && { extraSolids: extraSolids.map(across) }),
    },
    stern: { ...stern, ...(stern.obstacles && { obstacles: stern.obstacles.map(across) }) },
  };
}
