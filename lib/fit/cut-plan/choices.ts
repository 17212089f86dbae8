/**
 * What the builder chooses: how the sole lies, the stock, posts and frames in the way, spacing of screws.
 * Everything has a default; a number of the stern comes before the trade's.
 */
import type { LengthSystem } from "#lib/quantity/words.ts";
import type { Obstruction, Stern } from "#lib/rig/stern.ts";
import { joinery } from "#lib/standards/joinery.ts";

/** Choices as given; boxes stand in the bracket frame of the stern as recorded, lengths in mm. */
export interface CutChoices {
  /** The system lengths are marked in; mm where not given. */
  readonly lengths?: LengthSystem;
  /** Limits that overrule the stern's own. */
  readonly limits?: Readonly<Record<string, number>>;
  /** The seat, above the datum and plumb, in place of the one worked out. */
  readonly seatMm?: number;
  readonly cornerRadiusMm?: number;
  /** Breadth of the transom at its top edge, where the notch is cut. */
  readonly transomTopWidthMm?: number;
  /** Frames, knees and fittings near the cut. */
  readonly frames?: readonly Obstruction[];
  /** Build a well, or leave what is there; built where nothing is cut yet and the stern has well numbers. */
  readonly well?: "build" | "leave";
  /** Sole square to the transom, or level with the keel line; the stern's own sole angle where neither is chosen, else square. */
  readonly soleLies?: "square" | "level";
  readonly soleDropMm?: number;
  readonly wellDepthMm?: number;
  readonly wellFrontHeightMm?: number;
  /** Clear widths on the new sole and the sides' flare, in place of those that follow from the stern. */
  readonly wellWidthAftMm?: number;
  readonly wellWidthFrontMm?: number;
  readonly sideFlareDeg?: number;
  /** How the sheer runs forward from the transom's top: plus = it rises. 0 where not given. */
  readonly sheerRiseDeg?: number;
  /** Posts the sole and its cleats go round. */
  readonly posts?: readonly Obstruction[];
  readonly soleThicknessMm?: number;
  readonly frontThicknessMm?: number;
  readonly cleatThicknessMm?: number;
  readonly cleatDepthMm?: number;
  /** Width of the board the front beam is made of; what stands above the finished edge is planed off. */
  readonly frontBoardMm?: number;
  /** Cleats under the sole's sides, or fillets alone. */
  readonly underSides?: "cleats" | "fillets";
  readonly filletRadiusMm?: number;
  readonly screwSpacingMm?: number;
  readonly screwCoverMm?: number;
  readonly wood?: "soft" | "hard";
  readonly tubeOutsideMm?: number;
  readonly sheetLongMm?: number;
  readonly sheetWideMm?: number;
  readonly boardLongMm?: number;
}

/** Choices with every default in place. */
export type Settled = CutChoices &
  Required<
    Pick<
      CutChoices,
      | "lengths"
      | "cornerRadiusMm"
      | "well"
      | "sheerRiseDeg"
      | "soleThicknessMm"
      | "frontThicknessMm"
      | "cleatThicknessMm"
      | "cleatDepthMm"
      | "underSides"
      | "filletRadiusMm"
      | "screwSpacingMm"
      | "screwCoverMm"
      | "wood"
      | "tubeOutsideMm"
      | "sheetLongMm"
      | "sheetWideMm"
      | "boardLongMm"
    >
  >;

/** The choices for a stern, defaults filled in. */
export function settled(choices: CutChoices, stern: Stern): Settled {
  const uncut = !stern.seatMm && !stern.notchWidthMm;
  const planned = stern.wellWidthAftMm !== undefined || choices.wellWidthAftMm !== undefined;
  return {
    lengths: "mm",
    cornerRadiusMm: joinery.notchRadiusMm.value,
    well: uncut && planned ? "build" : "leave",
    sheerRiseDeg: 0,
    soleThicknessMm: stern.deckThicknessMm?.value ?? joinery.soleThicknessMm.value,
    frontThicknessMm: joinery.frontThicknessMm.value,
    cleatThicknessMm: joinery.cleatThicknessMm.value,
    cleatDepthMm: joinery.cleatDepthMm.value,
    underSides: "cleats",
    filletRadiusMm: joinery.filletRadiusMm.value,
    screwSpacingMm: joinery.screwSpacingMm.value,
    screwCoverMm: joinery.screwCoverMm.value,
    wood: "hard",
    tubeOutsideMm: stern.drainDiameterMm?.value ?? 25.4,
    sheetLongMm: joinery.sheetLongMm.value,
    sheetWideMm: joinery.sheetWideMm.value,
    boardLongMm: joinery.boardLongMm.value,
    ...Object.fromEntries(Object.entries(choices).filter(([, value]) => value !== undefined)),
  };
}
