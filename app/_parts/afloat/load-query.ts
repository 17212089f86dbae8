import type { Query } from "#app/_parts/report/asked.ts";
import { ABOARD_KEYS, type AboardKey } from "#lib/rig/afloat/aboard.ts";

/** Most letters of one field taken from an address. */
const LONGEST = 40;

/** The texts of the load form as they stand in an address. */
export const loadTexts = (query: Query): Partial<Record<AboardKey, string>> =>
  Object.fromEntries(
    ABOARD_KEYS.flatMap((key) => {
      const text = query[key];
      return typeof text === "string" && text.trim() !== "" ? [[key, text.slice(0, LONGEST)]] : [];
    }),
  );

/** The same as part of an address, "" where all is as usual. */
export const loadQuery = (query: Query): string => new URLSearchParams(loadTexts(query)).toString();
