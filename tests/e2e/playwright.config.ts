import { existsSync, mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { defineConfig, devices } from "@playwright/test";

/**
 * The users' tests, on a build made before (NEXT_DIST_DIR says where; absent, Next's own place). The server
 * gets a fresh database of its own; the browser is CHROMIUM_PATH, else Debian's.
 */
const port = Number(process.env.E2E_PORT ?? 3108);
const browser = process.env.CHROMIUM_PATH ?? "/usr/bin/chromium";
// Playwright reads this file once more in every worker: the first to come makes the folder, the rest find it named.
process.env.E2E_FOLDER ??= mkdtempSync(join(tmpdir(), "sternwright-e2e-"));
const database = `file:${join(process.env.E2E_FOLDER, "sternwright.db")}`;
const origin = `http://127.0.0.1:${port}`;

export default defineConfig({
  testDir: ".",
  outputDir: join(process.env.E2E_FOLDER, "results"),
  fullyParallel: false,
  workers: 1,
  timeout: 60_000,
  expect: { timeout: 15_000 },
  reporter: process.env.PLAYWRIGHT_JSON_OUTPUT_NAME ? [["list"], ["json"]] : [["list"]],
  use: {
    baseURL: origin,
    locale: "en-GB",
    launchOptions: {
      executablePath: existsSync(browser) ? browser : undefined,
      args: [
        "--no-sandbox",
        "--disable-gpu",
        "--disable-quic",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
      ],
    },
  },
  projects: [
    { name: "desktop", use: { ...devices["Desktop Chrome"], viewport: { width: 1280, height: 900 } } },
    {
      name: "phone",
      // Widths, themes and the server are the same, whatever looks at them.
      testIgnore: ["accessibility.spec.ts", "server.spec.ts"],
      use: { ...devices["Pixel 7"], viewport: { width: 360, height: 740 }, deviceScaleFactor: 2 },
    },
  ],
  webServer: {
    // `exec`, so that the process playwright stops is the server and not a shell above it.
    command: `node node_modules/tsx/dist/cli.mjs app/_command/set-up.ts && exec node node_modules/next/dist/bin/next start -H 127.0.0.1 -p ${port}`,
    cwd: new URL("../..", import.meta.url).pathname,
    url: `${origin}/checks`,
    reuseExistingServer: false,
    timeout: 60_000,
    env: { DATABASE_URL: database, ORIGIN: origin, NEXT_TELEMETRY_DISABLED: "1" },
  },
});
