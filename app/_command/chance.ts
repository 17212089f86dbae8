/** Chance that comes out the same every time from one seed: for records made up for trials, never for secrets. */
export interface Chance {
  /** From 0 up to but not 1. */
  share(): number;
  /** Evenly from `low` to `high`. */
  between(low: number, high: number): number;
  pick<T>(from: readonly T[]): T;
}

/** A sequence of 2^32 numbers made by a Weyl walk through an integer hash (multiply, shift, exclusive or). */
export function chance(seed: number): Chance {
  let walk = seed >>> 0;
  const share = (): number => {
    walk = (walk + 0x9e3779b9) >>> 0;
    let mixed = Math.imul(walk ^ (walk >>> 16), 0x85ebca6b);
    mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
    return ((mixed ^ (mixed >>> 16)) >>> 0) / 2 ** 32;
  };
  return {
    share,
    between: (low, high) => low + (high - low) * share(),
    pick: (from) => from[Math.floor(share() * from.length)]!,
  };
}
