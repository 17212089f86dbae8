/** What stands beside the freeboard: how the boat lies before and after, what the well changes, and what a person moving aft does. */
import {
  type AfloatStudy,
  asAsked,
  DEFERS,
  type Figure,
  fromPractice,
  fromRecord,
  workedOut,
} from "#lib/checks/afloat-check.ts";
import { figure } from "#lib/quantity/words.ts";
import { changeOf, type Level, loaded, moved } from "#lib/rig/afloat/floating.ts";
import type { Lying } from "#lib/rig/afloat/lying.ts";
import { seatFreeboard, wellFreeboard } from "#lib/rig/afloat/stern-edge.ts";
import { hasWell } from "#lib/rig/obstacles.ts";
import { AT_THE_MOTOR } from "#lib/standards/afloat-practice.ts";
import type { Note } from "#lib/standards/citation.ts";
import { FULLNESS_BY_FORM, FULLNESS_HALF_WIDTH } from "#lib/standards/waterplane-fullness.ts";

/** Freeboard the seat loses when one person comes aft from where the persons sit, mm. */
function lostToOneAft(study: AfloatStudy, { after, water }: Lying): number {
  const { rig, aboard } = study.afloat;
  const from = aboard.personsForwardMm ?? (rig.stern.waterlineLengthMm ?? 0) / 2;
  const aft = loaded(after, water, moved("person", aboard.personKg, from, AT_THE_MOTOR.value));
  return seatFreeboard(after, rig.stern)! - seatFreeboard(aft, rig.stern)!;
}

const mm = (label: string, value: number | undefined): Figure[] =>
  value === undefined ? [] : [{ label, value, unit: "mm", ...workedOut }];

/** The figures of how the boat lies. */
export function lyingFigures(study: AfloatStudy, lies: Lying): Figure[] {
  const { rig, aboard } = study.afloat;
  const { before, after, water, masses } = lies;
  const { sinkageMm, trimMm } = changeOf(water, masses);
  const motor = masses.find(({ label }) => label === "motor");
  return [
    ...mm("Seat above the water, without the motor and the load", seatFreeboard(before, rig.stern)),
    ...mm("Seat above the water, all aboard", seatFreeboard(after, rig.stern)),
    ...mm(
      "Well's lowest edge above the water, without the motor and the load",
      wellFreeboard(before, rig.stern),
    ),
    ...mm("Well's lowest edge above the water, all aboard", wellFreeboard(after, rig.stern)),
    ...mm("Sinks bodily", sinkageMm),
    ...mm("Changes trim by the stern over the waterline", trimMm),
    { label: "Bow up", value: after.bowUpDeg, unit: "deg", ...workedOut },
    ...mm("One person coming aft to the motor takes from the seat", lostToOneAft(study, lies)),
    ...(motor
      ? [{ label: "Motor's mass", value: motor.kg, unit: "kg" as const, ...fromRecord("massKg") }]
      : []),
    ...mm("Motor's mass aft of the transom's foot", motor && -motor.xMm),
    { label: "Persons aboard", value: aboard.persons * aboard.personKg, unit: "kg", ...asAsked },
    { label: "Fuel aboard", value: aboard.fuelKg, unit: "kg", ...asAsked },
    { label: "Sinks her a centimetre", value: water.kgPerCm, unit: "kg/cm", ...workedOut },
    { label: "Trims her a centimetre", value: water.kgMPerCm, unit: "kg m/cm", ...workedOut },
    ...mm("Turns about a point forward of the transom", water.flotationMm),
    {
      label: "A person at the motor, forward of the transom",
      value: AT_THE_MOTOR.value,
      unit: "mm",
      ...fromPractice,
    },
  ];
}

/** Trim beyond which straight sides no longer tell the truth, degrees. */
const FAR_TRIM_DEG = 4;

/** What was taken for granted, and what the reader should know. */
export function lyingNotes(study: AfloatStudy, { after, masses }: Lying): Note[] {
  const { rig, aboard } = study.afloat;
  const { hullForm } = rig.stern;
  const fullness = hullForm && FULLNESS_BY_FORM[hullForm].value;
  const axes =
    rig.motor.tiltAxisForwardMm !== undefined &&
    rig.motor.tiltAxisAboveMm !== undefined &&
    rig.motor.steerAxisAftMm !== undefined;
  const from =
    aboard.personsForwardMm === undefined
      ? "amidships"
      : `${study.write(aboard.personsForwardMm)} forward of the transom`;
  return [
    {
      id: "load",
      says: `On top of the level that was taken without the motor: ${aboard.persons} ${aboard.persons === 1 ? "person" : "persons"} of ${figure(aboard.personKg)} kg ${from}, and ${figure(aboard.fuelKg)} kg of fuel ${study.write(aboard.fuelForwardMm)} forward of the transom. Where they were aboard when the level was taken, set them to none.`,
    },
    {
      id: "level-before",
      says: "Only the water at the transom was taken: the keel line is taken to lie level without the motor (common practice, no source).",
    },
    ...(fullness === undefined
      ? []
      : [
          {
            id: "fullness",
            says: `The waterplane is taken to fill ${fullness} of its length times breadth, give or take ${FULLNESS_HALF_WIDTH}, as usual for a ${FORM_WORDS[hullForm!]} (common practice, no source); that is reckoned in.`,
          },
        ]),
    ...(axes || masses.every(({ label }) => label !== "motor")
      ? []
      : [
          {
            id: "axes",
            says: "Where the motor's axes were not taken, its mass is taken to hang a usual way aft of the saddle (common practice, no source).",
          },
        ]),
    ...(Math.abs(after.bowUpDeg) > FAR_TRIM_DEG
      ? [
          {
            id: "far",
            says: "So much trim is more than the estimate is good for: take it as a warning, not as a figure.",
          },
        ]
      : []),
    {
      id: "no-minimum",
      says: "There is no one least freeboard: each rule is named with the boats it was written for, and none was written for a pleasure boat.",
    },
    DEFERS,
  ];
}

const FORM_WORDS = { flat: "flat bottom", vee: "V bottom", round: "round bilge" } as const;

/** What the well changes, as a sentence. */
export function wellWords(study: AfloatStudy, after: Level): string {
  const { stern } = study.afloat.rig;
  if (!hasWell(stern)) return "";
  const [seat, well] = [seatFreeboard(after, stern), wellFreeboard(after, stern)];
  if (seat === undefined || well === undefined) return " What the well adds cannot be told.";
  if (well <= seat) return " The well's edge is no higher than the seat: it gains nothing.";
  return ` Without the well water would come in over the seat, ${study.write(well - seat)} lower.`;
}
