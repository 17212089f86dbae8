/**
 * What is wrong with what was sent, field by field, in the words of its sender. One problem a fault,
 * each with the place (RFC 6901) where it stands.
 */
import type { z } from "zod";
import { shown } from "#lib/entry/words.ts";
import { motorFields } from "#lib/rig/motor.ts";
import { sternFields } from "#lib/rig/stern.ts";
import { practiceLimits } from "#lib/standards/common-practice.ts";

/** What kind of fault it is, for programs. */
export type ProblemCode =
  | "unknown-key"
  | "missing"
  | "wrong-type"
  | "out-of-range"
  | "not-allowed"
  | "impossible";

/** One fault: where, what in words, and its kind. */
export interface Problem {
  /** RFC 6901 pointer into what was sent; empty for the whole. */
  readonly pointer: string;
  readonly detail: string;
  readonly code: ProblemCode;
}

type Issue = z.core.$ZodIssue;
type Path = readonly PropertyKey[];

/** Most problems listed at once: nobody reads more, and hostile input has a million. */
const MOST_PROBLEMS = 100;
const KNOWN_KEYS: readonly string[] = [
  ...["id", "label", "notes", "value", "plusMinus", "how", "motor", "stern", "limits", "motorId", "sternId"],
  ...["tape", "tapeClass", "divisionMm", "estimateMissing"],
  ...[
    "shaftClass",
    "steering",
    "fixing",
    "strokes",
    "year",
    "tillerFolds",
    "extraSolids",
    "group",
    "fromMm",
    "toMm",
  ],
  ...["hullForm", "hardChine", "drainCount", "obstacles"],
  ...Object.keys(motorFields),
  ...Object.keys(sternFields),
  ...Object.keys(practiceLimits),
];

/** An RFC 6901 pointer: `["motor", "a/b", 0]` is `/motor/a~1b/0`. */
export const jsonPointer = (path: Path): string =>
  path.map((step) => `/${String(step).replaceAll("~", "~0").replaceAll("/", "~1")}`).join("");

/** True where one letter added, left out, changed or swapped with its neighbour makes `a` into `b` (capitals count as the same letter). */
export function isOneEditAway(a: string, b: string): boolean {
  const [one, two] = [a.toLowerCase(), b.toLowerCase()];
  let head = 0;
  while (head < one.length && one[head] === two[head]) head++;
  const [restOne, restTwo] = [one.slice(head), two.slice(head)];
  const swapped = restOne.length > 1 && `${restOne[1]}${restOne[0]}${restOne.slice(2)}` === restTwo;
  return (
    restOne.slice(1) === restTwo.slice(1) ||
    restOne.slice(1) === restTwo ||
    restOne === restTwo.slice(1) ||
    swapped
  );
}

/** The known word that a key one slip away from it was meant to be, as the end of a message; empty where there is none. */
export function didYouMean(key: string, known: readonly string[]): string {
  const meant = key.length <= 60 ? known.find((word) => word !== key && isOneEditAway(key, word)) : undefined;
  return meant === undefined ? "" : ` Did you mean ${meant}?`;
}

function unknownKey(path: Path, key: string): Problem {
  return {
    pointer: jsonPointer([...path, key]),
    detail: `There is nothing called ${shown(key)} here.${didYouMean(key, KNOWN_KEYS)}`,
    code: "unknown-key",
  };
}

/** How badly the root of a value misses a branch of a union: the wrong kind of thing altogether, or a stranger among its keys. */
const miss = ({ code, path }: Issue): number => {
  if (path.length > 0) return 1;
  return code === "invalid_type" ? 1000 : code === "unrecognized_keys" ? 100 : 1;
};
const misses = (branch: readonly Issue[]): number => branch.reduce((sum, issue) => sum + miss(issue), 0);

function ofUnion(issue: Extract<Issue, { code: "invalid_union" }>, path: Path): Problem[] {
  const branches = issue.errors.filter((branch) => misses(branch) < 1000);
  const [best] = [...branches].sort((a, b) => misses(a) - misses(b));
  if (best === undefined) return [plain(issue, path)];
  return best.flatMap((inner) => problemsOf(inner, [...path, ...inner.path]));
}

const DEFAULT_MESSAGE = /^(Invalid|Too |Unrecognized)/;

function codeOf(issue: Issue): ProblemCode {
  if (/ is needed(\.$|: )/.test(issue.message)) return "missing";
  if (issue.code === "custom") return issue.params?.kind === "impossible" ? "impossible" : "not-allowed";
  if (issue.code === "too_small" || issue.code === "too_big") return "out-of-range";
  return issue.code === "invalid_type" || issue.code === "invalid_union" ? "wrong-type" : "not-allowed";
}

function plain(issue: Issue, path: Path): Problem {
  const name = path.length === 0 ? "This" : String(path.at(-1));
  const missing = issue.message.includes("received undefined");
  const words = missing ? `${name} is needed.` : `${name} is not of the kind asked for here.`;
  const detail = DEFAULT_MESSAGE.test(issue.message) ? words : issue.message;
  return { pointer: jsonPointer(path), detail, code: missing ? "missing" : codeOf(issue) };
}

function problemsOf(issue: Issue, path: Path): Problem[] {
  if (issue.code === "unrecognized_keys")
    return issue.keys.slice(0, MOST_PROBLEMS).map((key) => unknownKey(path, key));
  return issue.code === "invalid_union" ? ofUnion(issue, path) : [plain(issue, path)];
}

/** All that is wrong with a value that did not parse, a hundred problems at most. */
export const problems = (error: z.ZodError): Problem[] =>
  error.issues.flatMap((issue) => problemsOf(issue, issue.path)).slice(0, MOST_PROBLEMS);
