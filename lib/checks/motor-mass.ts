/**
 * Mass of the motor. Too heavy a motor sinks the stern and takes its mass from the persons the hull may
 * carry. The label on the hull governs: its figure for the motor, and its figure for persons, motor and
 * gear together, whichever is nearer. No rule gives a mass for a hull without its displacement: without a
 * label it cannot be told. Margin: from the motor's mass, with gear and persons where the label counts
 * them, to the label. Beside it stands what the United States' loading rule sets aside for a motor of this
 * power, and how many persons that leaves.
 */
import {
  type AfloatCheck,
  type AfloatFinding,
  type AfloatKey,
  type AfloatStudy,
  DEFERS,
  type Figure,
  fromRecord,
  fromStandard,
  type Judged,
  missingOf,
  notKnown,
  workedOut,
} from "#lib/checks/afloat-check.ts";
import { figure } from "#lib/quantity/words.ts";
import { regulationTransomHeight } from "#lib/rig/afloat/regulation-heights.ts";
import type { Rig } from "#lib/rig/mounting.ts";
import { TALL_TRANSOM_MM } from "#lib/standards/cfr-33-183-3.ts";
import { type MotorAllowance, motorAllowance, motorWeights } from "#lib/standards/cfr-33-183-75.ts";
import {
  persons,
  personsOutboard,
  TESTED_UNDER_KG,
  weightOverTwoHp,
  weightUpToTwoHp,
} from "#lib/standards/cfr-33-183-loading.ts";
import type { Note } from "#lib/standards/citation.ts";

/** What the rule sets aside for a motor of this power; undefined where the power is not known or beyond its table. */
export function allowanceFor({ motor, stern }: Rig): MotorAllowance | undefined {
  if (motor.powerKw === undefined) return undefined;
  const height = regulationTransomHeight(stern);
  const lowTransom = height !== undefined && height <= TALL_TRANSOM_MM + 1e-6;
  return motorAllowance(motor.powerKw, { lowTransom });
}

/** Controls, battery and tank, kg. */
const gearKg = (allowance: MotorAllowance | undefined): number =>
  allowance ? allowance.controlsKg + allowance.batteryDryKg + allowance.tankKg : 0;

interface Ruled {
  readonly judged: Judged;
  readonly have: number;
  readonly need: number;
  readonly key: "ratedMotorMassKg" | "ratedTotalMassKg";
  readonly says: string;
}

function labels(study: AfloatStudy): Ruled[] {
  const { rig, aboard } = study.afloat;
  const { motor, stern } = rig;
  const mass = motor.massKg!;
  const gear = gearKg(allowanceFor(rig));
  const people = aboard.persons * aboard.personKg;
  const found: Ruled[] = [];
  if (stern.ratedMotorMassKg !== undefined) {
    const need = stern.ratedMotorMassKg;
    found.push({
      key: "ratedMotorMassKg",
      judged: study.judge({
        room: ({ rig: r }) => r.stern.ratedMotorMassKg! - r.motor.massKg!,
        keys: ["ratedMotorMassKg", "massKg"],
      }),
      have: mass,
      need,
      says: `The capacity label allows a motor of ${figure(need)} kg and this one is ${figure(mass)} kg`,
    });
  }
  if (stern.ratedTotalMassKg !== undefined) {
    const need = stern.ratedTotalMassKg;
    const others = gear + people;
    found.push({
      key: "ratedTotalMassKg",
      judged: study.judge({
        room: ({ rig: r }) => r.stern.ratedTotalMassKg! - r.motor.massKg! - others,
        keys: ["ratedTotalMassKg", "massKg"],
      }),
      have: mass + others,
      need,
      says: `The capacity label allows ${figure(need)} kg of persons, motor and gear; motor (${figure(mass)} kg), its gear (${figure(gear)} kg) and ${aboard.persons} persons (${figure(people)} kg) come to ${figure(mass + others)} kg`,
    });
  }
  return found.sort(
    (a, b) => RANK[a.judged.verdict] - RANK[b.judged.verdict] || a.judged.margin - b.judged.margin,
  );
}

const RANK = { fouls: 0, "cannot tell": 1, fits: 2 } as const;

function answer(study: AfloatStudy): AfloatFinding {
  const { rig } = study.afloat;
  const figures = massFigures(rig);
  const notes = [...(allowanceFor(rig)?.notes ?? []), ...personsNotes(rig), DEFERS];
  const labelled = rig.stern.ratedMotorMassKg !== undefined || rig.stern.ratedTotalMassKg !== undefined;
  const total = rig.stern.ratedTotalMassKg !== undefined;
  const wanted: AfloatKey[] = [
    "massKg",
    ...(labelled ? [] : (["ratedMotorMassKg"] as const)),
    ...(total ? (["powerKw"] as const) : []),
  ];
  const missing = missingOf(rig, wanted);
  const [ruled] = missing.includes("massKg") || !labelled ? [] : labels(study);
  // Without the power its gear counts for nothing: a foul stands all the same.
  if (!ruled || (missing.length > 0 && ruled.judged.verdict !== "fouls")) {
    return { outcome: "cannot tell", says: notKnown(missing), missing, figures, notes };
  }
  const { judged, have, need, key, says } = ruled;
  return {
    outcome: judged.verdict,
    says: `${says}.`,
    missing: [],
    ruling: {
      judged,
      have,
      need,
      limit: {
        value: need,
        status: "capacity label",
        ...fromRecord(key),
        source: "the hull's capacity label",
      },
    },
    figures,
    notes,
  };
}

function massFigures(rig: Rig): Figure[] {
  const { motor, stern } = rig;
  const row = allowanceFor(rig);
  const set = (label: string, value: number): Figure => ({
    label: `Rule's allowance: ${label}`,
    value,
    unit: "kg",
    ...fromStandard(motorWeights),
  });
  return [
    ...(motor.massKg === undefined
      ? []
      : [
          {
            label: "Motor's own mass, dry",
            value: motor.massKg,
            unit: "kg" as const,
            ...fromRecord("massKg"),
          },
        ]),
    ...(row
      ? [
          set("motor dry", row.dryKg),
          set("motor running", row.runningKg),
          set("controls", row.controlsKg),
          set("battery", row.batteryDryKg),
          set("full portable tank", row.tankKg),
          set("running motor, controls, battery and tank", row.totalKg),
        ]
      : []),
    ...personsLeft(rig, stern.ratedTotalMassKg, row),
  ];
}

/** What motor and gear leave for persons, and how many that is, by the rule's allowance and by the motor's own mass. */
function personsLeft({ motor }: Rig, totalKg: number | undefined, row: MotorAllowance | undefined): Figure[] {
  if (totalKg === undefined || !row) return [];
  const left = (label: string, takenKg: number): Figure[] => {
    const kg = Math.max(0, totalKg - takenKg);
    return [
      { label: `Left for persons, ${label}`, value: kg, unit: "kg", ...workedOut },
      {
        label: `Persons, ${label}`,
        value: Math.max(0, persons(kg)),
        unit: "persons",
        ...fromStandard(personsOutboard),
      },
    ];
  };
  return [
    ...left("by the rule's allowance", row.totalKg),
    ...(motor.massKg === undefined ? [] : left("by the motor's own mass", motor.massKg + gearKg(row))),
  ];
}

function personsNotes(rig: Rig): Note[] {
  const row = allowanceFor(rig);
  const { ratedTotalMassKg: total } = rig.stern;
  return [
    ...(row
      ? [
          {
            id: "us-allowance",
            says: "The allowances are those of the United States' loading rule for boats under 20 ft; the motor's own mass tells more about this boat.",
          },
        ]
      : []),
    ...(rig.motor.strokes === 0
      ? [
          {
            id: "electric",
            says: "The table was made for motors with a tank; an electric motor's batteries are weighed by themselves.",
          },
        ]
      : []),
    ...(row && total !== undefined && total - row.totalKg < TESTED_UNDER_KG
      ? [
          {
            id: "tested",
            says: "Under 550 lb of persons the rule also tests list and trim afloat, which can lower their number.",
          },
        ]
      : []),
  ];
}

export const motorMass: AfloatCheck = {
  id: "motor-mass",
  question: "Is the motor within the mass this hull may carry?",
  why: "A heavy motor sinks the stern, and every kilogram of it is one less for persons and gear.",
  leavesOut: "The hull's displacement, without which no rule gives a figure where there is no label.",
  unit: "kg",
  standing: "rule",
  is: "The hull's capacity label; the United States' table of motor weights stands beside it.",
  standards: [motorWeights, weightOverTwoHp, weightUpToTwoHp, personsOutboard],
  needs: ["massKg", "powerKw", "ratedMotorMassKg", "ratedTotalMassKg"],
  answer,
};
