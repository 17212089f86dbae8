/** Changes to a record: only what is sent is changed, and null takes a key away (as RFC 7396 has it, one level deep). */
import { z } from "zod";

/** Changes to a record of type T; the id stays, the label can be changed but not taken away. */
export type Patch<T extends { readonly id: string; readonly label: string }> = {
  readonly [K in Exclude<keyof T, "id" | "label">]?: T[K] | null;
} & { readonly label?: string };

type PatchShape<S> = {
  readonly [K in keyof S]: S[K] extends z.ZodOptional<infer Inner extends z.ZodType>
    ? z.ZodOptional<z.ZodNullable<Inner>>
    : S[K] extends z.ZodType
      ? z.ZodOptional<S[K]>
      : never;
};

/** The shape of a record made into that of its patch: every key optional, those that were optional nullable. */
export function patchShape<S extends Readonly<Record<string, z.ZodType>>>(shape: S): PatchShape<S> {
  const entries = Object.entries(shape).map(([key, schema]) => [
    key,
    schema instanceof z.ZodOptional ? z.nullable(schema.unwrap()).optional() : schema.optional(),
  ]);
  return Object.fromEntries(entries) as PatchShape<S>;
}

/** The record with the changes made. It may be impossible as a whole: parse it again before it is kept. */
export function applyPatch<T extends { readonly id: string; readonly label: string }>(
  record: T,
  patch: Patch<T>,
): Record<string, unknown> {
  const merged = { ...record, ...patch };
  return Object.fromEntries(
    Object.entries(merged).filter(([, value]) => value !== null && value !== undefined),
  );
}
