/** Whether the printer kept the size, from what a rule shows on the check page's 100 mm bar. */

/** Length of the bar the question is about, mm. */
export const RULER_BAR_MM = 100;
/** Most a bar may be off before templates are refused: half a percent (common practice, no source). */
export const RULER_SLACK = 0.005;
/** Beyond this the rule was misread or the wrong bar measured: no printer shrinks by a fifth. */
const MISREAD = 0.2;

/** The answer to "what did your rule show?". */
export interface RulerCorrection {
  /** True where the templates may be used as they are. */
  readonly good: boolean;
  /** What the file must be drawn larger (above 1) or smaller by to come out right on this printer; absent where the figure cannot be a reading of the bar. */
  readonly factor?: number;
  readonly says: string;
}

/** Judges a reading of the 100 mm bar, mm. Anything but a number near 100 is refused in words, never thrown. */
export function rulerCorrection(shownMm: number): RulerCorrection {
  const off = shownMm / RULER_BAR_MM - 1;
  if (!Number.isFinite(off) || Math.abs(off) > MISREAD) {
    return {
      good: false,
      says: "That cannot be the 100 mm bar: lay a millimetre rule along it and read again.",
    };
  }
  if (Math.abs(off) <= RULER_SLACK + 1e-9) {
    return { good: true, factor: 1, says: "The printer kept the size: the templates can be used." };
  }
  const factor = RULER_BAR_MM / shownMm;
  const percent = Math.abs(off * 100).toFixed(1);
  return {
    good: false,
    factor,
    says: `The print came out ${percent} % too ${off > 0 ? "large" : "small"}: do not use these templates. Turn off "fit to page" and print at 100 %, or take the file corrected by ${(factor * 100).toFixed(2)} % and check that one too.`,
  };
}
