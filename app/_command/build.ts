import { spawnSync } from "node:child_process";
import { existsSync, readdirSync, statSync } from "node:fs";
import { join } from "node:path";

/** What the pages are built from; a folder's own time tells of files taken away. */
const SOURCES = [
  ...["app", "lib", "data", "public"],
  ...["next.config.ts", "proxy.ts", "instrumentation.ts", "package-lock.json", "tsconfig.json"],
];

/** Next's own program: started as one process, so that signals reach it. */
export const NEXT = join("node_modules", "next", "dist", "bin", "next");

/** Where the built pages lie. */
export const distDir = (): string => process.env.NEXT_DIST_DIR || ".next";

/** Whether there is a build, and nothing it was made from is newer. */
export function isBuilt(dist = distDir()): boolean {
  const built = statSync(join(dist, "BUILD_ID"), { throwIfNoEntry: false })?.mtimeMs;
  return built !== undefined && SOURCES.every((path) => newest(path) <= built);
}

/** Builds the pages; gives the builder's exit code, 0 when it went well. */
export function build(): number {
  const { status } = spawnSync(process.execPath, [NEXT, "build"], {
    stdio: "inherit",
    env: { ...process.env, NODE_ENV: "production", NEXT_TELEMETRY_DISABLED: "1" },
  });
  return status ?? 1;
}

function newest(path: string): number {
  if (!existsSync(path)) return 0;
  const { mtimeMs } = statSync(path);
  if (!statSync(path).isDirectory()) return mtimeMs;
  return readdirSync(path).reduce((latest, name) => Math.max(latest, newest(join(path, name))), mtimeMs);
}
