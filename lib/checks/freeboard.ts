/**
 * Freeboard at the stern, at rest, with motor, persons and fuel aboard. A stern too low is the place where
 * the first following wave comes in. Without a motor well the seat is the boat's lowest side; with one,
 * water over the seat stays in the well until it reaches its front or its sides. Margin: from the freeboard
 * to what each named rule asks. They differ up to 2.7 times and are all for boats that carry passengers or
 * work, so there is no one minimum: it fits where all of them are surely kept, fouls where none is, and
 * else cannot be told, each rule with its own answer beside it. Sinkage and trim are those of the
 * waterplane's length, breadth and usual fullness. Leaves out waves, the boat under way, and people crowding aft.
 */
import {
  type AfloatCheck,
  type AfloatFinding,
  type AfloatStudy,
  DEFERS,
  fromStandard,
  LYING,
  LYING_KEYS,
  missingOf,
  notKnown,
  type RuleKept,
} from "#lib/checks/afloat-check.ts";
import { lyingFigures, lyingNotes, wellWords } from "#lib/checks/freeboard-figures.ts";
import type { Level } from "#lib/rig/afloat/floating.ts";
import { type Afloat, lying } from "#lib/rig/afloat/lying.ts";
import { edgeFreeboard, seatFreeboard, WELL_PLACE } from "#lib/rig/afloat/stern-edge.ts";
import type { RigKey } from "#lib/rig/mounting.ts";
import { hasWell } from "#lib/rig/obstacles.ts";
import { FREEBOARD_RULES, type FreeboardRule } from "#lib/standards/freeboard-rules.ts";
import { FULLNESS_BY_FORM } from "#lib/standards/waterplane-fullness.ts";

/** Rules that look at the place where water first comes in; the others measure to a deck. The cutout's own looks at the seat whatever is behind it. */
const AT_THE_EDGE = ["workboat-open", "nscv-c6a", "uk-inland", "uk-inland-open", "mgn-280"];
const AT_THE_SEAT = "transom-cutout";

const KEYS: readonly RigKey[] = [...LYING_KEYS, ...WELL_PLACE, "wellSideHeightMm", "lengthOverallMm"];

const heightAt = (rule: FreeboardRule, of: Afloat, level: Level): number =>
  rule.id === AT_THE_SEAT ? seatFreeboard(level, of.rig.stern)! : edgeFreeboard(level, of.rig.stern)!.mm;

/** Every rule that speaks of this edge and this length, the least demanding first. */
function kept(study: AfloatStudy): RuleKept[] {
  const length = study.afloat.rig.stern.lengthOverallMm!;
  return FREEBOARD_RULES.filter(({ id }) => id === AT_THE_SEAT || AT_THE_EDGE.includes(id))
    .flatMap((rule): RuleKept[] => {
      const least = rule.leastMm(length);
      if (least === undefined) return [];
      const room = (of: Afloat) =>
        heightAt(rule, of, lying(of)!.after) - (rule.leastMm(of.rig.stern.lengthOverallMm!) ?? least);
      const judged = study.judge({ room, keys: KEYS, onFullness: true });
      const { document, binds } = rule.citation;
      const rule_ = rule.id === AT_THE_SEAT ? `${document}, ${rule.what}` : `${document}: ${rule.what}`;
      return [{ id: rule.id, rule: rule_, binds, least, judged, ...fromStandard(rule.citation) }];
    })
    .sort((a, b) => a.least - b.least || a.id.localeCompare(b.id));
}

function answer(study: AfloatStudy): AfloatFinding {
  const { afloat } = study;
  const { rig } = afloat;
  const missing = missingOf(rig, [...LYING, "lengthOverallMm", ...(hasWell(rig.stern) ? WELL_PLACE : [])]);
  const lies = lying(afloat);
  const beside = {
    figures: lies ? lyingFigures(study, lies) : [],
    notes: lies ? lyingNotes(study, lies) : [DEFERS],
    ...(lies && { trim: { before: lies.before, after: lies.after, masses: lies.masses } }),
  };
  if (!lies || rig.stern.lengthOverallMm === undefined) {
    return { outcome: "cannot tell", says: notKnown(missing), missing, ...beside };
  }
  const rules = kept(study);
  const outcome = overall(rules);
  if (missing.length > 0 && outcome !== "fits") {
    return { outcome: "cannot tell", says: notKnown(missing), missing, rules, ...beside };
  }
  const ruling = rulingOf(rules, outcome);
  return {
    outcome,
    says: wordsOf(study, lies.after, rules, outcome),
    missing: [],
    ruling: {
      judged: ruling.judged,
      have: ruling.judged.margin + ruling.least,
      need: ruling.least,
      limit: {
        value: ruling.least,
        status: ruling.id === AT_THE_SEAT ? "common practice" : "published",
        source: ruling.source,
        ...(ruling.standard && { standard: ruling.standard }),
      },
    },
    rules,
    ...beside,
  };
}

function overall(rules: readonly RuleKept[]): "fits" | "fouls" | "cannot tell" {
  if (rules.every(({ judged }) => judged.verdict === "fits")) return "fits";
  return rules.every(({ judged }) => judged.verdict === "fouls") ? "fouls" : "cannot tell";
}

/** The rule whose margin is shown: when all are kept the hardest, when none is the easiest, else the easiest that is not surely kept. */
function rulingOf(rules: readonly RuleKept[], outcome: "fits" | "fouls" | "cannot tell"): RuleKept {
  if (outcome === "cannot tell") return rules.find(({ judged }) => judged.verdict !== "fits")!;
  const least = (a: RuleKept, b: RuleKept) => (b.judged.margin < a.judged.margin ? b : a);
  const most = (a: RuleKept, b: RuleKept) => (b.judged.margin > a.judged.margin ? b : a);
  return rules.reduce(outcome === "fits" ? least : most);
}

function wordsOf(
  study: AfloatStudy,
  after: Level,
  rules: readonly RuleKept[],
  outcome: "fits" | "fouls" | "cannot tell",
): string {
  const edge = edgeFreeboard(after, study.afloat.rig.stern)!;
  const stands = `${edge.at === "seat" ? "The seat" : "The well's edge behind the seat"} stands ${height(study, edge.mm)}`;
  const ruling = rulingOf(rules, outcome);
  const where = ruling.id === AT_THE_SEAT ? ", of the seat itself" : "";
  const asks = `asks ${study.write(ruling.least)}${where} (${ruling.rule.split(/[,:]/)[0]})`;
  return `${stands}: ${keptWords(rules, outcome)}.${wellWords(study, after)} The ${RULING[outcome]} ${asks}.`;
}

const RULING = {
  fits: "nearest to failing",
  fouls: "easiest of them",
  "cannot tell": "easiest not surely kept",
} as const;

function keptWords(rules: readonly RuleKept[], outcome: "fits" | "fouls" | "cannot tell"): string {
  if (outcome === "fits") return `all ${rules.length} named rules are kept`;
  if (outcome === "fouls") return `none of the ${rules.length} named rules is kept`;
  const counts = (verdict: string) => rules.filter(({ judged }) => judged.verdict === verdict).length;
  const [yes, no, open] = [counts("fits"), counts("fouls"), counts("cannot tell")];
  const doubt = open > 0 ? `, ${open} too close to tell` : "";
  return `of ${rules.length} named rules ${yes} ${yes === 1 ? "is" : "are"} kept and ${no} ${no === 1 ? "is" : "are"} not${doubt}`;
}

const height = ({ write }: AfloatStudy, mm: number): string =>
  mm < 0 ? `${write(-mm)} under the water` : `${write(mm)} above the water`;

export const freeboard: AfloatCheck = {
  id: "freeboard",
  question: "Does the stern stand high enough out of the water at rest, with everything aboard?",
  why: "A low seat is where the first following wave comes in, and a boat that stops short is followed by its own.",
  leavesOut: "Waves, the boat under way, heel, and people crowding aft.",
  unit: "mm",
  standing: "estimate",
  is: "An estimate of sinkage and trim, held against several rules for boats that carry passengers or work; none of them is the minimum for a pleasure boat.",
  standards: [
    ...new Set(FREEBOARD_RULES.map(({ citation }) => citation)),
    ...Object.values(FULLNESS_BY_FORM),
  ],
  needs: [...LYING, "lengthOverallMm", ...WELL_PLACE],
  answer,
};
