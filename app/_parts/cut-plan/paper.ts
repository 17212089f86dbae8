import "server-only";
import { createHash } from "node:crypto";
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import type { FileOf } from "#app/_parts/cut-plan/files.ts";
import type { Planned } from "#app/_parts/cut-plan/planned.ts";
import type { Drawing } from "#lib/draw/drawing.ts";
import type { PaperSize, Stamp } from "#lib/draw/paper/paper.ts";
import { type Faces, toPdf } from "#lib/draw/paper/pdf.ts";
import { allPages, planDrawings, templatePages } from "#lib/draw/paper/plan-pages.ts";
import type { CutPlan } from "#lib/fit/cut-plan/plan.ts";

/** Words a person may have put into the title block. */
export interface Named {
  readonly owner?: string | undefined;
  readonly approval?: string | undefined;
}

/** A short code for this very plan: another figure anywhere, another code. */
export const codeOf = (plan: CutPlan): string =>
  createHash("sha1").update(JSON.stringify(plan)).digest("hex").slice(0, 6).toUpperCase();

/** The title block's particulars. Fields nobody has filled stay empty, to be written in by hand. */
export function stampOf({ stern, motors }: Planned, plan: CutPlan, { owner, approval }: Named = {}): Stamp {
  return {
    record: `${stern.record.label}, for ${motors.map(({ record }) => record.label).join(", ")}`,
    identification: `${plan.stern} / ${codeOf(plan)}`,
    owner: owner ?? "",
    creator: "Sternwright",
    approval: approval ?? "",
    issued: new Date().toISOString().slice(0, 10),
    version: `${stern.version} of the stern, plan ${plan.version}`,
  };
}

/** The sheets of a file. `factor` makes good what a printer shrinks. */
export function sheetsOf(
  plan: CutPlan,
  of: FileOf,
  paper: PaperSize,
  stamp: Stamp,
  factor: number,
): readonly Drawing[] {
  if (of === "all") return allPages(plan, paper, stamp, factor);
  if (of === "drawings") return planDrawings(plan, paper, stamp);
  const { check, tiles } = templatePages(plan, paper, stamp, factor);
  return of === "check" ? [check] : [check, ...tiles.map(({ sheet }) => sheet)];
}

let faces: Promise<Faces> | undefined;

/** The lettering for paper, read once. The server runs in the project's folder. */
function lettering(): Promise<Faces> {
  const face = (name: string) =>
    readFile(join(process.cwd(), "lib", "draw", "paper", "lettering", `condensed-${name}.ttf`));
  faces ??= Promise.all([face("regular"), face("semibold")]).then(([regular, bold]) => ({ regular, bold }));
  faces.catch(() => {
    faces = undefined;
  });
  return faces;
}

/** The sheets as one PDF. */
export async function pdfOf(sheets: readonly Drawing[], stamp: Stamp): Promise<Uint8Array> {
  const title = `Cut plan: ${stamp.record}`;
  return toPdf(sheets, await lettering(), {
    title,
    author: stamp.owner || stamp.creator,
    issued: stamp.issued,
  });
}
