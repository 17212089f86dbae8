import Link from "next/link";
import { queryFor } from "#app/_parts/report/writing.ts";
import type { LengthSystem } from "#lib/quantity/words.ts";
import look from "./report.module.css";

const CHOICES: readonly (readonly [LengthSystem, string])[] = [
  ["mm", "Millimetres"],
  ["in", "Inches"],
];

/** Lengths in millimetres or in inches with fractions; the choice stands in the address. */
export function UnitsSwitch({ lengths, like }: { readonly lengths: LengthSystem; readonly like: boolean }) {
  return (
    <nav aria-label="Lengths in" className={`${look.units} not-printed`}>
      {CHOICES.map(([system, words]) => (
        <Link
          key={system}
          href={queryFor(system, like)}
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
