/** Every document a number is taken from, once, to be listed with its clause, edition and standing. */
import { definitions } from "#lib/standards/cfr-33-183-3.ts";
import { applicability, horsepowerCapacity } from "#lib/standards/cfr-33-183-53.ts";
import { performanceTest } from "#lib/standards/cfr-33-183-53-driving-test.ts";
import { motorWeights } from "#lib/standards/cfr-33-183-75.ts";
import {
  personsOutboard,
  personsUpToTwoHp,
  weightOverTwoHp,
  weightUpToTwoHp,
} from "#lib/standards/cfr-33-183-loading.ts";
import { heelByFreeboard, heelingTest } from "#lib/standards/cfr-46-178-330.ts";
import { bulwarkPorts, cableHole, openBoatDeck, recessDrainage } from "#lib/standards/cfr-46-178-450.ts";
import { type Citation, citationId } from "#lib/standards/citation.ts";
import { FREEBOARD_RULES } from "#lib/standards/freeboard-rules.ts";
import { DISCHARGE, hydraulics, pondOutlets } from "#lib/standards/hydraulics.ts";
import { plywoodTransom } from "#lib/standards/usl-code-5m.ts";

const ALL: readonly Citation[] = [
  horsepowerCapacity,
  applicability,
  definitions,
  performanceTest,
  motorWeights,
  weightOverTwoHp,
  weightUpToTwoHp,
  personsOutboard,
  personsUpToTwoHp,
  plywoodTransom,
  ...FREEBOARD_RULES.map(({ citation }) => citation),
  heelingTest,
  heelByFreeboard,
  recessDrainage,
  bulwarkPorts,
  openBoatDeck,
  cableHole,
  hydraulics,
  pondOutlets,
  ...Object.values(DISCHARGE).map(({ citation }) => citation),
];

/** Each published document once, in the order the questions use them. What is common practice has no document. */
export const CITED: readonly Citation[] = ALL.filter(
  (one, i) =>
    one.status === "published" && ALL.findIndex((other) => citationId(other) === citationId(one)) === i,
);
