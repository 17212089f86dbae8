import { loadQuery } from "#app/_parts/afloat/load-query.ts";
import { DIVISIONS, tapeFrom, tapeText } from "#lib/entry/tape.ts";
import type { ReportChange } from "#lib/fit/report.ts";
import { type Tape, USUAL_TAPE } from "#lib/quantity/uncertainty.ts";
import type { LengthSystem } from "#lib/quantity/words.ts";
import type { Motor } from "#lib/rig/motor.ts";
import type { Handling } from "#lib/rig/mounting.ts";

/** How a reader asked to see a report. All of it stands in the address, so that a report can be passed on as it is seen. */
export interface Asked {
  readonly lengths: LengthSystem;
  /** The motor's gaps are filled from like motors. */
  readonly like: boolean;
  /** The tape the lengths were read from, where the address names one. */
  readonly tape?: Tape;
  /** Tried: the motor held straight while tilting. */
  readonly straight: boolean;
  /** Tried: the tiller folded up before tilting. */
  readonly fold: boolean;
  /** Tried: trim-pin hole, counted from the lowest as 1. */
  readonly hole?: number;
  /** Who and what is aboard, as it stands in the address. */
  readonly aboard?: string;
}

/** The values of an address's query. */
export type Query = Readonly<Record<string, string | string[] | undefined>>;

const one = (value: string | string[] | undefined): string => (typeof value === "string" ? value : "");
const MOST_HOLES = 12;

/** What an address asks for. Anything not understood is left as if it were not there. */
export function askedFrom(query: Query): Asked {
  const hole = Number(one(query.hole));
  const tape = tapeFrom(one(query.tape));
  return {
    lengths: query.units === "in" ? "in" : "mm",
    like: query.like === "1",
    ...(tape && { tape }),
    straight: query.straight === "1",
    fold: query.fold === "1",
    ...(Number.isInteger(hole) && hole >= 1 && hole <= MOST_HOLES && { hole }),
    ...(loadQuery(query) && { aboard: loadQuery(query) }),
  };
}

/** The query that reopens a report as it stands, but for the changes. */
export function queryFor(asked: Asked, changes: Partial<Asked> = {}): string {
  const { lengths, like, tape, straight, fold, hole, aboard } = { ...asked, ...changes };
  const parts = [
    `units=${lengths}`,
    like && "like=1",
    tape && `tape=${tapeText(tape)}`,
    straight && "straight=1",
    fold && "fold=1",
    hole !== undefined && `hole=${hole}`,
    aboard,
  ];
  return `?${parts.filter(Boolean).join("&")}`;
}

/** How the motor is handled, as asked; a hole it does not have is left out. */
export function handlingOf({ straight, hole }: Asked, motor: Motor): Handling {
  const has = hole !== undefined && hole <= (motor.pinAnglesDeg?.value.length ?? 0);
  return { ...(straight && { straightWhileTilting: true }), ...(has && { hole: hole - 1 }) };
}

/** The motor as tried: its tiller folded where that was asked for. For looking at, never for storing. */
export const motorAsTried = ({ fold }: Asked, motor: Motor): Motor =>
  fold ? { ...motor, tillerFolds: true } : motor;

/** The tape in force: the address's, else the one remembered, else a class II tape read to the millimetre. */
export const tapeInForce = (asked: Asked, remembered: string | undefined): Tape =>
  asked.tape ?? tapeFrom(remembered ?? "") ?? USUAL_TAPE;

/** "class II, read to 1 mm". */
export function tapeWords({ tapeClass, divisionMm }: Tape): string {
  const division = DIVISIONS.find(({ mm }) => Math.abs(mm - divisionMm) < 0.01);
  return `class ${tapeClass}, read to ${division?.words ?? `${divisionMm} mm`}`;
}

/** The cookie that remembers a tape for a year. */
export const tapeCookie = (tape: Tape): string =>
  `tape=${encodeURIComponent(tapeText(tape))}; Path=/; Max-Age=31536000; SameSite=Lax`;

/** How the page is to be looked at so that a remedy of mere handling is tried; undefined where something is cut or bought. */
export function triedBy(
  changes: readonly ReportChange[],
  pins: readonly number[],
): Partial<Asked> | undefined {
  const parts = changes.map(({ change, to }): Partial<Asked> | undefined => {
    if (change === "straightWhileTilting") return { straight: true };
    if (change === "tillerFolds") return { fold: true };
    const hole = change === "pinDeg" ? pins.findIndex((pin) => Math.abs(pin - Number(to)) < 0.01) : -1;
    return hole < 0 ? undefined : { hole: hole + 1 };
  });
  return parts.every((part) => part !== undefined) ? Object.assign({}, ...parts) : undefined;
}
