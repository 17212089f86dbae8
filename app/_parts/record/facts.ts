import { choices } from "#app/_parts/form/words.ts";
import { horsepowerOf } from "#app/_parts/record/written.ts";
import type { Kind, RecordOf } from "#lib/db/kind.ts";
import { formatLength } from "#lib/entry/length-format.ts";
import type { Motor } from "#lib/rig/motor.ts";
import type { Stern } from "#lib/rig/stern.ts";

/** A power as it is spoken of: horsepower first (whole from ten upward), kilowatts beside. */
export function powerWords(kW: number): string {
  const horsepower = horsepowerOf(kW);
  return `${Number(horsepower.toFixed(horsepower < 9.95 ? 1 : 0))} hp (${Number(kW.toFixed(2))} kW)`;
}

/** The words of a chosen fact; undefined where it is not known. */
export function choiceWords(key: string, value: unknown): string | undefined {
  if (value === undefined) return undefined;
  const chosen = value === true ? "yes" : value === false ? "no" : String(value);
  return choices[key]?.choices.find(([each]) => each === chosen)?.[1];
}

/** The few facts a list shows of a record, most telling first. */
export function listFacts<K extends Kind>(kind: K, record: RecordOf<K>): readonly string[] {
  return kind === "motor" ? motorFacts(record as Motor) : sternFacts(record as Stern);
}

function motorFacts(motor: Motor): readonly string[] {
  return [
    motor.powerKw && powerWords(motor.powerKw.value),
    motor.shaftClass && `${motor.shaftClass} shaft`,
    motor.steering,
    choiceWords("strokes", motor.strokes)?.toLowerCase(),
    motor.year && String(motor.year),
  ].filter((fact) => fact !== undefined && fact !== 0) as string[];
}

function sternFacts(stern: Stern): readonly string[] {
  const cut = stern.seatMm?.value ?? stern.transomTopMm?.value;
  return [
    choiceWords("hullForm", stern.hullForm)?.toLowerCase(),
    cut !== undefined &&
      `${stern.seatMm ? "seat" : "uncut top"} ${formatLength(cut, "mm")} (${formatLength(cut, "in")})`,
    stern.rakeDeg && `rake ${stern.rakeDeg.value}°`,
    stern.wellDepthMm ? "with a well" : undefined,
  ].filter((fact) => Boolean(fact)) as string[];
}
