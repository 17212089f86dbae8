/**
 * Thickness of a plywood transom for the power it carries: the one published rule found. Written for
 * commercial vessels of timber; for anything else it is a yardstick that says whether a thickness is of the
 * usual order. Read in a transcription that warns it is not the official text and that a later standard
 * may have replaced it.
 */
import type { Citation } from "#lib/standards/citation.ts";

export const plywoodTransom: Citation = {
  document: "Uniform Shipping Laws Code, section 5M (timber), part 4",
  clause: "M.42.4",
  edition: "2008",
  status: "published",
  read: "in a secondary text",
  binds: "commercial timber vessels under 35 m in Australia",
  url: "https://www.amsa.gov.au/sites/default/files/2023-11/usl_code_5m_2008.pdf",
};

/** Extra thickness in way of the motor, mm, for a total power below `underKw`; 165 kW and more is for special consideration. */
export const EXTRA_THICKNESS = [
  { underKw: 30, mm: 20 },
  { underKw: 60, mm: 25 },
  { underKw: 100, mm: 30 },
  { underKw: 135, mm: 35 },
  { underKw: 165, mm: 45 },
] as const;

export interface TransomThickness {
  /** Away from the motor, mm. */
  readonly plainMm: number;
  /** In way of the motor, mm; undefined from 165 kW up, where the rule gives no figure. */
  readonly atMotorMm: number | undefined;
}

/** Plywood transom of a hull `waterlineLengthMm` long carrying `totalPowerKw` on it: t = 0.041 (160 + 50 L), L in metres, and the extra for the power. */
export function transomThickness(waterlineLengthMm: number, totalPowerKw: number): TransomThickness {
  const plainMm = 0.041 * (160 + (50 * waterlineLengthMm) / 1000);
  const extra = EXTRA_THICKNESS.find(({ underKw }) => totalPowerKw < underKw);
  return { plainMm, atMotorMm: extra && plainMm + extra.mm };
}
