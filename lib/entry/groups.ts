/**
 * The groups a form asks in, in the order that buys most first: each says in a boatyard's words what its
 * numbers answer. Keys come from the field tables; facts that are not measured stand where they are used.
 */
import type { Field, Group } from "#lib/rig/field.ts";
import { type Motor, motorFields } from "#lib/rig/motor.ts";
import { type Stern, sternFields } from "#lib/rig/stern.ts";

/** One group of a form. `keys` are in the order of asking: facts first, then numbers as the measuring guide takes them. */
export interface FormGroup<Key> {
  readonly group: Group;
  readonly title: string;
  /** What filling it in buys. */
  readonly buys: string;
  readonly keys: readonly Key[];
}

/** A key of a motor or a stern that a form asks for in a group; id, label and notes stand outside. */
export type MotorFormKey = Exclude<keyof Motor, "id" | "label" | "notes">;
export type SternFormKey = Exclude<keyof Stern, "id" | "label" | "notes">;

type Facts<Key> = Readonly<Record<Group, readonly Key[]>>;
type Words = Readonly<Record<Group, { readonly title: string; readonly buys: string }>>;

const ORDER = ["hang", "notch", "well", "rest"] as const satisfies readonly Group[];

const MOTOR_FACTS: Facts<MotorFormKey> = {
  hang: ["shaftClass", "fixing"],
  notch: ["steering", "tillerFolds"],
  well: [],
  rest: ["strokes", "year", "extraSolids"],
};
const STERN_FACTS: Facts<SternFormKey> = {
  hang: ["hullForm"],
  notch: [],
  well: ["drainCount"],
  rest: ["hardChine", "obstacles", "limits"],
};

const MOTOR_WORDS: Words = {
  hang: {
    title: "Will it hang and run right?",
    buys: "Enough to tell whether the clamps hold, where the plate will run, and in which pin hole.",
  },
  notch: {
    title: "Will it steer in the notch?",
    buys: "What turns and how far: tells how wide a notch must be for hard over both ways.",
  },
  well: {
    title: "Will it tilt in the well?",
    buys: "What reaches down inside the boat: tells how deep a well must be for clamps and handles.",
  },
  rest: {
    title: "Power, mass, propeller and the rest",
    buys: "For the power rules, the trim with the motor aboard, and the propeller's place in the water.",
  },
};
const STERN_WORDS: Words = {
  hang: {
    title: "Will a motor hang and run right?",
    buys: "Enough to tell whether clamps hold, and whether the plate comes to run where this hull wants it.",
  },
  notch: {
    title: "Will it steer in the notch?",
    buys: "How wide the notch is: tells whether a motor can be put hard over both ways.",
  },
  well: {
    title: "Will it tilt in the well?",
    buys: "The well's sole, front and sides: tells how far a motor can be tilted before it touches.",
  },
  rest: {
    title: "Hull, water, label and the rest",
    buys: "For the power rules, the water over the transom, and whatever else stands in the motor's way.",
  },
};

function groupsOf<Key extends string>(
  fields: Readonly<Record<string, Field>>,
  facts: Facts<Key>,
  words: Words,
): readonly FormGroup<Key>[] {
  return ORDER.map((group) => {
    const numbers = Object.keys(fields).filter((key) => fields[key]!.group === group) as Key[];
    return { group, ...words[group], keys: [...facts[group], ...numbers] };
  });
}

/** The groups of a motor's form; together they hold every key once. */
export const motorGroups: readonly FormGroup<MotorFormKey>[] = groupsOf(
  motorFields,
  MOTOR_FACTS,
  MOTOR_WORDS,
);
/** The groups of a stern's form; together they hold every key once. */
export const sternGroups: readonly FormGroup<SternFormKey>[] = groupsOf(
  sternFields,
  STERN_FACTS,
  STERN_WORDS,
);
