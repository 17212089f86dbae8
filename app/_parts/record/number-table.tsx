import Link from "next/link";
import { fieldsOf } from "#app/_parts/form/texts.ts";
import { howShort, writtenAll } from "#app/_parts/record/written.ts";
import type { Kind, RecordOf } from "#lib/db/kind.ts";
import type { FormGroup } from "#lib/entry/groups.ts";
import type { Measured, MeasuredList } from "#lib/quantity/measured.ts";
import { defaultHalfWidth } from "#lib/quantity/uncertainty.ts";
import type { Field } from "#lib/rig/field.ts";

/** The numbers of one group, each with its spread and how it was come by; those nobody has taken are listed after them. */
export function NumberTable<K extends Kind>({
  kind,
  group: { group, title, keys },
  record,
}: {
  kind: K;
  group: FormGroup<string>;
  record: RecordOf<K>;
}) {
  const fields = fieldsOf(kind);
  const taken = record as unknown as Readonly<Record<string, Measured | MeasuredList | undefined>>;
  const numbers = keys.filter((key) => key in fields);
  const known = numbers.filter((key) => taken[key]);
  const unknown = numbers.filter((key) => !taken[key]);
  return (
    <section aria-labelledby={`numbers-${group}`} className="stack-near">
      <h2 id={`numbers-${group}`} className="drawn">
        {title}
      </h2>
      {known.length > 0 && (
        <div className="across">
          <table className="numbers">
            <caption className="unseen">{title}</caption>
            <thead>
              <tr>
                <th scope="col">Number</th>
                <th scope="col" className="number">
                  Value
                </th>
                <th scope="col">Spread and source</th>
              </tr>
            </thead>
            <tbody>
              {known.map((key) => (
                <NumberRow key={key} name={key} field={fields[key]!} taken={taken[key]!} />
              ))}
            </tbody>
          </table>
        </div>
      )}
      {unknown.length > 0 && (
        <p className="soft">
          Not known: {unknown.map((key) => fields[key]!.name.toLowerCase()).join(", ")}.{" "}
          <Link prefetch={false} href={`/measuring#${unknown[0]}`}>
            How they are taken
          </Link>
        </p>
      )}
    </section>
  );
}

function NumberRow({ name, field, taken }: { name: string; field: Field; taken: Measured | MeasuredList }) {
  const { main, beside } = writtenAll(taken.value, field.unit);
  const first = typeof taken.value === "number" ? taken.value : taken.value[0]!;
  const spread = taken.plusMinus ?? defaultHalfWidth(first, field.unit, taken.how);
  return (
    <tr>
      <th scope="row">
        <Link prefetch={false} href={`/measuring#${name}`}>
          {field.name}
        </Link>
      </th>
      <td className={typeof taken.value === "number" ? "number" : "number several"}>
        <strong>{main}</strong>
        {beside && <span className="beside">{beside}</span>}
      </td>
      <td>
        ± {writtenAll(Number(spread.toPrecision(2)), field.unit).main}
        {taken.plusMinus === undefined && " usual"}, {howShort[taken.how]}
      </td>
    </tr>
  );
}
