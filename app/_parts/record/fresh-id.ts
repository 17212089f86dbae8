import "server-only";
import type { Kind } from "#lib/db/kind.ts";
import { historyOf } from "#lib/db/records.ts";

/** Addresses beside the records; no record is called so. */
const RESERVED = new Set(["new", "exchange"]);
/** Longest stem of an id, leaving room for its number. */
const STEM_MOST = 60;

/** A record's name in addresses, made from its label: small letters, digits and hyphens, and a number where that is taken or ever was. */
export async function freshId(kind: Kind, label: string): Promise<string> {
  const stem = stemOf(label) || kind;
  for (let number = 1; ; number += 1) {
    const id = number === 1 ? stem : `${stem}-${number}`;
    if (!RESERVED.has(id) && (await historyOf(kind, id)).length === 0) return id;
  }
}

function stemOf(label: string): string {
  const plain = label
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-");
  return plain.slice(0, STEM_MOST).replace(/^-+|-+$/g, "");
}
