/**
 * The handful of schematics that every picture of how to measure is drawn on. The motor hangs on a plumb
 * board with its saddle at the origin; the stern stands on its datum. Points are named once here, so that
 * a picture can say "from the saddle to the plate" and nothing else.
 */
import { bodiesOf } from "#lib/draw/bodies.ts";
import { drawnBracket } from "#lib/draw/bracket-view.ts";
import { arc, type Flat, lettering, line, type Mark, outline, type Window } from "#lib/draw/drawing.ts";
import { hatching } from "#lib/draw/hatch.ts";
import { sternElevation } from "#lib/draw/stern-elevation.ts";
import { datumLine, waterSurface } from "#lib/draw/stern-lines.ts";
import { sternPlan } from "#lib/draw/stern-plan.ts";
import { sternProfile } from "#lib/draw/stern-profile.ts";
import { TYPICAL_MOTOR as MOTOR, TYPICAL_STERN as STERN } from "#lib/draw/typical.ts";
import { drawnMotor, fromBracket, GHOST, posed, SOLID, type View } from "#lib/draw/view.ts";
import { inWell } from "#lib/rig/obstacles.ts";

const BOARD_THICK = 42;
const ON_BOARD = { rakeDeg: 0, seatMm: 0 };
const ON_STERN = { rakeDeg: STERN.rakeDeg, seatMm: STERN.seatMm };
const REACH = { foreMm: 760, sideMm: 700 };

/** A point of the hanging motor seen from port: `x` forward of the steering axis, `height` above the saddle, leg parallel to the board. */
export const onMotor = (x: number, height: number): Flat =>
  fromBracket(
    "profile",
    posed([x, 0, height], "steered", { faceAngleDeg: 0, steeringDeg: 0 }, MOTOR),
    ON_BOARD,
  );
/** A point of the motor from above: `x` forward of the steering axis, `y` to port. */
export const overMotor = (x: number, y: number): Flat => [
  MOTOR.steerAxisAftMm - MOTOR.tiltAxisForwardMm - x,
  -y,
];
/** A point in the bracket frame of the stern, from port: forward of the outside face, up the face from the seat. */
export const onStern = (f: number, v: number): Flat => fromBracket("profile", [f, 0, v], ON_STERN);
/** A point of the stern's well from port: along the sole, above it. */
export const inSternWell = (along: number, above: number): Flat =>
  fromBracket("profile", inWell(STERN, along, 0, above), ON_STERN);
/** A point of the stern's well from above: along the sole, to port. */
export const overSternWell = (along: number, y: number): Flat =>
  fromBracket("plan", inWell(STERN, along, y, 0), ON_STERN);
/** A point of the stern from aft: to port, above the datum. */
export const sternFromAft = (y: number, z: number): Flat => [-y, z];
/** A point of the well's after end seen from aft. */
export const wellFromAft = (y: number, above: number): Flat =>
  fromBracket("elevation", inWell(STERN, 0, y, above), ON_STERN);

function motorAt(view: View, faceAngleDeg: number, steeringDeg: number, ghost = false): Mark[] {
  const placing = { view, berth: ON_BOARD, axes: MOTOR, pose: { faceAngleDeg, steeringDeg } };
  return drawnMotor(bodiesOf(MOTOR), placing, ghost ? GHOST : SOLID);
}

function board(): Mark[] {
  const edge: Flat[] = [
    [-BOARD_THICK, -300],
    [0, -300],
    [0, 0],
    [-BOARD_THICK, 0],
  ];
  return [
    outline(edge, { fill: "paper", of: "board" }),
    ...hatching(edge, 22).map((ends) => line(ends, { line: "dimension", of: "hatch" })),
  ];
}
const boardFromAbove = (): Mark[] => [
  outline(
    [
      [-BOARD_THICK, -330],
      [0, -330],
      [0, 330],
      [-BOARD_THICK, 330],
    ],
    { fill: "paper", of: "board" },
  ),
];
const boardFromAft = (): Mark[] => [
  outline(
    [
      [-330, -300],
      [330, -300],
      [330, 0],
      [-330, 0],
    ],
    { fill: "paper", of: "board" },
  ),
];
const bracket = (view: View): Mark[] => drawnBracket(MOTOR, BOARD_THICK, view, ON_BOARD);

/** The sheer, stem and bottom of a small boat from port, 4.2 m long, transom to the right. */
const HULL_SIDE: readonly Flat[] = [
  [-4200, 720],
  [-4130, 480],
  [-3960, 250],
  [-3600, 70],
  [-3000, 0],
  [0, 0],
  [110, 520],
  [-900, 515],
  [-2000, 540],
  [-3200, 610],
];
const HULL_TOP: readonly Flat[] = [
  [0, -640],
  [-900, -770],
  [-1800, -790],
  [-2800, -650],
  [-3600, -360],
  [-4200, 0],
  [-3600, 360],
  [-2800, 650],
  [-1800, 790],
  [-900, 770],
  [0, 640],
];
const WATER_TOP: readonly Flat[] = [
  [0, -540],
  [-900, -640],
  [-1800, -640],
  [-2800, -480],
  [-3400, -240],
  [-3820, 0],
  [-3400, 240],
  [-2800, 480],
  [-1800, 640],
  [-900, 640],
  [0, 540],
];

function ratingPlate(left: number, top: number, wide: number): Mark[] {
  const high = wide * 0.6;
  const rules = [0.3, 0.5, 0.7].map((part) =>
    line(
      [
        [left + 0.12 * wide, top - part * high],
        [left + 0.88 * wide, top - part * high],
      ],
      { line: "dimension", of: "plate" },
    ),
  );
  return [
    outline(
      [
        [left, top - high],
        [left + wide, top - high],
        [left + wide, top],
        [left, top],
      ],
      { fill: "paper", of: "plate" },
    ),
    ...rules,
  ];
}

const sternSide = (): Mark[] => [datumLine(260, -820), ...sternProfile(STERN, ON_STERN, REACH)];
const motorSide = (): Mark[] => [...motorAt("profile", 0, 0), ...board(), ...bracket("profile")];

/** Draws each schematic. */
export const SCHEMATICS = {
  /** Motor on a board, from port, leg parallel to the board. */
  motorSide,
  /** Motor on a board, its leg swung out to a middle hole. */
  motorSwung: () => [...motorAt("profile", 16, 0), ...board(), ...bracket("profile")],
  /** Motor in its lowest hole, and full up. */
  motorTilted: () => [
    ...motorAt("profile", 70, 0, true),
    ...motorAt("profile", 4, 0),
    ...board(),
    ...bracket("profile"),
  ],
  /** Motor from above. */
  motorPlan: () => [
    ...motorAt("plan", 0, 0),
    ...boardFromAbove(),
    ...bracket("plan"),
    ...motorAt("plan", 0, 0).filter(
      (mark) => mark.mark === "outline" && ["cowl", "tiller", "grip"].includes(mark.of),
    ),
  ],
  /** Motor from above, straight and with the tiller swung to port. */
  motorToPort: () => [
    ...boardFromAbove(),
    ...bracket("plan"),
    ...motorAt("plan", 0, 40, true),
    ...motorAt("plan", 0, 0),
  ],
  /** Motor from above, straight and with the tiller swung to starboard. */
  motorToStarboard: () => [
    ...boardFromAbove(),
    ...bracket("plan"),
    ...motorAt("plan", 0, -40, true),
    ...motorAt("plan", 0, 0),
  ],
  /** Motor from aft. */
  motorAft: () => [...boardFromAft(), ...bracket("elevation"), ...motorAt("elevation", 0, 0)],
  /** Motor hung from a spring balance. */
  motorHung: () => [
    ...motorAt("profile", 0, 0),
    line(
      [
        [70, 430],
        [70, 560],
      ],
      { of: "sling" },
    ),
    arc([70, 640], 80, [0, 360], { fill: "paper", of: "balance" }),
    line(
      [
        [70, 640],
        [110, 690],
      ],
      { of: "needle" },
    ),
    line(
      [
        [70, 720],
        [70, 790],
      ],
      { of: "hook" },
    ),
  ],
  /** Motor with its rating plate. */
  motorPlated: () => [
    ...motorAt("profile", 0, 0),
    ...ratingPlate(90, 330, 150),
    ...board(),
    ...bracket("profile"),
  ],
  /** Stern in section, from port. */
  sternSide,
  /** Stern in section with the motor's plate at its heights. */
  sternPlates: () => [
    ...sternSide(),
    line(
      [
        [150, 45],
        [520, 45],
      ],
      { line: "extreme", of: "plate" },
    ),
    line(
      [
        [150, -75],
        [520, -75],
      ],
      { line: "extreme", of: "plate" },
    ),
    datumLine(560, 0),
  ],
  /** Stern in section, afloat. */
  sternAfloat: () => [...sternSide(), ...waterSurface(230, 80, 420, 300, 20)],
  /** Stern from aft. */
  sternAft: () => [...sternElevation(STERN, ON_STERN, REACH)],
  /** The well cut across, from aft. */
  wellAcross: () => {
    const [half, lean, high] = [STERN.wellWidthAftMm / 2, 70, STERN.wellSideHeightMm];
    const edge: Flat[] = [
      wellFromAft(half + lean, high),
      wellFromAft(half, 0),
      wellFromAft(-half, 0),
      wellFromAft(-half - lean, high),
    ];
    return [
      line(edge, { of: "well" }),
      line([edge[2]!, [edge[2]![0], edge[3]![1]]], { line: "centre", of: "square to the sole" }),
    ];
  },
  /** Stern and well from above. */
  sternPlan: () => [
    ...sternPlan(STERN, ON_STERN, REACH),
    ...[-1, 1].map((hand) => arc(overSternWell(60, hand * 330), 42, [0, 360], { of: "drain" })),
  ],
  /** Stern from aft with its capacity label. */
  sternLabelled: () => [...sternElevation(STERN, ON_STERN, REACH), ...ratingPlate(360, 480, 220)],
  /** Whole boat from port, afloat. */
  boatSide: () => [
    outline(HULL_SIDE, { fill: "paper", of: "hull" }),
    ...waterSurface(200, -4500, 500, 380, 60),
  ],
  /** Whole boat from above; her waterline dashed. */
  boatPlan: () => [
    outline(HULL_TOP, { fill: "paper", of: "hull" }),
    outline(WATER_TOP, { line: "hidden", of: "waterline" }),
    lettering([-2100, 0], "bow", { height: 3, align: "end" }),
  ],
} as const satisfies Record<string, () => Mark[]>;

/** The name of a schematic. */
export type SchematicName = keyof typeof SCHEMATICS;

/** The parts of a schematic a picture may show: whole, or close up. */
export const WINDOWS = {
  motor: { left: -620, right: 480, bottom: -790, top: 480 },
  motorSwung: { left: -420, right: 620, bottom: -760, top: 480 },
  motorTilted: { left: -420, right: 900, bottom: -790, top: 560 },
  motorHung: { left: -420, right: 620, bottom: -760, top: 820 },
  clamp: { left: -230, right: 200, bottom: -270, top: 160 },
  head: { left: -620, right: 480, bottom: -240, top: 520 },
  foot: { left: -120, right: 480, bottom: -800, top: -330 },
  motorPlan: { left: -620, right: 480, bottom: -430, top: 430 },
  motorAft: { left: -420, right: 420, bottom: -780, top: 480 },
  stern: { left: -800, right: 330, bottom: -130, top: 700 },
  seat: { left: -260, right: 260, bottom: 180, top: 640 },
  plates: { left: -330, right: 640, bottom: -200, top: 520 },
  heel: { left: -360, right: 260, bottom: -130, top: 330 },
  well: { left: -760, right: 260, bottom: 120, top: 700 },
  sternAft: { left: -860, right: 860, bottom: -130, top: 760 },
  notchCorner: { left: 60, right: 460, bottom: 350, top: 650 },
  sternPlan: { left: -760, right: 320, bottom: -760, top: 760 },
  drain: { left: -260, right: 60, bottom: 180, top: 480 },
  across: { left: -640, right: 640, bottom: 130, top: 640 },
  boat: { left: -4600, right: 700, bottom: -500, top: 1100 },
  boatPlan: { left: -4600, right: 500, bottom: -1200, top: 1200 },
} as const satisfies Record<string, Window>;

/** The name of a part of a schematic. */
export type WindowName = keyof typeof WINDOWS;
