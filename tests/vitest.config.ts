import { defineConfig } from "vitest/config";

/** Unit tests, laws, worked cases and benches. The browser's tests are in tests/e2e, run by playwright. */
export default defineConfig({
  root: new URL("..", import.meta.url).pathname,
  // `server-only` throws when imported outside a server bundle; under vitest everything is the server.
  resolve: { conditions: ["react-server"], alias: { "server-only": "node:module" } },
  ssr: { resolve: { conditions: ["react-server"] } },
  test: {
    include: ["tests/**/*.test.ts"],
    exclude: ["tests/e2e/**"],
    environment: "node",
    testTimeout: 60_000,
    benchmark: { include: ["tests/bench/**/*.bench.ts"] },
  },
});
