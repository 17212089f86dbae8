import { MM_PER_INCH } from "#lib/quantity/length.ts";
import { WATTS_PER_HORSEPOWER } from "#lib/quantity/power.ts";
import type { Motor, ShaftClass, Strokes } from "#lib/rig/motor.ts";
import type { Stern } from "#lib/rig/stern.ts";
import { nominalShaft } from "#lib/standards/common-practice.ts";

/** What of a record is searched, weightiest first. */
export interface Searchable {
  readonly label: string;
  /** What the record is, in the words people type: "long shaft", "4-stroke", "7.5 kW 10 hp", "vee". */
  readonly facts: string;
  readonly notes: string;
}

const STROKES_SAID: Readonly<Record<Strokes, string>> = {
  0: "electric",
  2: "2-stroke twostroke",
  4: "4-stroke fourstroke",
};
const CLASS_SAID: Readonly<Record<ShaftClass, string>> = {
  short: "short shaft",
  long: "long shaft",
  "extra-long": "extralong xl shaft",
  "ultra-long": "ultralong xxl shaft",
};

/** The searchable words of a motor or a stern. */
export function searchable(record: Motor | Stern): Searchable {
  const motor: Partial<Motor> = record;
  const stern: Partial<Stern> = record;
  const facts = [
    motor.shaftClass && `${CLASS_SAID[motor.shaftClass]} ${inchesOf(motor.shaftClass)} in`,
    motor.steering,
    motor.strokes !== undefined && STROKES_SAID[motor.strokes],
    motor.year,
    motor.powerKw && `${motor.powerKw.value} kW ${horsepowerOf(motor.powerKw.value)} hp`,
    motor.massKg && `${motor.massKg.value} kg`,
    stern.hullForm,
    stern.hardChine && "hard chine",
    stern.lengthOverallMm && `${stern.lengthOverallMm.value / 1000} m`,
  ];
  return { label: record.label, facts: facts.filter(Boolean).join(" "), notes: record.notes ?? "" };
}

/** Horsepower as it is spoken of: whole from ten upward. */
function horsepowerOf(kW: number): number {
  const horsepower = (kW * 1000) / WATTS_PER_HORSEPOWER;
  return Number(horsepower.toFixed(horsepower < 9.95 ? 1 : 0));
}

const inchesOf = (shaftClass: ShaftClass): number => Math.round(nominalShaft[shaftClass].value / MM_PER_INCH);

/** What a record can be asked for with a unit: power in kW, mass in kg, lengths (leg, nominal class, seat, overall) in mm. */
export type Sized = "kW" | "kg" | "mm";

/** Visits the amounts of a motor or a stern that are known. */
export function eachAmount(record: Motor | Stern, visit: (of: Sized, value: number) => void): void {
  const motor: Partial<Motor> = record;
  const stern: Partial<Stern> = record;
  const known = (of: Sized, value: number | undefined): void => {
    if (value !== undefined) visit(of, value);
  };
  known("kW", motor.powerKw?.value);
  known("kg", motor.massKg?.value);
  known("mm", motor.shaftClass && nominalShaft[motor.shaftClass].value);
  known("mm", motor.shaftLengthMm?.value);
  known("mm", stern.seatMm?.value ?? stern.transomTopMm?.value);
  known("mm", stern.lengthOverallMm?.value);
}
