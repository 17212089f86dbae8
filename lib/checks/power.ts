/**
 * Power for the hull. Too strong a motor drives a small boat faster than it can be steered and squats its
 * stern. The label on the hull governs where there is one. Without it the United States' rule for boats
 * under 20 ft gives a figure, from length, breadth, form of bottom, steering and height of the transom.
 * Margin: from the motor's power to what label or rule allows. The rule goes by steps: every factor, and
 * every fact nobody took, that could be the true one is tried, and the answer holds only where all of them
 * agree. Its open places are named beside the answer. Leaves out weight and trim.
 */
import {
  type AfloatCheck,
  type AfloatFinding,
  type AfloatKey,
  type AfloatStudy,
  DEFERS,
  type Figure,
  fromRecord,
  fromStandard,
  type Judged,
  missingOf,
  notKnown,
  workedOut,
} from "#lib/checks/afloat-check.ts";
import { type Allowance, allowances, FACTOR_KEYS, factorRange, leftOut } from "#lib/checks/power-rule.ts";
import { WATTS_PER_HORSEPOWER } from "#lib/quantity/power.ts";
import { figure } from "#lib/quantity/words.ts";
import { definitions } from "#lib/standards/cfr-33-183-3.ts";
import { horsepowerCapacity } from "#lib/standards/cfr-33-183-53.ts";
import { barsToTest, performanceTest } from "#lib/standards/cfr-33-183-53-driving-test.ts";
import type { Note } from "#lib/standards/citation.ts";

/** Powers are written to a tenth of a kilowatt: 15 hp is 11.19 and stands as 11.2. */
const ROUNDING_KW = 0.05;

const US_RULE: Note = {
  id: "us-rule",
  says: "A rule of the United States for monohull boats under 20 ft, not for sailing boats, canoes, kayaks and inflatables; a monohull for an outboard motor is taken.",
};
const TEST_ROUTE: Note = {
  id: "test-route",
  says: "So short a boat with remote steering may instead be put through the rule's own driving test by its builder, which can give up to 40 hp.",
};

/** To a tenth of a kilowatt, as labels have it. */
const powerWords = (kW: number): string => `${Number(kW.toFixed(1))} kW`;
const hpOf = (kW: number): number => (kW * 1000) / WATTS_PER_HORSEPOWER;

const motorFigures = (kW: number): Figure[] => [
  { label: "Motor's power", value: kW, unit: "kW", ...fromRecord("powerKw") },
  { label: "Motor's power in mechanical horsepower", value: hpOf(kW), unit: "hp", ...workedOut },
];

function byLabel(study: AfloatStudy): AfloatFinding {
  const { motor, stern } = study.afloat.rig;
  const rated = stern.ratedPowerKw!;
  const label: Figure = {
    label: "Power on the capacity label",
    value: rated,
    unit: "kW",
    ...fromRecord("ratedPowerKw"),
  };
  const missing = missingOf(study.afloat.rig, ["powerKw"]);
  if (missing.length > 0) {
    return { outcome: "cannot tell", says: notKnown(missing), missing, figures: [label], notes: [DEFERS] };
  }
  const judged = study.judge({
    room: ({ rig }) => rig.stern.ratedPowerKw! - rig.motor.powerKw!,
    keys: ["ratedPowerKw", "powerKw"],
    rounding: ROUNDING_KW,
  });
  return {
    outcome: judged.verdict,
    says: `The capacity label allows ${powerWords(rated)} and the motor has ${powerWords(motor.powerKw!)}.`,
    missing: [],
    ruling: {
      judged,
      have: motor.powerKw!,
      need: rated,
      limit: {
        value: rated,
        status: "capacity label",
        ...fromRecord("ratedPowerKw"),
        source: "the hull's capacity label",
      },
    },
    figures: [label, ...motorFigures(motor.powerKw!)],
    notes: [{ id: "label", says: "The capacity label governs; no rule was worked out." }, DEFERS],
  };
}

const untold = (missing: readonly AfloatKey[], says: string, notes: readonly Note[] = []): AfloatFinding => ({
  outcome: "cannot tell",
  says,
  missing,
  figures: [],
  notes: [...notes, US_RULE, DEFERS],
});

function byRule(study: AfloatStudy): AfloatFinding {
  const { rig } = study.afloat;
  const missing = missingOf(rig, ["powerKw", ...FACTOR_KEYS]);
  if (missing.length > 0) return untold(missing, notKnown(missing));
  const out = leftOut(study);
  if (out.outcome === "not asked") {
    return { outcome: "not asked", says: `${out.says}.`, missing: [], figures: [], notes: [DEFERS] };
  }
  if (out.outcome === "cannot tell") return untold([], `${out.says}.`);
  return judgedByRule(study);
}

/** A shortfall that is only the rounding of the figures compared is none. */
const unrounded = (margin: number): number => (margin < 0 && margin >= -ROUNDING_KW ? 0 : margin);

/** How the power stands to all that may be allowed: sure only where every allowance agrees. */
function judgedByRule(study: AfloatStudy): AfloatFinding {
  const { rig } = study.afloat;
  const power = rig.motor.powerKw!;
  const size = factorRange(study);
  const found = allowances(study, size);
  const own = study.judge({ room: ({ rig: other }) => other.motor.powerKw!, keys: ["powerKw"] });
  const verdict =
    power + 2 * own.u <= found.least.kW + ROUNDING_KW
      ? "fits"
      : power - 2 * own.u > found.greatest.kW + ROUNDING_KW
        ? "fouls"
        : "cannot tell";
  const open = verdict === "cannot tell" ? found.openFacts : [];
  const ruling =
    verdict === "fouls" && found.openFacts.length > 0 ? found.greatest : (found.nominal ?? found.least);
  const swing = Math.max(found.greatest.kW - ruling.kW, ruling.kW - found.least.kW) + 2 * own.u;
  const judged: Judged = {
    margin: unrounded(ruling.kW - power),
    u: swing / 2,
    worstCase: unrounded(found.least.kW - power) - own.u * Math.sqrt(3),
    verdict,
    budget: size.judged.budget,
  };
  const told = open.length === 0;
  return {
    outcome: verdict,
    says: told
      ? ruleWords(study, ruling, size.says, verdict === "cannot tell" ? found.doubt : "")
      : notKnown(open),
    missing: open,
    ...(told && {
      ruling: {
        judged,
        have: power,
        need: ruling.kW,
        limit: { value: ruling.kW, status: horsepowerCapacity.status, ...fromStandard(horsepowerCapacity) },
      },
    }),
    figures: [...ruleFigures(size.value, told ? ruling : undefined), ...motorFigures(power)],
    notes: [
      ...ruling.notes,
      ...(verdict !== "cannot tell" && found.openFacts.length > 0
        ? [{ id: "whichever", says: `${notKnown(found.openFacts)} It comes to the same either way.` }]
        : []),
      ...testRoute(study),
      US_RULE,
      DEFERS,
    ],
  };
}

function ruleWords(study: AfloatStudy, { hp, kW }: Allowance, width: string, doubt: string): string {
  const power = study.afloat.rig.motor.powerKw!;
  const allowed =
    hp === undefined
      ? "the rule allows less than 3 hp"
      : `the rule allows ${figure(hp)} hp (${powerWords(kW)})`;
  return `By length and breadth (${width}) ${allowed} and the motor has ${powerWords(power)}${doubt}.`;
}

const ruleFigures = (factor: number, ruling: Allowance | undefined): Figure[] => [
  {
    label: "Length times breadth, the factor",
    value: factor,
    unit: "ft²",
    ...fromStandard(horsepowerCapacity),
  },
  ...(ruling?.raw !== undefined && ruling.raw !== ruling.hp
    ? [
        {
          label: "Allowed, before raising to a multiple of 5",
          value: ruling.raw,
          unit: "hp" as const,
          ...fromStandard(horsepowerCapacity),
        },
      ]
    : []),
  ...(ruling?.hp === undefined
    ? []
    : [
        { label: "Allowed", value: ruling.hp, unit: "hp" as const, ...fromStandard(horsepowerCapacity) },
        { label: "Allowed, in kilowatts", value: ruling.kW, unit: "kW" as const, ...workedOut },
      ]),
];

function testRoute({ afloat: { rig } }: AfloatStudy): Note[] {
  const bars = barsToTest({
    lengthMm: rig.stern.lengthOverallMm!,
    remoteWheel: rig.motor.steering === "remote",
    transomHeightMm: Number.POSITIVE_INFINITY,
    persons: 2,
  });
  return bars.length === 0 ? [TEST_ROUTE] : [];
}

export const power: AfloatCheck = {
  id: "power",
  question: "Is the motor within the power this hull may carry?",
  why: "Too strong a motor drives a small boat faster than it steers, and lifts the bow until nobody sees ahead.",
  leavesOut: "Weight, trim and how the boat handles; craft that are not monohulls.",
  unit: "kW",
  standing: "rule",
  is: "The capacity label where the hull has one; else the United States' rule for boats under 20 ft.",
  standards: [horsepowerCapacity, definitions, performanceTest],
  needs: [
    "powerKw",
    "ratedPowerKw",
    ...FACTOR_KEYS,
    "beamMm",
    "hullForm",
    "hardChine",
    "steering",
    "seatMm",
    "keelDepthMm",
  ],
  answer: (study) => (study.afloat.rig.stern.ratedPowerKw === undefined ? byRule(study) : byLabel(study)),
};
