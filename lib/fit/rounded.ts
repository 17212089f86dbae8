/** Every number to 0.01, keys without a value left out, so that the same report reads the same everywhere. */
export function rounded<T>(value: T): T {
  if (typeof value === "number") return (Math.round(value * 100) / 100 + 0) as T;
  if (Array.isArray(value)) return value.map(rounded) as T;
  if (value === null || typeof value !== "object") return value;
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, entry]) => (entry === undefined ? [] : [[key, rounded(entry)]])),
  ) as T;
}
