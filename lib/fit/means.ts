/**
 * The ways a pairing can be mended, one object each: which questions it answers, and the change it
 * proposes for a given room beyond the limits.
 */
import { notchWidthNeed, seatNeed, soleDropNeed, wellDepthNeed, wellWideningNeed } from "#lib/fit/needs.ts";
import type { LengthWriter } from "#lib/quantity/words.ts";
import { withNumber, withSeat } from "#lib/rig/alter.ts";
import { type Motor, SHAFT_CLASSES } from "#lib/rig/motor.ts";
import { type Handling, type Mounting, mount } from "#lib/rig/mounting.ts";
import { isUncut } from "#lib/rig/obstacles.ts";
import { seatNow } from "#lib/rig/plate.ts";
import { motorValues, sternValues } from "#lib/rig/record.ts";
import type { Stern } from "#lib/rig/stern.ts";
import { nominalShaft } from "#lib/standards/common-practice.ts";

/** One number or fact changed; `from` absent where there was none. */
export interface Change {
  readonly change: string;
  readonly from?: number | string | boolean;
  readonly to: number | string | boolean;
}

/** The pairing with changes put in place. */
export interface Variant {
  readonly motor: Motor;
  readonly stern: Stern;
  readonly handling: Handling;
}

export interface Proposal {
  readonly variant: Variant;
  readonly changes: readonly Change[];
  readonly says: string;
  readonly effort: number;
}

export interface Means {
  readonly kind: string;
  /** Ids of the questions it can answer. */
  readonly answers: readonly string[];
  /** The change that gives `beyond` mm more than the limits ask; undefined where it does not apply or cannot be told. */
  propose(variant: Variant, mounting: Mounting, beyond: number, write: LengthWriter): Proposal | undefined;
}

/** Ids of the questions about the moving motor. */
export const MOVING = ["steering-room", "tilt-room", "sole-room", "side-room", "obstacle-room"];
/** Effort of another motor: more than any sawing. */
const ANOTHER_MOTOR = 10_000;
/** "42 mm wider (21 mm each side)", to whole millimetres on the roomy side. */
const bothSides = (more: number, write: LengthWriter): string => {
  const each = Math.ceil(more / 2 - 1e-6);
  return `${write(2 * each)} wider (${write(each)} each side)`;
};
/** Up to the next tenth of a millimetre, on the roomy side. */
const tenthUp = (mm: number): number => Math.ceil(mm * 10 - 1e-6) / 10;

const hung = ({ motor, stern, handling }: Variant): Mounting =>
  mount({ motor: motorValues(motor), stern: sternValues(stern), handling });

const holdStraight: Means = {
  kind: "straightWhileTilting",
  answers: MOVING,
  propose: (variant) =>
    variant.handling.straightWhileTilting
      ? undefined
      : {
          variant: { ...variant, handling: { ...variant.handling, straightWhileTilting: true } },
          changes: [{ change: "straightWhileTilting", from: false, to: true }],
          says: "hold the motor straight while tilting",
          effort: 0,
        },
};

const foldTiller: Means = {
  kind: "tillerFolds",
  answers: MOVING,
  propose: (variant) =>
    variant.motor.tillerFolds || variant.motor.tillerLengthMm === undefined
      ? undefined
      : {
          variant: { ...variant, motor: { ...variant.motor, tillerFolds: true } },
          changes: [{ change: "tillerFolds", from: false, to: true }],
          says: "fold the tiller up before tilting, if it folds",
          effort: 1,
        },
};

const otherHole: Means = {
  kind: "pinDeg",
  answers: ["plate-height"],
  propose: (variant, { rig }) => {
    const pins = rig.motor.pinAnglesDeg;
    const seats = pins?.map((_, hole) => seatNeed({ ...rig, handling: { ...rig.handling, hole } }));
    const seat = seatNow(rig.stern);
    if (!pins || !seats || seat === undefined || variant.handling.hole !== undefined) return undefined;
    const misses = seats.map((need) => (need ? Math.abs(seat - need.middle) : Number.POSITIVE_INFINITY));
    const hole = misses.indexOf(Math.min(...misses));
    return {
      variant: { ...variant, handling: { ...variant.handling, hole } },
      changes: [{ change: "pinDeg", to: pins[hole]! }],
      says: `run in trim-pin hole ${hole + 1} from the bottom`,
      effort: 2,
    };
  },
};

const seat: Means = {
  kind: "seatMm",
  answers: ["plate-height", "shaft-class"],
  propose: (variant, { rig }, beyond, write) => {
    const need = seatNeed(rig);
    const now = seatNow(rig.stern);
    if (!need || now === undefined) return undefined;
    const spare = Math.min(beyond, (need.high - need.low) / 2);
    const to = now > need.middle ? tenthUp(need.high - spare - 0.1) : tenthUp(need.low + spare);
    if (Math.abs(to - now) < 0.05) return undefined;
    const cut = isUncut(rig.stern);
    const moved = withSeat(variant.stern, to);
    const width = cut ? notchWidthNeed(hung({ ...variant, stern: moved }), to, beyond) : undefined;
    if (cut && width === undefined) return undefined;
    const stern = width === undefined ? moved : withNumber(moved, "notchWidthMm", tenthUp(width));
    const by = write(Math.abs(to - now));
    const drop = variant.stern.soleDropMm;
    return {
      variant: { ...variant, stern },
      changes: [
        { change: "seatMm", from: now, to },
        ...(width === undefined ? [] : [{ change: "notchWidthMm", to: tenthUp(width) }]),
        ...(drop ? [{ change: "soleDropMm", from: drop.value, to: moved.soleDropMm!.value }] : []),
      ],
      says: cut
        ? `cut a notch ${by} deep and ${write(tenthUp(width!))} wide`
        : to < now
          ? `notch ${by} deeper`
          : `seat ${by} higher on a pad or riser`,
      effort: Math.abs(to - now),
    };
  },
};

/** A means that enlarges one dimension of the stern to what is needed. */
function enlarge(
  kind: "notchWidthMm" | "soleDropMm" | "wellDepthMm",
  answers: readonly string[],
  need: (mounting: Mounting, beyond: number) => number | undefined,
  words: (moreMm: number, write: LengthWriter) => string,
): Means {
  return {
    kind,
    answers,
    propose: (variant, mounting, beyond, write) => {
      const now = variant.stern[kind]?.value;
      const wanted = now === undefined ? undefined : need(mounting, beyond);
      if (now === undefined || wanted === undefined) return undefined;
      const to = tenthUp(wanted);
      if (to <= now) return undefined;
      return {
        variant: { ...variant, stern: withNumber(variant.stern, kind, to) },
        changes: [{ change: kind, from: now, to }],
        says: words(to - now, write),
        effort: to - now,
      };
    },
  };
}

const notch = enlarge(
  "notchWidthMm",
  ["steering-room", "bracket"],
  (mounting, beyond) => {
    const seatMm = seatNow(mounting.rig.stern);
    return seatMm === undefined ? undefined : notchWidthNeed(mounting, seatMm, beyond);
  },
  (more, write) => `notch ${bothSides(more, write)}`,
);

const soleLower = enlarge(
  "soleDropMm",
  ["clamp-depth", "screw-handles", "sole-room"],
  soleDropNeed,
  (more, write) => `well sole ${write(more)} lower`,
);

const wellLonger = enlarge(
  "wellDepthMm",
  ["tilt-room"],
  (mounting, beyond) => {
    const seatMm = seatNow(mounting.rig.stern);
    return seatMm === undefined ? undefined : wellDepthNeed(mounting, seatMm, undefined, beyond);
  },
  (more, write) => `well ${write(more)} longer fore and aft`,
);

const wellWider: Means = {
  kind: "wellWidth",
  answers: ["side-room"],
  propose: (variant, mounting, beyond, write) => {
    const { wellWidthAftMm: aft, wellWidthFrontMm: front } = variant.stern;
    const wanted = wellWideningNeed(mounting, beyond);
    if (!aft || !front || !wanted) return undefined;
    const more = tenthUp(wanted);
    const stern = withNumber(
      withNumber(variant.stern, "wellWidthAftMm", aft.value + more),
      "wellWidthFrontMm",
      front.value + more,
    );
    return {
      variant: { ...variant, stern },
      changes: [
        { change: "wellWidthAftMm", from: aft.value, to: aft.value + more },
        { change: "wellWidthFrontMm", from: front.value, to: front.value + more },
      ],
      says: `well ${bothSides(more, write)}`,
      effort: more,
    };
  },
};

/** The same motor with the leg of each other class, where the leg was measured. */
const otherShaft = (shaftClass: (typeof SHAFT_CLASSES)[number]): Means => ({
  kind: "shaftClass",
  answers: ["plate-height", "shaft-class", "skeg-lift"],
  propose: (variant) => {
    const { shaftClass: now, shaftLengthMm: leg } = variant.motor;
    if (!now || !leg || now === shaftClass) return undefined;
    const length = leg.value + nominalShaft[shaftClass].value - nominalShaft[now].value;
    return {
      variant: {
        ...variant,
        motor: { ...variant.motor, shaftClass, shaftLengthMm: { ...leg, value: length } },
      },
      changes: [
        { change: "shaftClass", from: now, to: shaftClass },
        { change: "shaftLengthMm", from: leg.value, to: length },
      ],
      says: `the same motor with ${/^[aeiou]/.test(shaftClass) ? "an" : "a"} ${shaftClass} shaft`,
      effort: ANOTHER_MOTOR,
    };
  },
});

/** Every means, the ones that cost nothing first. */
export const MEANS: readonly Means[] = [
  holdStraight,
  foldTiller,
  otherHole,
  seat,
  notch,
  soleLower,
  wellLonger,
  wellWider,
  ...SHAFT_CLASSES.map(otherShaft),
];
