import { expect, test } from "vitest";
import { motorGroups, sternGroups } from "#lib/entry/groups.ts";
import { motorSchema } from "#lib/entry/motor.ts";
import { sternSchema } from "#lib/entry/stern.ts";

const OUTSIDE = ["id", "label", "notes"];

test.each([
  ["motor", motorGroups, motorSchema],
  ["stern", sternGroups, sternSchema],
] as const)("the groups of a %s hold every key once, what buys most first", (_, groups, schema) => {
  const keys = groups.flatMap(({ keys }) => keys as readonly string[]);
  const all = Object.keys(schema.in.shape).filter((key) => !OUTSIDE.includes(key));
  expect([...keys].sort()).toEqual(all.sort());
  expect(groups.map(({ group }) => group)).toEqual(["hang", "notch", "well", "rest"]);
});
