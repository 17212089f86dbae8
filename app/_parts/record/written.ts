import { formatLength } from "#lib/entry/length-format.ts";
import { KG_PER_POUND } from "#lib/quantity/mass.ts";
import type { How, Unit } from "#lib/quantity/measured.ts";
import { WATTS_PER_HORSEPOWER } from "#lib/quantity/power.ts";

/** A number as a record's sheet shows it: in the vocabulary's unit, and in the other system beside. */
export interface Written {
  readonly main: string;
  readonly beside?: string;
}

/** A power (kW) in mechanical horsepower. */
export const horsepowerOf = (kW: number): number => (kW * 1000) / WATTS_PER_HORSEPOWER;

const threeFigures = (value: number): number => Number(value.toPrecision(3));
const withMinus = (text: string): string => text.replace("-", "−");

/** One number in both systems. */
export function written(value: number, unit: Unit): Written {
  switch (unit) {
    case "mm":
      return { main: formatLength(value, "mm"), beside: formatLength(value, "in") };
    case "deg":
      return { main: withMinus(`${value}°`) };
    case "kg":
      return { main: `${threeFigures(value)} kg`, beside: `${threeFigures(value / KG_PER_POUND)} lb` };
    case "kW":
      return {
        main: `${threeFigures(value)} kW`,
        beside: `${threeFigures(horsepowerOf(value))} hp`,
      };
    case "count":
      return { main: String(value) };
  }
}

/** A number, or the list of the trim-pin holes, in both systems. */
export function writtenAll(value: number | readonly number[], unit: Unit): Written {
  return typeof value === "number"
    ? written(value, unit)
    : { main: value.map((each) => written(each, unit).main).join(", ") };
}

/** How a number was come by, beside it. */
export const howShort: Readonly<Record<How, string>> = {
  measured: "measured",
  declared: "papers or seller",
  estimated: "estimated",
};
