import type { Chance } from "#app/_command/chance.ts";
import type { Measured } from "#lib/quantity/measured.ts";
import { type Stern, sternFields } from "#lib/rig/stern.ts";
import { nominalShaft } from "#lib/standards/common-practice.ts";

const BOATS = {
  flat: ["pram", "punt", "skiff", "garvey", "scow", "sharpie"],
  vee: ["runabout", "workboat", "day boat", "launch", "day fisher", "patrol boat"],
  round: ["dinghy", "tender", "yawl", "whaler", "lugger", "crab boat"],
} as const;
const BUILDS = "plywood,clinker,carvel,aluminium,strip plank,steel,laminate,larch on oak".split(",");
const STATES =
  "rebuilt transom,nothing cut yet,notch cut too deep,new well,old well,doubled transom,varnished,hauled out,upturned on trestles,half planked,under the blue sheet,for the school".split(
    ",",
  );

/** A generated stern: nobody ever built it. Its numbers hang together as those of a boat of its length do. */
export function generatedStern(seed: number, number: number, { share, between, pick }: Chance): Stern {
  const hullForm = pick(["flat", "vee", "vee", "round"] as const);
  const length = Math.round(between(2.6, 6.8) * 10) * 100;
  const rake = Math.round(between(6, 20));
  const seat = Math.round(nominalShaft[shaftFor(length, share())].value + between(-8, 10));
  const beam = Math.round(length * between(0.36, 0.44));
  const transom = Math.round(beam * between(0.7, 0.92));
  const cut = share() < 0.75;
  const well = share() < (length > 4000 ? 0.7 : 0.2);
  const sole = Math.round(between(150, 260));
  const width = Math.round(transom * between(0.6, 0.75));
  const values: Readonly<Record<string, number | false>> = {
    rakeDeg: rake,
    transomThicknessMm: pick([25, 30, 38, 45, 50]),
    transomTopMm: seat + Math.round(between(60, 130)),
    keelDepthMm: hullForm === "round" ? Math.round(between(10, 40)) : 0,
    seatMm: cut && seat,
    notchWidthMm: cut && Math.min(Math.round(between(450, 900)), transom - 100),
    notchCornerRadiusMm: cut && pick([15, 20, 30, 40]),
    soleDropMm: well && sole,
    soleAngleDeg: well && 90 + pick([0, rake, rake - 4]),
    wellDepthMm: well && Math.round(between(520, 900)),
    wellFrontHeightMm: well && sole + Math.round(between(0, 90)),
    wellWidthAftMm: well && width,
    wellWidthFrontMm: well && width - Math.round(between(0, 110)),
    sideFlareDeg: well && pick([0, 0, 5, 6]),
    wellSideHeightMm: well && share() < 0.5 && sole + Math.round(between(0, 60)),
    deckThicknessMm: well && pick([9, 12, 15]),
    drainDiameterMm: well && pick([25, 32, 38, 50]),
    lengthOverallMm: length,
    transomWidthMm: transom,
    beamMm: beam,
    waterlineMm: share() < 0.6 && Math.round(between(60, 240)),
    waterlineLengthMm: share() < 0.6 && Math.round(length * 0.88),
    waterlineBeamMm: share() < 0.6 && Math.round(beam * 0.8),
  };
  const [missing, unsure] = share() < 0.7 ? [0, 0] : [0.15, 0.2];
  const numbers = Object.entries(values).flatMap(([key, value]): [string, Measured][] => {
    if (value === false || share() < missing) return [];
    const deg = sternFields[key as keyof typeof sternFields].unit === "deg";
    const plusMinus = deg ? 0.5 : value > 1000 ? 5 : 2;
    return [[key, share() < unsure ? { value, how: "declared" } : { value, plusMinus, how: "measured" }]];
  });
  const name = `${pick(BUILDS)} ${pick(BOATS[hullForm])}, ${length / 1000} m`;
  return {
    id: `generated-stern-${seed}-${number}`,
    label: `${name[0]!.toUpperCase()}${name.slice(1)}, ${pick(STATES)}, berth ${number}`,
    notes:
      `Generated for trials (seed ${seed}); there is no such boat. ${well ? "With a motor well." : ""}`.trim(),
    hullForm,
    hardChine: hullForm !== "round",
    ...(well && { drainCount: 2 }),
    ...Object.fromEntries(numbers),
  };
}

function shaftFor(lengthMm: number, chance: number): keyof typeof nominalShaft {
  if (lengthMm < 4000) return chance < 0.8 ? "short" : "long";
  return chance < 0.75 ? "long" : "extra-long";
}
