import { type HowWell, howWellWords } from "#app/_parts/record/how-well.ts";

const ORDER = ["measured", "declared", "estimated", "unknown"] as const;

/** How well a record is measured: a stroke a number, as on a tally, and the same in words. */
export function Tally({ counts }: { counts: HowWell }) {
  return (
    <div>
      <span className="tally" aria-hidden="true">
        {ORDER.flatMap((how) =>
          Array.from({ length: counts[how] }, (_, stroke) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: strokes of a tally are all alike
            <i key={`${how} ${stroke + 1}`} className={how} />
          )),
        )}
      </span>
      <span className="small">{howWellWords(counts)}</span>
    </div>
  );
}
