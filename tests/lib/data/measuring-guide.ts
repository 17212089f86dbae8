/**
 * Makes data/README.md from the field tables, so that it never drifts from them. Renew it with
 * `npx tsx tests/lib/data/measuring-guide.ts`.
 */
import { writeFileSync } from "node:fs";
import { pathToFileURL } from "node:url";
import { type FormGroup, motorGroups, sternGroups } from "#lib/entry/groups.ts";
import type { How, Unit } from "#lib/quantity/measured.ts";
import { defaultHalfWidth } from "#lib/quantity/uncertainty.ts";
import type { Field } from "#lib/rig/field.ts";
import { motorFields, SHAFT_CLASSES, STEERINGS } from "#lib/rig/motor.ts";
import { HULL_FORMS, sternFields } from "#lib/rig/stern.ts";

/** Where the guide is kept, from the top of the project. */
export const GUIDE_PATH = "data/README.md";

const UNITS: Record<Unit, string> = { mm: "mm", deg: "degrees", kg: "kg", kW: "kW", count: "a count" };

/** Half-width in force where none is given, to a tenth, for a length of half a metre or the unit's hundred. */
const spread = (unit: Unit, how: How): string =>
  String(Number(defaultHalfWidth(unit === "mm" ? 500 : 100, unit, how).toFixed(1)));

const HEAD = `# Data

\`demo/motors.json\` and \`demo/sterns.json\` hold the motors and boats of the Lake Fennimar boat club. Lake,
club, motors and boats are **invented**: no such place, club or object is meant, and no number was taken off
a real one. They show what Sternwright does with records that are complete, half measured and nearly empty.

The rest of this file is how to take each measurement. It is made from the tables in \`lib/rig/motor.ts\` and
\`lib/rig/stern.ts\`; change them and renew it with \`npx tsx tests/lib/data/measuring-guide.ts\`.

# How to take each measurement

- **Saddle**: the underside of the clamp bracket, where it sits on the transom. **Saddle corner**: where the
  saddle meets the bracket face that lies against the outside of the transom.
- **Seat**: the top edge of the transom under the saddle; the bottom of the notch, where there is one.
- **Plate**: the anti-ventilation plate, the flat one just above the propeller.
- **Datum**: the lowest fixed line of the hull ahead of the propeller at the transom, on the centreline: the
  underside of the keel where there is one, else of the bottom.

A number is written \`{ "value": 520, "plusMinus": 2, "how": "measured" }\`. \`how\` is \`measured\` (with a tape,
on this very object), \`declared\` (a label, a handbook, the seller) or \`estimated\` (by eye, from a photograph,
from the class). \`plusMinus\` says how far the true value may lie either side. A bare number counts as
measured. A number nobody knows is left out: never 0, never null.

`;

/** What a plus-minus left out is taken to be, one row a kind of number. */
function spreads(): string {
  const hows = ["measured", "declared", "estimated"] as const;
  const row = (name: string, unit: Unit, mark: string) => [
    name,
    ...hows.map((how) => `${spread(unit, how)} ${mark}`),
  ];
  return [
    "Where no plus-minus is written it is taken to be (common practice, no source, but for the tape):",
    "",
    ...table([
      ["", ...hows],
      row("a length of half a metre", "mm", "mm"),
      row("an angle", "deg", "degrees"),
      row("a mass or a power", "kg", "%"),
    ]),
    "",
    "An estimated length counts for 5 % where that is more.",
    "",
  ].join("\n");
}

/** Rows as a table, columns of one breadth; the first row is its head. */
function table([head, ...rows]: readonly (readonly string[])[]): string[] {
  const breadths = head!.map((_, column) => Math.max(...[head!, ...rows].map((row) => row[column]!.length)));
  const line = (cells: readonly string[]) =>
    `| ${cells.map((cell, column) => cell.padEnd(breadths[column]!)).join(" | ")} |`;
  return [line(head!), line(breadths.map((breadth) => "-".repeat(breadth))), ...rows.map(line)];
}

function section(key: string, { name, take, mistake, unit, min, max }: Field): string {
  const limits = `${UNITS[unit]}, ${min} to ${max}`;
  return `- **${name}** (\`${key}\`, ${limits}). ${take}${mistake ? ` _Usual mistake:_ ${mistake}` : ""}`;
}

function object<Key extends string>(
  title: string,
  groups: readonly FormGroup<Key>[],
  fields: Readonly<Record<string, Field>>,
): string {
  const parts = groups.map(({ title: question, buys, keys }) => {
    const lines = keys.flatMap((key) => (fields[key] ? [section(key, fields[key])] : []));
    return [`### ${question}`, "", buys, "", ...lines, ""].join("\n");
  });
  return [`## ${title}`, "", ...parts].join("\n");
}

const facts = (...lines: readonly string[]): string =>
  ["Besides, in plain words:", "", ...lines, ""].join("\n");

const MOTOR_FACTS = facts(
  `- \`shaftClass\`: ${SHAFT_CLASSES.join(", ")}; \`steering\`: ${STEERINGS.join(" or ")}; \`strokes\`: 2 or 4, 0 for an electric motor; \`year\`.`,
  "- `tillerFolds`: true where the tiller is folded up out of the way before the motor is tilted.",
  "- `extraSolids`: anything else that moves with the motor, as boxes: fore and aft and athwart from the steering axis (`steered`) or the tilt tube (`tilting`), heights above the saddle.",
);
const STERN_FACTS = facts(
  `- \`hullForm\`: ${HULL_FORMS.join(", ")}; \`hardChine\`: true or false; \`drainCount\`: how many drains the well has.`,
  "- `obstacles`: anything else in the way, as boxes: forward of the transom's outside face, to port of the centreline, up along the face from the seat.",
  "- `limits`: the owner's own limits in place of common practice.",
);

/** The whole guide, as it stands in {@link GUIDE_PATH}. */
export const measuringGuide = (): string =>
  [
    HEAD + spreads(),
    object("The motor", motorGroups, motorFields),
    MOTOR_FACTS,
    object("The stern", sternGroups, sternFields),
    STERN_FACTS,
  ]
    .map((part) => part.trimEnd())
    .join("\n\n")
    .concat("\n");

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href)
  writeFileSync(GUIDE_PATH, measuringGuide());
