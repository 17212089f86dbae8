import { LikeMark } from "#app/_parts/report/like-mark.tsx";
import { OutcomeWord } from "#app/_parts/report/outcome-mark.tsx";
import { restsOnLike } from "#app/_parts/report/plain-words.ts";
import { unbroken } from "#app/_parts/report/writing.ts";
import { obstacleWords, partWords } from "#lib/draw/clearance-marks.ts";
import type { Outcome, Report, ReportClearance } from "#lib/fit/report.ts";
import { type LengthSystem, lengthWriter } from "#lib/quantity/words.ts";
import type { SternValues } from "#lib/rig/stern.ts";
import look from "./report.module.css";

interface Figure {
  readonly name: string;
  /** The question that judges it. */
  readonly check?: string;
  readonly have?: string;
  readonly need?: string;
  readonly outcome: Outcome;
}

/** The question that judges the clearance of each obstacle. */
function checkOf(obstacle: string): string {
  if (obstacle.startsWith("cheek")) return "steering-room";
  if (obstacle.startsWith("side")) return "side-room";
  return { sole: "sole-room", bulkhead: "tilt-room" }[obstacle] ?? "obstacle-room";
}

/** The four figures people ask for, each as it is against what this motor wants. */
export function FourFigures({
  report,
  stern,
  lengths,
}: {
  report: Report;
  stern: SternValues;
  lengths: LengthSystem;
}) {
  return (
    <section aria-labelledby="figures" className="stack-near">
      <h2 id="figures" className="drawn">
        The four figures
      </h2>
      <dl className={look.figures}>
        {figuresOf(report, stern, lengths).map(({ name, have, need, outcome, check }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd className={look.have}>{unbroken(have ?? "not known")}</dd>
            <dd>{unbroken(need ?? "what it needs cannot be told yet")}</dd>
            <dd>
              <OutcomeWord outcome={outcome} />{" "}
              {report.checks.some((one) => one.id === check && restsOnLike(one)) && <LikeMark />}
            </dd>
          </div>
        ))}
      </dl>
    </section>
  );
}

function figuresOf(report: Report, stern: SternValues, lengths: LengthSystem): Figure[] {
  const write = lengthWriter(lengths);
  const maybe = (mm: number | undefined) => (mm === undefined ? undefined : write(mm));
  const { needs } = report;
  const outcome = (id: string): Outcome =>
    report.checks.find((check) => check.id === id)?.outcome ?? "not asked";
  const cut = stern.seatMm !== undefined || stern.notchWidthMm !== undefined;
  const [low, high] = needs.seatRangeMm ?? [];
  const wanting = (mm: number | undefined) => (mm === undefined ? undefined : `at least ${write(mm)} wanted`);
  return [
    {
      name: cut ? "Transom height, datum to seat" : "Transom height, nothing cut yet",
      have: maybe(stern.seatMm ?? stern.transomTopMm),
      need: low === undefined || high === undefined ? undefined : `${write(low)} to ${write(high)} wanted`,
      outcome: outcome("plate-height"),
      check: "plate-height",
    },
    {
      name: "Notch width",
      have: maybe(stern.notchWidthMm) ?? (cut ? undefined : "nothing cut yet"),
      need: wanting(needs.notchWidthMm),
      outcome: outcome("steering-room"),
      check: "steering-room",
    },
    {
      name: "Well depth, fore and aft",
      have: maybe(stern.wellDepthMm) ?? (outcome("tilt-room") === "not asked" ? "no well" : undefined),
      need: wanting(needs.wellDepthMm),
      outcome: outcome("tilt-room"),
      check: "tilt-room",
    },
    leastFigure(report, write),
  ];
}

function leastFigure(report: Report, write: (mm: number) => string): Figure {
  const [least] = report.clearances
    .filter(({ throughTransom }) => !throughTransom)
    .toSorted((a: ReportClearance, b: ReportClearance) => a.mm - b.mm);
  const name = "Least clearance";
  if (!least) {
    const moving = report.checks.filter(({ id }) =>
      ["steering-room", "tilt-room", "obstacle-room"].includes(id),
    );
    return {
      name,
      outcome: moving.some(({ outcome }) => outcome === "cannot tell") ? "cannot tell" : "not asked",
    };
  }
  const check = report.checks.find(({ id }) => id === checkOf(least.obstacle));
  const where = `${partWords(least.part)} to ${obstacleWords(least.obstacle)}`;
  const limit = check?.limit && check.limit.unit === "mm" ? `; ${write(check.limit.value)} wanted` : "";
  return {
    name,
    have: least.mm < 0 ? `overlaps ${write(-least.mm)}` : write(least.mm),
    need: `${where}${limit}`,
    outcome: check?.outcome ?? "not asked",
    ...(check && { check: check.id }),
  };
}
