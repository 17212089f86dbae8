import "server-only";
import { powerWords } from "#app/_parts/record/facts.ts";
import { spareWords } from "#app/_parts/report/plain-words.ts";
import { marginOf, unitOf } from "#app/_parts/report/writing.ts";
import { drawer } from "#app/_work/drawer.ts";
import { checks } from "#lib/checks/index.ts";
import { assess } from "#lib/fit/assess.ts";
import { estimatesFor, filledIn } from "#lib/fit/like-motors.ts";
import type { Outcome, Report } from "#lib/fit/report.ts";
import { type LengthSystem, lengthWriter } from "#lib/quantity/words.ts";
import type { Motor } from "#lib/rig/motor.ts";
import { type Mounting, mount } from "#lib/rig/mounting.ts";
import { motorValues, sternValues } from "#lib/rig/record.ts";
import type { Stern } from "#lib/rig/stern.ts";

/** One motor of the comparison: its report, and the pairing hung. */
export interface Compared {
  readonly motor: Motor;
  readonly report: Report;
  readonly mounting: Mounting;
}

/** The motors of the comparison against the stern, those that are kept, in the order asked for. */
export async function compared(
  stern: Stern,
  ids: readonly string[],
  { like, lengths }: { readonly like: boolean; readonly lengths: LengthSystem },
): Promise<Compared[]> {
  const { stored } = await drawer("motor");
  const records = [...stored.values()].map(({ record }) => record);
  return ids.flatMap((id) => {
    const motor = stored.get(id)?.record;
    if (!motor) return [];
    const estimates = like ? estimatesFor(motor, records) : [];
    const report = assess(motor, stern, {}, { lengths, estimates });
    const rig = { motor: motorValues(filledIn(motor, estimates)), stern: sternValues(stern) };
    return [{ motor, report, mounting: mount(rig) }];
  });
}

/** One line of the comparison: a name, and what stands for each motor. */
export interface Line {
  readonly name: string;
  readonly cells: readonly { readonly words: string; readonly outcome?: Outcome }[];
}

const dash = "–";

/** The facts people choose by, then what each would need of the stern, then every question. */
export function linesOf(
  all: readonly Compared[],
  lengths: LengthSystem,
): { readonly name: string; readonly lines: Line[] }[] {
  const write = lengthWriter(lengths);
  const line = (name: string, words: (one: Compared) => string | undefined): Line => ({
    name,
    cells: all.map((one) => ({ words: words(one) ?? dash })),
  });
  const mm = (value: number | undefined) => (value === undefined ? undefined : write(value));
  return [
    {
      name: "The motor",
      lines: [
        line("Power", ({ motor }) => motor.powerKw && powerWords(motor.powerKw.value)),
        line("Mass", ({ motor }) => motor.massKg && `${Number(motor.massKg.value.toPrecision(3))} kg`),
        line("Shaft class", ({ motor }) => motor.shaftClass),
        line("Shaft length", ({ motor }) => mm(motor.shaftLengthMm?.value)),
        line("Steering", ({ motor }) => motor.steering),
        line("Strokes", ({ motor }) => (motor.strokes === 0 ? "electric" : motor.strokes?.toString())),
        line("Year built", ({ motor }) => motor.year?.toString()),
      ],
    },
    {
      name: "What it asks of the stern",
      lines: [
        line("Plate above the datum", ({ report }) => mm(report.plate?.aboveDatumMm)),
        line(
          "Seat",
          ({ report: { needs } }) =>
            needs.seatRangeMm && `${write(needs.seatRangeMm[0])} to ${write(needs.seatRangeMm[1])}`,
        ),
        line("Notch width, at least", ({ report }) => mm(report.needs.notchWidthMm)),
        line("Drop to the sole, at least", ({ report }) => mm(report.needs.soleDropMm)),
        line("Well depth, at least", ({ report }) => mm(report.needs.wellDepthMm)),
      ],
    },
    { name: "Every question", lines: checks.map(({ id }) => questionLine(id, all, lengths)) },
  ];
}

function questionLine(id: string, all: readonly Compared[], lengths: LengthSystem): Line {
  const cells = all.map(({ report }) => {
    const check = report.checks.find((each) => each.id === id);
    if (!check || check.outcome === "not asked") return { words: "not asked", outcome: "not asked" as const };
    const { margin, spread = 0 } = marginOf(check);
    const words = margin === undefined ? "not known" : spareWords(margin, spread, unitOf(check), lengths);
    return { words, outcome: check.outcome };
  });
  return { name: id.replaceAll("-", " "), cells };
}

/** Whether the motors differ on a line. */
export const differs = ({ cells }: Line): boolean =>
  cells.some(({ words, outcome }) => words !== cells[0]!.words || outcome !== cells[0]!.outcome);
