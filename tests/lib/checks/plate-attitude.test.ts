import { describe, expect, test } from "vitest";
import { ask, margin, rooms, taken, untold, without } from "./bench.ts";

const ID = "plate-attitude";

describe("Plate attitude", () => {
  test("the best hole against the rake, both ways", () => {
    // Rake 10, holes 0, 6, 12: the third, 2 degrees out; 3 - 2 = 1 and 3 + 2 = 5 to spare.
    const [out, inward] = rooms(ID, { rakeDeg: 10, pinAnglesDeg: [0, 6, 12] });
    expect(out).toBeCloseTo(1, 9);
    expect(inward).toBeCloseTo(5, 9);
    expect(ask(ID, { rakeDeg: 10, pinAnglesDeg: [0, 6, 12] }).says).toContain("number 3 from the bottom");
  });

  test("either edge: three degrees fit, a hair more fouls", () => {
    const outcome = (rakeDeg: number) => ask(ID, { rakeDeg, pinAnglesDeg: [10] }).outcome;
    expect([7, 6.99, 13, 13.01].map(outcome)).toEqual(["fits", "fouls", "fits", "fouls"]);
  });

  test("the lower hole wins a tie: trimmed in, and by just the limit", () => {
    const { ruling, says } = ask(ID, { rakeDeg: 9, pinAnglesDeg: [6, 12] });
    expect(ruling?.margin).toBeCloseTo(0, 9);
    expect(says).toContain("number 1 from the bottom");
    expect(says).toContain("trimmed in");
  });

  test("spread: half a degree on both angles, U = 2 sqrt(0.25/3 + 0.25/3) = 0.816", () => {
    const at = (rake: number) =>
      ask(ID, {
        rakeDeg: taken(rake, 0.5),
        pinAnglesDeg: { value: [10], plusMinus: 0.5, how: "measured" },
      }).outcome;
    expect([12.1, 12.3, 13.7, 13.9].map(at)).toEqual(["fits", "cannot tell", "cannot tell", "fouls"]);
  });

  test("needs the pin angles and the rake, and nothing of the leg's length", () => {
    expect(without(ID, ["pinAnglesDeg", "rakeDeg"])).toEqual(untold(["pinAnglesDeg", "rakeDeg"]));
    expect(ask(ID, { shaftLengthMm: undefined, seatMm: undefined }).outcome).toBe("fits");
  });

  test("the owner's limit, said to be the owner's", () => {
    const own = { rakeDeg: 5, limits: { plateAttitudeDeg: 6 } };
    expect(margin(ID, own)).toBeCloseTo(1, 9);
    expect(ask(ID, own).ruling?.edge.limit).toMatchObject({ value: 6, status: "set by the owner" });
  });
});
