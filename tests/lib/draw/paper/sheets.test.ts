/** Drawing sheets, tiles and files: scales, title block, tiles that join up, the same lengths in every format. */
import DxfParser from "dxf-parser";
import { describe, expect, test } from "vitest";
import type { Drawing, Flat, Mark } from "#lib/draw/drawing.ts";
import { dxfText, toDxf } from "#lib/draw/paper/dxf.ts";
import { boughtSize, figureOfMark, figureUp, riseOverRun } from "#lib/draw/paper/figures.ts";
import {
  fullSizeDrawing,
  partTemplate,
  planDrawings,
  templatePages,
  templatesOf,
} from "#lib/draw/paper/plan-pages.ts";
import { rulerCorrection } from "#lib/draw/paper/ruler.ts";
import { simple } from "#lib/draw/paper/simple.ts";
import { sheetSvg } from "#lib/draw/paper/svg.ts";
import { clippedRun, OVERLAP, tileName, tiles } from "#lib/draw/paper/tiles.ts";
import { PLAN, STAMP } from "#tests/lib/draw/paper/plan.ts";
import { partOf } from "#tests/lib/fit/cut-plan/boat.ts";

const textOf = ({ marks, scale }: Drawing): string[] =>
  simple(marks, scale).flatMap((mark) => (mark.mark === "lettering" ? [mark.text] : []));
const lettered = (sheet: { marks: readonly Mark[] }, text: string) =>
  sheet.marks.find((mark) => mark.mark === "lettering" && mark.text === text) as Extract<
    Mark,
    { mark: "lettering" }
  >;

describe("drawing sheets", () => {
  const sheets = planDrawings(PLAN(), "a4", STAMP);

  test("scales are those of ISO 5455 and are lettered SCALE 1:n", () => {
    for (const sheet of sheets.filter(({ title }) => !title.startsWith("The plan in words"))) {
      expect([1, 2, 5, 10, 20, 50]).toContain(sheet.scale);
      expect(textOf(sheet)).toContain(`SCALE 1:${sheet.scale}`);
    }
  });

  test("the title block holds the mandatory fields of ISO 7200:2004", () => {
    for (const [i, sheet] of sheets.entries()) {
      const text = textOf(sheet);
      for (const caption of [
        "Legal owner",
        "Identification number",
        "Date of issue",
        "Sheet",
        "Title",
        "Approved by",
        "Creator",
        "Document type",
      ]) {
        expect(text).toContain(caption);
      }
      expect(text).toContain("2026-01-31");
      expect(text).toContain(`${i + 1} of ${sheets.length}`);
    }
  });

  test("everything lies on the paper", () => {
    for (const sheet of sheets) {
      for (const mark of simple(sheet.marks, sheet.scale)) {
        const points =
          mark.mark === "outline" ? mark.points : mark.mark === "lettering" ? [mark.at] : [mark.centre];
        for (const [x, y] of points) {
          expect(x).toBeGreaterThanOrEqual(0);
          expect(x).toBeLessThanOrEqual(sheet.window.right);
          expect(
            y,
            `${sheet.title}: ${mark.mark === "lettering" ? mark.text : mark.of}`,
          ).toBeGreaterThanOrEqual(0);
          expect(y).toBeLessThanOrEqual(sheet.window.top);
        }
      }
    }
  });

  test("bars of 100 mm and 4 in stand on every drawing both ways, true on paper", () => {
    for (const sheet of sheets.filter(({ title }) => !title.startsWith("The plan in words"))) {
      for (const [words, mm] of [
        ["100 mm", 100],
        ["4 in", 101.6],
      ] as const) {
        const spans = sheet.marks.flatMap((mark) =>
          mark.mark === "outline" && mark.of === `bar ${words}` ? [mark.points] : [],
        );
        const long = spans.map(([a, b]) =>
          [Math.abs(b![0] - a![0]), Math.abs(b![1] - a![1])].map((one) => one / sheet.scale),
        );
        expect(long.filter(([x]) => Math.abs(x! - mm) < 1e-9)).toHaveLength(1);
        expect(long.filter(([, y]) => Math.abs(y! - mm) < 1e-9)).toHaveLength(1);
      }
    }
  });

  test("a dimension's figure is its length rounded up, and its points are as far apart", () => {
    for (const sheet of sheets) {
      for (const mark of sheet.marks) {
        if (mark.mark !== "dimension") continue;
        const k = mark.along === "plumb" ? 1 : 0;
        expect(Math.abs(mark.to[k] - mark.from[k]), mark.of).toBeCloseTo(mark.mm, 1);
        expect(Number(mark.figure) - mark.mm, mark.of).toBeGreaterThan(-0.5);
        expect(Number(mark.figure) - mark.mm, mark.of).toBeLessThan(1);
      }
    }
  });
});

describe("figures", () => {
  test("whole millimetres without a unit, inches with fraction bar and inch sign, up", () => {
    expect(figureUp(403.2, "mm")).toBe("404");
    expect(figureUp(15.5 * 25.4, "in")).toBe("15 1⁄2″");
    expect(figureUp(15.5 * 25.4 + 0.1, "in")).toBe("15 9⁄16″");
    expect(figureOfMark({ text: "3 in" }, "in")).toBe("3″");
  });
  test("bought sizes are never rounded: 12 mm plywood stays 12 mm in inches, 3/4 in is 3/4 in", () => {
    expect(boughtSize(12, "in")).toBe("12\u00a0mm");
    expect(boughtSize(19.05, "in")).toBe("3/4\u00a0in");
    expect(boughtSize(19.05, "mm")).toBe("19.1\u00a0mm");
  });
  test("8 degrees is 14.05 in 100, or 1 11/16 in 12 (12 tan 8 = 1.6865)", () => {
    expect(riseOverRun(14.054, "mm")).toBe("14 in 100");
    expect(riseOverRun(14.054, "in")).toBe("1 11/16 in in 12 in");
  });
});

describe("tiles", () => {
  const plan = PLAN();
  const template = partTemplate(partOf(plan.well!, "sole"));
  const laid = tiles(template, "a4", STAMP);

  /** Lines of the template on a tile, carried back to the template. */
  const linesOf = (tile: (typeof laid)[number], of: string) =>
    tile.sheet.marks.flatMap((mark) =>
      mark.mark === "outline" && mark.of === of
        ? [
            mark.points.map(
              ([x, y]): Flat => [
                x - tile.onSheetMm[0] + tile.originMm[0],
                y - tile.onSheetMm[1] + tile.originMm[1],
              ],
            ),
          ]
        : [],
    );

  test("laid cross on cross they show every side of the outline whole, and nothing else", () => {
    const { outline } = partOf(plan.well!, "sole");
    for (const [i, a] of outline.entries()) {
      const b = outline[(i + 1) % outline.length]!;
      for (const share of [0.01, 0.13, 0.37, 0.5, 0.71, 0.99]) {
        const point = [a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])] as const;
        const near = laid.some((tile) =>
          linesOf(tile, "sole").some(([p, q]) => distance(point, p!, q!) < 1e-6),
        );
        expect(near).toBe(true);
      }
    }
    for (const tile of laid) {
      for (const run of linesOf(tile, "sole")) {
        for (const end of run) {
          expect(
            Math.min(...outline.map((a, i) => distance(end, a, outline[(i + 1) % outline.length]!))),
          ).toBeLessThan(1e-6);
        }
      }
    }
  });

  test("neighbours share 10 mm, and their crosses fall on each other", () => {
    const a = laid.find(({ name }) => name === "A1")!;
    const b = laid.find(({ name }) => name === "B1")!;
    const [wide] = [190];
    expect(b.originMm[0] - a.originMm[0]).toBeCloseTo(wide - OVERLAP, 9);
    const centres = (tile: typeof a) =>
      tile.sheet.marks.flatMap((mark) =>
        mark.mark === "arc" && mark.of === "register"
          ? [
              [
                mark.centre[0] - tile.onSheetMm[0] + tile.originMm[0],
                mark.centre[1] - tile.onSheetMm[1] + tile.originMm[1],
              ]
                .map((one) => one.toFixed(6))
                .join(" "),
            ]
          : [],
      );
    expect(centres(a)).toHaveLength(4);
    expect(centres(a).filter((at) => centres(b).includes(at))).toHaveLength(2);
  });

  test("PORT stands on tiles further left than STARBOARD, on the side where the post's notch is", () => {
    const at = (text: string) =>
      laid.flatMap((tile) => {
        const mark = lettered(tile.sheet, text);
        return mark ? [mark.at[0] - tile.onSheetMm[0] + tile.originMm[0]] : [];
      });
    const notchX = Math.min(
      ...partOf(plan.well!, "sole")
        .outline.filter(([, y]) => Math.abs(y) < 0.05)
        .map(([x]) => x),
    );
    expect(Math.max(...at("PORT"))).toBeLessThan(Math.min(...at("STARBOARD")));
    // The post stands in the port corner: the after edge begins 620 mm to port less the room round it.
    expect(notchX).toBeCloseTo(-620 + 25.4 / 16, 1);
    expect(Math.sign(notchX)).toBe(Math.sign(at("PORT")[0]!));
  });

  test("every tile names itself, its record and version, and carries its own 50 mm square", () => {
    const all = templatePages(plan, "letter", STAMP).tiles;
    expect(all.length).toBeGreaterThan(10);
    for (const { sheet, name } of all) {
      const text = textOf(sheet).join("\n");
      expect(text).toContain(`TILE ${name}`);
      expect(text).toContain("Bench stern");
      expect(text).toContain("Version 1.0.0, 2026-01-31");
      const square = sheet.marks.find((mark) => mark.mark === "outline" && mark.of === "check square");
      if (square?.mark !== "outline") throw new Error("no square");
      expect(square.points[1]![0] - square.points[0]![0]).toBe(50);
      expect(square.points[2]![1] - square.points[1]![1]).toBe(50);
    }
    expect(new Set(all.map(({ template: id, name }) => `${id} ${name}`)).size).toBe(all.length);
  });

  test("letters run on past Z", () => {
    expect([tileName(0, 0), tileName(25, 2), tileName(26, 0)]).toEqual(["A1", "Z3", "AA1"]);
  });

  test("a run is cut where it leaves the window, and missed where it does not enter it", () => {
    expect(clippedRun([-5, 5], [15, 5], [0, 0], [10, 10])).toEqual([
      [0, 5],
      [10, 5],
    ]);
    expect(clippedRun([-5, -5], [-1, 20], [0, 0], [10, 10])).toBeUndefined();
    expect(clippedRun([2, 2], [3, 4], [0, 0], [10, 10])).toEqual([
      [2, 2],
      [3, 4],
    ]);
  });

  test("the notch has a template with PORT left of the cut, the starboard half its mirror", () => {
    const notch = templatesOf(plan).find(({ id }) => id === "notch")!;
    const x = (text: string) => lettered(notch, text).at[0];
    expect(x("PORT")).toBeLessThan(-plan.notch!.halfWidth.markMm);
    expect(x("STARBOARD")).toBeGreaterThan(plan.notch!.halfWidth.markMm);
  });
});

describe("the rule on the check page", () => {
  test.each([
    [100, true, 1],
    [100.5, true, 1],
    [99.5, true, 1],
    [100.6, false, 100 / 100.6],
    [97, false, 100 / 97],
    [94.2, false, 100 / 94.2],
  ])("%d mm", (shown, good, factor) => {
    const answer = rulerCorrection(shown);
    expect(answer.good).toBe(good);
    expect(answer.factor).toBeCloseTo(factor, 9);
  });
  test.each([3.937, 0, -100, 50, 130, Number.NaN, Number.POSITIVE_INFINITY])(
    "%d is no reading of the bar",
    (shown) => {
      expect(rulerCorrection(shown)).toMatchObject({ good: false });
      expect(rulerCorrection(shown).factor).toBeUndefined();
    },
  );
});

describe("DXF", () => {
  const plan = PLAN();
  const read = new DxfParser().parseSync(toDxf(fullSizeDrawing(plan)))!;
  type Poly = { type: string; layer: string; shape: boolean; vertices: { x: number; y: number }[] };
  const closed = (read.entities as unknown as Poly[]).filter(
    ({ type, shape }) => type === "LWPOLYLINE" && shape,
  );
  const sides = (points: readonly (readonly [number, number])[]) =>
    points.map((a, i) =>
      Math.hypot(points[(i + 1) % points.length]![0] - a[0], points[(i + 1) % points.length]![1] - a[1]),
    );

  test("units are millimetres", () => expect(read.header.$INSUNITS).toBe(4));

  test.each(["sole", "front-beam", "aft-cleat", "side-cleat-port-1", "front-cleat"])(
    "%s reads back with the same sides, in the same turn",
    (id) => {
      const part = plan.well!.parts.find((one) => one.id.startsWith(id.replace(/-1$/, "")))!;
      const wanted = sides(part.outline);
      const found = closed.find(({ layer, vertices }) => {
        const own = sides(vertices.map(({ x, y }) => [x, y] as const));
        return (
          layer === "VISIBLE" &&
          own.length === wanted.length &&
          own.every((side, i) => Math.abs(side - wanted[i]!) < 1e-4)
        );
      });
      expect(found).toBeDefined();
      // Anticlockwise, as planned: a mirrored outline would turn the other way.
      const area = found!.vertices.reduce(
        (sum, { x, y }, i, all) =>
          sum + (x * all[(i + 1) % all.length]!.y - all[(i + 1) % all.length]!.x * y) / 2,
        0,
      );
      expect(area).toBeGreaterThan(0);
    },
  );

  test("backs lie on the layer of hidden lines, the centreline on its own", () => {
    const layers = new Set((read.entities as unknown as Poly[]).map(({ layer }) => layer));
    expect([...layers].sort()).toEqual(["CENTRE", "DIMENSION", "EXTREME", "HIDDEN", "LETTERING", "VISIBLE"]);
  });

  test("words cannot start a group of their own", () => {
    const sly = "sole\n0\nSECTION\r\n%%c ^J";
    expect(dxfText(sly)).not.toMatch(/[\r\n]/);
    expect(dxfText(sly)).not.toContain("%%");
    const sheet = planDrawings(plan, "a4", { ...STAMP, owner: sly })[0]!;
    expect(() => new DxfParser().parseSync(toDxf(sheet))).not.toThrow();
    expect(
      toDxf(sheet)
        .split("\n")
        .filter((row) => row.trim() === "SECTION"),
    ).toHaveLength(
      toDxf(planDrawings(plan, "a4", STAMP)[0]!)
        .split("\n")
        .filter((row) => row.trim() === "SECTION").length,
    );
  });
});

describe("SVG", () => {
  test("stands alone: true millimetres, plain colours, text escaped", () => {
    const [sheet] = planDrawings(PLAN(), "a4", { ...STAMP, owner: "<script>alert(1)</script>" });
    const svg = sheetSvg(sheet!);
    expect(svg).toContain(`width="210mm" height="297mm" viewBox="0 0 210 297"`);
    expect(svg).not.toContain("var(");
    expect(svg).not.toContain("<script>");
  });
});

/** Distance of a point from a run. */
function distance(p: Flat, a: Flat, b: Flat): number {
  const [ux, uy] = [b[0] - a[0], b[1] - a[1]];
  const share = Math.max(0, Math.min(1, ((p[0] - a[0]) * ux + (p[1] - a[1]) * uy) / (ux * ux + uy * uy)));
  return Math.hypot(p[0] - a[0] - share * ux, p[1] - a[1] - share * uy);
}
