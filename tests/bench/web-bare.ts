/**
 * The anchor of the web figures: node:http and nothing else, which reads the same page of motors from the
 * same file and answers it three ways: `/react`, `/string`, `/json`. A program of its own, started with
 * PORT and DATABASE_URL. Its page has each motor's name, facts, how well it is measured in words, and the
 * mark of the invented; no navigation, no search, no drawn tally.
 */
import { createServer, type ServerResponse } from "node:http";
import { createClient } from "@libsql/client";
import { createElement as h } from "react";
import { renderToString } from "react-dom/server";
import { listFacts } from "#app/_parts/record/facts.ts";
import { howWell, howWellWords } from "#app/_parts/record/how-well.ts";
import { asStored, selectStanding } from "#lib/db/reading.ts";

const LIMIT = 50;
const { sql, params } = selectStanding("motor", {}, LIMIT + 1).toSQL();
const client = createClient({ url: process.env.DATABASE_URL! });

async function read() {
  const { rows } = await client.execute({ sql, args: params as (string | number)[] });
  return rows.slice(0, LIMIT).map((row) => asStored<"motor">(row));
}
type Motors = Awaited<ReturnType<typeof read>>;

const linesOf = (motors: Motors) =>
  motors.map(({ record, demo }) => ({
    id: record.id,
    label: record.label,
    facts: listFacts("motor", record).join(" · "),
    how: howWellWords(howWell("motor", record)),
    demo,
  }));

function react(motors: Motors): string {
  const lines = linesOf(motors).map(({ id, label, facts, how, demo }) =>
    h(
      "li",
      { key: id },
      h("a", { href: `/motors/${id}` }, label),
      h("span", null, facts),
      h("span", null, how),
      demo && h("span", null, "invented"),
    ),
  );
  const body = h("body", null, h("h1", null, "Motors"), h("ul", null, lines));
  const head = h("head", null, h("title", null, "Motors"));
  return `<!DOCTYPE html>${renderToString(h("html", { lang: "en" }, head, body))}`;
}

const ESCAPES: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };
const escaped = (text: string): string => text.replace(/[&<>"]/g, (sign) => ESCAPES[sign]!);

function strung(motors: Motors): string {
  const lines = linesOf(motors).map(
    ({ id, label, facts, how, demo }) =>
      `<li><a href="/motors/${escaped(id)}">${escaped(label)}</a><span>${escaped(facts)}</span>` +
      `<span>${escaped(how)}</span>${demo ? "<span>invented</span>" : ""}</li>`,
  );
  const head = '<!DOCTYPE html><html lang="en"><head><title>Motors</title></head>';
  return `${head}<body><h1>Motors</h1><ul>${lines.join("")}</ul></body></html>`;
}

const json = (motors: Motors): string => JSON.stringify({ items: motors.map(({ record }) => record) });

const HTML = "text/html; charset=utf-8";
const ANSWERS: Readonly<Record<string, { type: string; of: (motors: Motors) => string }>> = {
  "/react": { type: HTML, of: react },
  "/string": { type: HTML, of: strung },
  "/json": { type: "application/json", of: json },
};

async function answer(url: string, response: ServerResponse): Promise<void> {
  const found = ANSWERS[url];
  if (!found) return void response.writeHead(404).end();
  const text = found.of(await read());
  response
    .writeHead(200, { "Content-Type": found.type, "Content-Length": Buffer.byteLength(text) })
    .end(text);
}

createServer((request, response) => {
  answer(request.url ?? "", response).catch((error) => {
    console.error(error);
    response.writeHead(500).end();
  });
}).listen(Number(process.env.PORT), "127.0.0.1");
