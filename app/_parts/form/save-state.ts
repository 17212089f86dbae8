import type { Texts } from "#app/_parts/form/texts.ts";
import type { Trouble } from "#app/_parts/form/trouble.ts";

/** Somebody saved the record first: its version now, and how its form stands with them. */
export interface FormConflict {
  readonly version: number;
  readonly texts: Texts;
}

/** What came back from saving, when it did not go through: all that was typed, and why. */
export interface SaveState {
  readonly texts?: Texts;
  readonly troubles: readonly Trouble[];
  readonly conflict?: FormConflict;
}
