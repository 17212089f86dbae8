/**
 * The parts of a simple well: a sole on cleats, a cleat along the transom, a front beam on edge with its
 * own cleat, cleats along the sides. Every cut lies in a plane of the well, so bevels, mitres and lengths
 * on both faces come out of the same few planes.
 */
import type { Settled } from "#lib/fit/cut-plan/choices.ts";
import type { CutPlane } from "#lib/fit/cut-plan/panel.ts";
import { type Blank, leavesPart } from "#lib/fit/cut-plan/panel.ts";
import { type CutPart, cutPart, type Naming } from "#lib/fit/cut-plan/part.ts";
import type { Place } from "#lib/fit/cut-plan/place.ts";
import {
  cross,
  dot,
  type Plane,
  planeThrough,
  scaled,
  shifted,
  turned,
  type Vector,
} from "#lib/fit/cut-plan/planes.ts";
import { freeStretches, type Post, roundPosts } from "#lib/fit/cut-plan/posts.ts";
import {
  carriedTo,
  meetingLine,
  soleDirections,
  type WellPlanes,
  type WellShape,
} from "#lib/fit/cut-plan/well-shape.ts";
import { inWell } from "#lib/rig/obstacles.ts";

/** Everything the parts are cut to. */
export interface Well {
  readonly shape: WellShape;
  readonly planes: WellPlanes;
  readonly choices: Settled;
  readonly posts: readonly Post[];
}

/** Pieces shorter than this are not cut, mm. */
const LEAST_PIECE_MM = 40;
const PORT: Vector = [0, 1, 0];
const STARBOARD: Vector = [0, -1, 0];

const cut = (id: string, against: string, plane: Plane): CutPlane => ({ id, against, plane });
const ends = ({ planes }: Well): [CutPlane, CutPlane] => [
  cut("port end", "port side", planes.port),
  cut("starboard end", "starboard side", planes.starboard),
];

/** The sole's underside as a plane that bounds what lies below it. */
export const underSole = ({ planes, choices }: Well): Plane =>
  shifted(turned(planes.sole), -choices.soleThicknessMm);

/** Top face looked down on: port left, forward up. */
export function solePart(well: Well): CutPart {
  const { shape, planes, choices, posts } = well;
  const { forward } = soleDirections(shape);
  const blank: Blank = {
    place: { originMm: inWell(shape, 0, 0, 0), right: STARBOARD, up: forward },
    thicknessMm: choices.soleThicknessMm,
    cuts: [
      cut("aft edge", "transom", planes.transom),
      cut("starboard edge", "starboard side", planes.starboard),
      cut("front edge", "front beam", planes.front),
      cut("port edge", "port side", planes.port),
    ],
    round: roundPosts(posts),
  };
  return cutPart(
    {
      id: "sole",
      name: "Well sole",
      stock: { kind: "sheet", thicknessMm: choices.soleThicknessMm },
      face: "top face, looked down on, forward up the sheet",
      sides: { left: "PORT", right: "STARBOARD", top: "FORWARD", bottom: "AFT" },
    },
    blank,
  );
}

/** Aft face seen from aft: port left, up up. Its board may stand above the finished edge. */
export function frontBeam(well: Well): CutPart {
  const { shape, planes, choices } = well;
  const { up } = soleDirections(shape);
  const foot = choices.soleThicknessMm + choices.cleatDepthMm;
  const top = planeThrough(inWell(shape, 0, 0, shape.wellFrontHeightMm), up);
  const blank: Blank = {
    place: { originMm: inWell(shape, shape.wellDepthMm, 0, 0), right: STARBOARD, up },
    thicknessMm: choices.frontThicknessMm,
    cuts: [
      cut("lower edge", "nothing: it hangs below the cleat", shifted(planes.sole, foot)),
      cut("starboard end", "starboard side", planes.starboard),
      cut("upper edge", "nothing: the front's top", top),
      cut("port end", "port side", planes.port),
    ],
  };
  return cutPart(
    {
      id: "front-beam",
      name: "Front beam",
      stock:
        choices.frontBoardMm === undefined
          ? { kind: "sheet", thicknessMm: choices.frontThicknessMm }
          : { kind: "board", thicknessMm: choices.frontThicknessMm, widthMm: choices.frontBoardMm },
      face: "aft face, looked at from aft",
      sides: { left: "PORT", right: "STARBOARD", top: "UP", bottom: "DOWN" },
    },
    blank,
  );
}

const cleatStock = ({ choices }: Well) =>
  ({ kind: "board", thicknessMm: choices.cleatThicknessMm, widthMm: choices.cleatDepthMm }) as const;

/** The cleat along the transom in as many pieces as the posts leave: forward face looked at from inside the boat, port right. */
export function aftCleats(well: Well): CutPart[] {
  const { shape, choices, posts } = well;
  const t = shape.transomThicknessMm;
  const topBack = supportHeight(well);
  const place: Place = { originMm: [t + choices.cleatThicknessMm, 0, topBack], right: PORT, up: [0, 0, 1] };
  const length: CutPlane[] = [
    cut("lower edge", "nothing", planeThrough([0, 0, topBack - choices.cleatDepthMm], [0, 0, -1])),
    cut("upper edge", "underside of the sole", underSole(well)),
  ];
  const blocked = posts.filter(({ low }) => low[0] < t + choices.cleatThicknessMm);
  return freeStretches(blocked.map(({ low, high }) => [low[1], high[1]] as const)).flatMap(
    ([from, to], i, all) => {
      const [port, starboard] = ends(well);
      const blank: Blank = {
        place,
        thicknessMm: choices.cleatThicknessMm,
        cuts: [
          ...length,
          to === Number.POSITIVE_INFINITY ? port : cut("port end", "post", planeThrough([0, to, 0], PORT)),
          from === Number.NEGATIVE_INFINITY
            ? starboard
            : cut("starboard end", "post", planeThrough([0, from, 0], STARBOARD)),
        ],
      };
      const naming: Naming = {
        id: all.length > 1 ? `aft-cleat-${i + 1}` : "aft-cleat",
        name: "Aft cleat",
        stock: cleatStock(well),
        face: "forward face, looked at from inside the boat",
        sides: { left: "STARBOARD", right: "PORT", top: "UP", bottom: "DOWN" },
      };
      return leavesPart(blank, LEAST_PIECE_MM - 30) ? [cutPart(naming, blank)] : [];
    },
  );
}

/** Height along the inside face, from the seat, at which the sole's underside meets the transom: the support line; minus = below the seat. */
export function supportHeight(well: Well): number {
  const under = underSole(well);
  const t = well.shape.transomThicknessMm;
  return (under.at - under.normal[0] * t) / under.normal[2];
}

/** The cleat on the front beam: aft face seen from aft. */
export function frontCleat(well: Well): CutPart {
  const { shape, planes, choices } = well;
  const { up } = soleDirections(shape);
  const along = shape.wellDepthMm - choices.cleatThicknessMm;
  const [port, starboard] = ends(well);
  return cutPart(
    {
      id: "front-cleat",
      name: "Front cleat",
      stock: cleatStock(well),
      face: "aft face, looked at from aft",
      sides: { left: "PORT", right: "STARBOARD", top: "UP", bottom: "DOWN" },
    },
    {
      place: { originMm: inWell(shape, along, 0, -choices.soleThicknessMm), right: STARBOARD, up },
      thicknessMm: choices.cleatThicknessMm,
      cuts: [
        cut("lower edge", "nothing", shifted(planes.sole, choices.soleThicknessMm + choices.cleatDepthMm)),
        starboard,
        cut("upper edge", "underside of the sole", underSole(well)),
        port,
      ],
    },
  );
}

/** The cleats along one side, from the aft cleat to the front cleat, in as many pieces as frames leave: inboard face looked at from inside the well. */
export function sideCleats(well: Well, side: "port" | "starboard"): CutPart[] {
  const { shape, planes, choices, posts } = well;
  const wall = planes[side];
  const { forward } = soleDirections(shape);
  const line = meetingLine(wall, underSole(well));
  const right = scaled(line, (side === "port" ? 1 : -1) * Math.sign(dot(line, forward)));
  const inboard = scaled(wall.normal, -1);
  const up = cross(inboard, right);
  const inner = shifted(wall, -choices.cleatThicknessMm);
  const corner = carriedTo(carriedTo(inWell(shape, 0, 0, 0), PORT, wall), up, underSole(well));
  const originMm = carriedTo(corner, wall.normal, inner);
  const lower = planeThrough(corner, scaled(up, -1));
  const blocked = posts.filter((post) => post.side === side);
  const aft = shape.transomThicknessMm + choices.cleatThicknessMm;
  const [foreName, aftName] = ["front cleat", "aft cleat"];
  return freeStretches(blocked.map(({ low, high }) => [low[0], high[0]] as const)).flatMap(
    ([from, to], i, all) => {
      const aftEnd =
        from < aft
          ? cut("aft end", aftName, planeThrough([aft, 0, 0], [-1, 0, 0]))
          : cut("aft end", "post", planeThrough([from, 0, 0], [-1, 0, 0]));
      const foreEnd =
        to === Number.POSITIVE_INFINITY
          ? cut("front end", foreName, shifted(planes.front, -choices.cleatThicknessMm))
          : cut("front end", "post", planeThrough([to, 0, 0], [1, 0, 0]));
      const blank: Blank = {
        place: { originMm, right, up },
        thicknessMm: choices.cleatThicknessMm,
        cuts: [
          cut("lower edge", "nothing", shifted(lower, choices.cleatDepthMm)),
          cut("upper edge", "underside of the sole", underSole(well)),
          aftEnd,
          foreEnd,
        ],
      };
      const naming: Naming = {
        id: all.length > 1 ? `side-cleat-${side}-${i + 1}` : `side-cleat-${side}`,
        name: `Side cleat, ${side}`,
        stock: cleatStock(well),
        face: "inboard face, looked at from inside the well",
        sides:
          side === "port"
            ? { left: "AFT", right: "FORWARD", top: "UP", bottom: "DOWN" }
            : { left: "FORWARD", right: "AFT", top: "UP", bottom: "DOWN" },
      };
      return to > aft && leavesPart(blank, LEAST_PIECE_MM - 30) ? [cutPart(naming, blank)] : [];
    },
  );
}

/** Every part of the well, in the order they go in. */
export function wellParts(well: Well): CutPart[] {
  const sides = well.choices.underSides === "cleats";
  return [
    ...aftCleats(well),
    frontBeam(well),
    frontCleat(well),
    ...(sides ? [...sideCleats(well, "port"), ...sideCleats(well, "starboard")] : []),
    solePart(well),
  ];
}
