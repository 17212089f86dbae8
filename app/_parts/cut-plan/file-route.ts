import { readQuery } from "#app/_http/body.ts";
import { Refused } from "#app/_http/problem.ts";
import { noSuch } from "#app/_http/records/paths.ts";
import { type CutAsked, cutAskedFrom } from "#app/_parts/cut-plan/asked.ts";
import { type FileQuery, fileQuerySchema } from "#app/_parts/cut-plan/file-query.ts";
import { pdfOf, sheetsOf, stampOf } from "#app/_parts/cut-plan/paper.ts";
import { type Planned, planned } from "#app/_parts/cut-plan/planned.ts";
import { rulerFrom } from "#app/_parts/cut-plan/ruler.ts";
import { toDxf } from "#lib/draw/paper/dxf.ts";
import { fullSizeDrawing, notchTemplate, partTemplate } from "#lib/draw/paper/plan-pages.ts";
import { sheetSvg } from "#lib/draw/paper/svg.ts";
import { isCutName } from "#lib/entry/cut-text.ts";
import type { CutPlan } from "#lib/fit/cut-plan/plan.ts";

/** A plan that can be put on paper. */
type Whole = Planned & { readonly plan: CutPlan };

/** The files of a cut plan, by the last word of their address. */
export const CUT_FILES = { pdf, svg, dxf } as const;

/** `GET` one file of a stern's cut plan. */
export async function cutFile(request: Request, stern: string, kind: string): Promise<Response> {
  const make = Object.hasOwn(CUT_FILES, kind) ? CUT_FILES[kind as keyof typeof CUT_FILES] : undefined;
  if (!make) throw new Refused(404, "A cut plan's files are pdf, svg and dxf.");
  const { asked, query } = apart(request);
  const found = await planned(stern, asked, { bare: true });
  if (!found) throw noSuch("stern");
  return make(whole(found), query);
}

/** The query's two parts: what is asked of the plan, and of the file. */
function apart(request: Request): { readonly asked: CutAsked; readonly query: FileQuery } {
  const given = new URL(request.url).searchParams;
  const ofPlan = (name: string) => name === "motors" || name === "units" || isCutName(name);
  const twice = [...new Set(given.keys())].find((name) => ofPlan(name) && given.getAll(name).length > 1);
  if (twice !== undefined) throw new Refused(400, `Give ${twice} once.`);
  const units = given.get("units") ?? "mm";
  if (units !== "mm" && units !== "in") throw new Refused(400, "Give mm or in as the units.");
  const rest = new URL(request.url);
  for (const name of [...given.keys()].filter(ofPlan)) rest.searchParams.delete(name);
  return {
    asked: cutAskedFrom(Object.fromEntries([...given].filter(([name]) => ofPlan(name)))),
    query: readQuery(new Request(rest), fileQuerySchema),
  };
}

/** The plan, or the refusal that says why there is none. */
function whole(found: Planned): Whole {
  const { plan, reading, unknown, impossible, motors } = found;
  if (unknown.length > 0) throw new Refused(404, "There is no motor of that id.");
  if (!reading.ok) {
    const errors = [
      ...reading.errors.map(({ field, says }) => ({
        pointer: `/${field}`,
        detail: says,
        code: "not-allowed",
      })),
      ...reading.asks.map(({ field, readings }) => ({
        pointer: `/${field}`,
        detail: `This can be read as ${readings.map(({ text }) => text).join(" or ")}: say which.`,
        code: "not-allowed",
      })),
    ];
    throw new Refused(400, errors[0]?.detail ?? "A choice is not understood.", { errors });
  }
  if (motors.length === 0) throw new Refused(400, "Say for which motors: motors=ID or motors=ID,ID.");
  if (impossible !== undefined) throw new Refused(422, impossible);
  if (!plan?.notch) {
    const missing = plan?.missing ?? [];
    const detail = `Nothing can be laid out yet: ${missing.length > 0 ? `not known: ${missing.join(", ")}` : (plan?.warnings[0]?.says ?? "no seat suits")}.`;
    throw new Refused(422, detail, { more: { missing } });
  }
  return { ...found, plan };
}

/** How much larger the templates are drawn for what the rule showed. */
function factorOf({ shown }: FileQuery): number {
  if (shown === undefined) return 1;
  const { factor, says } = rulerFrom(shown);
  if (factor === undefined) {
    throw new Refused(422, says, { errors: [{ pointer: "/shown", detail: says, code: "not-allowed" }] });
  }
  return factor;
}

async function pdf(found: Whole, query: FileQuery): Promise<Response> {
  const stamp = stampOf(found, found.plan, query);
  const sheets = sheetsOf(found.plan, query.of, query.paper, stamp, factorOf(query));
  const name = query.of === "all" ? "" : `-${query.of}`;
  return file(await pdfOf(sheets, stamp), "application/pdf", `cut-plan-${found.plan.stern}${name}.pdf`);
}

function svg(found: Whole, query: FileQuery): Response {
  const stamp = stampOf(found, found.plan, query);
  const sheets = sheetsOf(found.plan, query.of, query.paper, stamp, factorOf(query));
  const sheet = sheets[query.sheet - 1];
  if (!sheet) throw new Refused(404, `There are ${sheets.length} sheets.`);
  return file(sheetSvg(sheet), "image/svg+xml", `cut-plan-${found.plan.stern}-${query.sheet}.svg`);
}

function dxf({ plan }: Whole, { part }: FileQuery): Response {
  const drawing = part === "all" ? fullSizeDrawing(plan) : { marks: marksOf(plan, part), scale: 1 };
  return file(toDxf(drawing), "image/vnd.dxf", `cut-plan-${plan.stern}-${part}.dxf`);
}

function marksOf({ notch, well }: CutPlan, part: string) {
  if (part === "notch" && notch) return notchTemplate(notch).marks;
  const found = well?.parts.find(({ id }) => id === part);
  if (found) return partTemplate(found).marks;
  const there = ["all", "notch", ...(well?.parts.map(({ id }) => id) ?? [])];
  throw new Refused(404, `There is no such part. There are ${there.join(", ")}.`);
}

const file = (content: Uint8Array | string, type: string, name: string): Response =>
  new Response(content as BodyInit, {
    headers: { "Content-Type": type, "Content-Disposition": `attachment; filename="${name}"` },
  });
