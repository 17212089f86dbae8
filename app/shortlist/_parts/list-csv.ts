/** A list as a table for a spreadsheet: one row a pairing, the room in every question. */
import type { Entry } from "#app/shortlist/_parts/ranked.ts";
import { checks } from "#lib/checks/index.ts";
import type { Kind } from "#lib/db/kind.ts";
import type { Motor } from "#lib/rig/motor.ts";
import { type Cell, writeTable } from "#lib/share/table.ts";

const FACTS = ["shaftClass", "steering", "strokes"] as const;
const hundredth = (value: number | undefined): Cell => value && Math.round(value * 100) / 100;

/** Outcome, room and give-or-take of every question, in its unit. */
const headings = checks.flatMap(({ id, unit }) => [id, `${id} room ${unit}`, `${id} give or take ${unit}`]);

/** The list as CSV text. */
export function listCsv(kind: Kind, entries: readonly Entry[]): string {
  const ofMotor = kind === "motor" ? ["powerKw", "massKg", ...FACTS] : [];
  const heading = [
    ...["place", kind, "label", "verdict", "governs", "room", "give or take", "unit"],
    ...["not known", "from like motors", "measure next", ...ofMotor, ...headings],
  ];
  return writeTable(
    heading,
    entries.map(({ row, other: { record }, estimated }, i) => {
      const motor = record as Motor;
      return [
        ...[i + 1, record.id, record.label, row.verdict, row.governs],
        ...[
          hundredth(row.margin),
          hundredth(row.expandedUncertainty),
          row.margin === undefined ? "" : row.unit,
        ],
        ...[row.missing.join(" "), estimated.join(" "), row.measureNext],
        ...(kind === "motor"
          ? [motor.powerKw?.value, motor.massKg?.value, ...FACTS.map((key) => motor[key])]
          : []),
        ...checks.flatMap(({ id }): Cell[] => {
          const answer = row.answers[id];
          return [answer?.outcome, hundredth(answer?.margin), hundredth(answer?.expandedUncertainty)];
        }),
      ];
    }),
  );
}
