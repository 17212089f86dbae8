/**
 * All that 33 CFR 183.53 may allow a hull whose numbers have a spread and some of whose facts nobody took.
 * Between its steps the rule only rises with the factor, so the ends of every piece of the factor's
 * spread, under every combination of the facts, hold the least and the greatest.
 */
import type { AfloatKey, AfloatStudy, Judged } from "#lib/checks/afloat-check.ts";
import { MM_PER_FOOT } from "#lib/quantity/length.ts";
import { WATTS_PER_HORSEPOWER } from "#lib/quantity/power.ts";
import { regulationMotorwellHeight, regulationTransomHeight } from "#lib/rig/afloat/regulation-heights.ts";
import type { Rig, RigKey } from "#lib/rig/mounting.ts";
import type { SternValues } from "#lib/rig/stern.ts";
import { factorWidth, TALL_TRANSOM_MM } from "#lib/standards/cfr-33-183-3.ts";
import {
  APPLIES_UNDER_MM,
  type PowerNote,
  powerCapacity,
  reasonsLeftOut,
} from "#lib/standards/cfr-33-183-53.ts";
import { type Factor, factor } from "#lib/standards/factor.ts";

export const FACTOR_KEYS = ["lengthOverallMm", "transomWidthMm"] as const satisfies readonly RigKey[];

/** What the rule allows in one case; `kW` is the top of "less than 3 hp" where no horsepower is given. */
export interface Allowance {
  readonly hp: number | undefined;
  readonly raw: number | undefined;
  readonly kW: number;
  readonly notes: readonly PowerNote[];
}

/** The factor, its spread and the breadth it rests on. */
export interface FactorRange {
  readonly exact: Factor;
  readonly value: number;
  readonly from: number;
  readonly to: number;
  readonly says: string;
  readonly judged: Judged;
}

/** Breadths the factor may rest on: without a full transom the beam in the aftermost quarter, which lies between the transom's width and the beam. */
function breadths({ transomWidthMm, beamMm }: SternValues): { least: number; most: number; says: string } {
  const { widthMm, says } = factorWidth({ transomWidthMm, beamMm });
  if (widthMm !== undefined) return { least: widthMm, most: widthMm, says };
  return {
    least: transomWidthMm!,
    most: beamMm!,
    says: "not a full transom: the broadest beam in the aftermost quarter, between the transom's width and the beam",
  };
}

/** The factor of the hull with two standard uncertainties either way. */
export function factorRange(study: AfloatStudy): FactorRange {
  const { stern } = study.afloat.rig;
  const { least, most, says } = breadths(stern);
  const judged = study.judge({
    room: ({ rig }) => factor(rig.stern.lengthOverallMm!, breadths(rig.stern).least).value,
    keys: FACTOR_KEYS,
  });
  const exact = factor(stern.lengthOverallMm!, least);
  const upper = least === most ? exact.value : factor(stern.lengthOverallMm!, most).value;
  return {
    exact,
    value: exact.value,
    from: exact.value - 2 * judged.u,
    to: upper + 2 * judged.u,
    says,
    judged,
  };
}

/** Whether a hull is surely under the length the rule is for; why not, where it is not. */
export function leftOut(study: AfloatStudy): {
  readonly outcome: "asked" | "not asked" | "cannot tell";
  readonly says: string;
} {
  const length = study.afloat.rig.stern.lengthOverallMm!;
  const { verdict } = study.judge({
    room: ({ rig }) => APPLIES_UNDER_MM - rig.stern.lengthOverallMm!,
    keys: ["lengthOverallMm"],
  });
  const [reason] = reasonsLeftOut(length);
  if (verdict === "fouls" || (reason && verdict === "fits")) {
    return {
      outcome: "not asked",
      says: `The rule is for boats under 20 ft, and the hull has no capacity label among its numbers`,
    };
  }
  if (verdict === "fits") return { outcome: "asked", says: "" };
  return {
    outcome: "cannot tell",
    says: `Whether the hull is under 20 ft, for which the rule is, cannot be told from a length of ${study.write(length)}`,
  };
}

interface Facts {
  readonly flatBottomHardChine: boolean;
  readonly remoteSteering: boolean;
  readonly tall: boolean;
}
type Known = { readonly [K in keyof Facts]: Facts[K] | undefined };

/** What is known of the facts: a flat bottom needs hard chines to count; a tiller is no remote steering. */
function factsOf(study: AfloatStudy): Known {
  const { motor, stern } = study.afloat.rig;
  const flat = stern.hullForm === undefined ? undefined : stern.hullForm === "flat";
  return {
    flatBottomHardChine: flat === false || stern.hardChine === false ? false : flat && stern.hardChine,
    remoteSteering: motor.steering === undefined ? undefined : motor.steering === "remote",
    tall: tallness(study),
  };
}

/** Height of the transom against 20 in: a question of conformance, undefined where its spread reaches over the line. */
function tallness(study: AfloatStudy): boolean | undefined {
  if (regulationTransomHeight(study.afloat.rig.stern) === undefined) return undefined;
  const { verdict } = study.judge({
    room: ({ rig }) => regulationTransomHeight(rig.stern)! - TALL_TRANSOM_MM,
    keys: ["seatMm", "transomTopMm", "keelDepthMm"],
    rounding: 1e-6,
  });
  return verdict === "cannot tell" ? undefined : verdict === "fits";
}

/** The numbers and facts that each open fact wants. */
const WANTED: Readonly<Record<keyof Facts, readonly AfloatKey[]>> = {
  flatBottomHardChine: ["hullForm", "hardChine"],
  remoteSteering: ["steering"],
  tall: ["seatMm", "keelDepthMm"],
};

export interface Allowances {
  readonly least: Allowance;
  readonly greatest: Allowance;
  /** What the numbers as they stand allow; absent where a fact is open. */
  readonly nominal: Allowance | undefined;
  /** Facts nobody took on which the allowance hangs. */
  readonly openFacts: readonly AfloatKey[];
  /** Why the spread alone leaves it open, as a clause. */
  readonly doubt: string;
}

const BOTH = [true, false] as const;
const optionsOf = (fact: boolean | undefined): readonly boolean[] => (fact === undefined ? BOTH : [fact]);

/** Everything the rule may allow. */
export function allowances(study: AfloatStudy, size: FactorRange): Allowances {
  const { rig } = study.afloat;
  const known = factsOf(study);
  const every = optionsOf(known.flatBottomHardChine).flatMap((flatBottomHardChine) =>
    optionsOf(known.remoteSteering).flatMap((remoteSteering) =>
      optionsOf(known.tall).map((tall): Facts => ({ flatBottomHardChine, remoteSteering, tall })),
    ),
  );
  const found = every.flatMap((facts) => pieces(size).map((each) => allowed(each, facts, rig)));
  const sorted = found.toSorted((a, b) => floorOf(a) - floorOf(b));
  const open = (Object.keys(WANTED) as (keyof Facts)[]).filter(
    (fact) => known[fact] === undefined && matters(fact, every, size, rig),
  );
  const openFacts = open.flatMap((fact) => WANTED[fact].filter((key) => isOpen(rig, key)));
  const straddles = open.includes("tall") && regulationTransomHeight(rig.stern) !== undefined;
  const height = regulationTransomHeight(rig.stern) ?? 0;
  const facts = { ...known, tall: known.tall ?? height >= TALL_TRANSOM_MM - 1e-6 };
  return {
    least: { ...sorted[0]!, kW: floorOf(sorted[0]!) },
    greatest: found.reduce((most, one) => (one.kW > most.kW ? one : most)),
    nominal: openFacts.length === 0 ? allowed(size.exact, facts as Facts, rig) : undefined,
    openFacts,
    doubt: straddles
      ? `; whether a transom of ${study.write(height)} counts as 20 in cannot be told`
      : "; too close to a step of the rule to tell",
  };
}

const isOpen = ({ motor, stern }: Rig, key: AfloatKey): boolean => {
  if (key === "hardChine" && stern.hullForm !== undefined && stern.hullForm !== "flat") return false;
  if (key === "seatMm") return stern.seatMm === undefined && stern.transomTopMm === undefined;
  return ((motor as Record<string, unknown>)[key] ?? (stern as Record<string, unknown>)[key]) === undefined;
};

/** Whether turning one fact round changes what is allowed anywhere. */
const matters = (fact: keyof Facts, every: readonly Facts[], size: FactorRange, rig: Rig): boolean =>
  every.some((facts) =>
    pieces(size).some(
      (each) => allowed(each, facts, rig).kW !== allowed(each, { ...facts, [fact]: !facts[fact] }, rig).kW,
    ),
  );

/** Where the table steps and where its lines begin. */
const STEPS = [35.5, 39.5, 42.5, 45.5, 52.5];
const HAIR = 1e-9;

/** The factor as it stands, the ends of its spread, and both sides of every step between. */
function pieces({ exact, from, to }: FactorRange): Factor[] {
  if (to - from < HAIR) return [exact];
  const inside = STEPS.filter((step) => step > from && step < to).flatMap((step) => [
    step - 1e-6,
    step + 1e-6,
  ]);
  return [exact, ...[Math.max(from, 1), to, ...inside].map((ft2) => factor(MM_PER_FOOT, ft2 * MM_PER_FOOT))];
}

/** Horsepower under which a flat bottom below the table stays. */
const LOWEST_HP = 3;

function allowed(size: Factor, { flatBottomHardChine, remoteSteering, tall }: Facts, rig: Rig): Allowance {
  const motorwellHeightMm = wellHeight(rig.stern);
  const { hp, raw, kW, notes } = powerCapacity(size, {
    flatBottomHardChine,
    remoteSteering,
    transomHeightMm: tall ? TALL_TRANSOM_MM : TALL_TRANSOM_MM - 1,
    ...(motorwellHeightMm !== undefined && { motorwellHeightMm }),
  });
  return { hp, raw, kW: kW ?? (LOWEST_HP * WATTS_PER_HORSEPOWER) / 1000, notes };
}

/** "Less than 3 hp" may be nothing at all. */
const floorOf = ({ hp, kW }: Allowance): number => (hp === undefined ? 0 : kW);

const WELL = [
  "transomThicknessMm",
  "soleDropMm",
  "soleAngleDeg",
  "wellDepthMm",
  "wellFrontHeightMm",
  "keelDepthMm",
  "rakeDeg",
] as const;

function wellHeight(stern: SternValues): number | undefined {
  const seatMm = stern.seatMm ?? stern.transomTopMm;
  if (seatMm === undefined || WELL.some((key) => stern[key] === undefined)) return undefined;
  return regulationMotorwellHeight({
    ...(stern as Required<SternValues>),
    seatMm,
    wellSideHeightMm: stern.wellSideHeightMm,
  });
}
