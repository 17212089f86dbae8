/**
 * Certified least clearance between the moving parts of two motors, each tilting and steering by itself:
 * four angles. Best-first branch and bound, as for one motor and what stands still (search.ts).
 *
 * For a fixed unit direction n the gap of two bodies is the least n·a of the one less the greatest n·b of
 * the other, and each of the two depends on two of the four angles alone. So along any n the gap over a
 * whole cell of four angles is bounded by two bounds over cells of two (bound.ts, hull frame): of the one
 * along n, of the other along -n. n is the direction of the distance measured in one pose of the cell; from
 * the poses the two bounds expect the least in, it is measured once more. What is not settled is halved
 * along the angle whose width moves the bodies furthest.
 *
 * What is certified in the end is the least of the bounds of dropped cells, of cells still waiting, and of
 * the least distance met. Works in the first motor's frame, from its tilt axis.
 */
import { bound, hullBound, predict } from "#lib/geometry/bound.ts";
import { setCell } from "#lib/geometry/cell.ts";
import { carriers, found, nearest, shares } from "#lib/geometry/gjk.ts";
import type { Mechanism, Part, Pose } from "#lib/geometry/mechanism.ts";
import { type Mover, mover, turn } from "#lib/geometry/motion.ts";
import { axis, greatestGap, type MovedAxes } from "#lib/geometry/overlap.ts";
import type { Solid, Triple } from "#lib/geometry/solid.ts";

/** One motor: how it moves, its parts, and where its saddle corner stands in the frame both share (axes as in the bracket frame). */
export interface Moving {
  readonly mechanism: Mechanism;
  readonly parts: readonly Part[];
  readonly saddle: Triple;
}

/** The least clearance between two motors, and where it happens. Millimetres, degrees. */
export interface TwoClearance {
  /** Distance in the poses given; minus = they overlap, and must be parted by that much there. */
  readonly mm: number;
  /** Certified: in no attitude of the two is it less than this. */
  readonly lowerMm: number;
  readonly partIds: readonly [string, string];
  readonly poses: readonly [Pose, Pose];
  /** From the second motor's part towards the first's. */
  readonly direction: Triple;
  /** Nearest (or, overlapping, deepest) points, each in its own motor's bracket frame. */
  readonly points: readonly [Triple, Triple];
  /** Cells of poses looked at. */
  readonly nodes: number;
}

export interface TwoOptions {
  /** Width of the certificate apart, and overlapping, mm. */
  readonly within?: number;
  readonly withinOverlap?: number;
  readonly mostCells?: number;
}

/** Angles of one part: p from, p to, s from, s to; radians. */
type Angles = readonly [number, number, number, number];

interface Cell {
  readonly first: number;
  readonly second: number;
  readonly a: Angles;
  readonly b: Angles;
  readonly least: number;
}

interface Met {
  mm: number;
  first: number;
  second: number;
  poses: readonly [readonly [number, number], readonly [number, number]];
  direction: Triple;
}

const DEGREES = 180 / Math.PI;
/** Widest side the bounds are made for, radians. */
const WIDEST = Math.PI / 2;
/** Taken off the certificate for rounding, mm. */
const ROUNDING = 1e-6;
const NOWHERE = { corners: new Float64Array(24) };
const A = new Float64Array(24);
const B = new Float64Array(24);

/** Least clearance of two motors over all attitudes of both. Throws a RangeError where one has no part. */
export function leastBetween(one: Moving, other: Moving, options: TwoOptions = {}): TwoClearance {
  if (one.parts.length === 0 || other.parts.length === 0) {
    throw new RangeError("A clearance between two motors needs a part of each.");
  }
  return new Search(one, other, options).run();
}

class Search {
  readonly #one: readonly Mover[];
  readonly #other: readonly Mover[];
  /** The second motor's tilt axis from the first's. */
  readonly #between: Triple;
  readonly #options: Required<TwoOptions>;
  readonly #heap: Cell[] = [];
  readonly #sides: readonly [Moving, Moving];
  #dropped = Number.POSITIVE_INFINITY;
  #met: Met | undefined;

  constructor(
    one: Moving,
    other: Moving,
    { within = 1, withinOverlap = 10, mostCells = 30_000 }: TwoOptions,
  ) {
    this.#sides = [one, other];
    this.#one = one.parts.map((part) => mover(one.mechanism, part));
    this.#other = other.parts.map((part) => mover(other.mechanism, part));
    const [f, y, v] = [0, 1, 2].map((k) => other.saddle[k]! - one.saddle[k]!) as [number, number, number];
    this.#between = [
      f + other.mechanism.tiltAxisForwardMm - one.mechanism.tiltAxisForwardMm,
      y,
      v + other.mechanism.tiltAxisAboveMm - one.mechanism.tiltAxisAboveMm,
    ];
    this.#options = { within, withinOverlap, mostCells };
  }

  run(): TwoClearance {
    this.#one.forEach((first, i) => {
      this.#other.forEach((second, j) => {
        for (const a of wholesOf(first)) {
          for (const b of wholesOf(second))
            push(this.#heap, { first: i, second: j, a, b, least: Number.NEGATIVE_INFINITY });
        }
      });
    });
    let nodes = 0;
    while (this.#heap.length > 0 && nodes < this.#options.mostCells) {
      if (this.#heap[0]!.least >= this.#threshold()) break;
      nodes += 1;
      this.#look(pop(this.#heap)!);
    }
    const waiting = this.#heap[0]?.least ?? Number.POSITIVE_INFINITY;
    const lowerMm = Math.min(this.#dropped, waiting, this.#met!.mm) - ROUNDING;
    return { ...this.#described(), lowerMm, nodes };
  }

  /** Cells with at least this bound need no further look. */
  #threshold(): number {
    const mm = this.#met?.mm ?? Number.POSITIVE_INFINITY;
    return mm - (mm < 0 ? this.#options.withinOverlap : this.#options.within);
  }

  #look(cell: Cell): void {
    let { least } = cell;
    let [p, s, q, t] = [
      middle(cell.a[0], cell.a[1]),
      middle(cell.a[2], cell.a[3]),
      middle(cell.b[0], cell.b[1]),
      middle(cell.b[2], cell.b[3]),
    ];
    for (let time = 0; time < 2; time += 1) {
      const n = this.#measure(cell, [p, s], [q, t]);
      const bounded = this.#boundAlong(cell, n);
      least = Math.max(least, bounded.gap);
      if (least >= this.#threshold()) {
        this.#dropped = Math.min(this.#dropped, least);
        return;
      }
      [p, s, q, t] = bounded.expected;
    }
    for (const half of this.#halves({ ...cell, least })) push(this.#heap, half);
  }

  /** The direction of the distance in one pose of each; keeps the distance where it is the least yet. */
  #measure(cell: Cell, one: readonly [number, number], other: readonly [number, number]): Triple {
    const [first, second] = [this.#one[cell.first]!, this.#other[cell.second]!];
    stand(first, one, A);
    stand(second, other, B);
    for (let k = 0; k < 24; k += 1) B[k]! += this.#between[k % 3]!;
    const [direction, mm] = apart(first, one, second, other);
    if (mm < (this.#met?.mm ?? Number.POSITIVE_INFINITY)) {
      this.#met = { mm, first: cell.first, second: cell.second, poses: [one, other], direction };
    }
    return direction;
  }

  /** Gap along a direction that holds in the whole cell, and the poses in which it is expected to be least. */
  #boundAlong(cell: Cell, [f, y, v]: Triple): { gap: number; expected: [number, number, number, number] } {
    setCell(...cell.a);
    hullBound(this.#one[cell.first]!, NOWHERE, f, y, v);
    predict();
    const [one, p, s] = [bound[0]!, bound[1]!, bound[2]!];
    setCell(...cell.b);
    hullBound(this.#other[cell.second]!, NOWHERE, -f, -y, -v);
    predict();
    const offset = f * this.#between[0] + y * this.#between[1] + v * this.#between[2];
    return { gap: one + bound[0]! - offset, expected: [p, s, bound[1]!, bound[2]!] };
  }

  /** Two halves of a cell, cut where its width moves the bodies furthest. */
  #halves(cell: Cell): [Cell, Cell] {
    const { a, b } = cell;
    const [ra, rb] = [reachOf(this.#one[cell.first]!), reachOf(this.#other[cell.second]!)];
    const moves = [
      (a[1] - a[0]) * ra.tilt,
      (a[3] - a[2]) * ra.steer,
      (b[1] - b[0]) * rb.tilt,
      (b[3] - b[2]) * rb.steer,
    ];
    const most = moves.indexOf(Math.max(...moves));
    if (most < 2) return halved(a, most).map((each) => ({ ...cell, a: each })) as [Cell, Cell];
    return halved(b, most - 2).map((each) => ({ ...cell, b: each })) as [Cell, Cell];
  }

  /** The least distance met, with its nearest points. */
  #described(): Omit<TwoClearance, "lowerMm" | "nodes"> {
    const { mm, first, second, poses, direction } = this.#met!;
    const [one, other] = [this.#one[first]!, this.#other[second]!];
    const points = this.#pointsAt(one, other, poses, mm, direction);
    const pose = ([p, s]: readonly [number, number]): Pose => ({
      faceAngleDeg: p * DEGREES,
      steeringDeg: s * DEGREES,
    });
    return {
      mm,
      partIds: [one.part.id, other.part.id],
      poses: [pose(poses[0]), pose(poses[1])],
      direction,
      points,
    };
  }

  #pointsAt(one: Mover, other: Mover, poses: Met["poses"], mm: number, direction: Triple): [Triple, Triple] {
    stand(one, poses[0], A);
    stand(other, poses[1], B);
    // Overlapping bodies are moved apart along the direction found: what is nearest then is deepest now.
    const shift = mm > 0 ? 0 : 1 - mm;
    for (let k = 0; k < 24; k += 1) {
      B[k]! += this.#between[k % 3]!;
      A[k]! += shift * direction[k % 3]!;
    }
    nearest(A, B, ...direction);
    const sums = [0, 0, 0, 0, 0, 0];
    for (let k = 0; k < carriers[0]!; k += 1) {
      for (let way = 0; way < 3; way += 1) {
        sums[way]! += shares[k]! * (A[carriers[k + 1]! + way]! - shift * direction[way]!);
        sums[3 + way]! += shares[k]! * (B[carriers[k + 4]! + way]! - this.#between[way]!);
      }
    }
    const fromSaddle = (from: number, { mechanism }: Moving): Triple => [
      sums[from]! + mechanism.tiltAxisForwardMm,
      sums[from + 1]!,
      sums[from + 2]! + mechanism.tiltAxisAboveMm,
    ];
    return [fromSaddle(0, this.#sides[0]), fromSaddle(3, this.#sides[1])];
  }
}

const middle = (from: number, to: number): number => (from + to) / 2;

/** All poses of a part, cut into pieces the bounds are made for. */
function wholesOf({ part }: Mover): Angles[] {
  const steers = part.moves === "steered";
  const pieces = ({ from, to }: { from: number; to: number }): [number, number][] => {
    const [low, high] = [from / DEGREES, to / DEGREES];
    const count = Math.max(1, Math.ceil((high - low) / WIDEST));
    return Array.from({ length: count }, (_, i) => [
      low + ((high - low) * i) / count,
      low + ((high - low) * (i + 1)) / count,
    ]);
  };
  const steering = steers ? pieces(part.steeringAngles) : [[0, 0] as [number, number]];
  return pieces(part.faceAngles).flatMap(([p0, p1]) => steering.map(([s0, s1]): Angles => [p0, p1, s0, s1]));
}

const halved = ([p0, p1, s0, s1]: Angles, side: number): [Angles, Angles] => {
  const [p, s] = [middle(p0, p1), middle(s0, s1)];
  return side === 0
    ? [
        [p0, p, s0, s1],
        [p, p1, s0, s1],
      ]
    : [
        [p0, p1, s0, s],
        [p0, p1, s, s1],
      ];
};

const stand = ({ corners, aft }: Mover, [p, s]: readonly [number, number], out: Float64Array): void =>
  turn(corners, aft, Math.cos(p), Math.sin(p), Math.cos(s), Math.sin(s), out);

/** Direction from the second to the first and signed distance of the bodies that stand in A and B. */
function apart(
  one: Mover,
  [p, s]: readonly [number, number],
  other: Mover,
  [q, t]: readonly [number, number],
): [Triple, number] {
  if (nearest(A, B, 0, 1, 0)) {
    const mm = found[3]!;
    return [[found[0]! / mm, found[1]! / mm, found[2]! / mm], mm];
  }
  const moved = movedAxes(other.part.solid, q, t);
  greatestGap(A, movedAxes(one.part.solid, p, s), B, {
    ...other.part.solid,
    faceAxes: moved.faces,
    edgeAxes: moved.edges,
  });
  return [[axis[0]!, axis[1]!, axis[2]!], axis[3]!];
}

function movedAxes({ faceAxes, edgeAxes }: Solid, p: number, s: number): MovedAxes {
  const [faces, edges] = [new Float64Array(faceAxes.length), new Float64Array(edgeAxes.length)];
  const at = [Math.cos(p), Math.sin(p), Math.cos(s), Math.sin(s)] as const;
  turn(faceAxes, 0, ...at, faces);
  turn(edgeAxes, 0, ...at, edges);
  return { faces, edges };
}

const reaches = new WeakMap<Mover, { readonly tilt: number; readonly steer: number }>();

/** How far a radian of tilt, and of steering, moves the part's furthest corner, mm. */
function reachOf(mover: Mover): { readonly tilt: number; readonly steer: number } {
  let kept = reaches.get(mover);
  if (!kept) {
    const { corners, aft } = mover;
    let [tilt, steer] = [0, 0];
    for (let k = 0; k < 24; k += 3) {
      const r = Math.hypot(corners[k]!, corners[k + 1]!);
      tilt = Math.max(tilt, Math.hypot(r + Math.abs(aft), corners[k + 2]!));
      steer = Math.max(steer, r);
    }
    kept = { tilt, steer };
    reaches.set(mover, kept);
  }
  return kept;
}

/** Puts a cell on the heap, the least bound on top. */
function push(heap: Cell[], cell: Cell): void {
  heap.push(cell);
  let i = heap.length - 1;
  while (i > 0) {
    const parent = (i - 1) >> 1;
    if (heap[parent]!.least <= heap[i]!.least) break;
    [heap[parent], heap[i]] = [heap[i]!, heap[parent]!];
    i = parent;
  }
}

function pop(heap: Cell[]): Cell | undefined {
  const [top] = heap;
  const last = heap.pop();
  if (heap.length === 0 || !last) return top;
  heap[0] = last;
  for (let i = 0; ; ) {
    const [left, right] = [2 * i + 1, 2 * i + 2];
    let least = i;
    if (left < heap.length && heap[left]!.least < heap[least]!.least) least = left;
    if (right < heap.length && heap[right]!.least < heap[least]!.least) least = right;
    if (least === i) return top;
    [heap[least], heap[i]] = [heap[i]!, heap[least]!];
    i = least;
  }
}
