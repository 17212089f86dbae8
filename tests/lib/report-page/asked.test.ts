/** How a report is asked for in its address. */
import { describe, expect, test } from "vitest";
import {
  askedFrom,
  handlingOf,
  motorAsTried,
  queryFor,
  tapeCookie,
  tapeInForce,
  tapeWords,
  triedBy,
} from "#app/_parts/report/asked.ts";
import { inches } from "#lib/quantity/length.ts";
import { USUAL_TAPE } from "#lib/quantity/uncertainty.ts";
import type { Motor } from "#lib/rig/motor.ts";

const parsed = (query: string) => askedFrom(Object.fromEntries(new URLSearchParams(query)));
const motor: Motor = {
  id: "m",
  label: "M",
  pinAnglesDeg: { value: [4, 8, 12], how: "measured" },
};

describe("an address", () => {
  test("is reopened as it was read, whatever it asked for", () => {
    for (const query of [
      "?units=mm",
      "?units=in&like=1",
      "?units=mm&tape=III-1/16in&straight=1&fold=1&hole=2",
      "?units=mm&tape=I-0.5",
    ]) {
      expect(queryFor(parsed(query))).toBe(query);
    }
  });

  test("is changed in one thing and keeps the rest", () => {
    expect(queryFor(parsed("?units=in&tape=II-2&hole=3"), { hole: undefined, like: true })).toBe(
      "?units=in&like=1&tape=II-2",
    );
  });

  test("that asks for nonsense asks for nothing", () => {
    const odd = parsed("?units=furlongs&like=yes&tape=IV-1&straight=maybe&hole=0");
    expect(odd).toEqual({ lengths: "mm", like: false, straight: false, fold: false });
    expect(parsed("?hole=1.5&tape=II-3").hole).toBeUndefined();
    expect(askedFrom({ tape: ["II-1", "I-1"], hole: ["1", "2"] })).toEqual(parsed(""));
  });
});

describe("the tape in force", () => {
  test("is the address's, else the remembered one, else class II read to the millimetre", () => {
    const sixteenth = { tapeClass: "III", divisionMm: inches(1 / 16) };
    expect(tapeInForce(parsed("?tape=III-1/16in"), "I-5")).toEqual(sixteenth);
    expect(tapeInForce(parsed(""), "I-5")).toEqual({ tapeClass: "I", divisionMm: 5 });
    expect(tapeInForce(parsed(""), "rubber")).toEqual(USUAL_TAPE);
    expect(tapeInForce(parsed(""), undefined)).toEqual({ tapeClass: "II", divisionMm: 1 });
  });

  test("is remembered as it is read back, and told in words", () => {
    const tape = tapeInForce(parsed("?tape=II-1/8in"), undefined);
    const [, text] = /^tape=([^;]+);/.exec(tapeCookie(tape))!;
    expect(tapeInForce(parsed(""), decodeURIComponent(text!))).toEqual(tape);
    expect(tapeWords(tape)).toBe("class II, read to 1/8 in");
  });
});

describe("handling that is tried", () => {
  test("goes to the engine with holes counted from nought; a hole the motor lacks is left out", () => {
    expect(handlingOf(parsed("?straight=1&hole=2"), motor)).toEqual({ straightWhileTilting: true, hole: 1 });
    expect(handlingOf(parsed("?hole=4"), motor)).toEqual({});
    expect(handlingOf(parsed(""), motor)).toEqual({});
  });

  test("folds the tiller on the page only", () => {
    expect(motorAsTried(parsed("?fold=1"), motor).tillerFolds).toBe(true);
    expect(motorAsTried(parsed(""), motor)).toBe(motor);
    expect(motor.tillerFolds).toBeUndefined();
  });

  test("is offered for remedies of mere handling, two at once too, and for none that cuts wood", () => {
    const pins = [4, 8, 12];
    const straight = { change: "straightWhileTilting", from: false, to: true };
    expect(triedBy([straight], pins)).toEqual({ straight: true });
    expect(triedBy([straight, { change: "pinDeg", to: 8 }], pins)).toEqual({ straight: true, hole: 2 });
    expect(triedBy([{ change: "tillerFolds", to: true }], pins)).toEqual({ fold: true });
    expect(triedBy([straight, { change: "notchWidthMm", from: 600, to: 636 }], pins)).toBeUndefined();
    expect(triedBy([{ change: "pinDeg", to: 9 }], pins)).toBeUndefined();
  });
});
