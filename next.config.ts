import type { NextConfig } from "next";
import { EVERYWHERE } from "./app/_http/headers.ts";

const config: NextConfig = {
  /** Tests build beside the build that is being used. */
  distDir: process.env.NEXT_DIST_DIR || ".next",
  poweredByHeader: false,
  reactStrictMode: true,
  // The optimiser fetches and decodes what it is pointed at; every picture here is our own SVG.
  images: { unoptimized: true },
  turbopack: { root: import.meta.dirname },
  // Writes no files of its own into the project.
  agentRules: false,
  // What is kept of a form's body on its way to a page; Next takes no larger one anyway.
  experimental: { proxyClientMaxBodySize: "1mb" },
  headers: async () => [{ source: "/:path*", headers: [...EVERYWHERE] }],
};

export default config;
