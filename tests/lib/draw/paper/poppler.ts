/** poppler's tools, an independent reader of PDF: installed where absent and this is root, else said to be missing. */
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

function has(tool: string): boolean {
  try {
    execFileSync(tool, ["-v"], { stdio: "ignore" });
    return true;
  } catch {
    return false;
  }
}

/** Throws, naming what to install, where the tools are absent and cannot be had. */
export function needPoppler(): void {
  if (has("pdftoppm")) return;
  if (process.getuid?.() === 0) {
    try {
      execFileSync("apt-get", ["install", "-y", "-qq", "poppler-utils"], {
        stdio: "ignore",
        timeout: 180_000,
      });
    } catch {
      execFileSync("apt-get", ["update", "-qq"], { stdio: "ignore", timeout: 180_000 });
      execFileSync("apt-get", ["install", "-y", "-qq", "poppler-utils"], {
        stdio: "ignore",
        timeout: 180_000,
      });
    }
  }
  if (!has("pdftoppm"))
    throw new Error("pdftoppm is missing: install poppler-utils to measure printed sheets");
}

const folder = mkdtempSync(join(tmpdir(), "sternwright-paper-"));

/** Keeps a PDF where the tools can read it. */
export function kept(pdf: Uint8Array, name: string): string {
  const path = join(folder, `${name}.pdf`);
  writeFileSync(path, pdf);
  return path;
}

/** A page in grey: `dark(x, y)` for pixels. */
export interface Raster {
  readonly wide: number;
  readonly high: number;
  dark(x: number, y: number): boolean;
}

/** Renders one page (counted from 1) at so many dots to the inch. */
export function rendered(path: string, page: number, dpi: number): Raster {
  const root = join(folder, `page-${page}-${dpi}-${Math.abs(path.length)}`);
  execFileSync("pdftoppm", [
    "-r",
    String(dpi),
    "-gray",
    "-f",
    String(page),
    "-l",
    String(page),
    "-singlefile",
    path,
    root,
  ]);
  const data = readFileSync(`${root}.pgm`);
  const head = /^P5\s+(\d+)\s+(\d+)\s+(\d+)\s/.exec(data.subarray(0, 40).toString("latin1"))!;
  const [wide, high] = [Number(head[1]), Number(head[2])];
  const start = head[0].length;
  return { wide, high, dark: (x, y) => data[start + y * wide + x]! < 128 };
}

/** Middles of the dark runs along a row (or column), pixels. */
export function darkRuns(length: number, dark: (at: number) => boolean): number[] {
  const runs: number[] = [];
  let from = -1;
  for (let at = 0; at <= length; at += 1) {
    const here = at < length && dark(at);
    if (here && from < 0) from = at;
    if (!here && from >= 0) {
      runs.push((from + at - 1) / 2);
      from = -1;
    }
  }
  return runs;
}

export interface Word {
  readonly text: string;
  readonly left: number;
  readonly top: number;
}

/** Words of a page with their places from the sheet's top left, points. */
export function words(path: string, page: number): Word[] {
  const html = execFileSync("pdftotext", [
    "-bbox",
    "-f",
    String(page),
    "-l",
    String(page),
    path,
    "-",
  ]).toString();
  return [...html.matchAll(/<word xMin="([\d.]+)" yMin="([\d.]+)"[^>]*>([^<]*)<\/word>/g)].map((match) => ({
    left: Number(match[1]),
    top: Number(match[2]),
    text: match[3]!,
  }));
}

export const fontsOf = (path: string): string => execFileSync("pdffonts", [path]).toString();
