import { describe, expect, test } from "vitest";
import type { Drawing } from "#lib/draw/drawing.ts";
import { type FieldKey, fieldPicture } from "#lib/draw/field-picture.ts";
import { toSvg } from "#lib/draw/svg.ts";
import { drawn, drawnInPose, INVENTED } from "#tests/lib/draw/invented-pairs.ts";

/** Points of a path by what it draws, on paper in mm: the first with that name. */
function pathOf(svg: string, of: string): [number, number][] {
  const data = new RegExp(`data-of="${of}" d="M([^"Z]*)`).exec(svg)?.[1];
  if (!data) throw new Error(`no ${of} on the drawing`);
  return data.split("L").map((pair) => pair.split(" ").map(Number) as [number, number]);
}
const distance = ([a, b]: readonly [number, number][]): number => Math.hypot(a![0] - b![0], a![1] - b![1]);
const wide = (points: readonly [number, number][]): number =>
  Math.max(...points.map(([x]) => x)) - Math.min(...points.map(([x]) => x));
const high = (points: readonly [number, number][]): number =>
  Math.max(...points.map(([, y]) => y)) - Math.min(...points.map(([, y]) => y));

type Name = keyof typeof INVENTED;
/** Each golden drawing, and one length on it worked by hand: paper mm times the scale. Numbers of the file are cut to 0.001 mm of paper, so 0.02 mm of truth at 1:10. */
const SHEETS: readonly [Name, "profile" | "plan" | "elevation", string, (svg: string) => number, number][] = [
  // The invented transom is 42 mm thick.
  [
    "fouls-in-a-small-well",
    "profile",
    "transom thickness",
    (svg) => distance(pathOf(svg, "transom").slice(2, 4)),
    42,
  ],
  // The invented well is 820 mm wide at the transom: its after edge, first and last corner.
  [
    "fouls-in-a-small-well",
    "plan",
    "well width aft",
    (svg) => high([pathOf(svg, "sole")[0]!, pathOf(svg, "sole")[3]!]),
    820,
  ],
  ["fouls-in-a-small-well", "elevation", "transom width", (svg) => wide(pathOf(svg, "transom")), 1400],
  // 640 mm along the sole, which is level: 102° from a face raked 12°.
  [
    "clear-in-a-roomy-well",
    "profile",
    "well fore and aft",
    (svg) => wide(pathOf(svg, "sole").slice(0, 2)),
    640,
  ],
  [
    "clear-in-a-roomy-well",
    "plan",
    "well width forward",
    (svg) => high(pathOf(svg, "sole").slice(1, 3)),
    920,
  ],
  // The cowl is 300 mm wide.
  ["clear-in-a-roomy-well", "elevation", "cowl width", (svg) => wide(pathOf(svg, "envelope cowl")), 300],
  // Nothing cut: the section runs from the bottom, 60 mm over the datum, to the top at 570 mm.
  [
    "nothing-cut-in-inches",
    "profile",
    "uncut transom",
    (svg) => high([pathOf(svg, "transom")[0]!, pathOf(svg, "transom")[3]!]),
    510,
  ],
  ["nothing-cut-in-inches", "plan", "bracket breadth", (svg) => high(pathOf(svg, "tilt tube")), 220],
  ["nothing-cut-in-inches", "elevation", "transom width", (svg) => wide(pathOf(svg, "transom")), 1400],
  // The seat is 425 mm plumb over the datum, where the bottom is drawn for want of a keel depth.
  [
    "no-well-numbers-missing",
    "profile",
    "seat height",
    (svg) => high([pathOf(svg, "transom")[0]!, pathOf(svg, "transom")[3]!]),
    425,
  ],
  [
    "stern-alone",
    "profile",
    "front bulkhead and sole",
    (svg) => high(pathOf(svg, "bulkhead").slice(1, 3)),
    284,
  ],
];

describe("golden drawings", () => {
  test.each(SHEETS)("%s, %s: %s is true", async (name, view, _what, measure, trueMm) => {
    const [motor, stern, lengths] = INVENTED[name]!;
    const drawing: Drawing = drawnInPose(motor, stern, lengths, { faceAngleDeg: 38, steeringDeg: 15 })[view];
    const svg = toSvg(drawing, { id: view });
    expect(Math.abs(measure(svg) * drawing.scale - trueMm)).toBeLessThan(0.002 * drawing.scale);
    await expect(svg).toMatchFileSnapshot(`../../golden/${name}-${view}.svg`);
  });

  test("picture of the shaft length: 420 mm between its ends", async () => {
    const picture = fieldPicture("shaftLengthMm" satisfies FieldKey);
    const svg = toSvg(picture, { decoration: true });
    expect(Math.abs(high(pathOf(svg, "measurement")) * picture.scale - 420)).toBeLessThan(
      0.002 * picture.scale,
    );
    await expect(svg).toMatchFileSnapshot("../../golden/picture-of-the-shaft-length.svg");
  });
});

test("words on a drawing are text, never markup", () => {
  const [motor, stern] = INVENTED["fouls-in-a-small-well"]!;
  const named = {
    ...stern,
    obstacles: [{ label: `<script>"&'`, fromMm: [60, -40, 0], toMm: [90, 40, 60] }],
  } as const;
  const svg = Object.values(drawn(motor, named).drawings)
    .map((drawing: Drawing) => toSvg(drawing))
    .join("");
  expect(svg).not.toContain("<script");
  expect(svg).toContain("&#60;script&#62;&#34;&#38;&#39;");
});
