/**
 * `npm test`: types, lint, unit tests with laws and worked cases, then the pages in a real browser. Says
 * what it does, finds or installs the browser by itself, and closes with one line counted from the
 * runners' own reports.
 */
import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";

const OUT = "tests/.out";
const environment = {
  ...process.env,
  NEXT_TELEMETRY_DISABLED: "1",
  NEXT_DIST_DIR: ".next/tested",
};

let passed = 0;
let failed = 0;

function step(what: string, command: string, args: string[], extra: Record<string, string> = {}): boolean {
  console.log(`\n== ${what}`);
  const { status } = spawnSync(command, args, { stdio: "inherit", env: { ...environment, ...extra } });
  return status === 0;
}

/** A step without a report of its own counts as one. */
function single(what: string, command: string, args: string[]): boolean {
  const good = step(what, command, args);
  if (good) passed += 1;
  else failed += 1;
  return good;
}

function report(path: string): unknown {
  return existsSync(path) ? JSON.parse(readFileSync(path, "utf8")) : undefined;
}

const bin = (name: string) => join("node_modules", ".bin", name);
/** Debian's browser where it is installed, else the one that comes as a package. */
async function browser(): Promise<Record<string, string>> {
  for (const path of [
    process.env.CHROMIUM_PATH,
    "/usr/bin/chromium",
    "/usr/bin/chromium-browser",
    "/usr/bin/google-chrome",
  ]) {
    if (path && existsSync(path)) {
      console.log(`Browser: ${path}`);
      return { CHROMIUM_PATH: path };
    }
  }
  console.log("Browser: none on this machine; unpacking the Chromium that comes with the packages.");
  if (existsSync("/etc/fonts")) process.env.FONTCONFIG_PATH ??= "/etc/fonts";
  // It brings the libraries a bare machine lacks, where it is told to.
  if (!existsSync("/usr/lib/x86_64-linux-gnu/libnss3.so")) {
    process.env.AWS_EXECUTION_ENV ??= "AWS_Lambda_nodejs20.x";
  }
  const { default: packed } = await import("@sparticuz/chromium");
  const path = await packed.executablePath();
  console.log(`Browser: ${path}`);
  const passedOn = ["FONTCONFIG_PATH", "LD_LIBRARY_PATH"].flatMap((name) =>
    process.env[name] ? [[name, process.env[name]]] : [],
  );
  return { CHROMIUM_PATH: path, ...Object.fromEntries(passedOn) };
}

rmSync(OUT, { recursive: true, force: true });
mkdirSync(OUT, { recursive: true });

single("Types", bin("tsc"), ["--noEmit"]);
single("Lint", bin("biome"), ["ci", "."]);

const unitReport = join(OUT, "unit.json");
const unitGood = step("Unit tests, laws, worked cases", bin("vitest"), [
  "run",
  "--config",
  "tests/vitest.config.ts",
  "--reporter=default",
  "--reporter=json",
  `--outputFile.json=${unitReport}`,
]);
const unit = report(unitReport) as
  | { numPassedTests: number; numFailedTests: number; success: boolean }
  | undefined;
passed += unit?.numPassedTests ?? 0;
failed += unit?.numFailedTests ?? 0;
if (!unitGood && !unit?.numFailedTests) failed += 1;

if (single("Build", bin("next"), ["build"])) {
  const pagesReport = join(OUT, "pages.json");
  const pagesGood = step(
    "Pages in a browser",
    bin("playwright"),
    ["test", "-c", "tests/e2e/playwright.config.ts"],
    {
      ...(await browser()),
      PLAYWRIGHT_JSON_OUTPUT_NAME: join(process.cwd(), pagesReport),
    },
  );
  const pages = report(pagesReport) as
    | { stats: { expected: number; unexpected: number; flaky: number } }
    | undefined;
  passed += (pages?.stats.expected ?? 0) + (pages?.stats.flaky ?? 0);
  failed += pages?.stats.unexpected ?? 0;
  if (!pagesGood && !pages?.stats.unexpected) failed += 1;
}

console.log(`\n${passed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);
