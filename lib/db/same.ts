import { isDeepStrictEqual } from "node:util";

/** Whether two records say the same, in whatever order; a key of undefined is an absent one, as it is once stored. */
export const sameRecord = (a: object, b: object): boolean => isDeepStrictEqual(asStored(a), asStored(b));

const asStored = (record: object): unknown => JSON.parse(JSON.stringify(record));
