/** Texts cut into the words they are searched by. */

/** Units as they are written after a number, by the spelling they are searched under. */
const UNITS: Readonly<Record<string, string>> = {
  ...{ hp: "hp", horsepower: "hp", ps: "ps", kw: "kw", kilowatt: "kw", kilowatts: "kw" },
  ...{ kg: "kg", kilo: "kg", kilos: "kg", lb: "lb", lbs: "lb", pound: "lb", pounds: "lb" },
  ...{ in: "in", inch: "in", inches: "in", mm: "mm", cm: "cm", m: "m", metre: "m", metres: "m" },
  ...{ ft: "ft", foot: "ft", feet: "ft" },
};
const COUNTED: Readonly<Record<string, string>> = { two: "2", four: "4", "2": "2", "4": "4" };

const ASCII = /^[\0-\x7f]*$/;
const ASCII_WORDS = /\d+(?:\.\d+)?|[a-z]+/g;
const ANY_WORDS = /\p{N}+(?:\.\p{N}+)?|[\p{L}\p{M}]+/gu;
const OTHER_SIGNS = /[^\s\p{L}\p{N}\p{P}]+/gu;

/** Letters that no mark can be taken off of, as they are written where they are not on the keys. */
const LETTERS: Readonly<Record<string, string>> = {
  ...{ æ: "ae", œ: "oe", ø: "o", ß: "ss", ð: "d", đ: "d", þ: "th", ł: "l", ı: "i", ŋ: "n" },
};

/** A text without accents and capitals. */
export function plain(text: string): string {
  if (ASCII.test(text)) return text.toLowerCase();
  const bare = text.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase();
  return bare.replace(/[æœøßðđþłıŋ]/g, (letter) => LETTERS[letter] ?? letter);
}

/** The words of a text in their order: numbers with their decimals, and runs of letters. A text of neither gives its signs (an emoji). */
export function tokens(text: string): string[] {
  if (ASCII.test(text)) return text.toLowerCase().match(ASCII_WORDS) ?? [];
  const simple = plain(text);
  return simple.match(ANY_WORDS) ?? simple.match(OTHER_SIGNS) ?? [];
}

/** Whether a word is a number. */
export const isNumber = (word: string): boolean => word.charCodeAt(0) <= 57 && word.charCodeAt(0) >= 48;

/** Two neighbouring words that mean one thing, as the one word they are searched by: "15 hp" is 15hp, "extra-long" extralong, "four-stroke" 4stroke. */
export function joined(first: string, second: string): string | undefined {
  if (second === "long" && (first === "extra" || first === "ultra")) return `${first}long`;
  if ((second === "stroke" || second === "strokes") && Object.hasOwn(COUNTED, first))
    return `${COUNTED[first]}stroke`;
  return isNumber(first) && Object.hasOwn(UNITS, second) ? `${first}${UNITS[second]}` : undefined;
}

/** The words of a text with those that neighbours make together. */
export function indexed(text: string): string[] {
  const words = tokens(text);
  for (let at = words.length - 1; at > 0; at--) {
    const both = joined(words[at - 1]!, words[at]!);
    if (both) words.push(both);
  }
  return words;
}
