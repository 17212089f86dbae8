import type { CutPlan } from "#lib/fit/cut-plan/plan.ts";
import look from "./cut-plan.module.css";

/** The sections of a plan, for those who come back to one of them from the bench. */
export function OnThisSheet({ plan: { notch, well } }: { readonly plan: CutPlan }) {
  const sections = [
    ...(notch ? [["notch", "Notch"]] : []),
    ...(well
      ? [
          ["well", "Well"],
          ["parts", "Parts and saw settings"],
          ["fastening", "Screws, drains, fillets"],
          ["stock", "Wood to fetch"],
        ]
      : []),
    ...(notch
      ? [
          ["paper", "PDF and templates"],
          ["work", "The work in order"],
          ["as-built", "As built"],
        ]
      : []),
  ];
  if (sections.length === 0) return null;
  return (
    <nav aria-label="On this sheet" className={`${look.contents} not-printed`}>
      {sections.map(([id, words]) => (
        <a key={id} href={`#${id}`}>
          {words}
        </a>
      ))}
    </nav>
  );
}
