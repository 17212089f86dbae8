/** The guide beside the data says what the tables say, all of it. */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { motorFields } from "#lib/rig/motor.ts";
import { sternFields } from "#lib/rig/stern.ts";
import { GUIDE_PATH, measuringGuide } from "#tests/lib/data/measuring-guide.ts";

const kept = readFileSync(GUIDE_PATH, "utf8");

test("the guide is as the tables make it; renew it with npx tsx tests/lib/data/measuring-guide.ts", () => {
  expect(kept).toBe(measuringGuide());
});

test.each(Object.entries({ ...motorFields, ...sternFields }))(
  "%s is told once, from where to where",
  (key, field) => {
    expect(kept.split(`(\`${key}\`,`).length).toBe(2);
    expect(kept).toContain(field.take);
    if ("mistake" in field) expect(kept).toContain(field.mistake);
  },
);

test("it says that the records are invented, and how a number left out is written", () => {
  expect(kept).toContain("**invented**");
  expect(kept).toContain("left out: never 0, never null");
});
