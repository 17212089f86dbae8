/** Slips of the finger between what was typed and a word: a letter too many, too few, wrong, or swapped with its neighbour. */

/** A row of the table for each of the last three letters typed; words are cut at 63 letters. */
const WIDTH = 64;
let [before, last, now] = [new Uint8Array(WIDTH), new Uint8Array(WIDTH), new Uint8Array(WIDTH)];

/**
 * Fewest slips from `typed` to a beginning of `word`, and to the whole of it, where no more than `most`;
 * else `most + 1`. Optimal string alignment: each stretch is changed once. Gives `whole * 16 + beginning`.
 */
export function slips(typed: string, word: string, most: number): number {
  const rows = Math.min(typed.length, WIDTH - 1);
  const columns = Math.min(word.length, rows + most, WIDTH - 1);
  const none = most + 1;
  for (let j = 0; j <= columns; j++) last[j] = j;
  for (let i = 1; i <= rows; i++) {
    const letter = typed.charCodeAt(i - 1);
    const earlier = i > 1 ? typed.charCodeAt(i - 2) : -1;
    now[0] = i;
    let least = i;
    for (let j = 1; j <= columns; j++) {
      const other = word.charCodeAt(j - 1);
      let cost = last[j - 1]! + (letter === other ? 0 : 1);
      if (last[j]! + 1 < cost) cost = last[j]! + 1;
      if (now[j - 1]! + 1 < cost) cost = now[j - 1]! + 1;
      if (j > 1 && letter === word.charCodeAt(j - 2) && earlier === other && before[j - 2]! + 1 < cost)
        cost = before[j - 2]! + 1;
      now[j] = cost;
      if (cost < least) least = cost;
    }
    if (least > most) return none * 16 + none;
    [before, last, now] = [last, now, before];
  }
  let beginning = none;
  for (let j = 0; j <= columns; j++) if (last[j]! < beginning) beginning = last[j]!;
  const whole = columns === word.length ? Math.min(last[columns]!, none) : none;
  return whole * 16 + beginning;
}
