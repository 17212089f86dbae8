import { type ChildProcess, type SpawnOptions, spawn } from "node:child_process";

/** A program under way, and what it has said. */
export interface Program {
  readonly child: ChildProcess;
  readonly said: () => string;
  /** Its exit code when it has ended; null where a signal ended it. */
  readonly ended: Promise<number | null>;
}

/** Starts a TypeScript file as a program of its own: one process, so that a signal reaches it. */
export function run(
  file: string,
  args: readonly string[] = [],
  env: Record<string, string> = {},
  as: Pick<SpawnOptions, "uid" | "gid"> = {},
): Program {
  const child = spawn(process.execPath, ["--import", "tsx", file, ...args], {
    env: { ...process.env, ...env },
    stdio: ["ignore", "pipe", "pipe"],
    ...as,
  });
  let text = "";
  child.stdout.on("data", (data) => (text += data));
  child.stderr.on("data", (data) => (text += data));
  const ended = new Promise<number | null>((resolve) => child.on("close", (code) => resolve(code)));
  return { child, said: () => text, ended };
}

/** Waits until something holds; the test's own time limit ends it where it never does. */
export async function until(holds: () => boolean): Promise<void> {
  while (!holds()) await new Promise((resolve) => setTimeout(resolve, 10));
}
