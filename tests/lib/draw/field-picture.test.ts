import { describe, expect, test } from "vitest";
import { type FieldKey, fieldPicture, markedEnds } from "#lib/draw/field-picture.ts";
import { toSvg } from "#lib/draw/svg.ts";
import { motorFields } from "#lib/rig/motor.ts";
import { sternFields } from "#lib/rig/stern.ts";

const KEYS = Object.keys({ ...motorFields, ...sternFields }) as FieldKey[];

describe("a picture of how each number is taken", () => {
  test.each(KEYS)("%s: two distinct ends, both inside the picture", (key) => {
    const [a, b] = markedEnds(key);
    const { window, scale } = fieldPicture(key);
    // The dots are 1.6 mm across on paper: ends closer than that could not be told apart.
    expect(Math.hypot(a[0] - b[0], a[1] - b[1]) / scale).toBeGreaterThan(1.6 / 2);
    for (const [x, y] of [a, b]) {
      expect(x).toBeGreaterThanOrEqual(window.left);
      expect(x).toBeLessThanOrEqual(window.right);
      expect(y).toBeGreaterThanOrEqual(window.bottom);
      expect(y).toBeLessThanOrEqual(window.top);
    }
  });

  test.each(KEYS)("%s: is drawn, titled with the field's name, with the measurement in the accent", (key) => {
    const drawing = fieldPicture(key);
    expect(drawing.title).toBe({ ...motorFields, ...sternFields }[key].name);
    expect(drawing.marks.some((mark) => mark.tone === "accent")).toBe(true);
    expect(toSvg(drawing, { decoration: true })).toContain(`aria-hidden="true"`);
  });

  test("the shaft is measured from the saddle to the underside of the plate: plumb, 420 mm on the invented motor", () => {
    const [saddle, plate] = markedEnds("shaftLengthMm");
    expect(saddle[1] - plate[1]).toBeCloseTo(420, 6);
  });

  test("a raked face is longer than its height: the seat of the invented stern is taken plumb, 425 mm", () => {
    const [datum, seat] = markedEnds("seatMm");
    expect(seat[1] - datum[1]).toBeCloseTo(425, 6);
  });
});
