import look from "./report.module.css";

const CAUTIONS = {
  saw: [
    "Before the saw",
    "Look behind the panel for wiring, fuel line and steering cables. Start a plunge cut with the saw's foot firm on the work and both hands on it; it kicks. Eyes, ears, and a mask against glass dust.",
  ],
  lift: [
    "Before the hoist",
    "A motor on a hoist is a suspended load. Sling it by its lifting eye, keep fingers out of the saddle and yourself out from under it, and make the clamps or bolts fast before the sling comes off.",
  ],
  label: [
    "The capacity label governs",
    "Where the hull carries a label for power and motor weight, that figure stands, whatever this sheet says.",
  ],
  rules: [
    "Local rules and licensed practice govern",
    "This sheet is geometry worked from the numbers given. It is no survey, and it does not judge the strength of a transom.",
  ],
} as const;

export type Caution = keyof typeof CAUTIONS;

/** Cautions in a few words, where they matter: `only` picks those a sheet needs. */
export function Cautions({
  only = ["saw", "lift", "label", "rules"],
}: {
  readonly only?: readonly Caution[];
}) {
  return (
    <aside aria-label="Cautions" className={`notice kept-together ${look.cautions}`}>
      {only.map((caution) => (
        <p key={caution}>
          <strong>{CAUTIONS[caution][0]}.</strong> {CAUTIONS[caution][1]}
        </p>
      ))}
    </aside>
  );
}
