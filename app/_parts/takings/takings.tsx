import { fieldsOf } from "#app/_parts/form/texts.ts";
import type { Query } from "#app/_parts/list/list-page.tsx";
import { NumberTakings } from "#app/_parts/takings/number-takings.tsx";
import { takeNumberAgain } from "#app/_parts/takings/take-again.ts";
import { TakeAgainForm } from "#app/_parts/takings/take-again-form.tsx";
import type { Kind } from "#lib/db/kind.ts";
import { getRecord, takingsOf } from "#lib/db/records.ts";
import { numbersTaken } from "#lib/db/takings.ts";

/** The numbers of a record that were taken more than once, each with its takings and their consensus, and a way to take one again. */
export async function Takings({
  kind,
  params,
  searchParams,
}: {
  kind: Kind;
  params: Promise<{ id: string }>;
  searchParams: Query;
}) {
  const [{ id }, query] = await Promise.all([params, searchParams]);
  const [stored, observations] = await Promise.all([getRecord(kind, id), takingsOf(kind, id)]);
  if (!stored) return null;
  const fields = fieldsOf(kind);
  const numbers = numbersTaken(kind, stored.record, observations);
  const several = numbers.filter(({ takings }) => takings.length > 1);
  const keys = Object.keys(fields).filter((key) => Object.hasOwn(stored.record, key));
  const chosen = keys.find((key) => key === query.take);
  const taken = keys.find((key) => key === query.taken);
  if (keys.length + several.length === 0) return null;
  return (
    <section id="takings" aria-labelledby="takings-title" className="stack">
      <h2 id="takings-title" className="drawn">
        Taken more than once
      </h2>
      {taken && (
        <p className="notice" role="status">
          {fields[taken]!.name}: your taking stands beside the others.
        </p>
      )}
      {several.length === 0 && (
        <p className="soft">
          No number of this {kind} has been taken twice yet. A second pair of eyes finds slips, and two
          takings that agree are surer than one.
        </p>
      )}
      {several.map((number) => (
        <NumberTakings key={number.key} kind={kind} id={id} number={number} />
      ))}
      {keys.length > 0 && (
        <details className="not-printed" id="take-again" open={chosen !== undefined}>
          <summary>Take a number again</summary>
          <div className="stack">
            <p>
              A taking is added beside the earlier ones, and the number becomes what they come to together. To
              correct a slip, edit the number instead: that begins it afresh, and earlier takings count no
              more.
            </p>
            <TakeAgainForm
              key={`${stored.version} ${chosen ?? ""}`}
              kind={kind}
              version={stored.version}
              keys={keys}
              chosen={chosen}
              takeAgain={takeNumberAgain.bind(null, kind, id)}
            />
          </div>
        </details>
      )}
    </section>
  );
}
