import "server-only";
import { drawer } from "#app/_work/drawer.ts";
import { type Answer, examine } from "#lib/fit/examine.ts";
import { estimatesFor, type LikeEstimate } from "#lib/fit/like-motors.ts";
import { type MeasureNext, measureNext } from "#lib/fit/measure-next.ts";
import type { Motor } from "#lib/rig/motor.ts";
import type { Stern } from "#lib/rig/stern.ts";

/** What the few numbers come to: the governing answer, the others that do not fit, what to take next, what was filled in. */
export interface ComesTo {
  readonly governing: Answer;
  readonly others: readonly Answer[];
  readonly next: MeasureNext | undefined;
  readonly estimates: readonly LikeEstimate[];
}

/** The motor as typed, its gaps filled from like motors, against one stern. */
export async function comesTo(motor: Motor, stern: Stern): Promise<ComesTo> {
  const { stored } = await drawer("motor");
  const estimates = estimatesFor(
    motor,
    [...stored.values()].map(({ record }) => record),
  );
  const { governing, answers } = examine(motor, stern, { estimates });
  const others = answers.filter(
    (one) => one !== governing && (one.outcome === "fouls" || one.outcome === "cannot tell"),
  );
  return { governing, others, next: measureNext(governing), estimates };
}
