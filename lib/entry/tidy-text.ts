/**
 * One spelling for what keyboards of the world send: digits of every script, full-width letters, the
 * many quotation marks, dashes, fraction signs and spaces. Only the spelling changes, never the meaning.
 */
import { numericQuantity } from "numeric-quantity";

const FRACTIONS: Readonly<Record<string, string>> = {
  "½": "1/2",
  "⅓": "1/3",
  "⅔": "2/3",
  "¼": "1/4",
  "¾": "3/4",
  "⅕": "1/5",
  "⅖": "2/5",
  "⅗": "3/5",
  "⅘": "4/5",
  "⅙": "1/6",
  "⅚": "5/6",
  "⅐": "1/7",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
  "⅑": "1/9",
  "⅒": "1/10",
};
const SQUARED_UNITS: Readonly<Record<string, string>> = {
  "㎜": " mm",
  "㎝": " cm",
  "㏌": " in",
  "㎾": " kw",
  "㎏": " kg",
};

const oneDigit = (digit: string): string => String(numericQuantity(digit));
const fullWidth = (char: string): string => String.fromCharCode(char.charCodeAt(0) - 0xfee0);

/**
 * Lower case, ASCII digits, `'` and `"` for feet and inch marks, `-` for every dash and minus, `/` for
 * every fraction slash, `n/d` with a blank before it for fraction signs, one blank for every run of
 * blanks. Invisible marks (writing direction, joiners) are dropped. Never throws.
 */
export function tidyText(text: string): string {
  return text
    .replace(/\p{Cf}/gu, "")
    .replace(/[\uff01-\uff5e]/g, fullWidth)
    .replace(/\p{Nd}/gu, oneDigit)
    .replace(/[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅐⅛⅜⅝⅞⅑⅒]/g, (sign) => ` ${FRACTIONS[sign]}`)
    .replace(/[㎜㎝㏌㎾㎏]/g, (sign) => SQUARED_UNITS[sign] ?? sign)
    .replace(/[⁄∕]/g, "/")
    .replace(/[‘’‛′´`ʹʼ]/g, "'")
    .replace(/[“”‟″ʺ]|''/g, '"')
    .replace(/[−–—‐‑‒]/g, "-")
    .replace(/٫/g, ".")
    .replace(/\s+/g, " ")
    .trim()
    .toLowerCase();
}
