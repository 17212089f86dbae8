/** The cut plan's doors: the plan as JSON, and its files, on a real store with an invented boat. */
import DxfParser from "dxf-parser";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import * as file from "#app/api/cut-plan/[stern]/[file]/route.ts";
import * as cut from "#app/api/cut-plan/route.ts";
import * as openapi from "#app/api/openapi.json/route.ts";
import motors from "#data/demo/motors.json" with { type: "json" };
import sterns from "#data/demo/sterns.json" with { type: "json" };
import { createRecord } from "#lib/db/records.ts";
import { motorSchema } from "#lib/entry/motor.ts";
import { sternSchema } from "#lib/entry/stern.ts";
import { ask, problemOf } from "#tests/lib/api/asking.ts";
import { temporaryStore } from "#tests/lib/db/temporary-store.ts";

const STERN = "vee-new-build-well-planned";
const MOTOR = "15-hp-long-tiller-four-stroke";
const stern = sterns.find(({ id }) => id === STERN)!;
const motor = motors.find(({ id }) => id === MOTOR)!;

let there: Awaited<ReturnType<typeof temporaryStore>>;
beforeEach(async () => {
  there = await temporaryStore();
  await createRecord("stern", sternSchema.parse(stern));
  await createRecord("motor", motorSchema.parse(motor));
});
afterEach(() => there.remove());

const post = (body: unknown) =>
  ask(cut, "/api/cut-plan", { method: "POST", body, headers: { Origin: null } });
const get = (kind: string, query: string, of = STERN) =>
  ask(file, `/api/cut-plan/${of}/${kind}?${query}`, { params: { stern: of, file: kind } });

describe("the plan as JSON", () => {
  test("is the same for records kept and records sent, one motor or a list of one", async () => {
    const asked = [
      { motorId: MOTOR, sternId: STERN },
      { motorIds: [MOTOR, MOTOR], sternId: STERN },
      { motor, stern },
      { motorId: MOTOR, stern },
    ];
    const plans = await Promise.all(
      asked.map(async (body) => {
        const answer = await post(body);
        expect([answer.status, answer.headers.get("content-type")]).toEqual([200, "application/json"]);
        return answer.json();
      }),
    );
    const [first, ...others] = plans as { notch: { action: string }; well: object; missing: string[] }[];
    expect([first!.notch.action, first!.missing, "well" in first!]).toEqual(["cut", [], true]);
    for (const other of others) expect(other).toEqual(first);
  });

  test("heeds the choices: a sole square to a transom raked 13 degrees stands at 90, a level one at 103", async () => {
    const angle = async (soleLies: string) => {
      const plan = await (await post({ motorId: MOTOR, sternId: STERN, choices: { soleLies } })).json();
      return (plan as { well: { shape: { soleAngleDeg: number } } }).well.shape.soleAngleDeg;
    };
    expect([await angle("square"), await angle("level")]).toEqual([90, 103]);
  });

  test("names the place of every choice that cannot be", async () => {
    const choices = { soleThicknessMm: 900, cornerRadiusMm: "1 in", saw: "blunt" };
    const { errors } = await problemOf(await post({ motorId: MOTOR, sternId: STERN, choices }), 422);
    expect(errors.map(({ pointer }) => pointer).sort()).toEqual([
      "/choices/cornerRadiusMm",
      "/choices/saw",
      "/choices/soleThicknessMm",
    ]);
    expect(errors.find(({ pointer }) => pointer.endsWith("soleThicknessMm"))!.detail).toContain("60 mm");
  });

  test("refuses a post that stands free in the sole, in plain words", async () => {
    const posts = [{ label: "mast step", fromMm: [300, -40, -500], toMm: [380, 40, 200] }];
    const { detail, errors } = await problemOf(
      await post({ motorId: MOTOR, sternId: STERN, choices: { posts } }),
      422,
    );
    expect(detail).toBe("What stands in the way does not reach the part's edge.");
    expect(errors[0]!.pointer).toBe("/choices");
  });

  test("knows no motor and no stern that is not kept", async () => {
    const noMotor = await problemOf(await post({ motorIds: [MOTOR, "none"], sternId: STERN }), 404);
    expect(noMotor.errors[0]!.pointer).toBe("/motorIds/1");
    const noStern = await problemOf(await post({ motorId: MOTOR, sternId: "none" }), 404);
    expect(noStern.errors[0]!.pointer).toBe("/sternId");
  });
});

describe("the files", () => {
  test("PDF, SVG and DXF come with their content types and plain names", async () => {
    const named = async (kind: string, query: string) => {
      const answer = await get(kind, `motors=${MOTOR}&${query}`);
      expect(answer.status).toBe(200);
      return [answer.headers.get("content-type"), answer.headers.get("content-disposition")];
    };
    expect(await named("pdf", "of=check")).toEqual([
      "application/pdf",
      `attachment; filename="cut-plan-${STERN}-check.pdf"`,
    ]);
    expect(await named("svg", "sheet=2")).toEqual([
      "image/svg+xml",
      `attachment; filename="cut-plan-${STERN}-2.svg"`,
    ]);
    expect(await named("dxf", "part=sole")).toEqual([
      "image/vnd.dxf",
      `attachment; filename="cut-plan-${STERN}-sole.dxf"`,
    ]);
  });

  test("paper is A4 or Letter as asked: 210 by 297 mm, 8 1/2 by 11 in, in points of 1/72 in", async () => {
    const box = async (paper: string) => {
      const bytes = await (await get("pdf", `motors=${MOTOR}&of=check&paper=${paper}`)).arrayBuffer();
      const text = Buffer.from(bytes).toString("latin1");
      expect(text.startsWith("%PDF-")).toBe(true);
      return /\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(text)!.slice(1).map(Number);
    };
    const [a4, letter] = [await box("a4"), await box("letter")];
    expect(a4[0]).toBeCloseTo((210 / 25.4) * 72, 1);
    expect(a4[1]).toBeCloseTo((297 / 25.4) * 72, 1);
    expect(letter[0]).toBeCloseTo(8.5 * 72, 1);
    expect(letter[1]).toBeCloseTo(11 * 72, 1);
  });

  test("a bare number in an address counts in its key's unit, and lengths are read as people write them", async () => {
    const sole = async (thick: string) => {
      const answer = await get(
        "dxf",
        `motors=${MOTOR}&part=sole&soleThicknessMm=${encodeURIComponent(thick)}`,
      );
      expect(answer.status).toBe(200);
      return answer.text();
    };
    const [half, metric, thin] = [await sole("1/2 in"), await sole("12.7"), await sole("6 mm")];
    expect(half).toBe(metric);
    expect(half).not.toBe(thin);
  });

  test("the sole's DXF read back by another parser is as wide as the plan says", async () => {
    const plan = (await (await post({ motorId: MOTOR, sternId: STERN })).json()) as {
      well: { parts: { id: string; overallMm: [number, number] }[] };
    };
    const [wide] = plan.well.parts.find(({ id }) => id === "sole")!.overallMm;
    const read = new DxfParser().parseSync(await (await get("dxf", `motors=${MOTOR}&part=sole`)).text())!;
    const xs = read.entities.flatMap((each) =>
      "vertices" in each ? (each.vertices as { x: number }[]).map(({ x }) => x) : [],
    );
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(wide, 1);
  });

  test("a rule that showed 98 mm gets a file drawn larger; one that showed 50 is refused", async () => {
    const side = async (shown: string) => {
      const answer = await get("svg", `motors=${MOTOR}&of=check&sheet=1${shown}`);
      const path = /data-of="check square" d="M([\d.]+) ([\d.]+)L([\d.]+) /.exec(await answer.text())!;
      return Number(path[3]) - Number(path[1]);
    };
    expect(await side("")).toBeCloseTo(50, 2);
    expect(await side("&shown=98")).toBeCloseTo((50 * 100) / 98, 2);
    const { errors } = await problemOf(await get("pdf", `motors=${MOTOR}&shown=50`), 422);
    expect(errors[0]!.pointer).toBe("/shown");
  });

  test("what is not understood is refused, with nothing of the inside", async () => {
    await problemOf(await get("pdf", `motors=${MOTOR}&paper=a3`), 400);
    await problemOf(await get("pdf", `motors=${MOTOR}&colour=red`), 400);
    await problemOf(await get("pdf", `motors=${MOTOR}&units=cubit`), 400);
    await problemOf(await get("pdf", `motors=${MOTOR}&wood=soft&wood=hard`), 400);
    await problemOf(await get("pdf", `motors=${MOTOR}&soleThicknessMm=thick`), 400);
    await problemOf(await get("pdf", `motors=${MOTOR}&owner=${"x".repeat(200)}`), 400);
    await problemOf(await get("pdf", ""), 400);
    await problemOf(await get("exe", `motors=${MOTOR}`), 404);
    await problemOf(await get("pdf", "motors=none"), 404);
    await problemOf(await get("pdf", `motors=${MOTOR}`, "none"), 404);
    await problemOf(await get("dxf", `motors=${MOTOR}&part=keel`), 404);
    await problemOf(await get("svg", `motors=${MOTOR}&sheet=999`), 404);
    await problemOf(await ask(file, "/api/cut-plan/x/pdf", { method: "DELETE", params: {} }), 405);
  });

  test("a stern too little known says which numbers are wanting", async () => {
    await createRecord("stern", sternSchema.parse({ id: "bare", label: "Bare" }));
    const { detail } = await problemOf(await get("pdf", `motors=${MOTOR}`, "bare"), 422);
    expect(detail).toContain("transomTopMm");
  });
});

test("the OpenAPI document holds both doors and the request", async () => {
  const { paths, components } = (await (await ask(openapi, "/api/openapi.json")).json()) as {
    paths: Record<string, object>;
    components: { schemas: Record<string, object> };
  };
  expect(Object.keys(paths)).toEqual(
    expect.arrayContaining(["/api/cut-plan", "/api/cut-plan/{stern}/{file}"]),
  );
  expect(components.schemas.CutRequest).toBeDefined();
});
