import Link from "next/link";
import { type CutAsked, cutQuery } from "#app/_parts/cut-plan/asked.ts";
import look from "#app/_parts/report/report.module.css";

/** Marks in millimetres or in inches and sixteenths; the choice stands in the address. */
export function UnitsLinks({ asked, path }: { readonly asked: CutAsked; readonly path: string }) {
  return (
    <nav aria-label="Marks in" className={`${look.units} not-printed`}>
      {(["mm", "in"] as const).map((lengths) => (
        <Link
          key={lengths}
          href={`${path}${cutQuery(asked, { lengths })}`}
          scroll={false}
          replace
          aria-current={lengths === asked.lengths ? "true" : undefined}
        >
          {lengths === "mm" ? "Millimetres" : "Inches"}
        </Link>
      ))}
    </nav>
  );
}
