import type { Texts } from "#app/_parts/form/texts.ts";
import type { Trouble } from "#app/_parts/form/trouble.ts";

/** What came back from taking a number again, when it did not go through: all that was typed, and why. */
export interface TakingState {
  readonly texts?: Texts;
  readonly troubles: readonly Trouble[];
  /** Somebody changed the record first: its version now, and how it is said. */
  readonly conflict?: { readonly version: number; readonly says: string };
}

/** Names of the form's boxes. The number's own is `taking`, with `taking.how` and `taking.plusMinus` beside it. */
export const TAKING = "taking";
