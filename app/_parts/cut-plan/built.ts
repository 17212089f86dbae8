import type { CutAsked } from "#app/_parts/cut-plan/asked.ts";
import type { Told } from "#app/_parts/cut-plan/box.tsx";
import type { Planned } from "#app/_parts/cut-plan/planned.ts";
import type { AsBuiltKey } from "#lib/entry/cut-choices.ts";
import { readAsBuilt } from "#lib/entry/cut-text.ts";
import { impossibleStern } from "#lib/entry/stern.ts";
import type { CutPlan } from "#lib/fit/cut-plan/plan.ts";
import { cutStern } from "#lib/fit/cut-plan/sawn.ts";

/** What was measured after the saw, read against the plan: the stern as planned, and what is told at each box. */
export function builtFrom(
  asked: CutAsked,
  { plan, stern }: Pick<Planned, "stern" | "motors"> & { readonly plan: CutPlan },
) {
  const sawn = cutStern(plan, stern.record);
  const read = readAsBuilt(asked.built, { usual: asked.lengths });
  const never = read.ok ? impossibleStern({ ...sawn, ...read.value }) : [];
  const reading =
    never.length === 0
      ? read
      : { ok: false as const, errors: never.map(({ at, says }) => ({ field: at, says })), asks: [] };
  const told = (key: AsBuiltKey): Told =>
    reading.ok
      ? {}
      : {
          says: reading.errors.find(({ field }) => field === key)?.says,
          ask: reading.asks.find(({ field }) => field === key),
        };
  return { sawn, reading, told };
}
