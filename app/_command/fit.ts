/**
 * `npm run --silent fit -- MOTOR.json STERN.json [--tape II-1] [--like MOTORS.json]`: the report of one
 * pairing as JSON on standard output. `--tape` says which tape the lengths were read from; `--like` fills
 * the motor's gaps from an array of motors, marked as estimated. Exit 0 whatever the verdict, 2 with a
 * clear message on standard error when the input is unusable.
 */
import { readFile } from "node:fs/promises";
import { z } from "zod";
import { motorAsSentSchema, motorSchema } from "#lib/entry/motor.ts";
import { problems } from "#lib/entry/problem.ts";
import { sternAsSentSchema } from "#lib/entry/stern.ts";
import { CLASSES, DIVISIONS, tapeFrom } from "#lib/entry/tape.ts";
import { notThat } from "#lib/entry/words.ts";
import { assess } from "#lib/fit/assess.ts";
import { estimatesFor } from "#lib/fit/like-motors.ts";
import type { Tape } from "#lib/quantity/uncertainty.ts";

class Unusable extends Error {}

const USAGE =
  "Give two files: npm run --silent fit -- MOTOR.json STERN.json [--tape II-1] [--like MOTORS.json]";

const motorsSchema = z.array(motorSchema, {
  error: ({ input }) => notThat("The file", "an array of motors", input),
});

async function read<T>(path: string, what: string, schema: z.ZodType<T>): Promise<T> {
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
  throw new Unusable(`${what}: the file ${path} cannot be used.\n${lines.join("\n")}`);
}

/** Takes `--name value` out of the words; undefined where it is not there. */
function taken(words: string[], name: string): string | undefined {
  const at = words.indexOf(name);
  if (at < 0) return undefined;
  const [, value] = words.splice(at, 2);
  if (value === undefined || value.startsWith("--")) throw new Unusable(`${name} wants a value. ${USAGE}`);
  return value;
}

function tapeNamed(text: string | undefined): Tape | undefined {
  const tape = text === undefined ? undefined : tapeFrom(text);
  if (tape || text === undefined) return tape;
  const divisions = DIVISIONS.map((division) => division.text).join(", ");
  throw new Unusable(
    `--tape: “${text}” is no tape known here. Give the class (${CLASSES.join(", ")}), a hyphen and the smallest division read (${divisions}): II-1.`,
  );
}

try {
  const words = process.argv.slice(2);
  const tape = tapeNamed(taken(words, "--tape"));
  const likePath = taken(words, "--like");
  const [motorPath, sternPath, ...rest] = words;
  if (!motorPath || !sternPath || rest.length > 0) throw new Unusable(USAGE);
  const [motor, stern, like] = await Promise.all([
    read(motorPath, "Motor", motorAsSentSchema),
    read(sternPath, "Stern", sternAsSentSchema),
    likePath === undefined ? undefined : read(likePath, "Like motors", motorsSchema),
  ]);
  const options = { ...(tape && { tape }), ...(like && { estimates: estimatesFor(motor, like) }) };
  process.stdout.write(`${JSON.stringify(assess(motor, stern, {}, options), null, 2)}\n`);
} catch (error) {
  if (!(error instanceof Unusable)) throw error;
  process.stderr.write(`${error.message}\n`);
  process.exitCode = 2;
}
