/** The servers of the web figures: a store of fifty motors in a folder of its own, the built app, the bare server. */
import { type ChildProcess, spawn, spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build, isBuilt, NEXT } from "#app/_command/build.ts";

/** Motors in the store: what one page of the list holds. */
export const MOTORS = 50;
/** Loopback ports. */
const APP = 3191;
const BARE = 3192;
/** A server that does not answer, or does not end, within so long, ms, is given up. */
const PATIENCE_MS = 30_000;
const ENDING_MS = 5000;
const TSX = ["--import", "tsx"];

export interface Servers {
  readonly app: string;
  readonly bare: string;
  /** Ends both and takes the store away. */
  readonly end: () => Promise<void>;
}

/** Uses the build that NEXT_DIST_DIR names (`.next/tested` where it is not set), and makes it only where there is none. */
export function assertBuild(): void {
  process.env.NEXT_DIST_DIR ||= ".next/tested";
  if (!existsSync(join(process.env.NEXT_DIST_DIR, "BUILD_ID"))) {
    const types = readFileSync("tsconfig.json", "utf8");
    const failed = build();
    // The builder writes its own folders into it.
    if (readFileSync("tsconfig.json", "utf8") !== types) writeFileSync("tsconfig.json", types);
    if (failed) throw new Error(`The pages could not be built (exit code ${failed}).`);
  } else if (!isBuilt()) console.log("Note: the build is older than some of its sources.");
}

/** Starts both servers on one store; gives them when both answer. */
export async function startServers(): Promise<Servers> {
  const folder = mkdtempSync(join(tmpdir(), "sternwright-bench-"));
  const children: ChildProcess[] = [];
  const remove = () => rmSync(folder, { recursive: true, force: true });
  // However this process ends, nothing it started outlives it.
  process.once("exit", () => {
    for (const child of children) child.kill("SIGKILL");
    remove();
  });
  const end = async () => {
    await Promise.all(children.map(ended));
    remove();
  };
  try {
    const file = join(folder, "sternwright.db");
    const env = { ...process.env, NODE_ENV: "production" as const, NEXT_TELEMETRY_DISABLED: "1" };
    const settings = { ...env, DATABASE_URL: `file:${file}` };
    fill(file, settings);
    const start = (args: string[], port: number) => {
      const more = { PORT: String(port), ORIGIN: `http://127.0.0.1:${port}` };
      const stdio = ["ignore", "ignore", "inherit"] as const;
      children.push(spawn(process.execPath, args, { env: { ...settings, ...more }, stdio: [...stdio] }));
    };
    start([NEXT, "start", "-H", "127.0.0.1", "-p", String(APP)], APP);
    start([...TSX, "tests/bench/web-bare.ts"], BARE);
    const [app, bare] = [`http://127.0.0.1:${APP}`, `http://127.0.0.1:${BARE}`];
    await Promise.all([
      answering(`${app}/api/health`, children[0]!),
      answering(`${bare}/json`, children[1]!),
    ]);
    return { app, bare, end };
  } catch (error) {
    await end();
    throw error;
  }
}

/** The demo motors, and generated ones up to fifty. */
function fill(file: string, env: NodeJS.ProcessEnv): void {
  const demo: unknown[] = JSON.parse(readFileSync("data/demo/motors.json", "utf8"));
  command(["app/_command/set-up.ts"], env);
  if (demo.length >= MOTORS) return;
  const count = String(MOTORS - demo.length);
  command(["app/_command/generate.ts", "--motors", count, "--sterns", "0", "--into", file], env);
}

function command(args: string[], env: NodeJS.ProcessEnv): void {
  const { status, stderr } = spawnSync(process.execPath, [...TSX, ...args], { env, timeout: PATIENCE_MS });
  if (status !== 0) throw new Error(`${args[0]} failed: ${stderr}`);
}

async function answering(url: string, server: ChildProcess): Promise<void> {
  const deadline = Date.now() + PATIENCE_MS;
  while (Date.now() < deadline && server.exitCode === null) {
    const answer = await fetch(url, { signal: AbortSignal.timeout(2000) }).catch(() => undefined);
    if (answer?.ok) return;
    await new Promise((resume) => setTimeout(resume, 100));
  }
  throw new Error(`${url} does not answer.`);
}

/** Ends a server, by force where it takes too long. */
async function ended(server: ChildProcess): Promise<void> {
  if (server.exitCode !== null || server.signalCode !== null) return;
  const over = new Promise((resume) => server.once("exit", resume));
  server.kill("SIGTERM");
  const force = setTimeout(() => server.kill("SIGKILL"), ENDING_MS);
  await over;
  clearTimeout(force);
}
