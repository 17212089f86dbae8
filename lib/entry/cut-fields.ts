/** What a builder may choose for a cut plan, in boatyard words: ranges, names, and why one would choose otherwise. */
import type { Unit } from "#lib/quantity/measured.ts";

/** Where a choice stands on the form. */
export type CutGroup = "notch" | "well" | "stock" | "fastening";

/** One length or angle a builder may choose. Left empty, the stern's own number or the trade's stands. */
export interface CutField {
  readonly unit: Extract<Unit, "mm" | "deg">;
  readonly min: number;
  readonly max: number;
  readonly group: CutGroup;
  readonly name: string;
  /** What it is and why it would be chosen otherwise, in a sentence. */
  readonly hint: string;
}

/** Every length and angle of a cut plan's choices, in the order they are asked. */
export const cutFields = {
  cornerRadiusMm: {
    unit: "mm",
    min: 3,
    max: 150,
    group: "notch",
    name: "Radius of the notch's inside corners",
    hint: "The hole saw you have. A sharp inside corner cracks; larger is kinder.",
  },
  transomTopWidthMm: {
    unit: "mm",
    min: 300,
    max: 5000,
    group: "notch",
    name: "Transom's breadth at its top edge",
    hint: "Where the notch is cut; narrower than the widest breadth on most boats. Offsets are then taken from these edges.",
  },
  seatMm: {
    unit: "mm",
    min: 100,
    max: 1500,
    group: "notch",
    name: "Seat height, if you have settled it",
    hint: "From the datum plumb up. Left empty, the plan sets the seat midway in the stretch that suits the motors.",
  },
  soleDropMm: {
    unit: "mm",
    min: 20,
    max: 1000,
    group: "well",
    name: "Seat down to the sole",
    hint: "Down the inside face to the top of the new sole. Left empty, as deep as the motors ask.",
  },
  wellDepthMm: {
    unit: "mm",
    min: 100,
    max: 3000,
    group: "well",
    name: "Well fore and aft",
    hint: "Along the sole, from the transom's inside face to the front beam's aft face. Left empty, the stern's own figure where the motors tilt in it.",
  },
  wellFrontHeightMm: {
    unit: "mm",
    min: 0,
    max: 1500,
    group: "well",
    name: "Height of the front",
    hint: "Square up from the sole. Left empty, the stern's own figure, else up to the sheer.",
  },
  wellWidthAftMm: {
    unit: "mm",
    min: 100,
    max: 3000,
    group: "well",
    name: "Clear width on the sole at the transom",
    hint: "Side to side, at the height the new sole lies.",
  },
  wellWidthFrontMm: {
    unit: "mm",
    min: 100,
    max: 3000,
    group: "well",
    name: "Clear width on the sole at the front",
    hint: "Side to side, at the height the new sole lies.",
  },
  sideFlareDeg: {
    unit: "deg",
    min: -30,
    max: 60,
    group: "well",
    name: "Flare of the sides",
    hint: "How far they lean outward from square to the sole.",
  },
  sheerRiseDeg: {
    unit: "deg",
    min: -20,
    max: 20,
    group: "well",
    name: "How the sheer rises forward",
    hint: "From the transom's top, against the keel line; plus where it rises going forward.",
  },
  soleThicknessMm: {
    unit: "mm",
    min: 3,
    max: 60,
    group: "stock",
    name: "Sole panel, thickness",
    hint: "Measure the sheet itself: it is rarely what it is sold as.",
  },
  frontThicknessMm: {
    unit: "mm",
    min: 6,
    max: 100,
    group: "stock",
    name: "Front beam, thickness",
    hint: "The panel or board across the front of the well.",
  },
  frontBoardMm: {
    unit: "mm",
    min: 30,
    max: 1500,
    group: "stock",
    name: "Front beam, width of your board",
    hint: "Where the front is made of a board: what then stands proud is told, to be planed off.",
  },
  cleatThicknessMm: {
    unit: "mm",
    min: 10,
    max: 100,
    group: "stock",
    name: "Cleats, thickness",
    hint: "Fore and aft on the transom's cleat.",
  },
  cleatDepthMm: {
    unit: "mm",
    min: 10,
    max: 150,
    group: "stock",
    name: "Cleats, depth",
    hint: "Up and down: what the sole's screws go into.",
  },
  sheetLongMm: {
    unit: "mm",
    min: 300,
    max: 6000,
    group: "stock",
    name: "Sheet, length",
    hint: "Of the panels as you buy them.",
  },
  sheetWideMm: {
    unit: "mm",
    min: 200,
    max: 3000,
    group: "stock",
    name: "Sheet, width",
    hint: "Of the panels as you buy them.",
  },
  boardLongMm: {
    unit: "mm",
    min: 300,
    max: 12000,
    group: "stock",
    name: "Boards, length",
    hint: "As you buy them; a part longer than this is scarfed.",
  },
  screwSpacingMm: {
    unit: "mm",
    min: 20,
    max: 500,
    group: "fastening",
    name: "Screws, farthest apart",
    hint: "Along every cleat.",
  },
  screwCoverMm: {
    unit: "mm",
    min: 1,
    max: 30,
    group: "fastening",
    name: "Wood over a screw's point",
    hint: "The longest screw that leaves so much is named.",
  },
  filletRadiusMm: {
    unit: "mm",
    min: 3,
    max: 60,
    group: "fastening",
    name: "Fillet radius",
    hint: "Of the epoxy run round every inside corner.",
  },
  tubeOutsideMm: {
    unit: "mm",
    min: 5,
    max: 200,
    group: "fastening",
    name: "Drain tube, outside",
    hint: "The hole is told for it, bedding included.",
  },
} as const satisfies Record<string, CutField>;

/** A key of one length or angle of a cut plan's choices. */
export type CutKey = keyof typeof cutFields;

/** Choices between words: what each answer is called, the first being what stands where none is given. */
export const cutWords = {
  well: { build: "build a well", leave: "notch only" },
  soleLies: { square: "square to the transom", level: "level with the keel line" },
  underSides: { cleats: "cleats", fillets: "fillets alone" },
  wood: { hard: "hard wood", soft: "soft wood" },
} as const;

/** A key of a choice between words. */
export type CutWordKey = keyof typeof cutWords;
