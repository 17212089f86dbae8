import Link from "next/link";
import { type Asked, queryFor } from "#app/_parts/report/asked.ts";
import type { LengthSystem } from "#lib/quantity/words.ts";
import look from "./report.module.css";

const CHOICES: readonly (readonly [LengthSystem, string])[] = [
  ["mm", "Millimetres"],
  ["in", "Inches"],
];

/** Lengths in millimetres or in inches with fractions; the choice stands in the address. */
export function UnitsSwitch({ asked }: { readonly asked: Asked }) {
  return (
    <nav aria-label="Lengths in" className={`${look.units} not-printed`}>
      {CHOICES.map(([lengths, words]) => (
        <Link
          key={lengths}
          href={queryFor(asked, { lengths })}
          scroll={false}
          replace
          aria-current={lengths === asked.lengths ? "true" : undefined}
        >
          {words}
        </Link>
      ))}
    </nav>
  );
}
