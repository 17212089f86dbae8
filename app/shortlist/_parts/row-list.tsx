import Link from "next/link";
import { keyName } from "#app/_parts/key-name.ts";
import { AxisHead, type Barred, MarginBar, MM_PER_DEGREE, onAxis } from "#app/_parts/margin/margin-bar.tsx";
import { listFacts, powerWords } from "#app/_parts/record/facts.ts";
import { howWell, howWellWords } from "#app/_parts/record/how-well.ts";
import { LikeMark } from "#app/_parts/report/like-mark.tsx";
import { type MarginAxis, marginAxis } from "#app/_parts/report/margin-axis.ts";
import { OutcomeWord } from "#app/_parts/report/outcome-mark.tsx";
import type { ListAsked } from "#app/shortlist/_parts/asked.ts";
import type { Entry } from "#app/shortlist/_parts/ranked.ts";
import { RowDetails } from "#app/shortlist/_parts/row-details.tsx";
import look from "#app/shortlist/_parts/shortlist.module.css";
import { checks } from "#lib/checks/index.ts";
import type { Kind } from "#lib/db/kind.ts";
import type { Stored } from "#lib/db/records.ts";
import { afloatWord } from "#lib/fit/afloat-word.ts";
import type { Row } from "#lib/fit/shortlist.ts";
import type { Motor } from "#lib/rig/motor.ts";
import type { Stern } from "#lib/rig/stern.ts";

/** At most so many are compared side by side. */
export const COMPARED = { least: 2, most: 4 };

const UNITS = new Map(checks.map(({ id, unit }) => [id, unit]));

/** The room shown for a row: of the question that governs, or of the one the list is ordered by. */
export function barOf(row: Row, sort: string): Barred {
  const id = sort || row.governs;
  const answer = row.answers[id];
  return {
    ...(answer?.margin !== undefined && { margin: answer.margin }),
    ...(answer?.expandedUncertainty !== undefined && { spread: answer.expandedUncertainty }),
    unit: UNITS.get(id) ?? "mm",
    outcome: sort ? (answer?.outcome ?? "not asked") : row.verdict,
  };
}

/** The rows of one sheet: verdict, what governs, room on one common axis, and what is missing; the rest on demand. */
export function RowList({
  kind,
  one,
  entries,
  asked,
  from,
  path,
}: {
  readonly kind: Kind;
  readonly one: Stored<Motor | Stern>;
  readonly entries: readonly Entry[];
  readonly asked: ListAsked;
  readonly from: number;
  readonly path: string;
}) {
  const bars = entries.map(({ row }) => barOf(row, asked.sort));
  const known = bars.filter(({ margin }) => margin !== undefined);
  const axis = marginAxis(known.map(onAxis), "mm", asked.lengths);
  const compares = kind === "motor" && entries.length >= COMPARED.least;
  return (
    <form action={`/compare/${one.record.id}`} className={look.list} aria-label="Compare motors">
      {asked.lengths === "in" && <input type="hidden" name="units" value="in" />}
      {asked.like && <input type="hidden" name="like" value="1" />}
      <div className={look.heads} aria-hidden="true">
        <span>{kind === "motor" ? "Motor" : "Stern"}</span>
        <span>Verdict</span>
        <span>Governs</span>
        <span>
          {asked.sort ? `Room: ${asked.sort.replaceAll("-", " ")}` : "Room to spare, give or take"}
          <AxisHead axis={axis} lengths={asked.lengths} />
        </span>
        <span>Not known</span>
      </div>
      <ol className={`plain ${look.rows}`} start={from + 1}>
        {entries.map((entry, i) => (
          <Line key={entry.other.record.id} {...{ kind, one, entry, asked, axis, compares }} bar={bars[i]!} />
        ))}
      </ol>
      {bars.some(({ unit, margin }) => unit === "deg" && margin !== undefined) && (
        <p className="small soft">Degrees stand on the same axis, {MM_PER_DEGREE} mm to the degree.</p>
      )}
      {compares && (
        <div className={`save-bar not-printed ${look.compare}`}>
          <button type="submit" className="main">
            Compare those ticked
          </button>
          <span role="note" className="small">
            Tick two to four.
          </span>
          <Link href={path} className="small">
            Clear all choices
          </Link>
        </div>
      )}
    </form>
  );
}

function Line({
  kind,
  one,
  entry: { row, other, estimated },
  asked,
  axis,
  bar,
  compares,
}: {
  readonly kind: Kind;
  readonly one: Stored<Motor | Stern>;
  readonly entry: Entry;
  readonly asked: ListAsked;
  readonly axis: MarginAxis;
  readonly bar: Barred;
  readonly compares: boolean;
}) {
  const { id, label } = other.record;
  const report = `/fit/${row.stern}/${row.motor}${reportQuery(asked)}`;
  return (
    <li className="kept-together">
      <div className={look.name}>
        {compares && (
          <label className={`${look.tick} not-printed`}>
            <input type="checkbox" name="motors" value={id} />
            <span className="unseen">Compare {label}</span>
          </label>
        )}
        <div>
          <Link href={report} className={look.title} prefetch={false}>
            {label}
          </Link>
          <span className={look.facts}>{factsOf(kind, other.record)}</span>
          {other.demo && !one.demo && <span className="demo-mark">invented</span>}
        </div>
      </div>
      <OutcomeWord outcome={row.verdict} />
      <span className={look.governs}>
        <span className={look.onPhone}>Governs: </span>
        {row.governs.replaceAll("-", " ")}
        {estimated.length > 0 && (
          <>
            {" "}
            <LikeMark said="like motors" />
          </>
        )}
      </span>
      <MarginBar
        bar={bar}
        axis={axis}
        lengths={asked.lengths}
        without={bar.outcome === "not asked" ? "not asked" : "cannot be worked out yet"}
      />
      <span className={look.missing}>
        {row.missing.length > 0 && <span className={look.onPhone}>Not known: </span>}
        {missingWords(row, estimated.length)}
      </span>
      <RowDetails
        row={row}
        lengths={asked.lengths}
        report={report}
        afloat={afloatOfRow(kind, one.record, other.record)}
        well={howWellWords(howWell(kind, other.record))}
      />
    </li>
  );
}

/** The questions afloat in one word. */
const afloatOfRow = (kind: Kind, one: Motor | Stern, other: Motor | Stern) =>
  kind === "motor" ? afloatWord(other as Motor, one as Stern) : afloatWord(one as Motor, other as Stern);

const reportQuery = ({ lengths, like }: ListAsked): string => `?units=${lengths}${like ? "&like=1" : ""}`;

/** Power, mass and shaft of a motor; the usual facts of a stern. */
function factsOf(kind: Kind, record: Motor | Stern): string {
  if (kind === "stern") return listFacts("stern", record as Stern).join(" · ");
  const { powerKw, massKg, shaftClass, steering } = record as Motor;
  return [
    powerKw && powerWords(powerKw.value),
    massKg && `${Number(massKg.value.toPrecision(3))} kg`,
    shaftClass,
    steering,
  ]
    .filter(Boolean)
    .join(" · ");
}

/** "Nothing missing", "Shaft length", "Shaft length and 3 more". */
function missingWords({ missing }: Row, estimated: number): string {
  const [first] = missing;
  const filled = estimated === 0 ? "" : `${estimated} from like motors`;
  if (!first) return filled || "All known";
  const more = missing.length > 1 ? ` and ${missing.length - 1} more` : "";
  return `${keyName(first)}${more}${filled ? `; ${filled}` : ""}`;
}
