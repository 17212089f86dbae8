/**
 * What the invented records have to show: some pairings that fit, one that fouls in each way, some that
 * cannot be told. Why each comes out as it does is worked by hand beside it.
 */
import { describe, expect, test } from "vitest";
import { checks } from "#lib/checks/index.ts";
import { examine } from "#lib/fit/examine.ts";
import type { Outcome } from "#lib/fit/report.ts";
import { motorOf, sternOf } from "#tests/lib/data/demo.ts";

function asked(motor: string, stern: string) {
  const { answers, governing } = examine(motorOf(motor), sternOf(stern));
  const outcomes = new Map<string, Outcome>(answers.map(({ check, outcome }) => [check.id, outcome]));
  return { answers, outcomes, verdict: governing.outcome, governs: governing.check.id };
}

describe("fits wholly", () => {
  test.each([
    // Seat 510 raked 14, leg 522 run in the hole at 16: about 11 below the datum; notch 760, well 680.
    ["15-hp-long-tiller-four-stroke", "vee-runabout-long-well"],
    // Seat 400, leg 412: about 12 below.
    ["15-hp-short-tiller-two-stroke", "flat-skiff-short"],
    // Seat 638, leg 650.
    ["50-hp-extra-long-remote-four-stroke", "vee-workboat-extra-long-well"],
    // Seat 765, leg 778.
    ["60-hp-ultra-long-remote-four-stroke", "vee-cabin-boat-ultra-long"],
  ])("%s on %s", (motor, stern) => {
    const { verdict, outcomes } = asked(motor, stern);
    expect(verdict).toBe("fits");
    for (const outcome of outcomes.values()) expect(["fits", "not asked"]).toContain(outcome);
  });
});

/** Motor, stern, the question it fouls, and whether that one governs. */
const FOULS = [
  // Leg 436 on a seat of 400: some 36 below the datum.
  ["9-9-hp-short-tiller-four-stroke", "flat-skiff-short", "plate-height", true],
  // Highest hole 16 on a rake of 22: 6 degrees trimmed in.
  ["2-and-a-half-hp-short-tiller-four-stroke", "flat-pram-steep-rake", "plate-attitude", true],
  // Nothing known but "long": nominal 508 on a seat of 400.
  ["15-hp-long-advertised", "flat-skiff-short", "shaft-class", true],
  // Clamps close to 28, the transom is 26.
  ["15-hp-short-tiller-two-stroke", "round-tender-narrow-notch", "clamp-opening", false],
  // Notch 215 less two corners of 20 is 175 flat; the bracket is 180.
  ["6-hp-short-tiller-four-stroke", "round-tender-narrow-notch", "bracket", true],
  // A tiller of 780 that reaches past the bulkhead's face at 40 + 575.
  ["40-hp-long-tiller-two-stroke", "round-launch-long-keel", "tilt-room", false],
  // 640 sin 45 + 44/2 cos 45 = 468 off the centreline, the well's half-width 380 to 350.
  ["25-hp-long-tiller-two-stroke", "round-launch-long-keel", "side-room", true],
  // Nobody said that the tiller folds: 535 of it swings down on a sole 190 below the seat.
  ["10-hp-long-tiller-two-stroke", "vee-runabout-long-well", "sole-room", true],
  // Handles sweep 74 + 70 = 144; with an inch 169.4, the sole is 158 down. The pads reach 165.
  ["60-hp-long-remote-two-stroke", "round-launch-long-keel", "screw-handles", false],
  ["60-hp-long-remote-two-stroke", "round-launch-long-keel", "clamp-depth", false],
  // The cowl's corner turns out to 180 sin 45 + 155 cos 45 = 237, the cheek stands 240 off and 184 high, the cowl hangs to 130.
  ["9-9-hp-long-tiller-four-stroke", "vee-fast-boat-deep-notch", "steering-room", true],
  // The cowl's aft corner turns out to (325 + 165) sin 45 = 346, down to 132; the ladder stands 300 off and 190 high.
  ["15-hp-long-tiller-four-stroke", "flat-punt-long-ladder", "obstacle-room", true],
  // Leg and skeg of 1112 on a seat of 400: full up at 71, 59 from plumb, 1138 cos 59 = 586 down, 400 + 35 + 138 sin 59 = 553 up.
  ["60-hp-ultra-long-remote-four-stroke", "flat-skiff-short", "skeg-lift", false],
] as const;

describe("fouls", () => {
  test.each(FOULS)("%s on %s: %s", (motor, stern, check, rules) => {
    const { outcomes, verdict, governs } = asked(motor, stern);
    expect(verdict).toBe("fouls");
    expect(outcomes.get(check)).toBe("fouls");
    if (rules) expect(governs).toBe(check);
  });

  test("between them they foul in every way there is", () => {
    const fouled = new Set<string>(FOULS.map(([, , check]) => check));
    expect(checks.map(({ id }) => id).filter((id) => !fouled.has(id))).toEqual([]);
  });
});

describe("cannot be told", () => {
  test.each([
    // Leg 432 on a seat of 400 comes within a hair of the lowest place of the window; what is lacking is precision.
    ["5-hp-short-tiller-four-stroke", "flat-skiff-short", "plate-height", []],
    // How far it tilts was never taken.
    ["15-hp-long-remote-two-stroke", "vee-runabout-long-well", "steering-room", ["tiltArcDeg"]],
    // Nothing is known of a bolted-on motor's clamps.
    [
      "40-hp-long-remote-four-stroke",
      "vee-runabout-long-well",
      "clamp-opening",
      ["clampOpeningMinMm", "clampOpeningMaxMm"],
    ],
    // Nothing but the class.
    [
      "15-hp-long-advertised",
      "vee-runabout-long-well",
      "plate-height",
      [
        "shaftLengthMm",
        "measuredAtDeg",
        "tiltAxisForwardMm",
        "tiltAxisAboveMm",
        "steerAxisAftMm",
        "pinAnglesDeg",
      ],
    ],
  ])("%s on %s", (motor, stern, check, missing) => {
    const { verdict, governs, answers } = asked(motor, stern);
    expect(verdict).toBe("cannot tell");
    expect(governs).toBe(check);
    expect(answers.find((one) => one.check.id === check)?.missing).toEqual(missing);
  });
});
