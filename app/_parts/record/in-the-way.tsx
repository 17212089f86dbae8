import { written } from "#app/_parts/record/written.ts";
import type { Kind, RecordOf } from "#lib/db/kind.ts";
import type { Motor } from "#lib/rig/motor.ts";
import type { Stern } from "#lib/rig/stern.ts";
import { practiceLimits } from "#lib/standards/common-practice.ts";
import type { Standard } from "#lib/standards/standard.ts";

/** Whatever else moves or stands in the way, and the owner's own limits; nothing where there is neither. */
export function InTheWay<K extends Kind>({ kind, record }: { kind: K; record: RecordOf<K> }) {
  const boxes = (kind === "motor" ? (record as Motor).extraSolids : (record as Stern).obstacles) ?? [];
  const limits = kind === "stern" ? Object.entries((record as Stern).limits ?? {}) : [];
  return (
    <>
      {boxes.length > 0 && (
        <section className="stack-near" aria-labelledby="in-the-way">
          <h2 id="in-the-way" className="drawn">
            Anything else in the way
          </h2>
          <ul>
            {boxes.map(({ label, fromMm, toMm }) => (
              <li key={label}>
                <strong>{label}</strong>: forward {span(fromMm[0], toMm[0])}, to port{" "}
                {span(fromMm[1], toMm[1])}, up {span(fromMm[2], toMm[2])}
              </li>
            ))}
          </ul>
        </section>
      )}
      {limits.length > 0 && (
        <section className="stack-near" aria-labelledby="own-limits">
          <h2 id="own-limits" className="drawn">
            The owner's own limits
          </h2>
          <ul>
            {limits.map(([key, value]) => (
              <li key={key}>
                {limitWords(key)}: <strong>{written(value, key.endsWith("Deg") ? "deg" : "mm").main}</strong>
              </li>
            ))}
          </ul>
        </section>
      )}
    </>
  );
}

const span = (from: number, to: number): string => `${written(from, "mm").main} to ${written(to, "mm").main}`;

const limitWords = (key: string): string =>
  (practiceLimits as Readonly<Record<string, Standard>>)[key]?.what ?? key;
