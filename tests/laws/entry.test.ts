import fc from "fast-check";
import { expect, test } from "vitest";
import { readMotorForm } from "#lib/entry/form.ts";
import { formOf } from "#lib/entry/form-of.ts";
import { formatLength } from "#lib/entry/length-format.ts";
import { readLength } from "#lib/entry/length-text.ts";
import { readCsv, writeCsv } from "#lib/share/csv.ts";
import { readJson, writeRecord } from "#lib/share/json.ts";
import { anyMotor } from "#tests/lib/entry/any-record.ts";

test("a length is the same length whether typed in inches or in millimetres", () => {
  fc.assert(
    fc.property(fc.integer({ min: -64 * 600, max: 64 * 600 }), (sixtyFourths) => {
      // A 64th of an inch is 25.4 / 64 = 0.396875 mm exactly.
      const mm = sixtyFourths * 0.396875;
      const inches = readLength(formatLength(mm, "in", { division: 64 }), "in", { signed: true });
      const metric = readLength(`${mm.toFixed(6)} mm`, "mm", { signed: true });
      if (inches.kind !== "length" || metric.kind !== "length") throw new Error("both must be read");
      expect(inches.mm).toBe(metric.mm + 0);
    }),
    { numRuns: 5000 },
  );
});

test("a motor is the same motor by form, by CSV and by JSON", () => {
  fc.assert(
    fc.property(anyMotor, fc.constantFrom("mm" as const, "in" as const), (motor, system) => {
      const { typed, kinds } = formOf(motor, system);
      const form = readMotorForm(typed, kinds, system);
      expect(form.ok && form.record).toEqual(motor);
      expect(readCsv("motor", writeCsv("motor", [motor])).records).toEqual([motor]);
      expect(readJson("motor", writeRecord(motor)).records).toEqual([motor]);
    }),
    { numRuns: 200 },
  );
});
