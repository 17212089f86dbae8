import { expect, test } from "vitest";
import { afloatWord, freeboardWith } from "#lib/fit/afloat-word.ts";
import { assess } from "#lib/fit/assess.ts";
import { motorOf, sternOf } from "#tests/lib/data/demo.ts";

test("one word for a list: the gravest answer, and which questions stand so", () => {
  // 11.2 kW and 51 kg on a label of 7.5 kW and 45 kg.
  const word = afloatWord(motorOf("15-hp-long-tiller-four-stroke"), sternOf("vee-tender-short-well"));
  expect(word.outcome).toBe("fouls");
  expect(word.ids).toEqual(expect.arrayContaining(["power", "motor-mass"]));
});

test("freeboard of a seat that is not cut yet: a seat 30 higher stands about 30 higher", () => {
  const [motor, stern] = [motorOf("15-hp-long-tiller-four-stroke"), sternOf("vee-runabout-long-well")];
  const now = assess(motor, stern).afloat.find(({ id }) => id === "freeboard")!;
  const told = now.figures.find(({ label }) => label === "Seat above the water, all aboard")!.value;
  expect(freeboardWith(motor, stern, 510)).toBeCloseTo(told, 1);
  expect(freeboardWith(motor, stern, 540)! - told).toBeCloseTo(30, 0);
});
