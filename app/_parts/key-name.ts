import type { NeededKey } from "#lib/checks/check.ts";
import type { Field } from "#lib/rig/field.ts";
import { motorFields } from "#lib/rig/motor.ts";
import { sternFields } from "#lib/rig/stern.ts";

const all: Readonly<Record<string, Field>> = { ...motorFields, ...sternFields };

/** A key of the vocabulary in the words of a boatyard; a key that is no number gives its plain fact. */
export function keyName(key: NeededKey | string): string {
  if (key === "steering") return "Steering";
  if (key === "shaftClass") return "Shaft class";
  return all[key]?.name ?? key;
}

/** Whose number a key is; no key stands in both records. */
export function keyOwner(key: string): "motor" | "stern" {
  return key in sternFields ? "stern" : "motor";
}
