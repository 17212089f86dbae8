/** The facts of a form that are not measured: choices, counts, boxes, limits, as texts. */
import { type FieldAsk, type FieldError, type FieldResult, readText } from "#lib/entry/form-field.ts";
import type { LengthUnit } from "#lib/entry/length-text.ts";
import { practiceLimits } from "#lib/standards/common-practice.ts";
import type { Standard } from "#lib/standards/standard.ts";

/** What became of the facts: those that could be read, with the errors and questions of the others. */
export interface ReadFacts {
  readonly facts: Readonly<Record<string, unknown>>;
  readonly errors: readonly FieldError[];
  readonly asks: readonly FieldAsk[];
}

const COUNTS: readonly string[] = ["strokes", "year", "drainCount"];
const YES_OR_NO: readonly string[] = ["tillerFolds", "hardChine"];
const BOXES: readonly string[] = ["extraSolids", "obstacles"];
const WORDS_FOR: Readonly<Record<string, boolean>> = {
  true: true,
  yes: true,
  on: true,
  false: false,
  no: false,
};
const limits: Readonly<Record<string, Standard>> = practiceLimits;

/** Reads texts deep inside a fact, collecting what cannot be read. */
class Collector {
  readonly errors: FieldError[] = [];
  readonly asks: FieldAsk[] = [];
  readonly #usual: LengthUnit;

  constructor(usual: LengthUnit) {
    this.#usual = usual;
  }

  /** The value of a text, or the text itself where it cannot be read; what is no text passes as it is. */
  number(field: string, given: unknown, unit: "mm" | "deg" | "count"): unknown {
    if (typeof given !== "string") return given;
    const result: FieldResult = readText(field, unit, given, this.#usual, unit !== "count");
    if (result.kind === "value") return result.value;
    if (result.kind === "error") this.errors.push({ field, says: result.says });
    else this.asks.push({ field, readings: result.readings });
    return given;
  }

  boxes(key: string, given: unknown): unknown {
    if (!Array.isArray(given)) return given;
    return given
      .slice(0, 100)
      .map((box: unknown, at) => (isRecord(box) ? this.#box(`${key}.${at}`, box) : box));
  }

  #box(place: string, box: Readonly<Record<string, unknown>>): Record<string, unknown> {
    const corner = (name: string): unknown => {
      const texts = box[name];
      if (!Array.isArray(texts)) return texts;
      return texts
        .slice(0, 4)
        .map((text: unknown, axis) => this.number(`${place}.${name}.${axis}`, text, "mm"));
    };
    return { ...box, fromMm: corner("fromMm"), toMm: corner("toMm") };
  }

  limits(given: unknown): unknown {
    if (!isRecord(given)) return given;
    const filled = Object.entries(given).filter(([, text]) => !isBlank(text));
    return Object.fromEntries(
      filled.map(([key, text]) => [key, this.number(`limits.${key}`, text, unitOfLimit(key))]),
    );
  }

  fact(key: string, given: unknown): unknown {
    if (BOXES.includes(key)) return this.boxes(key, given);
    if (key === "limits") return this.limits(given);
    if (typeof given !== "string") return given;
    if (COUNTS.includes(key)) return this.number(key, given, "count");
    const word = given.trim().toLowerCase();
    return YES_OR_NO.includes(key) && Object.hasOwn(WORDS_FOR, word) ? WORDS_FOR[word] : given;
  }
}

const unitOfLimit = (key: string): "mm" | "deg" =>
  Object.hasOwn(limits, key) && limits[key]?.unit === "deg" ? "deg" : "mm";
const isRecord = (given: unknown): given is Readonly<Record<string, unknown>> =>
  typeof given === "object" && given !== null && !Array.isArray(given);
const isBlank = (given: unknown): boolean =>
  given === undefined || (typeof given === "string" && given.trim() === "");

/** Reads the facts of a form. Empty texts are facts not known. */
export function readFacts(given: Readonly<Record<string, unknown>>, usual: LengthUnit): ReadFacts {
  const collector = new Collector(usual);
  const filled = Object.entries(given).filter(([, fact]) => !isBlank(fact));
  const facts = Object.fromEntries(filled.map(([key, fact]) => [key, collector.fact(key, fact)]));
  return { facts, errors: collector.errors, asks: collector.asks };
}
