import { describe, expect, test } from "vitest";
import { betweenTakings, birgeRatio, consensus, weightedMean } from "#lib/quantity/consensus.ts";
import {
  combined,
  conformance,
  defaultHalfWidth,
  normalShareBelow,
  propagated,
  standardUncertainty,
  tapeError,
} from "#lib/quantity/uncertainty.ts";

describe("half-widths and their combination", () => {
  test("between 7 and 10, so a = 1.5: u = 0.87 (EURACHEM/CITAC guide, appendix E)", () => {
    expect(standardUncertainty(1.5)).toBeCloseTo(0.866, 3);
  });

  test("end gauge of GUM H.1 (JCGM 100:2008): u_c = 32 nm from the published inputs", () => {
    // l = l_s + d - l_s (dAlpha theta + alpha_s dTheta), nm and degrees Celsius.
    const length = ([ls, d, dAlpha, theta, alphaS, dTheta]: readonly number[]) =>
      ls! + d! - ls! * (dAlpha! * theta! + alphaS! * dTheta!);
    const u = propagated(length, [
      { value: 50_000_623, u: 25 },
      { value: 215, u: combined([5.8, 3.9, 6.7]) },
      { value: 0, u: standardUncertainty(1e-6) },
      { value: -0.1, u: combined([0.2, 0.5 / Math.SQRT2]) },
      { value: 11.5e-6, u: standardUncertainty(2e-6) },
      { value: 0, u: standardUncertainty(0.05) },
    ]);
    // The guide prints 32; 31.66 before rounding (standards notes: recomputed from the same inputs).
    expect(u).toBeCloseTo(31.66, 1);
    expect(Math.round(u)).toBe(32);
  });

  test("tape of class II, 508 mm from its hook: 0.7 mm (UK SI 2016/1153, Sch. 1I para. 2)", () => {
    expect(tapeError(508, "II")).toBeCloseTo(0.7, 12);
    expect(standardUncertainty(tapeError(508, "II"))).toBeCloseTo(0.404, 3);
  });

  test("tapes of 10 m without hook: 1.1, 2.3 and 4.6 mm (the same schedule, as tape makers print it)", () => {
    const withoutHook = { I: 0.1, II: 0.2, III: 0.3 };
    for (const [tapeClass, printed] of [
      ["I", 1.1],
      ["II", 2.3],
      ["III", 4.6],
    ] as const) {
      expect(tapeError(10_000, tapeClass) - withoutHook[tapeClass]).toBeCloseTo(printed, 12);
    }
  });

  test("metres are rounded up: 1.2 m counts as 2 (same schedule), 1000 mm as 1", () => {
    expect(tapeError(1200, "II")).toBeCloseTo(0.3 + 0.4 + 0.2, 12);
    expect(tapeError(1000, "II")).toBeCloseTo(0.7, 12);
  });

  test("defaults (common practice, no source): declared 6 mm, estimated 25 mm or 5 %, angles 1, 2, 5 degrees", () => {
    expect(defaultHalfWidth(508, "mm", "declared")).toBe(6);
    expect(defaultHalfWidth(400, "mm", "estimated")).toBe(25);
    expect(defaultHalfWidth(1000, "mm", "estimated")).toBe(50);
    expect(
      ["measured", "declared", "estimated"].map((how) => defaultHalfWidth(12, "deg", how as "measured")),
    ).toEqual([1, 2, 5]);
    // Tape 0.7, half a millimetre division 0.5, edge 2 (by hand: the root of 0.49 + 0.25 + 4 = 2.177).
    expect(defaultHalfWidth(508, "mm", "measured")).toBeCloseTo(2.177, 3);
  });
});

describe("conformance", () => {
  test("JCGM 106:2012, 7.4: y = 13.6, u = 1.8, limits 12.5 and 16.3 give 0.6626", () => {
    expect(conformance(13.6, 1.8, 12.5, 16.3)).toBeCloseTo(0.6626, 3);
  });

  test("normal law, printed tables: Phi(0.5) 0.6915, Phi(1) 0.8413, Phi(1.5) 0.9332, Phi(2) 0.9772, Phi(3) 0.9987", () => {
    const table = [
      [0.5, 0.6915],
      [1, 0.8413],
      [1.5, 0.9332],
      [2, 0.9772],
      [3, 0.9987],
    ] as const;
    for (const [z, share] of table) {
      expect(normalShareBelow(z)).toBeCloseTo(share, 4);
      expect(normalShareBelow(-z)).toBeCloseTo(1 - share, 4);
    }
  });

  test("coverage of ±k sigma (NIST TN 1297, 6.2): 68.27, 95.45 and 99.73 %", () => {
    for (const [k, share] of [
      [1, 0.6827],
      [2, 0.9545],
      [3, 0.9973],
    ] as const) {
      expect(normalShareBelow(k) - normalShareBelow(-k)).toBeCloseTo(share, 4);
    }
  });

  test("series and continued fraction meet at 4: the tail there is 3.167e-5 (printed tables, from memory)", () => {
    expect(1 - normalShareBelow(3.999999)).toBeCloseTo(1 - normalShareBelow(4.000001), 9);
    expect(1 - normalShareBelow(4)).toBeCloseTo(3.167e-5, 8);
  });
});

/** Kacker 2004 (Metrologia 41, Table 1, first row): nine laboratories. */
const LABORATORIES = [
  [61.0, 0.2025],
  [61.4, 1.21],
  [62.21, 0.09],
  [62.3, 0.2025],
  [62.34, 0.3844],
  [62.6, 0.5625],
  [62.7, 0.0676],
  [62.84, 0.0225],
  [65.9, 1.8225],
].map(([value, variance]) => ({ value: value!, u: Math.sqrt(variance!) }));

describe("several takings of one number", () => {
  test("nine laboratories: Mandel-Paule tau 0.8399 (Kacker 2004), mean 62.408, u 0.338 (recomputed there from the inputs)", () => {
    expect(betweenTakings(LABORATORIES)).toBeCloseTo(0.8399, 4);
    const { value, u, between } = consensus(LABORATORIES);
    expect(between).toBeCloseTo(0.8399, 4);
    expect(value).toBeCloseTo(62.4076, 3);
    expect(u).toBeCloseTo(0.338, 4);
  });

  test("nine laboratories, fixed weights: mean 62.5834, u 0.1078, Birge ratio 1.7607", () => {
    const mean = weightedMean(LABORATORIES);
    expect(mean.value).toBeCloseTo(62.5834, 4);
    expect(mean.u).toBeCloseTo(0.1078, 4);
    expect(birgeRatio(LABORATORIES)).toBeCloseTo(1.7607, 4);
  });

  test("six trials (DerSimonian & Kacker 2007, Tables 3 and 4): Mandel-Paule tau 0.3681, mean -0.3811, u 0.2060", () => {
    const n1 = [156, 303, 565, 1570, 103, 4659];
    const n2 = [74, 303, 477, 1565, 105, 4650];
    const a = [5, 5, 12, 69, 9, 313];
    const c = [8, 17, 9, 94, 11, 352];
    const takings = a.map((events, i) => {
      const [b, d] = [n1[i]! - events, n2[i]! - c[i]!];
      const variance = 1 / events + 1 / b + 1 / c[i]! + 1 / d;
      return { value: Math.log((events * d) / (b * c[i]!)), u: Math.sqrt(variance) };
    });
    const { value, u, between } = consensus(takings);
    expect(between).toBeCloseTo(0.3681, 4);
    expect(value).toBeCloseTo(-0.3811, 4);
    expect(u).toBeCloseTo(0.206, 4);
  });

  test("10 ± 4 and 30 ± 5 give 17.80 ± 3.12 before scaling, 9.76 scaled (Particle Data Group's scale factor)", () => {
    const takings = [
      { value: 10, u: 4 },
      { value: 30, u: 5 },
    ];
    const mean = weightedMean(takings);
    expect(mean.value).toBeCloseTo(17.8049, 4);
    expect(mean.u).toBeCloseTo(3.1235, 4);
    expect(mean.u * birgeRatio(takings)).toBeCloseTo(9.756, 3);
  });

  test("takings that agree are not spread further, and one that lies far out is shown", () => {
    const agreeing = [500, 501, 499].map((value) => ({ value, u: 1.3 }));
    expect(consensus(agreeing).between).toBe(0);
    expect(consensus(agreeing).outlying).toEqual([false, false, false]);
    const withSlip = [...agreeing, { value: 555, u: 1.3 }];
    expect(consensus(withSlip).outlying).toEqual([false, false, false, true]);
    expect(consensus(withSlip).value).toBeGreaterThan(501);
  });

  test("no taking at all, or one without spread, is refused", () => {
    expect(() => consensus([])).toThrow(RangeError);
    expect(() => consensus([{ value: 1, u: 0 }])).toThrow(RangeError);
  });
});
