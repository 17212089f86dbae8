import Link from "next/link";
import type { LengthSystem } from "#lib/quantity/words.ts";
import look from "./report.module.css";

const CHOICES: readonly (readonly [LengthSystem, string])[] = [
  ["mm", "Millimetres"],
  ["in", "Inches"],
];

/** Lengths in millimetres or in inches with fractions; the choice stands in the address. */
export function UnitsSwitch({ lengths }: { readonly lengths: LengthSystem }) {
  return (
    <nav aria-label="Lengths in" className={`${look.units} not-printed`}>
      {CHOICES.map(([system, words]) => (
        <Link
          key={system}
          href={`?units=${system}`}
          scroll={false}
          replace
          aria-current={system === lengths ? "true" : undefined}
        >
          {words}
        </Link>
      ))}
    </nav>
  );
}
