/**
 * The number in what was typed. A comma or a point may divide the decimals or the thousands; where both
 * readings stand, both are returned and the person is asked.
 */
import { numericQuantity } from "numeric-quantity";

/** Readings of one number, likeliest first (two where comma or point may mean either), or null where the digits make no number. */
export type Numbers = readonly number[] | null;

const whole = (text: string): number => numericQuantity(text, { round: false });

/** Thousands divided by `mark` into threes, first group one to three digits and no leading zero. */
function isGrouped(text: string, mark: string): boolean {
  const [first = "", ...rest] = text.split(mark);
  return /^[1-9]\d{0,2}$/.test(first) && rest.length > 0 && rest.every((group) => /^\d{3}$/.test(group));
}

function twoMarks(text: string, comma: number, point: number): Numbers {
  const [thousands, decimal] = comma < point ? [",", "."] : [".", ","];
  const [front = "", back = "", more] = text.split(decimal);
  if (more !== undefined || !/^\d+$/.test(back) || !isGrouped(front, thousands)) return null;
  return [whole(`${front.split(thousands).join("")}.${back}`)];
}

function oneMark(text: string, mark: string): Numbers {
  const plain = text.split(mark).join("");
  const parts = text.split(mark);
  if (parts.length > 2) return isGrouped(text, mark) ? [whole(plain)] : null;
  if (!/^\d*[.,]\d+$/.test(text)) return null;
  const asDecimal = whole(`${parts[0]}.${parts[1]}`);
  if (!isGrouped(text, mark)) return [asDecimal];
  return mark === "," ? [whole(plain), asDecimal] : [asDecimal, whole(plain)];
}

/**
 * Reads digits with commas and points: `1,234.5` and `1.234,5` are 1234.5, `15,5` is 15.5, `0,394` is
 * 0.394; `1,234` and `1.234` have two readings.
 */
export function readDigits(text: string): Numbers {
  const comma = text.lastIndexOf(",");
  const point = text.lastIndexOf(".");
  if (comma < 0 && point < 0) return /^\d+$/.test(text) ? [whole(text)] : null;
  if (comma >= 0 && point >= 0) return twoMarks(text, comma, point);
  return oneMark(text, comma >= 0 ? "," : ".");
}

/**
 * A number written out so that it reads back as itself and nothing else: no exponent, decimal point, and
 * a fourth decimal where three could be taken for thousands. For magnitudes from 1e-6 to 1e21, and 0.
 */
export function plainNumber(value: number): string {
  const text = String(value);
  return /^-?[1-9]\d{0,2}\.\d{3}$/.test(text) ? `${text}0` : text;
}
