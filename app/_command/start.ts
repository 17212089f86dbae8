/**
 * `npm start`: makes or updates the store, builds the pages where they are not built yet, and serves them at
 * http://127.0.0.1:3000 (PORT for another port). `--dev` serves while the sources are being changed,
 * `--no-build` takes the build there is. Says what it does at each step.
 */
import { spawn } from "node:child_process";
import { build, isBuilt, NEXT } from "#app/_command/build.ts";
import { endingWell } from "#app/_command/ending.ts";
import { setUpStore } from "#app/_command/set-up-store.ts";
import { assertUnlocked } from "#lib/db/lock.ts";
import { place } from "#lib/db/place.ts";
import { StoreError } from "#lib/db/store-error.ts";

/** A server that was told to end and has not is ended after this long, in ms. */
const PATIENCE_MS = 9000;
const SIGNALS = ["SIGTERM", "SIGINT", "SIGHUP"] as const;

await endingWell(async () => {
  const options = process.argv.slice(2);
  const dev = options.includes("--dev");
  const port = portFrom(process.env.PORT || "3000");
  assertUnlocked(place().lock);
  console.log(await setUpStore());
  if (!dev && !options.includes("--no-build") && !isBuilt()) {
    console.log("Building the pages; this takes half a minute, and only after a change.");
    const failed = build();
    if (failed) {
      process.exitCode = failed;
      return;
    }
  }
  console.log(`Serving Sternwright at http://127.0.0.1:${port} (Ctrl-C ends it).`);
  serve(dev ? "dev" : "start", port);
});

function portFrom(text: string): string {
  if (/^\d{1,5}$/.test(text) && Number(text) >= 1 && Number(text) <= 65535) return text;
  throw new StoreError("refused", `PORT must be a number from 1 to 65535, not "${text}".`);
}

/** Runs the server as one child: signals go on to it, its exit code becomes ours. */
function serve(how: "dev" | "start", port: string): void {
  const server = spawn(process.execPath, [NEXT, how, "-H", "127.0.0.1", "-p", port], {
    stdio: "inherit",
    env: { ...process.env, PORT: port, NEXT_TELEMETRY_DISABLED: "1" },
  });
  for (const signal of SIGNALS) {
    process.on(signal, () => {
      server.kill(signal);
      setTimeout(() => server.kill("SIGKILL"), PATIENCE_MS).unref();
    });
  }
  server.on("error", (error) => {
    console.error(error);
    process.exit(1);
  });
  server.on("exit", (code, signal) => process.exit(code ?? (signal === "SIGINT" ? 130 : 143)));
}
