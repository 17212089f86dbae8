import { type FieldKey, fieldPicture } from "#lib/draw/field-picture.ts";
import { toSvg } from "#lib/draw/svg.ts";
import look from "./drawing.module.css";

/**
 * The picture of how one number is taken. The field's own words stand beside it and say the same, so
 * the picture is left out of the reading order.
 */
export function FieldPicture({ name }: { readonly name: FieldKey }) {
  const svg = toSvg(fieldPicture(name), { decoration: true });
  // biome-ignore lint/security/noDangerouslySetInnerHtml: our own drawing; every word in it is escaped by the writer
  return <span className={look.picture} aria-hidden="true" dangerouslySetInnerHTML={{ __html: svg }} />;
}
