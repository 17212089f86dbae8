/** The rooms and what each may see: down the trunk, never up; branches meet only in app. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";

const TRUNK = ["quantity", "geometry", "standards", "rig", "checks", "fit"];
/** Rooms a room may import besides itself, and the packages it may use. */
const RULES: Record<string, { rooms: string[]; packages: string[] }> = {
  quantity: { rooms: [], packages: [] },
  geometry: { rooms: ["quantity"], packages: [] },
  standards: { rooms: ["quantity"], packages: [] },
  rig: { rooms: ["quantity", "geometry", "standards"], packages: [] },
  checks: { rooms: ["quantity", "geometry", "standards", "rig"], packages: [] },
  fit: { rooms: TRUNK, packages: [] },
  entry: { rooms: ["quantity", "geometry", "standards", "rig"], packages: ["zod", "numeric-quantity"] },
  draw: { rooms: [...TRUNK, "entry"], packages: ["pdfkit", "@tarikjabiri/dxf"] },
  search: { rooms: [...TRUNK, "entry"], packages: ["fuse.js"] },
  share: { rooms: [...TRUNK, "entry"], packages: ["zod", "csv-parse", "csv-stringify"] },
  db: {
    rooms: [...TRUNK, "entry", "share", "club"],
    packages: ["drizzle-orm", "@libsql/client", "server-only", "node:"],
  },
};

const sources = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => /\.tsx?$/.test(name))
    .map((name) => join(folder, name));

const IMPORT =
  /^(?:import|export)\b[^;"'=(]*?\bfrom\s+"([^"]+)"|^import\s+"([^"]+)"|\bimport\(\s*"([^"]+)"\s*\)/gm;

const importsOf = (path: string): string[] =>
  [...readFileSync(path, "utf8").matchAll(IMPORT)].map((match) => (match[1] ?? match[2] ?? match[3])!);

const rooms = readdirSync("lib");

describe("the rooms of lib", () => {
  test("every room has a rule, and the walk finds files", () => {
    expect(rooms.filter((room) => !RULES[room])).toEqual([]);
    expect(rooms.flatMap((room) => sources(join("lib", room))).length).toBeGreaterThan(40);
  });

  for (const room of rooms) {
    test(`${room} sees only what it may`, () => {
      const rule = RULES[room]!;
      const wrong = sources(join("lib", room)).flatMap((path) =>
        importsOf(path)
          .filter((name) => {
            const [, other] = /^#lib\/([^/]+)\//.exec(name) ?? [];
            if (other) return other !== room && !rule.rooms.includes(other);
            return !rule.packages.some(
              (allowed) =>
                name === allowed ||
                name.startsWith(`${allowed}/`) ||
                (allowed === "node:" && name.startsWith(allowed)),
            );
          })
          .map((name) => `${path} imports ${name}`),
      );
      expect(wrong).toEqual([]);
    });
  }

  test("the trunk has no clock, no chance, no environment and no file", () => {
    const forbidden = /\b(Date\.now|new Date|Math\.random|process\.|performance\.|crypto\.)/;
    const wrong = TRUNK.flatMap((room) => sources(join("lib", room))).filter((path) =>
      forbidden.test(readFileSync(path, "utf8")),
    );
    expect(wrong).toEqual([]);
  });

  test("imports are written with their ending and never climb out of a room", () => {
    const wrong = [...sources("lib"), ...sources("app")].flatMap((path) =>
      importsOf(path)
        .filter(
          (name) =>
            (name.startsWith("#") && !/\.(tsx?|json|css)$/.test(name)) ||
            (path.startsWith("lib") && name.startsWith("../")),
        )
        .map((name) => `${path} imports ${name}`),
    );
    expect(wrong).toEqual([]);
  });
});
