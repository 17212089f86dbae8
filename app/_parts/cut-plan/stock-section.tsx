import { PlanFigure } from "#app/_parts/cut-plan/plan-figure.tsx";
import { partName } from "#app/_parts/cut-plan/words.ts";
import { writtenUp } from "#lib/draw/paper/figures.ts";
import { stockView } from "#lib/draw/stock-view.ts";
import type { CutPlan, WellPlan } from "#lib/fit/cut-plan/plan.ts";
import { joinery } from "#lib/standards/joinery.ts";

/** What wood to fetch, with the parts laid out on it. */
export function StockSection({ plan, well }: { readonly plan: CutPlan; readonly well: WellPlan }) {
  const { stock, parts } = well;
  return (
    <section aria-labelledby="stock" className="stack-near">
      <h2 id="stock" className="drawn">
        Wood to fetch
      </h2>
      <p>
        {stock.areaM2.toFixed(2)}&nbsp;m² of panel and {stock.lengthM.toFixed(2)}&nbsp;m of board in the parts
        themselves. Laid out the largest first, {writtenUp(joinery.kerfMm.value, plan.lengths)} left for the
        saw; you may find a thriftier way.
      </p>
      {stock.tooLarge.length > 0 && (
        <p className="notice">
          <strong>Too large for one piece:</strong>{" "}
          {stock.tooLarge.map((id) => partName(parts, id)).join(", ")}. Scarf or butt-strap it, or give the
          size of a larger sheet or board under the choices.
        </p>
      )}
      {stock.sheets.length + stock.boards.length > 0 && (
        <PlanFigure id="stock-drawing" content={stockView(well, plan.lengths)} lengths={plan.lengths} />
      )}
    </section>
  );
}
