/** Printed sheets measured by poppler: sizes, sides, embedded lettering. */
import PDFDocument from "pdfkit";
import { beforeAll, describe, expect, test } from "vitest";
import type { Drawing } from "#lib/draw/drawing.ts";
import { MARGIN, PAPERS, type PaperSize } from "#lib/draw/paper/paper.ts";
import { toPdf } from "#lib/draw/paper/pdf.ts";
import { allPages, planDrawings, templatePages } from "#lib/draw/paper/plan-pages.ts";
import { simple } from "#lib/draw/paper/simple.ts";
import { FACES, INFO, PLAN, STAMP } from "#tests/lib/draw/paper/plan.ts";
import {
  darkRuns,
  fontsOf,
  kept,
  needPoppler,
  type Raster,
  rendered,
  words,
} from "#tests/lib/draw/paper/poppler.ts";

const DPI = 300;
/** 50 mm at 300 dots to the inch. */
const SQUARE_PX = 590.6;
const px = (mm: number) => (mm / 25.4) * DPI;

beforeAll(needPoppler, 400_000);

/** Across and down the square that stands at `[left, foot]` mm of a sheet `high` mm high: distance of the middles of its sides. */
function squareSides(page: Raster, [left, foot]: readonly [number, number], high: number): [number, number] {
  // A quarter of the way up, clear of the words in its middle; from 3 mm outside to 3 mm beyond.
  const row = Math.round(px(high - foot - 12));
  const column = Math.round(px(left + 12));
  const [x0, y0] = [Math.round(px(left - 1.5)), Math.round(px(high - foot - 53))];
  const long = Math.round(px(55));
  const across = darkRuns(long, (at) => page.dark(x0 + at, row));
  const down = darkRuns(long, (at) => page.dark(column, y0 + at));
  return [across[1]! - across[0]!, down[1]! - down[0]!];
}

describe.each(["a4", "letter"] as const)("templates on %s", (paper: PaperSize) => {
  const { check, tiles } = templatePages(PLAN(), paper, STAMP);
  const [wide, high] = PAPERS[paper];

  test("the check page's square measures 590.6 px both ways, within 1.5", async () => {
    const path = kept(await toPdf([check], FACES, INFO), `check-${paper}`);
    const page = rendered(path, 1, DPI);
    expect(Math.abs(page.wide - px(wide))).toBeLessThan(1.5);
    expect(Math.abs(page.high - px(high))).toBeLessThan(1.5);
    const square = check.marks.find((mark) => mark.mark === "outline" && mark.of === "check square");
    if (square?.mark !== "outline") throw new Error("no square");
    for (const side of squareSides(page, square.points[0]!, high))
      expect(Math.abs(side - SQUARE_PX)).toBeLessThan(1.5);
  });

  test("so does the square of a tile, and the tile's window begins where it says", async () => {
    const [tile] = tiles;
    const path = kept(await toPdf([tile!.sheet], FACES, INFO), `tile-${paper}`);
    const page = rendered(path, 1, DPI);
    const sides = squareSides(page, [MARGIN + 2, MARGIN + 4], high);
    for (const side of sides) expect(Math.abs(side - SQUARE_PX)).toBeLessThan(1.5);
  });
});

describe("a printer that shrinks to 97 mm", () => {
  test("the corrected file is larger by 100/97: the square's sides become 608.8 px", async () => {
    const factor = 100 / 97;
    const { check } = templatePages(PLAN(), "a4", STAMP, factor);
    const path = kept(await toPdf([check], FACES, INFO), "corrected");
    const page = rendered(path, 1, DPI);
    const square = check.marks.find((mark) => mark.mark === "outline" && mark.of === "check square");
    if (square?.mark !== "outline") throw new Error("no square");
    const [left, foot] = square.points[0]!;
    const row = Math.round(px(297 - (foot + 12) * factor));
    const x0 = Math.round(px(left * factor - 1.5));
    const across = darkRuns(Math.round(px(58)), (at) => page.dark(x0 + at, row));
    expect(Math.abs(across[1]! - across[0]! - SQUARE_PX * factor)).toBeLessThan(1.5);
  });
});

describe("the whole file", () => {
  let path = "";
  const sheets = allPages(PLAN({ lengths: "in" }), "letter", STAMP);
  const index = (title: RegExp) => sheets.findIndex((sheet) => title.test(sheet.title)) + 1;
  beforeAll(async () => {
    path = kept(await toPdf(sheets, FACES, INFO), "whole");
  }, 120_000);

  test("the first page is the check page and its lettering is embedded", () => {
    expect(sheets[0]!.title).toBe("Check page");
    const lines = fontsOf(path).trim().split("\n").slice(2);
    expect(lines.length).toBeGreaterThan(0);
    for (const line of lines) expect(line).toMatch(/\byes yes yes\b/);
  });

  test("on notch, well and sole PORT is printed left of STARBOARD, and FORWARD above AFT", () => {
    for (const title of [/^Notch, seen from aft/, /^Well from above/, /^Well sole$/, /^Front beam$/]) {
      const on = words(path, index(title));
      const at = (text: string) => on.find((word) => word.text === text)!;
      expect(at("PORT").left, String(title)).toBeLessThan(at("STARBOARD").left);
    }
    const sole = words(path, index(/^Well sole$/));
    expect(sole.find(({ text }) => text === "FORWARD")!.top).toBeLessThan(
      sole.find(({ text }) => text === "AFT")!.top,
    );
  });

  test("fractions and inch signs come out as such", () => {
    const text = words(path, index(/^Well sole$/))
      .map((word) => word.text)
      .join(" ");
    // 1240 mm is 48.82 in: 48 13/16 and a bit, marked up to 48 7/8.
    expect(text).toMatch(/48 7⁄8″/);
  });
});

test("every character of every sheet is in the face that sets it", () => {
  const pdf = new PDFDocument({ autoFirstPage: false });
  const holds = (bytes: Uint8Array, name: string) => {
    pdf.registerFont(name, bytes as unknown as ArrayBuffer).font(name);
    const { font } = (pdf as unknown as { _font: { font: { hasGlyphForCodePoint(code: number): boolean } } })
      ._font;
    return (text: string) => [...text].every((sign) => font.hasGlyphForCodePoint(sign.codePointAt(0)!));
  };
  const [regular, bold] = [holds(FACES.regular, "r"), holds(FACES.bold, "b")];
  const all: Drawing[] = [
    ...allPages(PLAN({ lengths: "in" }), "a4", STAMP),
    ...planDrawings(PLAN(), "a4", STAMP),
  ];
  const lost = all.flatMap(({ marks, scale }) =>
    simple(marks, scale).flatMap((mark) =>
      mark.mark === "lettering" && !(mark.bold ? bold : regular)(mark.text) ? [mark.text] : [],
    ),
  );
  expect(lost).toEqual([]);
  // The signs a plan in inches needs, whether or not this one happens to use them.
  expect(regular("½ ¼ ¾ ⅛ ⅜ ⅝ ⅞ 1⁄16 ″ ′ ° ± − ×")).toBe(true);
});
