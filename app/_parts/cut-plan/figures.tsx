import type { ReactNode } from "react";
import look from "./cut-plan.module.css";

/** One figure of the plan: what it is, the figure large, and a word on it. */
export interface PlanFigureOf {
  readonly name: string;
  readonly value: string;
  readonly note?: ReactNode;
}

/** Figures in ruled cells, large enough to be read from the bench. */
export function Figures({ figures }: { readonly figures: readonly PlanFigureOf[] }) {
  return (
    <dl className={look.figures}>
      {figures.map(({ name, value, note }) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd className={look.value}>{value}</dd>
          {note && <dd className="small">{note}</dd>}
        </div>
      ))}
    </dl>
  );
}
