import { AS_BUILT_KEYS, type AsBuiltKey } from "#lib/entry/cut-choices.ts";
import { formatLength } from "#lib/entry/length-format.ts";
import type { AsBuilt } from "#lib/fit/cut-plan/sawn.ts";
import { inDegrees, type LengthSystem } from "#lib/quantity/words.ts";
import { type Stern, sternFields } from "#lib/rig/stern.ts";
import look from "./cut-plan.module.css";

/** What was measured beside what was planned, to be printed with the report made from it. */
export function AsMeasured({
  sawn,
  measured,
  lengths,
}: {
  readonly sawn: Stern;
  readonly measured: AsBuilt;
  readonly lengths: LengthSystem;
}) {
  const write = (key: AsBuiltKey, value: number | undefined) =>
    value === undefined
      ? "–"
      : sternFields[key].unit === "deg"
        ? inDegrees(value)
        : formatLength(value, lengths);
  return (
    <table className={look.narrow}>
      <caption>Measured after the saw</caption>
      <thead>
        <tr>
          <th scope="col">Number</th>
          <th scope="col" className="number">
            Planned
          </th>
          <th scope="col" className="number">
            As built
          </th>
        </tr>
      </thead>
      <tbody>
        {AS_BUILT_KEYS.filter((key) => measured[key] !== undefined).map((key) => (
          <tr key={key}>
            <th scope="row">{sternFields[key].name}</th>
            <td className="number">{write(key, sawn[key]?.value)}</td>
            <td className="number">{write(key, measured[key]?.value)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
