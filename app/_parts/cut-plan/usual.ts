import type { Planned } from "#app/_parts/cut-plan/planned.ts";
import { boughtSize } from "#lib/draw/paper/figures.ts";
import { type CutKey, type CutWordKey, cutFields, cutWords } from "#lib/entry/cut-fields.ts";
import { settled } from "#lib/fit/cut-plan/choices.ts";
import { inDegrees, type LengthSystem } from "#lib/quantity/words.ts";
import { sternFields } from "#lib/rig/stern.ts";

/** What stands where a box of the choices is left empty, as it is written: the plan's figure, the trade's, or the stern's own. */
export function usualTexts(
  { stern: { record: stern }, plan }: Planned,
  lengths: LengthSystem,
): Partial<Record<CutKey, string>> {
  const defaults: Readonly<Record<string, unknown>> = { ...settled({}, stern) };
  const shape: Readonly<Record<string, number>> = {
    ...plan?.well?.shape,
    ...(plan?.notch && { seatMm: plan.notch.seatMm }),
  };
  const own = (key: string) =>
    // The drop of a well on paper is counted from the uncut top: only the plan knows the new one.
    key !== "soleDropMm" && Object.hasOwn(sternFields, key)
      ? stern[key as keyof typeof sternFields]?.value
      : undefined;
  return Object.fromEntries(
    (Object.keys(cutFields) as CutKey[]).flatMap((key) => {
      const value = [shape[key], defaults[key], own(key)].find((each) => typeof each === "number");
      if (typeof value !== "number") return [];
      return [
        [
          key,
          cutFields[key].unit === "deg" ? inDegrees(value) : boughtSize(Number(value.toFixed(4)), lengths),
        ],
      ];
    }),
  );
}

/** What stands where none of the words is chosen. */
export function usualWords(key: CutWordKey, { stern: { record: stern } }: Planned): string {
  if (key === "soleLies") {
    const own = stern.soleAngleDeg;
    return own ? `as the stern's own sole: ${inDegrees(own.value)}` : `usual: ${cutWords.soleLies.square}`;
  }
  const words: Readonly<Record<string, string>> = cutWords[key];
  return `usual: ${words[settled({}, stern)[key]]}`;
}
