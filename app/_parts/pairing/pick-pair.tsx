import { goToReport } from "#app/_parts/pairing/go-to-report.ts";

interface Named {
  readonly id: string;
  readonly label: string;
}

/** Picks a motor and a stern, or the one that is wanting, and goes to their report. */
export function PickPair({
  motors,
  sterns,
  motor,
  stern,
}: {
  /** To choose from; absent where the motor stands already. */
  motors?: readonly Named[];
  sterns?: readonly Named[];
  motor?: string;
  stern?: string;
}) {
  return (
    <form action={goToReport} className="pick not-printed" aria-label="Will it suit?">
      {motors ? (
        <Choose name="motor" label="Motor" from={motors} />
      ) : (
        <input type="hidden" name="motor" value={motor} />
      )}
      {sterns ? (
        <Choose name="stern" label="Stern" from={sterns} />
      ) : (
        <input type="hidden" name="stern" value={stern} />
      )}
      <button type="submit" className="main">
        Will it suit?
      </button>
    </form>
  );
}

function Choose({ name, label, from }: { name: string; label: string; from: readonly Named[] }) {
  return (
    <div>
      <label htmlFor={`pick-${name}`}>{label}</label>
      <select id={`pick-${name}`} name={name} required defaultValue="">
        <option value="" disabled>
          Pick a {name}
        </option>
        {from.map(({ id, label: words }) => (
          <option key={id} value={id}>
            {words}
          </option>
        ))}
      </select>
    </div>
  );
}
