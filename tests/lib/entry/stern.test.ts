import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { z } from "zod";
import { fitRequestSchema } from "#lib/entry/pairing.ts";
import { problems } from "#lib/entry/problem.ts";
import { sternPatchSchema, sternSchema } from "#lib/entry/stern.ts";
import { sternFields } from "#lib/rig/stern.ts";
import { anyMotor, anyStern } from "#tests/lib/entry/any-record.ts";

const base = { id: "dory", label: "Dory" };
const faultsOf = (schema: z.ZodType, given: unknown) => {
  const result = schema.safeParse(given);
  return result.success ? [] : problems(result.error).map(({ pointer, code }) => `${pointer} ${code}`);
};

test("every generated stern stays as it is", () => {
  fc.assert(
    fc.property(anyStern, (stern) => {
      expect(sternSchema.parse(stern)).toEqual(stern);
    }),
    { numRuns: 300 },
  );
});

test.each(Object.entries(sternFields))(
  "%s is taken at both ends of its range and refused beyond",
  (key, { min, max }) => {
    expect(faultsOf(sternSchema, { ...base, [key]: min })).toEqual([]);
    expect(faultsOf(sternSchema, { ...base, [key]: max })).toEqual([]);
    expect(faultsOf(sternSchema, { ...base, [key]: min - 0.01 })).toEqual([`/${key} out-of-range`]);
    expect(faultsOf(sternSchema, { ...base, [key]: max + 0.01 })).toEqual([`/${key} out-of-range`]);
  },
);

test.each<[string, object]>([
  ["/seatMm impossible", { seatMm: 651, transomTopMm: 500 }],
  ["/plateLowMm impossible", { plateLowMm: 10, plateHighMm: 0 }],
  ["/notchWidthMm impossible", { notchWidthMm: 1201, transomWidthMm: 1200 }],
  ["/notchCornerRadiusMm impossible", { notchCornerRadiusMm: 60, notchWidthMm: 100 }],
  ["/keelDepthMm impossible", { keelDepthMm: 400, transomTopMm: 390 }],
  ["/transomWidthMm impossible", { transomWidthMm: 1600, beamMm: 1500 }],
  ["/waterlineLengthMm impossible", { waterlineLengthMm: 4200, lengthOverallMm: 4000 }],
  ["/drainCount not-allowed", { drainCount: 1.5 }],
  ["/hullForm not-allowed", { hullForm: "tunnel" }],
  ["/limits/soleRoomMm out-of-range", { limits: { soleRoomMm: -1 } }],
  ["/limits/soleRomMm unknown-key", { limits: { soleRomMm: 1 } }],
  ["/limits/plateLowMm impossible", { limits: { plateLowMm: 5, plateHighMm: 0 } }],
])("refused: %s", (fault, given) => {
  expect(faultsOf(sternSchema, { ...base, ...given })).toEqual([fault]);
});

test("odd but possible sterns are taken", () => {
  for (const given of [
    { seatMm: 640, transomTopMm: 500 },
    { transomWidthMm: 1510, beamMm: 1500 },
    { notchCornerRadiusMm: 50, notchWidthMm: 100 },
    { wellFrontHeightMm: 0 },
    { soleDropMm: 20, wellDepthMm: 3000 },
  ])
    expect(faultsOf(sternSchema, { ...base, ...given })).toEqual([]);
});

describe("a request to try a pairing", () => {
  test("both in full, or both by id", () => {
    fc.assert(
      fc.property(anyMotor, anyStern, (motor, stern) => {
        expect(fitRequestSchema.parse({ motor, stern })).toEqual({ motor, stern });
      }),
      { numRuns: 50 },
    );
    const byId = { motorId: "a", sternId: "b", limits: { soleRoomMm: 30 } };
    expect(fitRequestSchema.parse(byId)).toEqual(byId);
  });

  test.each<[unknown, string[]]>([
    [{ motor: { ...base, massKg: JSON.parse("1e309") }, stern: base }, ["/motor/massKg wrong-type"]],
    [{ motor: base, stern: { ...base, seatMm: 5 } }, ["/stern/seatMm out-of-range"]],
    [{ motor: base }, ["/stern missing"]],
    [{}, ["/motor missing", "/stern missing"]],
    [{ motorId: "a" }, ["/sternId missing"]],
    [{ motor: base, stern: base, limits: { x: 1 } }, ["/limits/x unknown-key"]],
    [{ motor: base, stern: base, role: "owner" }, ["/role unknown-key"]],
    [null, [" wrong-type"]],
    [[], [" wrong-type"]],
  ])("%o", (given, expected) => {
    expect(faultsOf(fitRequestSchema, given)).toEqual(expected);
  });
});

test("the JSON Schemas can be written", () => {
  for (const schema of [sternSchema, sternPatchSchema]) {
    const written = z.toJSONSchema(schema, { io: "input" });
    expect(Object.keys(written.properties ?? {})).toEqual(expect.arrayContaining(Object.keys(sternFields)));
  }
  expect(z.toJSONSchema(fitRequestSchema, { io: "input" }).anyOf).toHaveLength(2);
});
