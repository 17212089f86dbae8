/** The short way to "it fouls" and the long one never disagree, whatever is missing. */
import { expect, test } from "vitest";
import motors from "#data/demo/motors.json" with { type: "json" };
import sterns from "#data/demo/sterns.json" with { type: "json" };
import { examine } from "#lib/fit/examine.ts";
import { foulsStanding, STANDING } from "#lib/fit/settled.ts";
import { rowOf } from "#lib/fit/shortlist.ts";
import type { Motor } from "#lib/rig/motor.ts";
import type { Stern } from "#lib/rig/stern.ts";
import { keysOf, type Pair, pair } from "#tests/laws/pair.ts";

const club: Pair[] = (motors as unknown as Motor[]).flatMap((motor) =>
  (sterns as unknown as Stern[]).map((stern) => ({ motor, stern })),
);

/** A pair with every `step`th of its numbers taken away. */
function thinned({ motor, stern }: Pair, step: number): Pair {
  const less = <R extends Motor | Stern>(record: R): R => {
    const gone = keysOf(record).filter((_, number) => number % step === step - 1);
    return Object.fromEntries(Object.entries(record).filter(([key]) => !gone.includes(key))) as R;
  };
  return { motor: less(motor), stern: less(stern) };
}

const trials: Pair[] = [
  ...club,
  ...Array.from({ length: 150 }, (_, start) => pair(start)),
  ...Array.from({ length: 150 }, (_, start) => thinned(pair(start), 3 + (start % 9))),
];

test("a pairing is settled by a standing foul just where one of the standing questions fouls", () => {
  const only = STANDING.map(({ id }) => id);
  let settled = 0;
  for (const { motor, stern } of trials) {
    const fouls = examine(motor, stern, { only }).answers.some(({ outcome }) => outcome === "fouls");
    expect(foulsStanding(motor, stern), `${motor.id} on ${stern.id}`).toBe(fouls);
    if (fouls) settled += 1;
  }
  expect(settled).toBeGreaterThan(300);
  expect(settled).toBeLessThan(trials.length - 200);
});

test("a row of a list has the verdict of the whole report", () => {
  for (const { motor, stern } of trials.filter((_, number) => number % 3 === 0))
    expect(rowOf(motor, stern).verdict, `${motor.id} on ${stern.id}`).toBe(
      examine(motor, stern).governing.outcome,
    );
});
