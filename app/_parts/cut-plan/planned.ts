import "server-only";
import type { CutAsked } from "#app/_parts/cut-plan/asked.ts";
import { type CutPlan, planOf } from "#app/_parts/cut-plan/plan-of.ts";
import { getRecord, type Stored } from "#lib/db/records.ts";
import type { CutChoicesSent } from "#lib/entry/cut-choices.ts";
import { type CutReading, readCutChoices } from "#lib/entry/cut-text.ts";
import type { Motor } from "#lib/rig/motor.ts";
import type { Stern } from "#lib/rig/stern.ts";

/** What became of a plan that was asked for. */
export interface Planned {
  readonly stern: Stored<Stern>;
  readonly motors: readonly Stored<Motor>[];
  /** Ids asked for that no motor stands under. */
  readonly unknown: readonly string[];
  readonly reading: CutReading<CutChoicesSent>;
  /** Absent where no motor is chosen, a box cannot be read, or the choices leave no part whole. */
  readonly plan?: CutPlan;
  /** Why the choices cannot be built, in plain words. */
  readonly impossible?: string;
}

/** The plan an address asks for; undefined where there is no such stern. */
export async function planned(
  sternId: string,
  asked: CutAsked,
  { bare = false } = {},
): Promise<Planned | undefined> {
  const [stern, ...found] = await Promise.all([
    getRecord("stern", sternId),
    ...asked.motors.map((id) => getRecord("motor", id)),
  ]);
  if (!stern) return undefined;
  const motors = found.filter((motor) => motor !== null);
  const unknown = asked.motors.filter((_, at) => found[at] === null);
  const reading = readCutChoices(asked.texts, asked.lengths, { usual: asked.lengths, bare });
  const known = { stern, motors, unknown, reading };
  if (!reading.ok || motors.length === 0) return known;
  const made = planOf(
    motors.map(({ record }) => record),
    stern.record,
    reading.value,
  );
  return { ...known, ...made };
}
