import type { Outcome } from "#lib/fit/report.ts";
import look from "./report.module.css";

const CLASS: Record<Outcome, string | undefined> = {
  fits: look.fits,
  fouls: look.fouls,
  "cannot tell": look.unsure,
  "not asked": look.idle,
};

/** The shape of an outcome: a disc with a tick, a diamond with a cross, a hatched square with a question mark, an empty ring. The word stands beside it. */
export function OutcomeMark({ outcome }: { readonly outcome: Outcome }) {
  return (
    <svg className={`${look.mark} ${CLASS[outcome]}`} viewBox="0 0 48 48" aria-hidden="true">
      {shape(outcome)}
    </svg>
  );
}

function shape(outcome: Outcome) {
  if (outcome === "fits") {
    return (
      <>
        <circle className={look.body} cx="24" cy="24" r="22" />
        <path className={look.sign} d="M13 25l8 8 15-17" />
      </>
    );
  }
  if (outcome === "fouls") {
    return (
      <>
        <path className={look.body} d="M24 1l23 23-23 23L1 24z" />
        <path className={look.sign} d="M16 16l16 16M32 16L16 32" />
      </>
    );
  }
  if (outcome === "not asked") return <circle className={look.ring} cx="24" cy="24" r="16" />;
  return (
    <>
      <path className={look.square} d="M3 3h42v42H3z" />
      <path className={look.hatch} d="M3 15L15 3M3 27L27 3M3 39L39 3M9 45L45 9M21 45L45 21M33 45L45 33" />
      <text className={look.query} x="24" y="35" textAnchor="middle">
        ?
      </text>
    </>
  );
}

/** An outcome as people read it: the shape and the word. */
export function OutcomeWord({ outcome }: { readonly outcome: Outcome }) {
  return (
    <span className={look.outcome}>
      <OutcomeMark outcome={outcome} />
      {WORDS[outcome]}
    </span>
  );
}

/** The word of each outcome. */
export const WORDS: Record<Outcome, string> = {
  fits: "Fits",
  fouls: "Fouls",
  "cannot tell": "Cannot tell",
  "not asked": "Not asked",
};
