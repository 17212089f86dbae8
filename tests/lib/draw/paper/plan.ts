/** A plan to print: a flared, tapered well on a raked stern with a post in its port corner (invented), and its faces. */
import { readFileSync } from "node:fs";
import type { Stamp } from "#lib/draw/paper/paper.ts";
import type { Faces } from "#lib/draw/paper/pdf.ts";
import type { CutChoices } from "#lib/fit/cut-plan/choices.ts";
import { planned } from "#tests/lib/fit/cut-plan/boat.ts";

export const PLAN = (choices: CutChoices = {}) =>
  planned(
    { rakeDeg: 14, transomWidthMm: 1500 },
    {
      sideFlareDeg: 8,
      wellWidthFrontMm: 1240,
      wellFrontHeightMm: 90,
      posts: [{ label: "stern post", fromMm: [45, 620, -700], toMm: [105, 760, 300] }],
      ...choices,
    },
  );

export const STAMP: Stamp = {
  record: "Bench stern",
  identification: "bench / fits-with-room-motor",
  owner: "Lake Fennimar boat club",
  creator: "A. N. Onymous",
  approval: "",
  issued: "2026-01-31",
  version: "1.0.0",
};

const face = (name: string): Uint8Array => readFileSync(`lib/draw/paper/lettering/${name}.ttf`);
export const FACES: Faces = { regular: face("condensed-regular"), bold: face("condensed-semibold") };
export const INFO = { title: "Cut plan", author: STAMP.owner, issued: STAMP.issued };
