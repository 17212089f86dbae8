import type { Texts } from "#app/_parts/form/texts.ts";

/** Numbers 0, 1, … of the rows of a list up to the last that has anything typed in it. */
export function rowsOf(texts: Texts, list: string): readonly number[] {
  const filled = Object.entries(texts)
    .filter(([name, text]) => name.startsWith(`${list}.`) && !name.endsWith(".group") && text.trim() !== "")
    .map(([name]) => Number(name.split(".")[1]))
    .filter((row) => Number.isInteger(row) && row >= 0 && row < MOST_ROWS);
  return Array.from({ length: filled.length === 0 ? 0 : Math.max(...filled) + 1 }, (_, row) => row);
}

/** More things in the way than a motor or a well has. */
const MOST_ROWS = 20;
