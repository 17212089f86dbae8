import type { Metadata } from "next";
import { redirect } from "next/navigation";
import { named } from "#app/_parts/record/named.ts";
import type { Query } from "#app/_parts/report/asked.ts";
import { TitleStrip } from "#app/_parts/sheet/title-strip.tsx";

export const metadata: Metadata = { title: "Cut plan" };
export const dynamic = "force-dynamic";

/** Picks the stern to be cut; the motors are picked on its own sheet. */
export default async function CutPlans({ searchParams }: { readonly searchParams: Promise<Query> }) {
  const [{ stern }, sterns] = await Promise.all([searchParams, named("stern")]);
  if (typeof stern === "string" && sterns.some(({ id }) => id === stern)) redirect(`/cut-plan/${stern}`);
  return (
    <>
      <TitleStrip kind="For builders" title="Cut plan">
        <p className="lead">
          What to saw so that a motor suits a stern, and the well to build: figures to mark, saw settings,
          wood to fetch, full-size templates, and the work in order.
        </p>
      </TitleStrip>
      <form action="/cut-plan" className="pick" aria-label="Stern to be cut">
        <div>
          <label htmlFor="pick-stern">Stern</label>
          <select id="pick-stern" name="stern" required defaultValue="">
            <option value="" disabled>
              Pick a stern
            </option>
            {sterns.map(({ id, label }) => (
              <option key={id} value={id}>
                {label}
              </option>
            ))}
          </select>
        </div>
        <button type="submit" className="main">
          Pick its motor
        </button>
      </form>
    </>
  );
}
