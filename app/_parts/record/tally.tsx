import type { CSSProperties } from "react";
import { type HowWell, howWellWords } from "#app/_parts/record/how-well.ts";

const ORDER = ["measured", "declared", "estimated", "unknown"] as const;

/** How well a record is measured: a stroke a number, as on a tally, and the same in words. */
export function Tally({ counts }: { counts: HowWell }) {
  return (
    <div>
      <span className="tally" aria-hidden="true">
        {ORDER.filter((how) => counts[how] > 0).map((how) => (
          <i key={how} className={how} style={{ "--strokes": counts[how] } as CSSProperties} />
        ))}
      </span>
      <span className="small">{howWellWords(counts)}</span>
    </div>
  );
}
