/**
 * The well's plan put together: shape, parts, marks on the hull, front against the sheer, screws, drains,
 * fillets and stock.
 */
import type { Settled } from "#lib/fit/cut-plan/choices.ts";
import { drainPlan } from "#lib/fit/cut-plan/drain.ts";
import { type ScrewJoint, screwJoint } from "#lib/fit/cut-plan/fasteners.ts";
import { type Fillet, fillet } from "#lib/fit/cut-plan/fillet.ts";
import { exactly, marked } from "#lib/fit/cut-plan/marked.ts";
import type { CutPart } from "#lib/fit/cut-plan/part.ts";
import type { FrontPlan, SideMark, WellPlan } from "#lib/fit/cut-plan/plan.ts";
import { beyond, meeting, type Plane, planeThrough, turned } from "#lib/fit/cut-plan/planes.ts";
import { postsOf } from "#lib/fit/cut-plan/posts.ts";
import { stockPlan } from "#lib/fit/cut-plan/stock.ts";
import { supportHeight, underSole, type Well, wellParts } from "#lib/fit/cut-plan/well-parts.ts";
import {
  aboveDatum,
  depthToSheer,
  heightToSheer,
  type PlannedShape,
  soleDirections,
} from "#lib/fit/cut-plan/well-shape.ts";
import { lengthWriter } from "#lib/quantity/words.ts";
import { inWell } from "#lib/rig/obstacles.ts";
import type { Stern } from "#lib/rig/stern.ts";
import { joinery, standsProudMm } from "#lib/standards/joinery.ts";

/** The whole plan of a well of a planned shape. Throws a RangeError where a post leaves the sole in two pieces or stands free in it. */
export function wellPlan(planned: PlannedShape, recorded: Stern, choices: Settled): WellPlan {
  const { shape, planes, drop, depth, dropNeed, depthNeed } = planned;
  const well: Well = { shape, planes, choices, posts: postsOf(recorded, choices, shape, planes) };
  const parts = wellParts(well);
  const corners = filletsOf(well);
  const aft = aboveDatum(shape, inWell(shape, 0, 0, 0));
  return {
    shape,
    drop,
    depth,
    leastDropMm: dropNeed.least,
    leastDepthMm: depthNeed.least,
    supportLine: marked(-supportHeight(well), "up", choices.lengths),
    parts,
    marks: marksOf(well),
    front: frontOf(well),
    fasteners: jointsOf(well, parts),
    drain: drainPlan(shape, planes, well.posts, choices),
    fillets: {
      radiusMm: choices.filletRadiusMm,
      corners,
      millilitres: corners.reduce((sum, { millilitres }) => sum + millilitres, 0),
    },
    stock: stockPlan(parts, { ...choices, kerfMm: joinery.kerfMm.value }),
    ...(recorded.waterlineMm && { soleAboveWaterMm: aft - recorded.waterlineMm.value }),
  };
}

/** Heights at which the sole meets the sides, at the transom and at the front. */
function marksOf(well: Well): SideMark[] {
  const { shape, planes } = well;
  const under = underSole(well);
  const top = turned(planes.sole);
  const at = (name: string, end: Plane, side: Plane): SideMark => {
    const upper = meeting(end, side, top);
    return {
      at: name,
      topAboveDatumMm: aboveDatum(shape, upper),
      underAboveDatumMm: aboveDatum(shape, meeting(end, side, under)),
      acrossMm: Math.abs(upper[1]),
      belowSheerMm: -beyond(planes.sheer, upper),
    };
  };
  return (["port", "starboard"] as const).flatMap((side) => [
    at(`${side} side at the transom`, planes.transom, planes[side]),
    at(`${side} side at the front`, planes.front, planes[side]),
  ]);
}

/** The front against the sheer, and what is planed off its board. */
function frontOf({ shape, planes, choices }: Well): FrontPlan {
  const write = lengthWriter(choices.lengths);
  const top = inWell(shape, shape.wellDepthMm, 0, shape.wellFrontHeightMm);
  const aboveSheerMm = beyond(planes.sheer, top);
  const depth = depthToSheer(shape, planes.sheer, shape.wellFrontHeightMm);
  const height = heightToSheer(shape, planes.sheer);
  const setDown = choices.soleThicknessMm + choices.cleatDepthMm + shape.wellFrontHeightMm;
  const proud =
    choices.frontBoardMm === undefined ? 0 : Math.max(0, standsProudMm(choices.frontBoardMm, setDown));
  const over = aboveSheerMm > 0.05;
  const room =
    Number.isFinite(depth) && depth > 0
      ? `a well ${exactly(depth, "down", choices.lengths).text} fore and aft would stay below it`
      : "no length of well stays below it";
  return {
    aboveSheerMm,
    ...(Number.isFinite(depth) && { depthBelowSheerMm: depth }),
    heightBelowSheerMm: height,
    planeOffMm: { aftMm: proud, foreMm: proud },
    says: over
      ? height < 0
        ? `The sole itself comes out ${write(-height)} above the sheer at the front: ${room}.`
        : `The front stands ${write(aboveSheerMm)} above the sheer: ${room}, or a front ${write(height)} high at this length.`
      : `The front stands ${write(-aboveSheerMm)} below the sheer.`,
  };
}

/** Screws of the joints, with the layers each goes through. */
function jointsOf({ shape, choices }: Well, parts: readonly CutPart[]): ScrewJoint[] {
  const { screwCoverMm: coverMm, screwSpacingMm: spacingMm, wood, lengths } = choices;
  const screwing = { coverMm, spacingMm, wood, lengths };
  const { soleThicknessMm: sole, cleatThicknessMm: thick, cleatDepthMm: deep } = choices;
  return parts
    .filter(({ id }) => id.includes("cleat"))
    .flatMap(({ id, name, topMm }) => {
      const onto = id.startsWith("aft")
        ? { what: "the transom", layer: shape.transomThicknessMm }
        : id.startsWith("front")
          ? { what: "the front beam", layer: choices.frontThicknessMm }
          : undefined;
      const place = name.charAt(0).toLowerCase() + name.slice(1);
      const joint = (what: string, layers: number[], second = false) =>
        screwJoint(`${id}: ${what}`, `${place}: ${what}`, layers, topMm, screwing, second);
      return [
        joint("sole down into it", [sole, deep]),
        ...(onto ? [joint(`through it into ${onto.what}`, [thick, onto.layer], true)] : []),
      ];
    });
}

/** Every inside corner of the well. */
function filletsOf({ shape, planes, choices }: Well): Fillet[] {
  const { up } = soleDirections(shape);
  const { filletRadiusMm: radius } = choices;
  const top = turned(planes.sole);
  const rim = planeThrough(inWell(shape, 0, 0, shape.wellFrontHeightMm), up);
  const between = (a: readonly number[], b: readonly number[]) =>
    Math.hypot(...a.map((value, k) => value - b[k]!));
  const along = (name: string, a: Plane, b: Plane, from: Plane, to: Plane) =>
    fillet(name, a, b, between(meeting(a, b, from), meeting(a, b, to)), radius);
  const seat = planeThrough([0, 0, 0], [0, 0, 1]);
  const { transom, front, port, starboard, sole } = planes;
  return [
    along("sole and transom", sole, transom, port, starboard),
    along("sole and front", sole, front, port, starboard),
    along("sole and port side", sole, port, transom, front),
    along("sole and starboard side", sole, starboard, transom, front),
    along("transom and port side", transom, port, top, seat),
    along("transom and starboard side", transom, starboard, top, seat),
    ...(shape.wellFrontHeightMm > 0
      ? [
          along("front and port side", front, port, top, rim),
          along("front and starboard side", front, starboard, top, rim),
        ]
      : []),
  ];
}
