import type { ReactNode } from "react";
import { FieldPicture } from "#app/_parts/drawing/field-picture.tsx";
import { fieldsOf } from "#app/_parts/form/texts.ts";
import type { Kind } from "#lib/db/kind.ts";
import type { FieldKey } from "#lib/draw/field-picture.ts";

/** The picture of every number of a kind, by key, drawn on the server. */
export function pictures(kind: Kind): Readonly<Record<string, ReactNode>> {
  return Object.fromEntries(
    Object.keys(fieldsOf(kind)).map((key) => [key, <FieldPicture key={key} name={key as FieldKey} />]),
  );
}
