/** Motors by the thousand for the benches: the invented ones of the first start, each number drawn a little off, always the same ones. */
import demo from "#data/demo/motors.json" with { type: "json" };
import type { Motor } from "#lib/rig/motor.ts";

/** Even numbers in 0 to 1, the same run for the same start: a linear congruential generator (Knuth's MMIX constants, upper bits). */
export function drawnFrom(start: bigint): () => number {
  let state = start;
  return () => {
    state = (state * 6364136223846793005n + 1442695040888963407n) & 0xffffffffffffffffn;
    return Number(state >> 32n) / 2 ** 32;
  };
}

/** So many motors, lengths within four per cent of an invented one's, angles as they are. */
export function manyMotors(count: number): Motor[] {
  const draw = drawnFrom(4n);
  const kinds = demo as unknown as Motor[];
  return Array.from({ length: count }, (_, i) => {
    const kind = kinds[Math.floor(draw() * kinds.length)]!;
    const entries = Object.entries(kind).map(([key, entry]) => {
      const taken = entry as { value?: unknown };
      const length = key.endsWith("Mm") && typeof taken?.value === "number";
      return [
        key,
        length ? { ...taken, value: Math.round((taken.value as number) * (0.96 + 0.08 * draw())) } : entry,
      ];
    });
    return { ...Object.fromEntries(entries), id: `${kind.id}-${i}` } as Motor;
  });
}
