/** The columns of a table of motors or sterns: three a measured number, one for everything else. */
import { type ColumnKind, factKind } from "#lib/share/cell.ts";
import { type KindName, kinds } from "#lib/share/kinds.ts";

/** One column. The heading is the key itself, which carries the unit, or the key with ` plusMinus` or ` how`. */
export interface Column {
  readonly heading: string;
  readonly key: string;
  readonly part?: "value" | "plusMinus" | "how";
  readonly kind: ColumnKind;
}

function columnsOfKey(key: string, measured: boolean): Column[] {
  if (!measured) return [{ heading: key, key, kind: factKind(key) }];
  return [
    { heading: key, key, part: "value", kind: key === "pinAnglesDeg" ? "angles" : "number" },
    { heading: `${key} plusMinus`, key, part: "plusMinus", kind: "number" },
    { heading: `${key} how`, key, part: "how", kind: "text" },
  ];
}

/** All columns of a kind, in their order. */
export const columnsOf = (kind: KindName): readonly Column[] =>
  kinds[kind].keys.flatMap((key) => columnsOfKey(key, Object.hasOwn(kinds[kind].fields, key)));
