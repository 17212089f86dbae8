/** Every rule says where it stands, and a secondary reading is said. */
import { readdirSync } from "node:fs";
import { expect, test } from "vitest";
import { horsepowerCapacity } from "#lib/standards/cfr-33-183-53.ts";
import { type Citation, citationId, numberOf, sourceOf } from "#lib/standards/citation.ts";
import { CITED } from "#lib/standards/cited.ts";
import { FREEBOARD_RULES } from "#lib/standards/freeboard-rules.ts";
import { plywoodTransom } from "#lib/standards/usl-code-5m.ts";

const isCitation = (value: unknown): value is Citation =>
  typeof value === "object" && value !== null && "document" in value && "binds" in value;

const modules = await Promise.all(
  readdirSync("lib/standards").map(
    (file) => import(`../../../lib/standards/${file.slice(0, -3)}.ts`) as Promise<object>,
  ),
);
const cited = [
  ...modules.flatMap((module) => Object.values(module).filter(isCitation)),
  ...FREEBOARD_RULES.map(({ citation }) => citation),
];

test("each names document, clause, edition and whom it binds", () => {
  expect(cited.length).toBeGreaterThan(20);
  for (const { document, clause, edition, binds } of cited) {
    for (const words of [document, clause, edition, binds]) expect(words.length).toBeGreaterThan(3);
  }
});

test("each address is one", () => {
  for (const { url } of cited) if (url !== undefined) expect(new URL(url).hostname).toContain(".");
});

test("the source in one line; a secondary text is said, common practice has none", () => {
  expect(sourceOf(horsepowerCapacity)).toBe(
    "33 CFR, 183.53(a) and Table 183.53 (51 FR 37574, 23 October 1986)",
  );
  expect(sourceOf(plywoodTransom)).toMatch(/, read in a secondary text$/);
  const practice = FREEBOARD_RULES.find(({ id }) => id === "transom-cutout")!.citation;
  expect(sourceOf(practice)).toBe("common practice, no source");
});

test("a number of a rule is a standard that carries its status", () => {
  expect(numberOf(plywoodTransom, 41.8, "mm", "transom at the motor")).toMatchObject({
    value: 41.8,
    unit: "mm",
    status: "published",
  });
});

test("freeboard rules have names of their own", () => {
  const ids = FREEBOARD_RULES.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
});

test("every published document stands in the list once, under an id of its own", () => {
  const listed = new Set(CITED.map(citationId));
  expect(listed.size).toBe(CITED.length);
  const published = cited.filter(({ status }) => status === "published");
  expect(published.map(citationId).filter((id) => !listed.has(id))).toEqual([]);
});

test("common practice has one place of its own in the list", () => {
  const practice = cited.filter(({ status }) => status === "common practice");
  expect(new Set(practice.map(citationId))).toEqual(new Set(["common-practice"]));
});
