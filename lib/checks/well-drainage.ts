/**
 * Draining the motor well. A well that does not empty holds a second sea in the stern, where the boat has
 * least to spare. Margin: from the drains' height above the water outside, at rest with everything aboard,
 * to level with it (common practice, no source): lower, and the water stands in the well. Beside it: what
 * the well holds, how long it takes to empty through its drains by the orifice formula, level and with the
 * boat's trim, and the freeing area that inspected vessels must have, as a yardstick. Leaves out the
 * motor's bulk in the well, waves, flaps and grids over the holes.
 */
import {
  type AfloatCheck,
  type AfloatFinding,
  type AfloatKey,
  type AfloatStudy,
  DEFERS,
  type Figure,
  fromPractice,
  fromRecord,
  fromStandard,
  LYING,
  LYING_KEYS,
  missingOf,
  notKnown,
  type Source,
  workedOut,
} from "#lib/checks/afloat-check.ts";
import { cos } from "#lib/quantity/angle.ts";
import { figure } from "#lib/quantity/words.ts";
import { drainS } from "#lib/rig/afloat/draining.ts";
import type { Level } from "#lib/rig/afloat/floating.ts";
import { lying } from "#lib/rig/afloat/lying.ts";
import { drainsAboveWater, WELL_PLACE } from "#lib/rig/afloat/stern-edge.ts";
import type { Well } from "#lib/rig/afloat/well-section.ts";
import { brimLitres, brimMm, soleRiseDeg, staysLitres } from "#lib/rig/afloat/well-water.ts";
import type { RigKey } from "#lib/rig/mounting.ts";
import { hasWell } from "#lib/rig/obstacles.ts";
import type { SternValues } from "#lib/rig/stern.ts";
import { DRAIN_ABOVE_WATER } from "#lib/standards/afloat-practice.ts";
import { cableHole, freeingAreaMm2, recessDrainage, WATERS } from "#lib/standards/cfr-46-178-450.ts";
import type { Note } from "#lib/standards/citation.ts";
import { DISCHARGE, holesArea } from "#lib/standards/hydraulics.ts";

const SHAPE = [
  "soleDropMm",
  "soleAngleDeg",
  "wellDepthMm",
  "wellFrontHeightMm",
  "wellWidthAftMm",
  "wellWidthFrontMm",
  "sideFlareDeg",
  "rakeDeg",
] as const satisfies readonly RigKey[];
const DRAINS = ["drainDiameterMm", "drainCount"] as const;

/** A plain hole: the low side of what is usual. */
const COEFFICIENT = DISCHARGE.plain;

const shaped = (stern: SternValues): Well | undefined =>
  SHAPE.every((key) => stern[key] !== undefined) ? (stern as Well) : undefined;

function answer(study: AfloatStudy): AfloatFinding {
  const { rig } = study.afloat;
  if (!hasWell(rig.stern)) {
    return { outcome: "not asked", says: "There is no well.", missing: [], figures: [], notes: [] };
  }
  const wanted: AfloatKey[] = [...SHAPE, ...WELL_PLACE, ...DRAINS, ...LYING];
  const missing = missingOf(rig, wanted);
  const after = lying(study.afloat)?.after;
  const have = after && drainsAboveWater(after, rig.stern);
  const beside = { figures: drainFigures(rig.stern, after), notes: notesOf(study, after, have) };
  if (have === undefined) return { outcome: "cannot tell", says: notKnown(missing), missing, ...beside };
  const judged = study.judge({
    room: (of) => drainsAboveWater(lying(of)!.after, of.rig.stern)! - DRAIN_ABOVE_WATER.value,
    keys: [...new Set<RigKey>([...LYING_KEYS, ...WELL_PLACE])],
    onFullness: true,
  });
  if (missing.length > 0 && judged.verdict !== "fouls") {
    return { outcome: "cannot tell", says: notKnown(missing), missing, ...beside };
  }
  const side = have < 0 ? `${study.write(-have)} below` : `${study.write(have)} above`;
  return {
    outcome: judged.verdict,
    says: `At rest with everything aboard the well's drains lie ${side} the water outside${have < 0 ? ": water stands in the well" : ": the well empties by itself"}.`,
    missing: [],
    ruling: {
      judged,
      have,
      need: DRAIN_ABOVE_WATER.value,
      limit: { value: DRAIN_ABOVE_WATER.value, status: "common practice", ...fromPractice },
    },
    ...beside,
  };
}

const CM2 = 100;
const MM3_PER_LITRE = 1e6;

function drainFigures(stern: SternValues, after: Level | undefined): Figure[] {
  const well = shaped(stern);
  if (!well) return [];
  const level = lies("with the boat level", well, stern, { atTransomMm: 0, bowUpDeg: 0 }, 0);
  const outside = after && drainsAboveWater(after, stern);
  const rise = after && soleRiseDeg(well.soleAngleDeg, stern.rakeDeg!, after.bowUpDeg);
  const trimmed =
    after && outside !== undefined && rise !== undefined
      ? lies("at rest with everything aboard", well, stern, after, Math.max(0, -outside / cos(rise)))
      : [];
  return [...level, ...trimmed, ...areas(well, stern)];
}

/** What the well holds, keeps and how long it drains, as the boat lies. `outsideMm`: water outside above the drains. */
function lies(how: string, well: Well, stern: SternValues, level: Level, outsideMm: number): Figure[] {
  const rise = soleRiseDeg(well.soleAngleDeg, stern.rakeDeg!, level.bowUpDeg);
  const figures: Figure[] = [
    { label: `Well holds, ${how}`, value: brimLitres(well, rise), unit: "L", ...workedOut },
    {
      label: `Stays in the well, ${how}`,
      value: staysLitres(well, rise, outsideMm),
      unit: "L",
      ...workedOut,
    },
  ];
  const { drainDiameterMm, drainCount } = stern;
  if (drainDiameterMm === undefined || !drainCount) return figures;
  const seconds = drainS(
    well,
    rise,
    brimMm(well, rise),
    { drainDiameterMm, drainCount, coefficient: COEFFICIENT.value },
    outsideMm,
  );
  return [
    ...figures,
    { label: `Drains in, ${how}`, value: seconds, unit: "s", ...fromStandard(COEFFICIENT.citation) },
  ];
}

/** The drains' area beside what inspected vessels must have. */
function areas(well: Well, stern: SternValues): Figure[] {
  const { drainDiameterMm, drainCount, lengthOverallMm } = stern;
  const rise = soleRiseDeg(well.soleAngleDeg, stern.rakeDeg!);
  const cm2 = (label: string, mm2: number, source: Source): Figure => ({
    label,
    value: mm2 / CM2,
    unit: "cm²",
    ...source,
  });
  const own =
    drainDiameterMm === undefined || drainCount === undefined
      ? []
      : [cm2("Area of the drains", holesArea(drainDiameterMm, drainCount), fromRecord("drainDiameterMm"))];
  if (lengthOverallMm === undefined) return own;
  const recess = {
    volumeMm3: brimLitres(well, rise) * MM3_PER_LITRE,
    recessLengthMm: well.wellDepthMm,
    lengthOverDeckMm: lengthOverallMm,
  };
  const asked = (Object.keys(WATERS) as (keyof typeof WATERS)[]).map((waters) =>
    cm2(
      `Freeing area inspected vessels must have, ${waters} waters`,
      freeingAreaMm2(recess, waters),
      fromStandard(recessDrainage),
    ),
  );
  return [...own, ...asked];
}

function notesOf(study: AfloatStudy, after: Level | undefined, outside: number | undefined): Note[] {
  const { stern } = study.afloat.rig;
  const rise =
    stern.soleAngleDeg === undefined || stern.rakeDeg === undefined
      ? undefined
      : soleRiseDeg(stern.soleAngleDeg, stern.rakeDeg, after?.bowUpDeg ?? 0);
  return [
    ...(rise !== undefined && rise < 0
      ? [
          {
            id: "falls-forward",
            says: "The sole falls forward as the boat lies: a pool stays at the well's front.",
          },
        ]
      : []),
    ...(outside !== undefined && outside < 0
      ? [
          {
            id: "stands",
            says: "Below the water outside the drains let water in: plug them at rest, or raise the sole.",
          },
        ]
      : []),
    ...(stern.drainCount === 0
      ? [{ id: "no-drains", says: "The well has no drains: it never empties by itself." }]
      : []),
    {
      id: "orifice",
      says: `Time by the orifice formula with a coefficient of discharge of ${figure(COEFFICIENT.value)} (${COEFFICIENT.what}); the motor's bulk, waves, flaps and grids are left out.`,
    },
    {
      id: "inspected",
      says: "The freeing areas are a rule for inspected passenger vessels of the United States: for a pleasure boat's well a yardstick only. For waters outside the boat one hole of 3 in for cables does not count against a well there.",
    },
    DEFERS,
  ];
}

export const wellDrainage: AfloatCheck = {
  id: "well-drainage",
  question: "Does the motor well empty by itself?",
  why: "A well that holds water loads the stern where the boat has least to spare, and the next wave finds it full.",
  leavesOut: "The motor's bulk in the well, waves, and flaps or grids over the drains.",
  unit: "mm",
  standing: "estimate",
  is: "An estimate; freeing areas are shown as a yardstick from a rule for inspected vessels.",
  standards: [DRAIN_ABOVE_WATER, COEFFICIENT.citation, recessDrainage, cableHole],
  needs: [...SHAPE, ...WELL_PLACE, ...DRAINS, ...LYING],
  answer,
};
