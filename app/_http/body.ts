import type { ZodType } from "zod";
import { Refused } from "#app/_http/problem.ts";
import { problems } from "#lib/entry/problem.ts";

/** Most bytes of a request, and of an import. */
export const BODY_LIMIT = 256 * 1024;
export const IMPORT_LIMIT = 1024 * 1024;
/** Deepest nesting of JSON taken; a record needs five. */
const DEEPEST = 20;

/** The body as JSON that fits the schema; throws the refusal that says what is wrong with it, and where. */
export async function readJson<T>(request: Request, schema: ZodType<T>, limit = BODY_LIMIT): Promise<T> {
  assertKind(request, ["application/json", "application/merge-patch+json"]);
  return fitting(schema, parseJson(await readText(request, limit)));
}

/** The value as the schema has it; throws 422 with every fault. */
export function fitting<T>(schema: ZodType<T>, value: unknown): T {
  const parsed = schema.safeParse(value);
  if (parsed.success) return parsed.data;
  const errors = problems(parsed.error);
  throw new Refused(422, errors[0]?.detail ?? "This is not possible.", { errors });
}

/** The query's parameters as the schema has them, each at most once; throws 400 with every fault. */
export function readQuery<T>(request: Request, schema: ZodType<T>): T {
  const given = new URL(request.url).searchParams;
  const twice = [...new Set(given.keys())].find((key) => given.getAll(key).length > 1);
  if (twice !== undefined) throw new Refused(400, `Give ${twice.slice(0, 40)} once.`);
  const parsed = schema.safeParse(Object.fromEntries(given));
  if (parsed.success) return parsed.data;
  const errors = problems(parsed.error);
  throw new Refused(400, errors[0]?.detail ?? "This question is not understood.", { errors });
}

/** Refuses a body of another kind, or one that is packed: a small packed body may be a huge one. */
export function assertKind(request: Request, kinds: readonly string[]): string {
  const kind = request.headers.get("content-type")?.split(";")[0]?.trim().toLowerCase() ?? "";
  if (!kinds.includes(kind)) throw new Refused(415, `Send it as ${kinds[0]}.`);
  const packed = request.headers.get("content-encoding");
  if (packed !== null && packed.toLowerCase() !== "identity") throw new Refused(415, "Send it unpacked.");
  return kind;
}

/** The body as text; refuses what is not UTF-8. */
export async function readText(request: Request, limit = BODY_LIMIT): Promise<string> {
  const bytes = await readBytes(request, limit);
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    throw new Refused(400, "This is not text in UTF-8.");
  }
}

/** The body, read no further than the limit, whatever length it claims. */
export async function readBytes(request: Request, limit: number): Promise<Uint8Array> {
  const tooLarge = new Refused(413, `At most ${limit / 1024} kB are taken here.`);
  if (Number(request.headers.get("content-length") ?? 0) > limit) throw tooLarge;
  const chunks: Uint8Array[] = [];
  let size = 0;
  for await (const chunk of chunksOf(request)) {
    size += chunk.byteLength;
    if (size > limit) throw tooLarge;
    chunks.push(chunk);
  }
  return Buffer.concat(chunks);
}

/** Leaving the loop early cancels the stream, so that the rest is never read. */
async function* chunksOf({ body }: Request): AsyncGenerator<Uint8Array> {
  const reader = body?.getReader();
  if (!reader) return;
  try {
    for (let part = await reader.read(); !part.done; part = await reader.read()) yield part.value;
  } finally {
    await reader.cancel().catch(() => {});
  }
}

/** JSON without the one key that schemas pass over (it would set an object's prototype), and no deeper than a record is. */
export function parseJson(text: string): unknown {
  assertShallow(text);
  try {
    return JSON.parse(text, withoutPrototype);
  } catch (error) {
    if (error instanceof Refused) throw error;
    throw new Refused(
      400,
      text.trim() === "" ? "There is nothing in it; JSON is wanted." : "This is not JSON.",
    );
  }
}

function withoutPrototype(key: string, value: unknown): unknown {
  if (key === "__proto__") throw new Refused(400, "The key __proto__ is not taken.");
  return value;
}

/** Refuses JSON nested deeper than any record. */
export function assertShallow(text: string): void {
  if (depthOf(text) > DEEPEST) throw new Refused(400, `This JSON is nested more than ${DEEPEST} deep.`);
}

/** Deepest nesting of brackets outside strings: told before parsing, so that no parser meets it. */
function depthOf(text: string): number {
  let [deepest, depth, quoted] = [0, 0, false];
  for (let i = 0; i < text.length; i++) {
    const letter = text[i];
    if (quoted && letter === "\\") i++;
    else if (letter === '"') quoted = !quoted;
    else if (quoted) continue;
    else if (letter === "[" || letter === "{") deepest = Math.max(deepest, ++depth);
    else if (letter === "]" || letter === "}") depth--;
  }
  return deepest;
}
