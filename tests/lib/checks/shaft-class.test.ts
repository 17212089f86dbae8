import { describe, expect, test } from "vitest";
import { ask, margin, rooms, taken } from "./bench.ts";

const ID = "shaft-class";
/** Only the label is known of the leg. */
const LABEL = { shaftLengthMm: undefined };

describe("Shaft class", () => {
  test("nominal legs of 15, 20, 25 and 30 in (common practice, no source)", () => {
    // 15 x 25.4 = 381, 508, 635, 762: the seat at nominal has half an inch to spare either way.
    for (const [shaftClass, seatMm] of [
      ["short", 381],
      ["long", 508],
      ["extra-long", 635],
      ["ultra-long", 762],
    ] as const) {
      expect(rooms(ID, { ...LABEL, shaftClass, seatMm, transomTopMm: 900 })).toEqual([12.7, 12.7]);
    }
  });

  test("either edge, half an inch; there the label alone no longer decides", () => {
    const answer = (seatMm: number) => ask(ID, { ...LABEL, seatMm });
    expect(answer(520.7).outcome).toBe("fits");
    expect(answer(495.3).outcome).toBe("fits");
    // 12.8 off, less than half a step (2.5 in = 63.5): legs of one class differ by as much.
    for (const seatMm of [520.8, 495.2, 508 + 63.5, 508 - 63.5]) {
      expect(answer(seatMm)).toMatchObject({ outcome: "cannot tell", missing: ["shaftLengthMm"] });
    }
    // More than half a step off no leg of that class would do: 63.6 - 12.7 = 50.9 short.
    expect(answer(508 + 63.6).outcome).toBe("fouls");
    expect(margin(ID, { ...LABEL, seatMm: 508 - 63.6 })).toBeCloseTo(-50.9, 9);
  });

  test("gives way to the plate's height where that was answered and does not foul", () => {
    // 515 over the datum with a leg of 520: plate 5 below it. 515 is within half an inch of 508 anyway;
    // at 525 the label is 17 off, and a leg of 535 puts the plate 10 below the datum.
    expect(ask(ID, { seatMm: 515 }).outcome).toBe("fits");
    expect(ask(ID, { seatMm: 525, shaftLengthMm: 535 })).toMatchObject({ outcome: "not asked" });
    // Where the plate fouls too, the label's foul stands: leg 508, plate 17 above the datum.
    expect(ask(ID, { seatMm: 525, shaftLengthMm: 508 }).outcome).toBe("fouls");
  });

  test("a leg measured but no axes: a label that does not match settles nothing", () => {
    expect(ask(ID, { seatMm: 525, tiltAxisAboveMm: undefined })).toMatchObject({
      outcome: "cannot tell",
      missing: ["tiltAxisAboveMm"],
    });
    expect(ask(ID, { seatMm: 600, rakeDeg: undefined }).missing).toEqual(["rakeDeg"]);
    expect(ask(ID, { seatMm: 515, tiltAxisAboveMm: undefined }).outcome).toBe("fits");
  });

  test("spread of the seat", () => {
    // 12.7 - 10 = 2.7 to spare; U = 2 x 3/sqrt 3 = 3.46 with 3 mm, 1.15 with 1 mm.
    expect(ask(ID, { ...LABEL, seatMm: taken(518, 3) }).outcome).toBe("cannot tell");
    expect(ask(ID, { ...LABEL, seatMm: taken(518, 1) }).outcome).toBe("fits");
  });

  test("needs the class and a seat, or the uncut top in its place", () => {
    expect(ask(ID, { ...LABEL, shaftClass: undefined })).toMatchObject({
      outcome: "cannot tell",
      missing: ["shaftClass"],
    });
    const uncut = { ...LABEL, seatMm: undefined, notchWidthMm: undefined };
    expect(margin(ID, { ...uncut, transomTopMm: 510 })).toBeCloseTo(10.7, 9);
    expect(ask(ID, { ...uncut, transomTopMm: undefined })).toMatchObject({
      outcome: "cannot tell",
      missing: ["seatMm"],
    });
  });

  test("the owner's limit, said to be the owner's", () => {
    const own = { ...LABEL, seatMm: 528, limits: { shaftClassMm: 20 } };
    expect(ask(ID, own)).toMatchObject({ outcome: "fits", ruling: { margin: 0 } });
    expect(ask(ID, own).ruling?.edge.limit).toMatchObject({ value: 20, status: "set by the owner" });
  });
});
