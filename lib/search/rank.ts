import Fuse from "fuse.js";
import type { Term } from "#lib/search/query.ts";
import type { Item } from "#lib/search/search-index.ts";
import { indexed } from "#lib/search/tokens.ts";
import { type Searchable, searchable } from "#lib/search/words.ts";

/** A candidate and what the index found it worth. */
export interface Candidate<T extends Item> {
  readonly item: T;
  readonly total: number;
}

/** How much the score of fuse.js weighs beside the index's own, of 1: it tells apart what the index holds for equal, and knows no amounts. */
const FUSE_WEIGHS = 0.3;

/** The candidates in their last order. */
export function ranked<T extends Item>(candidates: readonly Candidate<T>[], terms: readonly Term[]): T[] {
  if (candidates.length < 2) return candidates.map(({ item }) => item);
  const scores = fuseScores(candidates, terms);
  const top = candidates[0]!.total;
  return candidates
    .map(({ item, total }, at) => ({
      item,
      worth: (1 - FUSE_WEIGHS) * (total / top) + FUSE_WEIGHS * (1 - (scores.get(at) ?? 1)),
    }))
    .sort((a, b) => b.worth - a.worth)
    .map(({ item }) => item);
}

/** Scores of fuse.js's token search by place: 0 is exactly, 1 is hardly. */
function fuseScores(candidates: readonly Candidate<Item>[], terms: readonly Term[]): Map<number, number> {
  const fuse = new Fuse(
    candidates.map(({ item }) => texts(searchable(item.record))),
    {
      keys: [
        { name: "label", weight: 3 },
        { name: "facts", weight: 2 },
        { name: "notes", weight: 1 },
      ],
      includeScore: true,
      ignoreLocation: true,
      threshold: 0.35,
      useTokenSearch: true,
      tokenize: /[^ ]+/g,
    },
  );
  const query = terms.map(({ word }) => word).join(" ");
  return new Map(fuse.search(query).map(({ refIndex, score = 1 }) => [refIndex, score]));
}

const texts = ({ label, facts, notes }: Searchable): Searchable => ({
  label: indexed(label).join(" "),
  facts: indexed(facts).join(" "),
  notes: indexed(notes).join(" "),
});
