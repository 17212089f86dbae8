/**
 * Plywood transom thickness after the Uniform Shipping Laws Code 2008, section 5M, M.42.4, as read in a
 * secondary text; values worked by hand from t = 0.041 (160 + 50 L) and the extra for the power.
 */
import { describe, expect, test } from "vitest";
import { transomThickness } from "#lib/standards/usl-code-5m.ts";

// By hand, to a tenth: 0.041 x 360 = 14.76, 0.041 x 410 = 16.81, 0.041 x 460 = 18.86.
describe.each([
  [4, 14.76, [34.8, 39.8, 44.8, 49.8, 59.8]],
  [5, 16.81, [36.8, 41.8, 46.8, 51.8, 61.8]],
  [6, 18.86, [38.9, 43.9, 48.9]],
] as const)("%d m on the waterline", (metres, plain, atMotor) => {
  test(`${plain} mm away from the motor`, () => {
    expect(transomThickness(metres * 1000, 10).plainMm).toBeCloseTo(plain, 9);
  });

  const powers = [20, 45, 80, 120, 150];
  test.each(atMotor.map((mm, i) => [powers[i]!, mm]))("%d kW: %d mm in way of it", (powerKw, mm) => {
    expect(transomThickness(metres * 1000, powerKw).atMotorMm).toBeCloseTo(mm, 1);
  });
});

test("a band begins at its lower power: 30, 60, 100 and 135 kW belong to the thicker one; 165 kW has no figure", () => {
  const steps = [30, 60, 100, 135].map(
    (kW) => transomThickness(5000, kW).atMotorMm! - transomThickness(5000, kW - 0.01).atMotorMm!,
  );
  [5, 5, 5, 10].forEach((step, i) => {
    expect(steps[i]).toBeCloseTo(step, 9);
  });
  expect(transomThickness(5000, 165)).toMatchObject({ atMotorMm: undefined });
});
