import Link from "next/link";
import { keyName } from "#app/_parts/key-name.ts";
import type { NeededKey } from "#lib/checks/check.ts";
import { checks } from "#lib/checks/index.ts";
import type { Motor } from "#lib/rig/motor.ts";
import type { Rig } from "#lib/rig/mounting.ts";
import { takenOf } from "#lib/rig/record.ts";
import type { Stern } from "#lib/rig/stern.ts";

type Known = "measured" | "declared" | "estimated" | "like" | "missing";

/** The numbers the questions asked of a pairing need, sorted by how each was come by. */
export function sortedByHow(
  rig: Rig,
  motor: Motor,
  stern: Stern,
  fromLike: ReadonlySet<string>,
): Record<Known, readonly NeededKey[]> {
  const taken = takenOf(motor, stern, undefined, fromLike);
  const asked = checks.filter((check) => check.asked(rig) === true);
  const sorted: Record<Known, NeededKey[]> = {
    measured: [],
    declared: [],
    estimated: [],
    like: [],
    missing: [],
  };
  for (const key of new Set(asked.flatMap((check) => check.needs(rig)))) {
    if (key === "steering" || key === "shaftClass") {
      if (rig.motor[key] === undefined) sorted.missing.push(key);
      continue;
    }
    const entry = taken(key);
    sorted[!entry ? "missing" : entry.fromLike ? "like" : entry.how].push(key);
  }
  return sorted;
}

const WORDS: readonly (readonly [Known, string])[] = [
  ["declared", "from papers or the seller"],
  ["estimated", "estimated by eye"],
  ["like", "from like motors"],
  ["missing", "not known"],
];

/** How well the numbers behind a report are known: how many were measured, and by name those that were not. */
export function NumbersBehind({ sorted }: { readonly sorted: ReturnType<typeof sortedByHow> }) {
  const { measured } = sorted;
  return (
    <section aria-labelledby="behind" className="stack-near">
      <h2 id="behind" className="drawn">
        How well the numbers are known
      </h2>
      <p>Of the numbers these questions need,</p>
      <ul className="words">
        <li>
          {measured.length} {measured.length === 1 ? "was" : "were"} measured with a tape or a level;
        </li>
        {WORDS.filter(([known]) => sorted[known].length > 0).map(([known, words]) => (
          <li key={known}>
            {sorted[known].length} {sorted[known].length === 1 ? "is" : "are"} {words}:{" "}
            {sorted[known].map((key, i) => (
              <span key={key}>
                {i > 0 && ", "}
                <Link href={`/measuring#${key}`}>{lower(keyName(key))}</Link>
              </span>
            ))}
            .
          </li>
        ))}
      </ul>
    </section>
  );
}

const lower = (name: string): string => name.charAt(0).toLowerCase() + name.slice(1);
