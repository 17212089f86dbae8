import { expect, test } from "vitest";
import { bothSystems, formatLength, shownMm } from "#lib/entry/length-format.ts";

test("millimetres without needless noughts", () => {
  expect(formatLength(394, "mm")).toBe("394 mm");
  expect(formatLength(393.7, "mm")).toBe("393.7 mm");
  expect(formatLength(1234.56, "mm")).toBe("1234.6 mm");
  expect(formatLength(393.7, "mm", { decimals: 0 })).toBe("394 mm");
});

test("inches with a reduced fraction", () => {
  // 393.7 / 25.4 = 15.5; 1.5875 = 25.4 / 16; 6.35 = 25.4 / 4.
  expect(formatLength(393.7, "in")).toBe("15 1/2 in");
  expect(formatLength(381, "in")).toBe("15 in");
  expect(formatLength(1.5875, "in")).toBe("1/16 in");
  expect(formatLength(6.35, "in")).toBe("1/4 in");
  expect(formatLength(393.7, "in", { division: 1 })).toBe("16 in");
});

test("a true minus sign, and never a minus nought", () => {
  expect(formatLength(-393.7, "in")).toBe("−15 1/2 in");
  expect(formatLength(-12.5, "mm")).toBe("−12.5 mm");
  expect(formatLength(-0.01, "mm")).toBe("0 mm");
  expect(formatLength(-0, "in")).toBe("0 in");
});

test("ties go away from zero", () => {
  expect(shownMm(0.25, "mm")).toBe(0.3);
  expect(shownMm(-0.25, "mm")).toBe(-0.3);
  expect(shownMm(1.005, "mm", { decimals: 2 })).toBe(1.01);
});

test("both systems, and about where a side is rounded", () => {
  expect(bothSystems(393.7)).toBe("393.7 mm = 15 1/2 in");
  expect(bothSystems(394)).toBe("394 mm = about 15 1/2 in");
  expect(bothSystems(382.5875)).toBe("about 382.6 mm = 15 1/16 in");
});
