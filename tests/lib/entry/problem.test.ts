import { expect, test } from "vitest";
import { isOneEditAway, jsonPointer } from "#lib/entry/problem.ts";

// RFC 6901, section 5: the pointers of its example document.
test("pointers are written as RFC 6901 has it", () => {
  expect(jsonPointer([])).toBe("");
  expect(jsonPointer(["foo", 0])).toBe("/foo/0");
  expect(jsonPointer([""])).toBe("/");
  expect(jsonPointer(["a/b"])).toBe("/a~1b");
  expect(jsonPointer(["m~n"])).toBe("/m~0n");
});

test("one slip of the finger is one edit", () => {
  for (const typed of ["shaftLengthM", "shaftLengthMmm", "shaftLenghtMm", "shaftLemgthMm", "SHAFTLENGTHMM"])
    expect(isOneEditAway(typed, "shaftLengthMm")).toBe(true);
  for (const typed of ["shaftLength", "shaftHeightMm", "", "mmLengthShaft"])
    expect(isOneEditAway(typed, "shaftLengthMm")).toBe(false);
});
