/**
 * One number from several takings of it. Takings differ by more than their own spreads say (one person
 * finds the edge of the saddle where another does not), so a common between-takings spread is added:
 * weights 1 / (u² + tau²) with tau after Mandel and Paule (J. Res. NBS 87, 1982, 377; the equation as in
 * Kacker, Metrologia 41, 2004, 132): the tau at which the weighted sum of squared residuals equals n - 1.
 * Chosen over scaling all spreads by the Birge ratio because scaling punishes the careful taker for the
 * careless one; the ratio is still given, as the plainest sign that takings disagree.
 */

/** A taking: its value and standard uncertainty (greater than 0), in the number's unit. */
export interface Taking {
  readonly value: number;
  readonly u: number;
}

export interface Consensus {
  readonly value: number;
  /** Standard uncertainty of the consensus. */
  readonly u: number;
  /** Between-takings standard deviation; 0 where the takings agree within their spreads. */
  readonly between: number;
  /** Birge ratio of the plain weighted mean: above 1 the takings scatter more than their spreads allow. */
  readonly birgeRatio: number;
  /** For each taking: does it lie further out than two of its standard uncertainties (between-spread included)? Shown, never dropped. */
  readonly outlying: readonly boolean[];
}

interface Mean {
  readonly value: number;
  readonly u: number;
  /** Weighted sum of squared residuals. */
  readonly q: number;
}

/** Mean weighted by 1 / (u² + tau²), its standard uncertainty and the weighted squared residuals. */
export function weightedMean(takings: readonly Taking[], between = 0): Mean {
  const weights = takings.map(({ u }) => 1 / (u ** 2 + between ** 2));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const value = takings.reduce((sum, taking, i) => sum + weights[i]! * taking.value, 0) / total;
  const q = takings.reduce((sum, taking, i) => sum + weights[i]! * (taking.value - value) ** 2, 0);
  return { value, u: 1 / Math.sqrt(total), q };
}

/** Birge ratio: the square root of q / (n - 1). The Particle Data Group calls it the scale factor S. 1 for a single taking. */
export const birgeRatio = (takings: readonly Taking[]): number =>
  takings.length < 2 ? 1 : Math.sqrt(weightedMean(takings).q / (takings.length - 1));

/** tau of Mandel and Paule: q falls as tau grows, so the crossing q = n - 1 is found by halving. 0 where q never exceeds n - 1. */
export function betweenTakings(takings: readonly Taking[]): number {
  const wanted = takings.length - 1;
  if (wanted < 1 || weightedMean(takings).q <= wanted) return 0;
  let [low, high] = [0, 1];
  while (weightedMean(takings, high).q > wanted) high *= 2;
  for (let halving = 0; halving < 60; halving += 1) {
    const middle = (low + high) / 2;
    if (weightedMean(takings, middle).q > wanted) low = middle;
    else high = middle;
  }
  return high;
}

/** The consensus of at least one taking; throws when there is none or a spread is not above 0. */
export function consensus(takings: readonly Taking[]): Consensus {
  if (takings.length === 0) throw new RangeError("a consensus needs at least one taking");
  if (takings.some(({ u }) => !(u > 0))) throw new RangeError("every taking needs a spread above 0");
  const between = betweenTakings(takings);
  const { value, u } = weightedMean(takings, between);
  return {
    value,
    u,
    between,
    birgeRatio: birgeRatio(takings),
    outlying: takings.map((taking) => isOutlying(taking, takings)),
  };
}

/** A taking is outlying where it disagrees with the consensus of all the others by more than twice the spread of the difference. */
function isOutlying(taking: Taking, all: readonly Taking[]): boolean {
  const others = all.filter((other) => other !== taking);
  if (others.length < 2) return false;
  const between = betweenTakings(others);
  const rest = weightedMean(others, between);
  return Math.abs(taking.value - rest.value) > 2 * Math.hypot(taking.u, rest.u, between);
}
