import { loadTexts } from "#app/_parts/afloat/load-query.ts";
import type { Query } from "#app/_parts/report/asked.ts";
import { readAboard, type TypedAboard } from "#lib/entry/aboard.ts";
import type { LengthSystem } from "#lib/quantity/words.ts";

/** The load an address asks for. */
export const loadFrom = (query: Query, lengths: LengthSystem): TypedAboard =>
  readAboard(loadTexts(query), lengths);
