/**
 * Parts stood up from their sawn outlines, with manifold-3d: they close on the hull and on each
 * other with gaps under 0.1 mm and do not run into each other. The hull is the stern cut to the plan, made
 * from its own numbers; the parts come from the plan's JSON alone.
 */
import Module from "manifold-3d";
import { afterAll, describe, expect, test } from "vitest";
import type { CutChoices } from "#lib/fit/cut-plan/choices.ts";
import type { CutPart } from "#lib/fit/cut-plan/part.ts";
import type { CutPlan } from "#lib/fit/cut-plan/plan.ts";
import { cutStern } from "#lib/fit/cut-plan/sawn.ts";
import { outlinesOf } from "#lib/rig/obstacles.ts";
import { sternValues } from "#lib/rig/record.ts";
import { planned, uncut, WELL } from "#tests/lib/fit/cut-plan/boat.ts";

const library = await Module();
library.setup();
type Solid = InstanceType<typeof library.Manifold>;
const made: Solid[] = [];
const keep = (solid: Solid): Solid => {
  made.push(solid);
  return solid;
};
afterAll(() => {
  for (const solid of made) solid.delete();
});

/** Closer than this is closed, mm. */
const CLOSED = 0.1;

type Point = [x: number, y: number, z: number];

/** A corner of a part in space: so far right, so far up, and under the face by the thickness where it is on the back. */
function corner({ place, stock }: CutPart, [right, up]: readonly [number, number], back: boolean): Point {
  const { originMm: o, right: r, up: u } = place;
  const face = [r[1] * u[2] - r[2] * u[1], r[2] * u[0] - r[0] * u[2], r[0] * u[1] - r[1] * u[0]];
  const under = back ? stock.thicknessMm : 0;
  return [0, 1, 2].map((k) => o[k]! + r[k]! * right + u[k]! * up - face[k]! * under) as Point;
}

/** A part as a body: both outlines triangulated, joined by their sides. */
function body(part: CutPart): Solid {
  const count = part.outline.length;
  expect(part.back.length, `${part.id}: both faces have the same corners`).toBe(count);
  const points = [
    ...part.outline.map((spot) => corner(part, spot, false)),
    ...part.back.map((spot) => corner(part, spot, true)),
  ];
  const flat = library.triangulate([part.outline.map(([x, y]): [number, number] => [x, y])]);
  const sides = part.outline.flatMap((_, i) => {
    const next = (i + 1) % count;
    return [
      [i, count + i, next],
      [next, count + i, count + next],
    ];
  });
  const triangles = [...flat, ...flat.map(([a, b, c]) => [c + count, b + count, a + count]), ...sides];
  const mesh = new library.Mesh({
    numProp: 3,
    vertProperties: Float32Array.from(points.flat()),
    triVerts: Uint32Array.from(triangles.flat()),
  });
  mesh.merge();
  return keep(new library.Manifold(mesh));
}

/** The hull's sides and the transom, as bodies cut off 2 m away. */
function hull(plan: CutPlan, numbers: Partial<Record<string, number>>): Record<string, Solid> {
  const stern = sternValues(cutStern(plan, uncut(numbers)));
  const near = ([f, y, v]: readonly [number, number, number]): [number, number, number] => [f, y, v];
  const room = keep(library.Manifold.cube([6000, 6000, 6000], true));
  const solids = Object.fromEntries(
    outlinesOf(stern).map(({ id, corners }) => [
      id,
      keep(keep(library.Manifold.hull(corners.map(near))).intersect(room)),
    ]),
  );
  const t = stern.transomThicknessMm!;
  solids.transom = keep(keep(library.Manifold.cube([t, 4000, 2000])).translate([0, -2000, -2000]));
  return solids;
}

/** How many of a part's corners touch a body. */
function touching(part: CutPart, other: Solid): number {
  const corners = [
    ...part.outline.map((spot) => corner(part, spot, false)),
    ...part.back.map((spot) => corner(part, spot, true)),
  ];
  return corners.filter((at) => {
    const probe = library.Manifold.cube([0.01, 0.01, 0.01], true).translate(at);
    const gap = probe.minGap(other, 1);
    probe.delete();
    return gap < CLOSED;
  }).length;
}

/** How far along the ends of one face a part touches a body, mm. */
function stretch(part: CutPart, other: Solid, back: boolean): number {
  const outline = back ? part.back : part.outline;
  const touched = outline.flatMap((a, i) => {
    const b = outline[(i + 1) % outline.length]!;
    return Array.from({ length: 40 }, (_, k): [number, number] => {
      const share = k / 40;
      return [a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])];
    }).filter((spot) => {
      const at = corner(part, spot, back);
      const probe = library.Manifold.cube([0.01, 0.01, 0.01], true).translate(at);
      const gap = probe.minGap(other, 1);
      probe.delete();
      return gap < CLOSED;
    });
  });
  const ups = touched.map(([, up]) => up);
  return touched.length === 0 ? 0 : Math.max(...ups) - Math.min(...ups);
}

const CASES: Record<string, { numbers: Partial<Record<string, number>>; choices: CutChoices }> = {
  "square and plain": { numbers: {}, choices: {} },
  "flared, tapered, raked, sole square to the transom": {
    numbers: { rakeDeg: 14 },
    choices: { sideFlareDeg: 8, wellWidthFrontMm: 1240 },
  },
  "flared, tapered, raked, sole level": {
    numbers: { rakeDeg: 14 },
    choices: { soleLies: "level", sideFlareDeg: 8, wellWidthFrontMm: 1240, wellFrontHeightMm: 150 },
  },
  "sides leaning in and opening forward": {
    numbers: { rakeDeg: 6 },
    choices: { soleLies: "level", sideFlareDeg: -4, wellWidthFrontMm: 1500, wellFrontHeightMm: 80 },
  },
};

describe.each(Object.entries(CASES))("%s", (_, { numbers, choices }) => {
  const plan = planned(numbers, { ...WELL, ...choices });
  const parts = Object.fromEntries(plan.well!.parts.map((part) => [part.id, part]));
  const bodies = Object.fromEntries(plan.well!.parts.map((part) => [part.id, body(part)]));
  const all = { ...hull(plan, numbers), ...bodies };

  /** Corners of the first that must lie on the second: all four of the edge or face they share. */
  test.each([
    ["sole", "transom"],
    ["sole", "side-port"],
    ["sole", "side-starboard"],
    ["sole", "front-beam"],
    ["aft-cleat", "transom"],
    ["aft-cleat", "sole"],
    ["aft-cleat", "side-port"],
    ["aft-cleat", "side-starboard"],
    ["front-beam", "side-port"],
    ["front-beam", "side-starboard"],
    ["front-cleat", "front-beam"],
    ["front-cleat", "sole"],
    ["front-cleat", "side-port"],
    ["front-cleat", "side-starboard"],
    ["side-cleat-port", "side-port"],
    ["side-cleat-port", "sole"],
    ["side-cleat-starboard", "side-starboard"],
    ["side-cleat-starboard", "sole"],
  ])("%s closes on %s: four corners within 0.1 mm", (part, other) => {
    expect(touching(parts[part]!, all[other]!)).toBeGreaterThanOrEqual(4);
  });

  /** An end may hang a little below the cleat it butts on; what lies against it closes on both faces. */
  test.each([
    ["side-cleat-port", "aft-cleat"],
    ["side-cleat-port", "front-cleat"],
    ["side-cleat-starboard", "aft-cleat"],
    ["side-cleat-starboard", "front-cleat"],
  ])("%s butts on %s: both faces close over 25 mm of its depth", (part, other) => {
    expect(stretch(parts[part]!, all[other]!, false)).toBeGreaterThan(25);
    expect(stretch(parts[part]!, all[other]!, true)).toBeGreaterThan(25);
  });

  test("no part runs into another or into the hull: less than 0.01 mm over the faces they share", () => {
    const hullIds = ["transom", "side-port", "side-starboard"];
    const ids = Object.keys(bodies);
    const clashes = ids.flatMap((id, i) =>
      [...hullIds, ...ids.slice(i + 1)].flatMap((other) => {
        const common = bodies[id]!.intersect(all[other]!);
        const volume = common.volume();
        common.delete();
        // The largest shared face is 1500 x 330 mm.
        return volume > 0.01 * 1500 * 330 ? [`${id} and ${other}: ${volume.toFixed(0)} mm3`] : [];
      }),
    );
    expect(clashes).toEqual([]);
  });

  test("the bodies are as heavy as their outlines say, none is empty", () => {
    for (const part of plan.well!.parts) expect(bodies[part.id]!.volume()).toBeGreaterThan(10_000);
  });
});

describe("the check itself", () => {
  test("a sole bevelled to the wrong side closes on its side with two corners only", () => {
    const numbers = { rakeDeg: 14 };
    const plan = planned(numbers, { ...WELL, sideFlareDeg: 8, wellWidthFrontMm: 1240 });
    const sole = plan.well!.parts.find(({ id }) => id === "sole")!;
    const wrong = { ...sole, outline: sole.back, back: sole.outline };
    expect(touching(wrong, hull(plan, numbers)["side-port"]!)).toBeLessThan(4);
  });

  test("a mirrored side cleat does not close on its side", () => {
    const plan = planned(
      { rakeDeg: 14 },
      { ...WELL, soleLies: "level", sideFlareDeg: 8, wellWidthFrontMm: 1240 },
    );
    const cleat = plan.well!.parts.find(({ id }) => id === "side-cleat-port")!;
    const wrong = { ...cleat, outline: cleat.back, back: cleat.outline };
    const aft = body(plan.well!.parts.find(({ id }) => id === "aft-cleat")!);
    expect(Math.min(stretch(wrong, aft, false), stretch(wrong, aft, true))).toBeLessThan(5);
    expect(Math.min(stretch(cleat, aft, false), stretch(cleat, aft, true))).toBeGreaterThan(25);
  });
});
