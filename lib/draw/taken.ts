/** How a measurement is marked on a picture: a length, an angle, or a pointer at something read or weighed. */
import type { Flat } from "#lib/draw/drawing.ts";
import type { SchematicName, WindowName } from "#lib/draw/schematic.ts";

/** A length between two points (straight, level or plumb, the line shifted aside by true mm), an angle between two directions, or a pointer at something that is read or weighed. */
export type Taken =
  | {
      readonly from: Flat;
      readonly to: Flat;
      readonly along: "straight" | "level" | "plumb";
      readonly aside: number;
    }
  | { readonly centre: Flat; readonly radius: number; readonly fromDeg: number; readonly toDeg: number }
  | { readonly from: Flat; readonly at: Flat; readonly word: string };

/** A picture as data: which schematic, which part of it, and what is marked. */
export interface Picture {
  readonly on: SchematicName;
  readonly window: WindowName;
  readonly taken: Taken;
}

/** Along the line between two points, shifted `aside` to its left. */
export const straight = (from: Flat, to: Flat, aside = 0): Taken => ({ from, to, along: "straight", aside });

/** Level between two points, `aside` above them (minus: below). */
export const level = (from: Flat, to: Flat, aside: number): Taken => ({ from, to, along: "level", aside });

/** Plumb between two points, `aside` to the right of them (minus: to the left). */
export const plumb = (from: Flat, to: Flat, aside: number): Taken => ({ from, to, along: "plumb", aside });

/** Between two directions at a point, degrees anticlockwise from the right. */
export const angle = (centre: Flat, radius: number, fromDeg: number, toDeg: number): Taken => ({
  centre,
  radius,
  fromDeg,
  toDeg,
});

/** From a word to the thing it is read or weighed on. */
export const pointer = (from: Flat, at: Flat, word: string): Taken => ({ from, at, word });

/** Puts a picture together. */
export const picture = (on: SchematicName, window: WindowName, taken: Taken): Picture => ({
  on,
  window,
  taken,
});
