/** What a number or a fact of a record is called within a sentence. */
import { motorFields } from "#lib/rig/motor.ts";
import { sternFields } from "#lib/rig/stern.ts";

const FIELDS: Readonly<Record<string, { readonly name: string }>> = { ...motorFields, ...sternFields };

const FACTS: Readonly<Record<string, string>> = {
  steering: "whether it is steered by tiller or remotely",
  shaftClass: "shaft class",
  hullForm: "hull form",
  hardChine: "whether the chine is hard",
  drainCount: "number of drains",
};

/** "transom rake", "hull form". */
export function nameOfKey(key: string): string {
  const name = FACTS[key] ?? FIELDS[key]?.name ?? key;
  return name.charAt(0).toLowerCase() + name.slice(1);
}
