/** The API's doors to several takings of one number, on a real store. */
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import * as motor from "#app/api/motors/[id]/route.ts";
import * as takings from "#app/api/motors/[id]/takings/route.ts";
import * as sternTakings from "#app/api/sterns/[id]/takings/route.ts";
import { createRecord, getRecord, takingsOf } from "#lib/db/records.ts";
import { ask, problemOf } from "#tests/lib/api/asking.ts";
import { aMotor, aStern } from "#tests/lib/db/samples.ts";
import { temporaryStore } from "#tests/lib/db/temporary-store.ts";

let there: Awaited<ReturnType<typeof temporaryStore>>;
beforeEach(async () => {
  there = await temporaryStore();
  await createRecord("motor", aMotor("m"));
});
afterEach(() => there.remove());

/** As a record has it: to a thousandth. */
const ROOT_2 = Number(Math.SQRT2.toFixed(3));
const m = { params: { id: "m" } };
const take = (body: unknown, ifMatch: string | null = '"1"', id = "m") =>
  ask(takings, "/x", { method: "POST", body, headers: { "If-Match": ifMatch }, params: { id } });
const again = { key: "shaftLengthMm", value: 430, plusMinus: 2, how: "measured", raw: "43 cm" };

describe("a number taken again", () => {
  test("is answered with the record and its new version, and shown with what its takings come to", async () => {
    const answer = await take(again);
    expect([answer.status, answer.headers.get("etag")]).toEqual([201, '"2"']);
    // two equal takings of ± 2: 2 / root 2
    const number = { value: 430, plusMinus: ROOT_2, how: "measured" };
    expect(await answer.json()).toEqual(aMotor("m", { shaftLengthMm: number as never }));
    const read = await ask(takings, "/x", m);
    expect([read.status, read.headers.get("etag")]).toEqual([200, '"2"']);
    const { numbers } = (await read.json()) as { numbers: Record<string, Record<string, unknown>> };
    expect(Object.keys(numbers)).toEqual(["shaftLengthMm", "powerKw"]);
    expect(numbers.shaftLengthMm).toMatchObject({
      consensus: { ...number, counted: 2, between: 0 },
      takings: [
        { value: 430, part: "counts" },
        { value: 430, part: "counts", raw: "43 cm", again: true },
      ],
    });
    expect(numbers.powerKw).toMatchObject({ consensus: { value: 4.5, how: "declared", counted: 1 } });
  });

  test("after somebody else's change is 412 with the record as it stands", async () => {
    await take(again);
    const problem = await problemOf(await take(again), 412);
    expect(problem.current).toMatchObject({ shaftLengthMm: { plusMinus: ROOT_2 } });
    expect(await takingsOf("motor", "m")).toHaveLength(3);
  });

  test("without a version is 428, of nothing is 404", async () => {
    await problemOf(await take(again, null), 428);
    await problemOf(await take(again, '"1"', "none"), 404);
    await problemOf(await ask(takings, "/x", { params: { id: "none" } }), 404);
  });

  test("from another site is refused", async () => {
    const headers = { Origin: "http://elsewhere.example", "If-Match": '"1"' };
    await problemOf(await ask(takings, "/x", { method: "POST", body: again, headers, ...m }), 403);
  });

  test.each([
    ["an unknown number", { ...again, key: "shaftLenghtMm" }, "/key"],
    ["a stern's number", { ...again, key: "rakeDeg" }, "/key"],
    ["a prototype's key", { ...again, key: "constructor" }, "/key"],
    ["a value beyond any motor", { ...again, value: 5000 }, "/value"],
    ["no value", { ...again, value: undefined }, "/value"],
    ["a list for a number", { ...again, value: [430] }, "/value"],
    ["a number for the holes", { ...again, key: "pinAnglesDeg", value: 4 }, "/value"],
    ["holes that go down", { ...again, key: "pinAnglesDeg", value: [8, 4] }, "/value"],
    ["a negative spread", { ...again, plusMinus: -1 }, "/plusMinus"],
    ["no source", { ...again, how: undefined }, "/how"],
    ["a guess", { ...again, how: "guessed" }, "/how"],
    ["a taker of its own making", { ...again, by: "somebody" }, "/by"],
    ["a comment without end", { ...again, comment: "x".repeat(501) }, "/comment"],
  ])("with %s is refused at its place, and nothing is taken", async (_what, body, pointer) => {
    const { errors } = await problemOf(await take(body), 422);
    expect(errors.map((error) => error.pointer)).toEqual([pointer]);
    expect(await getRecord("motor", "m")).toMatchObject({ version: 1 });
    expect(await takingsOf("motor", "m")).toHaveLength(2);
  });

  test("that makes the whole impossible is refused at the value", async () => {
    await take({ key: "cowlBottomMm", value: 200, how: "measured" });
    const { errors } = await problemOf(
      await take({ key: "cowlTopMm", value: 100, how: "measured" }, '"2"'),
      422,
    );
    expect(errors).toMatchObject([{ pointer: "/value", code: "impossible" }]);
  });

  test("begins afresh after a correction, and the earlier ones are still shown", async () => {
    await take(again);
    await ask(motor, "/x", {
      method: "PATCH",
      body: { shaftLengthMm: { value: 510, plusMinus: 2, how: "measured" } },
      headers: { "If-Match": '"2"' },
      ...m,
    });
    const { numbers } = (await (await ask(takings, "/x", m)).json()) as {
      numbers: Record<string, { consensus: object; takings: { value: number; part: string }[] }>;
    };
    expect(numbers.shaftLengthMm?.consensus).toMatchObject({ value: 510, plusMinus: 2, counted: 1 });
    expect(numbers.shaftLengthMm?.takings.map(({ value, part }) => [value, part])).toEqual([
      [430, "corrected"],
      [430, "corrected"],
      [510, "counts"],
    ]);
  });
});

test("sterns have the same door", async () => {
  await createRecord("stern", aStern("s"));
  const body = { key: "rakeDeg", value: 13, how: "measured" };
  const headers = { "If-Match": '"1"' };
  const answer = await ask(sternTakings, "/x", { method: "POST", body, headers, params: { id: "s" } });
  // 12 and 13, each ± 1 by usual: 12.5 ± 1 / root 2; residuals 0.5 and 0.5 over u² = 1/3 give q = 1.5 > 1,
  // so 0.5 / (1/3 + tau²) = 1 and u² = 0.5 / 2
  expect(await answer.json()).toMatchObject({ rakeDeg: { value: 12.5, plusMinus: 0.866 } });
});
