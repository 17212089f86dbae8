import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { titled } from "#app/_parts/record/named.ts";
import { Cautions } from "#app/_parts/report/cautions.tsx";
import { TitleStrip } from "#app/_parts/sheet/title-strip.tsx";
import { ClassTable, MotorTable } from "#app/shaft/_parts/choice-table.tsx";
import { type Choices, choicesFor, MOST_CHOSEN, MOST_SHOWN } from "#app/shaft/_parts/choices.ts";
import { OneCutPanel } from "#app/shaft/_parts/one-cut.tsx";
import look from "#app/shaft/_parts/shaft.module.css";
import type { Query } from "#app/shortlist/_parts/asked.ts";
import { sieves } from "#app/shortlist/_parts/sieve.ts";
import { getRecord } from "#lib/db/records.ts";
import { type CandidateSeat, candidateSeats } from "#lib/draw/candidate-seats.ts";
import { toSvg } from "#lib/draw/svg.ts";
import type { LengthSystem } from "#lib/quantity/words.ts";
import { sternValues } from "#lib/rig/record.ts";
import type { Stern } from "#lib/rig/stern.ts";

export const dynamic = "force-dynamic";

interface Address {
  readonly params: Promise<{ stern: string }>;
  readonly searchParams: Promise<Query>;
}

/** What the motors shown can be narrowed by. */
const NARROWED = sieves.motor.filter(({ name }) => ["shaftClass", "power", "steering"].includes(name));
/** Motors drawn on the stern; more would blacken it. */
const MOST_DRAWN = 6;

export async function generateMetadata({ params }: Address): Promise<Metadata> {
  const label = await titled(
    "stern",
    params.then(({ stern }) => ({ id: stern })),
  );
  return { title: `Which shaft length for ${label}` };
}

const listOf = (value: Query[string]): string[] =>
  (value === undefined ? [] : typeof value === "string" ? [value] : value)
    .flatMap((text) => text.split(","))
    .filter(Boolean);

/** Before the saw: the seat of each shaft class and each motor side by side, and one cut for several. */
export default async function ShaftPage({ params, searchParams }: Address) {
  const [{ stern: id }, query] = await Promise.all([params, searchParams]);
  const stored = await getRecord("stern", id);
  if (!stored) notFound();
  const { record: stern } = stored;
  const lengths: LengthSystem = query.units === "in" ? "in" : "mm";
  const sieve = Object.fromEntries(
    NARROWED.flatMap(({ name, choices }) =>
      choices.some(([value]) => value === query[name]) ? [[name, query[name] as string]] : [],
    ),
  );
  const ticked = [...new Set(listOf(query.motors))];
  const choices = await choicesFor(stern, sieve, ticked);
  const cut = stern.seatMm !== undefined || stern.notchWidthMm !== undefined;
  const told = { stern: id, cut, lengths };
  return (
    <>
      <TitleStrip
        kind="Which shaft length, before the saw"
        title={stern.label}
        particulars={[
          [
            "Stern",
            <Link key="stern" href={`/sterns/${id}`}>
              its numbers
            </Link>,
          ],
          ["As it is", cut ? "a seat is cut" : "nothing is cut"],
        ]}
      />
      {stored.demo && (
        <p>
          <span className="demo-mark">invented</span> This stern was made up to show how Sternwright works.
        </p>
      )}
      <Wanting stern={stern} />
      <OneCutPanel choices={choices} lengths={lengths} />
      <Picture stern={stern} choices={choices} lengths={lengths} />
      <section aria-labelledby="classes" className="stack-near">
        <h2 id="classes" className="drawn">
          By shaft class
        </h2>
        <p className="small soft">
          Nominal lengths, the leg hung parallel with the plate level. Real legs differ from their class by up
          to two inches: measure the motor before you saw.
        </p>
        <ClassTable classes={choices.classes} {...told} />
      </section>
      <section aria-labelledby="motors" className="stack-near">
        <h2 id="motors" className="drawn">
          By motor
        </h2>
        <form className="stack" aria-label="Motors to cut for">
          <div className="sifting not-printed">
            {NARROWED.map(({ name, label, choices: options }) => (
              <div key={name}>
                <label htmlFor={`shaft-${name}`}>{label}</label>
                <select id={`shaft-${name}`} name={name} defaultValue={sieve[name] ?? ""}>
                  <option value="">Any</option>
                  {options.map(([value, words]) => (
                    <option key={value} value={value}>
                      {words}
                    </option>
                  ))}
                </select>
              </div>
            ))}
            <div>
              <label htmlFor="shaft-units">Lengths in</label>
              <select id="shaft-units" name="units" defaultValue={lengths}>
                <option value="mm">Millimetres</option>
                <option value="in">Inches</option>
              </select>
            </div>
          </div>
          <Kept choices={choices} ticked={ticked} />
          {choices.motors.length > 0 && (
            <MotorTable
              motors={choices.motors}
              chosen={new Set(ticked)}
              numbers={new Map(drawnOf(choices).map(({ motor }, i) => [motor.id, i + 1]))}
              {...told}
            />
          )}
          <div className="save-bar not-printed">
            <button type="submit" className="main">
              Show, and cut for those ticked
            </button>
            <span className="small">Tick up to {MOST_CHOSEN}.</span>
          </div>
        </form>
      </section>
      <Cautions only={["saw", "label", "rules"]} />
      <p className="row not-printed">
        <Link className="button" href={`/shortlist/${id}`}>
          Shortlist of motors as it is now
        </Link>
      </p>
    </>
  );
}

/** Numbers of the stern without which seats cannot be told. */
function Wanting({ stern }: { readonly stern: Stern }) {
  const wanting = [
    !stern.rakeDeg && "the rake",
    !stern.transomTopMm && "the top of the transom",
    !stern.waterlineMm && "the waterline (for the freeboard)",
  ].filter(Boolean);
  if (wanting.length === 0) return null;
  return (
    <p className="notice">
      Not measured on this stern: {wanting.join(", ")}.{" "}
      <Link className="not-printed" href={`/sterns/${stern.id}/edit#rakeDeg`}>
        Enter it
      </Link>
    </p>
  );
}

/** Which motors are shown, and ticked ones that are not among them: they stay ticked. */
function Kept({ choices, ticked }: { readonly choices: Choices; readonly ticked: readonly string[] }) {
  const shown = new Set(choices.motors.map(({ motor }) => motor.id));
  const { placed, unplaced } = choices;
  return (
    <>
      {ticked
        .filter((id) => !shown.has(id))
        .map((id) => (
          <input key={id} type="hidden" name="motors" value={id} />
        ))}
      <p role="status">
        {placed === 0
          ? "No motor's seat can be told."
          : placed > MOST_SHOWN
            ? `The ${MOST_SHOWN} of ${placed.toLocaleString("en-GB")} that ask for the least change. Narrow the list for others.`
            : `${placed} ${placed === 1 ? "motor" : "motors"}, those that ask for the least change first.`}
        {unplaced > 0 && (
          <span className="soft">
            {" "}
            {unplaced.toLocaleString("en-GB")} cannot be told for want of a number.
          </span>
        )}
      </p>
    </>
  );
}

/** The stern with the seats on it. */
function Picture({
  stern,
  choices,
  lengths,
}: {
  readonly stern: Stern;
  readonly choices: Choices;
  readonly lengths: LengthSystem;
}) {
  const drawing = candidateSeats(sternValues(stern), seatsOf(choices), lengths);
  if (!drawing) return null;
  return (
    <figure className="stack-near kept-together">
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: scrolls sideways on a phone, so the keyboard must reach it */}
      <section className={look.sheet} tabIndex={0} aria-label={`${drawing.title}, drawing`}>
        {/* biome-ignore lint/security/noDangerouslySetInnerHtml: our own drawing; every word in it is escaped by the writer */}
        <div dangerouslySetInnerHTML={{ __html: toSvg(drawing, { id: "seats" }) }} />
      </section>
      <figcaption className="small soft">
        Seats above the datum.{" "}
        {drawnOf(choices).map(({ motor }, i) => (
          <span key={motor.id}>
            <strong>{i + 1}</strong> {motor.label};{" "}
          </span>
        ))}
        dash and two dots: a class by its nominal length; dashes: a motor by its own numbers, the band where
        the saw may go. Full line: the one cut for those ticked.
      </figcaption>
    </figure>
  );
}

/** The motors drawn: those ticked, else the first few. */
function drawnOf({ motors, chosen }: Choices): Choices["motors"] {
  const ids = new Set(chosen.map(({ id }) => id));
  return motors.filter(({ motor }) => ids.size === 0 || ids.has(motor.id)).slice(0, MOST_DRAWN);
}

function seatsOf(choices: Choices): CandidateSeat[] {
  const { classes, chosen, once } = choices;
  return [
    ...classes.map(({ shaftClass, middle }) => ({
      name: shaftClass!.toUpperCase(),
      seatMm: middle,
      kind: "class" as const,
    })),
    ...drawnOf(choices).map(({ choice }, i) => ({
      name: String(i + 1),
      seatMm: choice.middle,
      ...(choice.sawBetween && { between: choice.sawBetween }),
      kind: "motor" as const,
    })),
    ...(once ? [{ name: `ONCE FOR ${chosen.length}`, seatMm: once.seat, kind: "once" as const }] : []),
  ];
}
