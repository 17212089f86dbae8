/** The plan in words: marks, saw settings, screws, stock, and the work in order with boxes to tick. */
import { type Drawing, lettering, type Mark } from "#lib/draw/drawing.ts";
import { folded } from "#lib/draw/lettering.ts";
import { boughtSize, writtenDown, writtenUp } from "#lib/draw/paper/figures.ts";
import type { Sheeting } from "#lib/draw/paper/page.ts";
import { MARGIN, PAPERS, square } from "#lib/draw/paper/paper.ts";
import { BLOCK_HIGH, titleBlock } from "#lib/draw/paper/title-block.ts";
import type { CutPlan, WellPlan } from "#lib/fit/cut-plan/plan.ts";

/** One line of a text page. */
interface Line {
  readonly text: string;
  readonly kind: "head" | "plain" | "tick";
}

const HEIGHT = 2.5;
const STEP = 4.4;

const head = (text: string): Line => ({ text, kind: "head" });
const plain = (text: string): Line => ({ text, kind: "plain" });

/** Screws, drain, fillets and stock of a well. */
function wellLines(well: WellPlan, lengths: CutPlan["lengths"]): Line[] {
  const up = (mm: number) => writtenUp(mm, lengths);
  const size = (mm: number) => boughtSize(mm, lengths);
  return [
    head("Screws"),
    ...well.fasteners.map(({ says, screw, gauge, count, pilot, stackMm, positionsMm }) =>
      plain(
        `${says}: ${screw ? `${count} screws ${screw.text}, ${gauge}` : "too thin a stack for any screw: glue only"}; stack ${writtenDown(stackMm, lengths)}, pilot ${pilot.pointMm.toFixed(1)} mm for the point and ${pilot.shankMm.toFixed(1)} mm for the shank, bit stopped at ${writtenDown(pilot.stopMm, lengths)}. From the left end: ${positionsMm.map(up).join(", ")}.`,
      ),
    ),
    head("Drains and fillets"),
    plain(
      `${well.drain.says} Tube ${size(well.drain.tubeOutsideMm)} outside, hole ${well.drain.hole.text}; one to port, one to starboard.`,
    ),
    plain(
      `Fillets of radius ${size(well.fillets.radiusMm)}: ${Math.ceil(well.fillets.millilitres / 10) * 10} ml of filler in all, before waste.`,
    ),
    head("Stock"),
    ...well.stock.sheets.map(({ thicknessMm, sizeMm, parts }) =>
      plain(
        `Sheet ${size(thicknessMm)} thick, ${size(sizeMm[0])} x ${size(sizeMm[1])}: ${parts.map(({ part, atMm, turned }) => `${part} at ${up(atMm[0])}, ${up(atMm[1])}${turned ? " turned" : ""}`).join("; ")}.`,
      ),
    ),
    ...well.stock.boards.map(({ thicknessMm, widthMm, longMm, parts }) =>
      plain(
        `Board ${size(thicknessMm)} x ${size(widthMm)}, ${size(longMm)} long: ${parts.map(({ part, lengthMm }) => `${part} ${up(lengthMm)}`).join("; ")}.`,
      ),
    ),
    ...(well.stock.tooLarge.length > 0
      ? [plain(`Too large for one piece, to be scarfed: ${well.stock.tooLarge.join(", ")}.`)]
      : []),
    plain(
      `In all ${well.stock.areaM2.toFixed(2)} m² of panel and ${well.stock.lengthM.toFixed(2)} m of board.`,
    ),
  ];
}

/** All lines of the plan in words. */
function linesOf(plan: CutPlan): Line[] {
  return [
    plain(`For the stern ${plan.stern} and ${plan.motors.join(", ")}.`),
    head("Advice"),
    ...plan.advice.map(plain),
    plain(plan.rounding),
    ...(plan.warnings.length > 0 ? [head("Mind"), ...plan.warnings.map(({ says }) => plain(says))] : []),
    ...(plan.missing.length > 0 ? [plain(`Not known: ${plan.missing.join(", ")}.`)] : []),
    ...(plan.well ? wellLines(plan.well, plan.lengths) : []),
    head("The work in order"),
    ...plan.checklist.flatMap(({ says, cautions }): Line[] => [
      { text: says, kind: "tick" },
      ...cautions.map((caution) => plain(`CAUTION: ${caution}`)),
    ]),
  ];
}

/** The plan in words on as many sheets as it takes. `number` gives a sheet its number. */
export function textPages(plan: CutPlan, sheeting: Sheeting, number: (i: number) => number): Drawing[] {
  const [wide, high] = PAPERS[sheeting.paper];
  const breadth = wide - 2 * MARGIN - 14;
  const rows = linesOf(plan).flatMap(({ text, kind }) =>
    folded(text, HEIGHT, breadth).map(
      (words, i): Line => ({ text: words, kind: i === 0 || kind === "head" ? kind : "plain" }),
    ),
  );
  const fit = Math.floor((high - 2 * MARGIN - BLOCK_HIGH - 12) / STEP);
  const pages = Array.from({ length: Math.ceil(rows.length / fit) }, (_, i) =>
    rows.slice(i * fit, (i + 1) * fit),
  );
  return pages.map((lines, i) => {
    const top = high - MARGIN - 8;
    const marks = lines.flatMap(({ text, kind }, k): Mark[] => {
      const y = top - k * STEP;
      return [
        ...(kind === "tick" ? [square([MARGIN + 4, y], 2.6, "tick")] : []),
        lettering([MARGIN + (kind === "head" ? 4 : 9), y], text, {
          height: kind === "head" ? 3 : HEIGHT,
          bold: kind === "head",
        }),
      ];
    });
    const of = {
      title: "The plan in words",
      documentType: "Cut plan",
      scale: "none",
      dimensions: sheeting.dimensions,
      sheet: number(i),
      sheets: sheeting.sheets,
    };
    return {
      title: `The plan in words, ${i + 1}`,
      says: "Advice, screws, drains, stock and the work in order.",
      scale: 1,
      window: { left: 0, right: wide, bottom: 0, top: high },
      marks: [...marks, ...titleBlock(sheeting.paper, 1, sheeting.stamp, of)],
    };
  });
}
