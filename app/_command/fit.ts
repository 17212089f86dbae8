/**
 * `npm run --silent fit -- MOTOR.json STERN.json`: the report of one pairing as JSON on standard output.
 * Exit 0 whatever the verdict, 2 with a clear message on standard error when the input is unusable.
 */
import { readFile } from "node:fs/promises";
import type { ZodType } from "zod";
import { motorSchema } from "#lib/entry/motor.ts";
import { problems } from "#lib/entry/problem.ts";
import { sternSchema } from "#lib/entry/stern.ts";
import { assess } from "#lib/fit/assess.ts";

class Unusable extends Error {}

async function read<T>(path: string, what: string, schema: ZodType<T>): Promise<T> {
  const text = await readFile(path, "utf8").catch(() => {
    throw new Unusable(`${what}: the file ${path} cannot be read.`);
  });
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    throw new Unusable(`${what}: the file ${path} is not JSON.`);
  }
  const parsed = schema.safeParse(json);
  if (parsed.success) return parsed.data;
  const lines = problems(parsed.error).map(({ pointer, detail }) => `  ${pointer || "/"}: ${detail}`);
  throw new Unusable(`${what}: the file ${path} is not a record that can be used.\n${lines.join("\n")}`);
}

try {
  const [motorPath, sternPath, ...rest] = process.argv.slice(2);
  if (!motorPath || !sternPath || rest.length > 0) {
    throw new Unusable("Give two files: npm run --silent fit -- MOTOR.json STERN.json");
  }
  const [motor, stern] = await Promise.all([
    read(motorPath, "Motor", motorSchema),
    read(sternPath, "Stern", sternSchema),
  ]);
  process.stdout.write(`${JSON.stringify(assess(motor, stern), null, 2)}\n`);
} catch (error) {
  if (!(error instanceof Unusable)) throw error;
  process.stderr.write(`${error.message}\n`);
  process.exitCode = 2;
}
