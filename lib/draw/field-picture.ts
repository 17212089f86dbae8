/**
 * A small picture for every measured number: from where to where it is taken. The pictures are data: a
 * schematic, the part of it that is shown, and the two ends of the measurement (or the two arms of an
 * angle). Not to scale; the heavy accent line is the measurement, the dots are its ends.
 */
import { arrowhead } from "#lib/draw/dimension.ts";
import { arc, type Drawing, type Flat, lettering, line, type Mark } from "#lib/draw/drawing.ts";
import {
  inSternWell,
  onMotor,
  onStern,
  overMotor,
  overSternWell,
  SCHEMATICS,
  type SchematicName,
  sternFromAft,
  WINDOWS,
  type WindowName,
  wellFromAft,
} from "#lib/draw/schematic.ts";
import { TYPICAL_MOTOR as M, TYPICAL_STERN as S } from "#lib/draw/typical.ts";
import { atan2, cos, sin } from "#lib/quantity/angle.ts";
import { type MotorKey, motorFields } from "#lib/rig/motor.ts";
import { type SternKey, sternFields } from "#lib/rig/stern.ts";

export type FieldKey = MotorKey | SternKey;

/** A length between two points (straight, level or plumb, the line shifted aside by true mm), an angle between two directions, or a pointer at something that is read or weighed. */
export type Taken =
  | {
      readonly from: Flat;
      readonly to: Flat;
      readonly along: "straight" | "level" | "plumb";
      readonly aside: number;
    }
  | { readonly centre: Flat; readonly radius: number; readonly fromDeg: number; readonly toDeg: number }
  | { readonly from: Flat; readonly at: Flat; readonly word: string };

interface Picture {
  readonly on: SchematicName;
  readonly window: WindowName;
  readonly taken: Taken;
}

const straight = (from: Flat, to: Flat, aside = 0): Taken => ({ from, to, along: "straight", aside });
/** Level between two points, `aside` above them (minus: below). */
const level = (from: Flat, to: Flat, aside: number): Taken => ({ from, to, along: "level", aside });
/** Plumb between two points, `aside` to the right of them (minus: to the left). */
const plumb = (from: Flat, to: Flat, aside: number): Taken => ({ from, to, along: "plumb", aside });
const angle = (centre: Flat, radius: number, fromDeg: number, toDeg: number): Taken => ({
  centre,
  radius,
  fromDeg,
  toDeg,
});
const pointer = (from: Flat, at: Flat, word: string): Taken => ({ from, at, word });
const picture = (on: SchematicName, window: WindowName, taken: Taken): Picture => ({ on, window, taken });

const STEER = onMotor(0, 0)[0];
const TUBE = onMotor(M.steerAxisAftMm, M.tiltAxisAboveMm);
const PLATE = -M.shaftLengthMm;
const SHAFT = PLATE - M.plateToPropCentreMm;
const PROP = -0.72 * M.midsectionAftMm - 0.16 * M.propDiameterMm;
const FACE_FOOT = onStern(0, (S.keelDepthMm - S.seatMm) / cos(S.rakeDeg));
const HALF_CUT = S.notchWidthMm / 2;
const CORNER: Flat = [HALF_CUT - S.notchCornerRadiusMm, S.seatMm + S.notchCornerRadiusMm * cos(S.rakeDeg)];
const DRAIN = overSternWell(60, -330);

/** Where each number of a motor is taken. */
const MOTOR_PICTURES: Record<MotorKey, Picture> = {
  shaftLengthMm: picture("motorSide", "motor", plumb([-42, 0], onMotor(50, PLATE), -160)),
  measuredAtDeg: picture("motorSwung", "motorSwung", angle(TUBE, 420, 270, 286)),
  clampOpeningMinMm: picture("motorSide", "clamp", level([-42, -78], [0, -78], -130)),
  clampOpeningMaxMm: picture("motorSide", "clamp", level([-42, -78], [0, -78], -130)),
  tiltAxisForwardMm: picture("motorSide", "clamp", level([0, 0], TUBE, 60)),
  tiltAxisAboveMm: picture("motorSide", "clamp", plumb([-42, 0], TUBE, -90)),
  steerAxisAftMm: picture("motorSide", "clamp", level(TUBE, [STEER, 20], 60)),
  pinAnglesDeg: picture("motorSwung", "motorSwung", angle(TUBE, 420, 270, 286)),
  tiltArcDeg: picture("motorTilted", "motorTilted", angle(TUBE, 430, 274, 340)),
  bracketWidthMm: picture(
    "motorAft",
    "motorAft",
    level([-M.bracketWidthMm / 2, 0], [M.bracketWidthMm / 2, 0], -230),
  ),
  bracketDropMm: picture("motorSide", "clamp", plumb([0, 0], [0, -M.bracketDropMm], 120)),
  steerPortDeg: picture("motorToPort", "motorPlan", angle([STEER, 0], 500, 180, 220)),
  steerStarboardDeg: picture("motorToStarboard", "motorPlan", angle([STEER, 0], 500, 140, 180)),
  cowlFrontMm: picture("motorSide", "head", level(onMotor(M.cowlFrontMm, 200), [STEER, 200], 270)),
  cowlAftMm: picture("motorSide", "head", level([STEER, 200], onMotor(-M.cowlAftMm, 200), 270)),
  cowlWidthMm: picture("motorPlan", "motorPlan", plumb(overMotor(-60, 150), overMotor(-60, -150), 250)),
  cowlBottomMm: picture("motorSide", "head", plumb([0, 0], onMotor(-M.cowlAftMm + 60, M.cowlBottomMm), 60)),
  cowlTopMm: picture("motorSide", "head", plumb([0, 0], onMotor(-60, M.cowlTopMm), 240)),
  midsectionFrontMm: picture(
    "motorSide",
    "head",
    level(onMotor(M.midsectionFrontMm, -30), [STEER, -30], -120),
  ),
  midsectionAftMm: picture("motorSide", "head", level([STEER, -30], onMotor(-M.midsectionAftMm, -30), -120)),
  midsectionWidthMm: picture(
    "motorAft",
    "motorAft",
    level([-M.midsectionWidthMm / 2, -10], [M.midsectionWidthMm / 2, -10], -250),
  ),
  tillerLengthMm: picture("motorSide", "head", level(onMotor(M.tillerLengthMm, 180), [STEER, 180], -150)),
  tillerHeightMm: picture("motorSide", "head", plumb([-42, 0], onMotor(380, M.tillerHeightMm), -60)),
  tillerThicknessMm: picture(
    "motorSide",
    "head",
    plumb(onMotor(540, M.tillerHeightMm), onMotor(540, M.tillerHeightMm + M.tillerThicknessMm), -120),
  ),
  tillerOffsetMm: picture(
    "motorPlan",
    "motorPlan",
    plumb(overMotor(560, M.tillerOffsetMm), overMotor(560, 0), -80),
  ),
  clampDepthMm: picture("motorSide", "clamp", plumb([-42, 0], [-49, -97], -90)),
  screwDropMm: picture("motorSide", "clamp", plumb([-42, 0], [-90, -M.screwDropMm], -80)),
  handleSwingMm: picture(
    "motorSide",
    "clamp",
    plumb([-105, -M.screwDropMm], [-105, -M.screwDropMm - 42], -50),
  ),
  powerKw: picture("motorPlated", "motor", pointer([-330, 330], [90, 285], "kW")),
  massKg: picture("motorHung", "motorHung", pointer([-180, 640], [-10, 640], "kg")),
  propDiameterMm: picture(
    "motorSide",
    "foot",
    plumb(onMotor(PROP, SHAFT + M.propDiameterMm / 2), onMotor(PROP, SHAFT - M.propDiameterMm / 2), 120),
  ),
  plateToPropCentreMm: picture(
    "motorSide",
    "foot",
    plumb(onMotor(PROP - 40, PLATE), onMotor(PROP - 30, SHAFT), 110),
  ),
  plateToSkegMm: picture(
    "motorSide",
    "foot",
    plumb(onMotor(PROP - 60, PLATE), onMotor(-80, PLATE - M.plateToSkegMm), 130),
  ),
};

/** Where each number of a stern is taken. */
const STERN_PICTURES: Record<SternKey, Picture> = {
  rakeDeg: picture("sternSide", "stern", angle(FACE_FOOT, 480, 90 - S.rakeDeg, 90)),
  transomThicknessMm: picture(
    "sternSide",
    "seat",
    straight(onStern(S.transomThicknessMm, -70), onStern(0, -70)),
  ),
  transomTopMm: picture(
    "sternSide",
    "stern",
    plumb([-60, 0], onStern(0, (S.transomTopMm - S.seatMm) / cos(S.rakeDeg)), 130),
  ),
  keelDepthMm: picture("sternSide", "heel", plumb([-170, 0], [-170, S.keelDepthMm], 0)),
  seatMm: picture("sternSide", "stern", plumb([-60, 0], onStern(0, 0), 130)),
  plateHighMm: picture("sternPlates", "plates", plumb([300, 0], [300, 45], 0)),
  plateLowMm: picture("sternPlates", "plates", plumb([300, 0], [300, -75], 0)),
  notchWidthMm: picture("sternAft", "sternAft", level([-HALF_CUT, 540], [HALF_CUT, 540], 90)),
  notchCornerRadiusMm: picture(
    "sternAft",
    "notchCorner",
    straight(CORNER, [
      CORNER[0] + Math.SQRT1_2 * S.notchCornerRadiusMm,
      CORNER[1] - Math.SQRT1_2 * S.notchCornerRadiusMm,
    ]),
  ),
  soleDropMm: picture(
    "sternSide",
    "well",
    straight(onStern(S.transomThicknessMm, 0), onStern(S.transomThicknessMm, -S.soleDropMm), -90),
  ),
  soleAngleDeg: picture(
    "sternSide",
    "well",
    angle(inSternWell(0, 0), 150, 90 - S.rakeDeg, 90 - S.rakeDeg + S.soleAngleDeg),
  ),
  wellDepthMm: picture("sternSide", "well", straight(inSternWell(0, 0), inSternWell(S.wellDepthMm, 0), -70)),
  wellFrontHeightMm: picture(
    "sternSide",
    "well",
    straight(inSternWell(S.wellDepthMm, 0), inSternWell(S.wellDepthMm, S.wellFrontHeightMm), -80),
  ),
  wellWidthAftMm: picture(
    "sternPlan",
    "sternPlan",
    straight(overSternWell(20, S.wellWidthAftMm / 2), overSternWell(20, -S.wellWidthAftMm / 2)),
  ),
  wellWidthFrontMm: picture(
    "sternPlan",
    "sternPlan",
    straight(
      overSternWell(S.wellDepthMm, S.wellWidthFrontMm / 2),
      overSternWell(S.wellDepthMm, -S.wellWidthFrontMm / 2),
      90,
    ),
  ),
  sideFlareDeg: picture("wellAcross", "across", angle(wellFromAft(-S.wellWidthAftMm / 2, 0), 210, 75, 90)),
  wellSideHeightMm: picture(
    "wellAcross",
    "across",
    plumb(
      wellFromAft(S.wellWidthAftMm / 2, 0),
      wellFromAft(S.wellWidthAftMm / 2 + 70, S.wellSideHeightMm),
      -70,
    ),
  ),
  deckThicknessMm: picture(
    "sternSide",
    "well",
    straight(inSternWell(300, -S.deckThicknessMm), inSternWell(300, 0)),
  ),
  drainDiameterMm: picture(
    "sternPlan",
    "drain",
    level([DRAIN[0] - 42, DRAIN[1]], [DRAIN[0] + 42, DRAIN[1]], 0),
  ),
  lengthOverallMm: picture("boatSide", "boat", level([-4200, 720], [110, 520], 180)),
  transomWidthMm: picture(
    "sternAft",
    "sternAft",
    level(sternFromAft(700, S.transomTopMm), sternFromAft(-700, S.transomTopMm), 100),
  ),
  beamMm: picture("boatPlan", "boatPlan", plumb([-1600, -790], [-1600, 790], 0)),
  waterlineMm: picture("sternAfloat", "stern", plumb([180, 0], [180, 230], 0)),
  waterlineLengthMm: picture("boatSide", "boat", level([-3890, 200], [40, 200], -380)),
  waterlineBeamMm: picture("boatPlan", "boatPlan", plumb([-1350, -640], [-1350, 640], 0)),
  ratedPowerKw: picture("sternLabelled", "sternAft", pointer([-480, -70], [360, 400], "kW")),
  ratedMotorMassKg: picture("sternLabelled", "sternAft", pointer([-480, -70], [360, 400], "kg")),
};

const PICTURES: Record<FieldKey, Picture> = { ...MOTOR_PICTURES, ...STERN_PICTURES };

const onCircle = (centre: Flat, radius: number, deg: number): Flat => [
  centre[0] + radius * cos(deg),
  centre[1] + radius * sin(deg),
];

/** The two ends a picture marks: of a length, of the arc of an angle, of a pointer. */
export function markedEnds(key: FieldKey): readonly [Flat, Flat] {
  const { taken } = PICTURES[key];
  if ("centre" in taken) {
    return [
      onCircle(taken.centre, taken.radius, taken.fromDeg),
      onCircle(taken.centre, taken.radius, taken.toDeg),
    ];
  }
  return "at" in taken ? [taken.from, taken.at] : [taken.from, taken.to];
}

const accent = { tone: "accent" } as const;
const dot = (at: Flat, scale: number): Mark =>
  arc(at, 0.8 * scale, [0, 360], { ...accent, line: "dimension", fill: "solid", of: "end" });
const thin = (points: readonly Flat[]): Mark =>
  line(points, { ...accent, line: "dimension", of: "extension" });
const heavy = (points: readonly Flat[]): Mark =>
  line(points, { ...accent, line: "visible", of: "measurement" });

function shifted(taken: Extract<Taken, { to: Flat }>): readonly [Flat, Flat] {
  const { from, to, along, aside } = taken;
  if (along === "level") {
    const up = aside >= 0 ? Math.max(from[1], to[1]) + aside : Math.min(from[1], to[1]) + aside;
    return [
      [from[0], up],
      [to[0], up],
    ];
  }
  if (along === "plumb") {
    const right = aside >= 0 ? Math.max(from[0], to[0]) + aside : Math.min(from[0], to[0]) + aside;
    return [
      [right, from[1]],
      [right, to[1]],
    ];
  }
  const across = atan2(to[1] - from[1], to[0] - from[0]) + 90;
  return [onCircle(from, aside, across), onCircle(to, aside, across)];
}

/** Arrowheads turned inward and set outside where the length is too short to hold them. */
function arrows(a: Flat, b: Flat, scale: number): Mark[] {
  const slope = atan2(b[1] - a[1], b[0] - a[0]);
  const long = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const big = scale * 1.5;
  const inside = long > 3 * 2.6 * big;
  const tails = inside
    ? []
    : [thin([a, onCircle(a, -9 * scale, slope)]), thin([b, onCircle(b, 9 * scale, slope)])];
  return [
    ...tails,
    heavy([a, b]),
    arrowhead(a, inside ? slope + 180 : slope, big, "accent"),
    arrowhead(b, inside ? slope : slope + 180, big, "accent"),
  ];
}

function measurement(taken: Taken, scale: number): Mark[] {
  if ("centre" in taken) {
    const { centre, radius, fromDeg, toDeg } = taken;
    const [a, b] = [onCircle(centre, radius, fromDeg), onCircle(centre, radius, toDeg)];
    const arms = [fromDeg, toDeg].map((deg) => thin([centre, onCircle(centre, radius * 1.12, deg)]));
    const lean = Math.min(8, (toDeg - fromDeg) / 4);
    return [
      ...arms,
      arc(centre, radius, [fromDeg, toDeg], { ...accent, of: "measurement" }),
      arrowhead(a, fromDeg - 90 + lean, scale * 1.5, "accent"),
      arrowhead(b, toDeg + 90 - lean, scale * 1.5, "accent"),
      dot(centre, scale),
    ];
  }
  if ("at" in taken) {
    const slope = atan2(taken.at[1] - taken.from[1], taken.at[0] - taken.from[0]);
    const words = lettering(taken.from, taken.word, { height: 5, align: "end", tone: "accent", bold: true });
    return [
      heavy([onCircle(taken.from, 2 * scale, slope), taken.at]),
      arrowhead(taken.at, slope, scale * 1.5, "accent"),
      words,
    ];
  }
  const [a, b] = shifted(taken);
  return [
    thin([taken.from, a]),
    thin([taken.to, b]),
    ...arrows(a, b, scale),
    dot(taken.from, scale),
    dot(taken.to, scale),
  ];
}

/** Breadth and height a picture may take on paper, mm. */
const PICTURE = 62;

/** The picture of one number, by its key: a schematic with the measurement marked on it. */
export function fieldPicture(key: FieldKey): Drawing {
  const { on, window: name, taken } = PICTURES[key];
  const window = WINDOWS[name];
  const scale = Math.max(window.right - window.left, window.top - window.bottom) / PICTURE;
  const field = { ...motorFields, ...sternFields }[key];
  const marks = [...SCHEMATICS[on](), ...measurement(taken, scale)];
  return { title: field.name, says: field.take, scale, window, marks };
}
