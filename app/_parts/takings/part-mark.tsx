import type { Part } from "#lib/db/agreement.ts";
import look from "./takings.module.css";

const WORDS: Readonly<Record<Part, string>> = {
  counts: "counts",
  outlying: "outlying, counts",
  "less sure": "beside: a surer kind is there",
  "other holes": "beside: another number of holes",
  corrected: "corrected since",
};

/** A taking's part in its number, by shape and word: a full disc counts, a flag stands out, a ring stands beside, a struck ring was corrected. */
export function PartMark({ part }: { part: Part }) {
  return (
    <span className={look.part}>
      <svg className={look.mark} viewBox="0 0 24 24" aria-hidden="true">
        {shape(part)}
      </svg>
      {WORDS[part]}
    </span>
  );
}

function shape(part: Part) {
  if (part === "counts") return <circle className={look.full} cx="12" cy="12" r="7" />;
  if (part === "outlying") return <path className={look.full} d="M6 22V2l14 6-12 6v8z" />;
  return (
    <>
      <circle className={look.open} cx="12" cy="12" r="7" />
      {part === "corrected" && <path className={look.open} d="M3 21L21 3" />}
    </>
  );
}
