import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { readField, readList } from "#app/_parts/form/read-field.ts";
import { readForm, usualUnit } from "#app/_parts/form/read-form.ts";
import { textsOf } from "#app/_parts/form/texts.ts";
import { changesBetween } from "#app/_parts/record/changes.ts";
import { inches } from "#lib/quantity/length.ts";
import { type Motor, motorFields } from "#lib/rig/motor.ts";
import { type Stern, sternFields } from "#lib/rig/stern.ts";

const demo = <T>(name: string): T[] => JSON.parse(readFileSync(`data/demo/${name}.json`, "utf8"));

/** Records as kept: a number given bare counts as measured. */
const motors = demo<Motor>("motors");
const sterns = demo<Stern>("sterns");

describe("a record put into its form and read back is the same record", () => {
  it.each(motors.map((motor) => [motor.id, motor] as const))("motor %s", (id, motor) => {
    expect(readForm("motor", id, textsOf("motor", motor))).toEqual({ record: motor, troubles: [] });
  });

  it.each(sterns.map((stern) => [stern.id, stern] as const))("stern %s", (id, stern) => {
    expect(readForm("stern", id, textsOf("stern", stern))).toEqual({ record: stern, troubles: [] });
  });

  it("down to the sixty-fourth of an inch, whatever looks like thousands", () => {
    for (const sixtyfourths of [1, 7, 63, 64 * 15 + 40, 64 * 22 + 1]) {
      const seat: Stern = {
        id: "s",
        label: "s",
        obstacles: [],
        beamMm: { value: 1500.125, how: "measured" },
      };
      const wellDepth = {
        value: inches(sixtyfourths / 64) + 200,
        how: "declared",
        plusMinus: inches(1 / 16),
      } as const;
      const stern: Stern = { ...seat, wellDepthMm: wellDepth };
      const back = readForm("stern", "s", textsOf("stern", stern)).record!;
      expect(back.wellDepthMm!.value).toBeCloseTo(wellDepth.value, 6);
      expect(back.wellDepthMm!.plusMinus).toBeCloseTo(wellDepth.plusMinus, 6);
      expect(back.beamMm!.value).toBe(1500.125);
    }
  });
});

describe("what is typed", () => {
  it("is read as a length of the record's own size, and a bare one is asked", () => {
    expect(readField(motorFields.shaftLengthMm, '20 1/2"')).toMatchObject({ kind: "value", value: 520.7 });
    const asked = readField(motorFields.shaftLengthMm, "20 1/2");
    // 20 1/2 ft of shaft is beyond any motor, so inches are the only reading; it is asked all the same.
    expect(asked).toMatchObject({ kind: "ask", readings: [{ value: 520.7 }] });
    expect(readField(sternFields.lengthOverallMm, "15").kind).toBe("ask");
  });

  it("is refused in words beyond what a motor can be, with nothing guessed", () => {
    expect(readField(motorFields.shaftLengthMm, "9 m")).toMatchObject({
      kind: "refused",
      says: "Shaft length must lie between 200 and 1000 mm; you gave 9000.",
    });
    expect(readField(motorFields.cowlWidthMm, "-30 mm").kind).toBe("refused");
    expect(readField(motorFields.tiltAxisAboveMm, "-30 mm")).toMatchObject({ kind: "value", value: -30 });
  });

  it("is a list of holes with commas, semicolons or blanks, decimal commas where semicolons divide", () => {
    for (const text of ["4, 8, 12", "4 8 12", "4;8;12", "4,8,12"])
      expect(readList(motorFields.pinAnglesDeg, text)).toMatchObject({ kind: "value", value: [4, 8, 12] });
    expect(readList(motorFields.pinAnglesDeg, "4,5; 8,5")).toMatchObject({ value: [4.5, 8.5] });
    expect(readList(motorFields.pinAnglesDeg, "8, 4").kind).toBe("refused");
  });

  it("is told box by box, each in words, and never keeps the others from being read", () => {
    const { record, troubles } = readForm("motor", "m", {
      label: "Mixed",
      shaftLengthMm: "20 1/2",
      cowlTopMm: "1e3mm",
      year: "about 1990",
      massKg: "45 kg",
    });
    expect(record).toBeUndefined();
    expect(troubles.map(({ name }) => name).sort()).toEqual(["cowlTopMm", "shaftLengthMm", "year"]);
  });

  it("cannot be impossible as a whole", () => {
    const { troubles } = readForm("motor", "m", {
      label: "Odd",
      clampOpeningMinMm: "60 mm",
      clampOpeningMaxMm: "50 mm",
    });
    expect(troubles).toMatchObject([
      { name: "clampOpeningMinMm", label: "Thinnest transom the clamps hold" },
    ]);
  });
});

describe("how a number was come by", () => {
  const read = (texts: Record<string, string>) => readForm("motor", "m", { label: "m", ...texts }).record!;

  it("is measured unless the head or the number says otherwise; power and mass are off papers", () => {
    const motor = read({
      shaftLengthMm: "500 mm",
      massKg: "40 kg",
      cowlTopMm: "400 mm",
      "cowlTopMm.how": "estimated",
    });
    expect([motor.shaftLengthMm!.how, motor.massKg!.how, motor.cowlTopMm!.how]).toEqual([
      "measured",
      "declared",
      "estimated",
    ]);
    expect(read({ how: "declared", shaftLengthMm: "500 mm" }).shaftLengthMm!.how).toBe("declared");
  });

  it("carries a spread in any unit, millimetres where none is written", () => {
    expect(read({ shaftLengthMm: "500 mm", "shaftLengthMm.plusMinus": "2" }).shaftLengthMm!.plusMinus).toBe(
      2,
    );
    expect(
      read({ shaftLengthMm: "500 mm", "shaftLengthMm.plusMinus": '1/8"' }).shaftLengthMm!.plusMinus,
    ).toBe(3.175);
  });
});

it("the unit most lengths are written in comes first where one has to be asked", () => {
  const texts = { seatMm: '15 1/2"', beamMm: "60 in", wellDepthMm: "500 mm" };
  expect(usualUnit("stern", texts)).toBe("in");
  expect(usualUnit("stern", {})).toBeUndefined();
});

it("a history names what differs between two versions, and nothing else", () => {
  const before: Stern = {
    id: "s",
    label: "Dinghy",
    seatMm: { value: 381, how: "measured" },
    hullForm: "flat",
  };
  const after: Stern = { ...before, seatMm: { value: 394, plusMinus: 1, how: "estimated" } };
  expect(changesBetween("stern", before, after)).toEqual([
    { name: "Seat height", was: "381 mm (measured)", now: "394 mm ± 1 mm (estimated)" },
  ]);
});
