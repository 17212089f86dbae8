/**
 * Propeller and skeg in the water. With too little water over the blades air is drawn down to them, the
 * motor races and the boat loses way. Margin: from the water over the upper blade tips, at rest with
 * everything aboard to two inches, running on the plane to nothing (both common practice, no source): the
 * plate, whose window is asked elsewhere, keeps the air off what little stands over them there. Beside it: draught with the motor down, what stands above the keel line kicked up, the lift of the skeg. Running,
 * the water is taken to leave the transom level with the bottom beside the keel. Leaves out waves, turns,
 * and how the hull's own wake lifts or lowers the water.
 */
import {
  type AfloatCheck,
  type AfloatFinding,
  type AfloatKey,
  type AfloatStudy,
  DEFERS,
  type Figure,
  fromPractice,
  type Judged,
  LYING,
  LYING_KEYS,
  missingOf,
  notKnown,
  workedOut,
} from "#lib/checks/afloat-check.ts";
import type { Level } from "#lib/rig/afloat/floating.ts";
import { type Afloat, lying, runningAngle, seatOf } from "#lib/rig/afloat/lying.ts";
import {
  aboveKeelLine,
  depths,
  draught,
  type Hang,
  legPoint,
  type PropellerMotor,
  runningLevel,
} from "#lib/rig/afloat/propeller.ts";
import type { Rig, RigKey } from "#lib/rig/mounting.ts";
import { TIPS_RUNNING } from "#lib/standards/afloat-practice.ts";
import type { Note } from "#lib/standards/citation.ts";
import { type Lying as Lies, TIP_COVER, ventilation } from "#lib/standards/propeller-cover.ts";

/** Water that must stand over the upper blade tips. */
const LEAST = { "at rest": TIP_COVER["at rest"], running: TIPS_RUNNING } as const;

const LEG = [
  "shaftLengthMm",
  "measuredAtDeg",
  "tiltAxisForwardMm",
  "tiltAxisAboveMm",
  "steerAxisAftMm",
  "pinAnglesDeg",
  "plateToPropCentreMm",
  "propDiameterMm",
  "plateToSkegMm",
] as const satisfies readonly RigKey[];

const RUNNING: readonly AfloatKey[] = [...LEG, "rakeDeg", "seatMm", "keelDepthMm"];

const legOf = (rig: Rig): PropellerMotor | undefined =>
  LEG.every((key) => rig.motor[key] !== undefined) ? (rig.motor as PropellerMotor) : undefined;

/** The motor on its seat, in its running hole unless another angle is given. */
function hangOf(rig: Rig, faceAngleDeg = runningAngle(rig)): Hang | undefined {
  const seat = seatOf(rig.stern);
  return seat && { ...seat, faceAngleDeg };
}

const LEVELS: Record<Lies, (of: Afloat) => Level | undefined> = {
  "at rest": (of) => lying(of)?.after,
  running: ({ rig }) =>
    rig.stern.keelDepthMm === undefined ? undefined : runningLevel(rig.stern.keelDepthMm),
};

/** Water over the upper blade tips, mm; undefined where it cannot be worked out. */
function cover(of: Afloat, lies: Lies): number | undefined {
  const [leg, hang, level] = [legOf(of.rig), hangOf(of.rig), LEVELS[lies](of)];
  return leg && hang && level && depths(leg, hang, level)["upper tip"];
}

interface Side {
  readonly lies: Lies;
  readonly mm: number;
  readonly judged: Judged;
}

function sides(study: AfloatStudy): Side[] {
  return (["at rest", "running"] as const).flatMap((lies) => {
    const mm = cover(study.afloat, lies);
    if (mm === undefined) return [];
    const rest = lies === "at rest";
    const keys: readonly RigKey[] = rest
      ? [...LEG, ...LYING_KEYS]
      : [...LEG, "rakeDeg", "seatMm", "transomTopMm", "keelDepthMm"];
    const judged = study.judge({
      room: (of) => (cover(of, lies) ?? mm) - LEAST[lies].value,
      keys: [...new Set(keys)],
      ...(rest && { onFullness: true as const }),
    });
    return [{ lies, mm, judged }];
  });
}

const RANK = { fouls: 0, "cannot tell": 1, fits: 2 } as const;

function answer(study: AfloatStudy): AfloatFinding {
  const missing = missingOf(study.afloat.rig, [...RUNNING, ...LYING]);
  const found = sides(study).sort(
    (a, b) => RANK[a.judged.verdict] - RANK[b.judged.verdict] || a.judged.margin - b.judged.margin,
  );
  const beside = { figures: figuresOf(study, found), notes: notesOf(found) };
  const [ruling] = found;
  if (!ruling || (missing.length > 0 && ruling.judged.verdict !== "fouls")) {
    return { outcome: "cannot tell", says: notKnown(missing), missing, ...beside };
  }
  const limit = LEAST[ruling.lies];
  const stands =
    ruling.mm < 0
      ? `${study.write(-ruling.mm)} above the water`
      : `${study.write(ruling.mm)} under the water`;
  return {
    outcome: ruling.judged.verdict,
    says: `${ruling.lies === "running" ? "Running" : "At rest"}, the upper blade tips lie ${stands}${limit.value > 0 ? `; ${study.write(limit.value)} is wanted` : ""}. ${sentence(ventilation(ruling.mm, ruling.lies).says)}.`,
    missing: [],
    ruling: {
      judged: ruling.judged,
      have: ruling.mm,
      need: limit.value,
      limit: { value: limit.value, status: limit.status, ...fromPractice },
    },
    ...beside,
  };
}

const sentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function figuresOf(study: AfloatStudy, found: readonly Side[]): Figure[] {
  const { rig } = study.afloat;
  const [leg, down] = [legOf(rig), hangOf(rig)];
  const level = LEVELS["at rest"](study.afloat);
  const mm = (label: string, value: number): Figure => ({ label, value, unit: "mm", ...workedOut });
  const tips = found.map(({ lies, mm: depth }) => mm(`Upper blade tips under the water, ${lies}`, depth));
  if (!leg || !down) return tips;
  const fullUp =
    rig.motor.tiltArcDeg === undefined
      ? undefined
      : hangOf(rig, rig.motor.pinAnglesDeg![0]! + rig.motor.tiltArcDeg);
  const low = fullUp && aboveKeelLine(leg, fullUp);
  return [
    ...tips,
    ...(level
      ? [
          mm("Draught, motor down", draught(leg, down, level).mm),
          ...(fullUp ? [mm("Draught, motor kicked up", draught(leg, fullUp, level).mm)] : []),
        ]
      : []),
    mm("Skeg below the keel line, motor down", -legPoint(leg, down, leg.plateToSkegMm)[2]),
    ...(fullUp && low
      ? [
          mm("Skeg above the keel line, motor kicked up", legPoint(leg, fullUp, leg.plateToSkegMm)[2]),
          mm(`Lowest of skeg and blades above the keel line, kicked up (${low.at})`, low.mm),
        ]
      : []),
  ];
}

const notesOf = (found: readonly Side[]): Note[] => [
  ...found.map(({ lies, mm }) => ({
    id: `ventilation-${lies.replace(" ", "-")}`,
    says: `${sentence(ventilation(mm, lies).says)}.`,
  })),
  {
    id: "on-axis",
    says: "The blades are taken to turn on the steering axis: how far aft of it they stand is not among the numbers.",
  },
  DEFERS,
];

export const propeller: AfloatCheck = {
  id: "propeller",
  question: "Does enough water stand over the propeller, at rest and running?",
  why: "With little water over its blades a propeller draws air, races and lets go in every turn.",
  leavesOut: "Waves, turns, and what the hull's own wake does to the water behind it.",
  unit: "mm",
  standing: "estimate",
  is: "An estimate; the depths wanted are common practice.",
  standards: [...Object.values(LEAST), TIP_COVER.running],
  needs: [...RUNNING, "tiltArcDeg", ...LYING],
  answer,
};
