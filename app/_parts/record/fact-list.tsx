import { groupsOf } from "#app/_parts/form/groups-of.ts";
import { choices } from "#app/_parts/form/words.ts";
import { choiceWords } from "#app/_parts/record/facts.ts";
import type { Kind, RecordOf } from "#lib/db/kind.ts";

const COUNTS: Readonly<Record<string, string>> = { year: "Year built", drainCount: "Drains" };

/** The plain facts of a record that are known, as ruled cells. */
export function FactList<K extends Kind>({ kind, record }: { kind: K; record: RecordOf<K> }) {
  const facts = record as unknown as Readonly<Record<string, unknown>>;
  const known = groupsOf(kind)
    .flatMap(({ keys }) => keys)
    .flatMap((key) => {
      const words = COUNTS[key] ? facts[key] : choiceWords(key, facts[key]);
      return words === undefined ? [] : [[choices[key]?.label ?? COUNTS[key]!, String(words)] as const];
    });
  if (known.length === 0) return null;
  return (
    <dl className="cells boxed">
      {known.map(([name, words]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{words}</dd>
        </div>
      ))}
    </dl>
  );
}
