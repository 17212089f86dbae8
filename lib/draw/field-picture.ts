/**
 * A small picture for every measured number: from where to where it is taken. The pictures are data: a
 * schematic, the part of it that is shown, and the two ends of the measurement (or the two arms of an
 * angle). Not to scale; the heavy accent line is the measurement, the dots are its ends.
 */
import type { Drawing, Flat } from "#lib/draw/drawing.ts";
import { measurement, onCircle } from "#lib/draw/measurement.ts";
import { MOTOR_PICTURES } from "#lib/draw/motor-pictures.ts";
import { SCHEMATICS, WINDOWS } from "#lib/draw/schematic.ts";
import { STERN_PICTURES } from "#lib/draw/stern-pictures.ts";
import type { Picture } from "#lib/draw/taken.ts";
import { type MotorKey, motorFields } from "#lib/rig/motor.ts";
import { type SternKey, sternFields } from "#lib/rig/stern.ts";

/** A key of any measured number of a motor or a stern. */
export type FieldKey = MotorKey | SternKey;

const PICTURES: Record<FieldKey, Picture> = { ...MOTOR_PICTURES, ...STERN_PICTURES };

/** The two ends a picture marks: of a length, of the arc of an angle, of a pointer. */
export function markedEnds(key: FieldKey): readonly [Flat, Flat] {
  const { taken } = PICTURES[key];
  if ("centre" in taken) {
    return [
      onCircle(taken.centre, taken.radius, taken.fromDeg),
      onCircle(taken.centre, taken.radius, taken.toDeg),
    ];
  }
  return "at" in taken ? [taken.from, taken.at] : [taken.from, taken.to];
}

/** Breadth and height a picture may take on paper, mm. */
const PICTURE = 62;

/** The picture of one number, by its key: a schematic with the measurement marked on it. */
export function fieldPicture(key: FieldKey): Drawing {
  const { on, window: name, taken } = PICTURES[key];
  const window = WINDOWS[name];
  const scale = Math.max(window.right - window.left, window.top - window.bottom) / PICTURE;
  const field = { ...motorFields, ...sternFields }[key];
  const marks = [...SCHEMATICS[on](), ...measurement(taken, scale)];
  return { title: field.name, says: field.take, scale, window, marks };
}
