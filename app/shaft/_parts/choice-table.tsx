import Link from "next/link";
import { OutcomeWord } from "#app/_parts/report/outcome-mark.tsx";
import { unbroken } from "#app/_parts/report/writing.ts";
import type { MotorChoice } from "#app/shaft/_parts/choices.ts";
import look from "#app/shaft/_parts/shaft.module.css";
import { changeWords, nowWords, rangeWords } from "#app/shaft/_parts/words.ts";
import type { SeatChoice } from "#lib/fit/shaft-choice.ts";
import { inDegrees, type LengthSystem, lengthWriter } from "#lib/quantity/words.ts";

/** Said once more, since a browser forgets that a table is one where the styles make cards of its rows. */
const [TABLE, GROUP, ROW] = [{ role: "table" }, { role: "rowgroup" }, { role: "row" }];
const [HEAD, HEADER, CELL] = [{ role: "columnheader" }, { role: "rowheader" }, { role: "cell" }];

interface Told {
  readonly stern: string;
  readonly cut: boolean;
  readonly lengths: LengthSystem;
}

/** The four classes by their nominal lengths. */
export function ClassTable({ classes, cut, lengths }: Told & { readonly classes: readonly SeatChoice[] }) {
  const write = lengthWriter(lengths);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: scrolls sideways with large text, so the keyboard must reach it
    <section className="across" tabIndex={0} aria-label="Seats by shaft class">
      <table className={look.stacks} {...TABLE}>
        <Heads
          names={[
            "Shaft class",
            "Seat between",
            "From the present top",
            "Plate now",
            "Freeboard at the seat",
          ]}
        />
        <tbody {...GROUP}>
          {classes.map((choice) => (
            <tr key={choice.shaftClass} {...ROW}>
              <th scope="row" {...HEADER}>
                {choice.shaftClass}
              </th>
              <Cell name="Seat between">{rangeWords([choice.low, choice.high], lengths)}</Cell>
              <Cell name="From the present top">{changeWords(choice, cut, lengths)}</Cell>
              <Cell name="Plate now">{nowWords(choice, lengths)}</Cell>
              <Cell name="Freeboard at the seat">
                {choice.freeboard === undefined ? undefined : write(choice.freeboard)}
              </Cell>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

/** Motors by their own numbers, those that ask for the least change first; ticked ones are cut for together. */
export function MotorTable({
  motors,
  chosen,
  numbers,
  stern,
  cut,
  lengths,
}: Told & {
  readonly motors: readonly MotorChoice[];
  readonly chosen: ReadonlySet<string>;
  readonly numbers: ReadonlyMap<string, number>;
}) {
  const write = lengthWriter(lengths);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: scrolls sideways with large text, so the keyboard must reach it
    <section className="across" tabIndex={0} aria-label="Seats by motor">
      <table className={look.stacks} {...TABLE}>
        <Heads
          names={[
            "Motor",
            "Saw between",
            "From the present top",
            "Pin hole",
            "Plate now",
            "Freeboard",
            "With that cut",
          ]}
        />
        <tbody {...GROUP}>
          {motors.map(({ motor, choice, after }) => (
            <tr key={motor.id} {...ROW}>
              <th scope="row" {...HEADER}>
                <span className={look.motor}>
                  <label className={`${look.tick} not-printed`}>
                    <input
                      type="checkbox"
                      name="motors"
                      value={motor.id}
                      defaultChecked={chosen.has(motor.id)}
                    />
                    <span className="unseen">Cut for {motor.label}</span>
                  </label>
                  {numbers.get(motor.id) && <strong>{numbers.get(motor.id)}</strong>}
                  <Link href={`/fit/${stern}/${motor.id}?units=${lengths}`} prefetch={false}>
                    {motor.label}
                  </Link>
                </span>
              </th>
              <Cell name="Saw between">
                {rangeWords(choice.sawBetween, lengths) ?? (
                  <span className="soft">
                    measure the leg better: its doubt uses up the window (
                    {rangeWords([choice.low, choice.high], lengths)})
                  </span>
                )}
              </Cell>
              <Cell name="From the present top">
                {changeWords(choice, cut, lengths)}
                {choice.notchWidth !== undefined &&
                  !cut &&
                  (choice.deeperBy ?? 0) > 0 &&
                  `, ${write(choice.notchWidth)} wide`}
              </Cell>
              <Cell name="Pin hole">
                {choice.hole === undefined
                  ? undefined
                  : `${choice.hole}, ${attitude(choice.attitudeDeg ?? 0)}`}
              </Cell>
              <Cell name="Plate now">{nowWords(choice, lengths)}</Cell>
              <Cell name="Freeboard">
                {choice.freeboard === undefined ? undefined : write(choice.freeboard)}
                {choice.freeboardLoaded !== undefined && (
                  <span className="small soft"> {write(choice.freeboardLoaded)} with motor and load</span>
                )}
              </Cell>
              <Cell name="With that cut">
                <OutcomeWord outcome={after.verdict} />
                {after.verdict !== "fits" && (
                  <span className="small soft"> {after.governs.replaceAll("-", " ")}</span>
                )}
              </Cell>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

const attitude = (deg: number): string =>
  Math.abs(deg) < 0.05 ? "parallel" : `${inDegrees(Math.abs(deg))} ${deg > 0 ? "out" : "in"}`;

function Heads({ names }: { readonly names: readonly string[] }) {
  return (
    <thead {...GROUP}>
      <tr {...ROW}>
        {names.map((name) => (
          <th key={name} scope="col" {...HEAD}>
            {name}
          </th>
        ))}
      </tr>
    </thead>
  );
}

function Cell({ name, children }: { readonly name: string; readonly children: React.ReactNode }) {
  return (
    <td {...CELL} data-name={name}>
      <span>
        {typeof children === "string"
          ? unbroken(children)
          : (children ?? <span className="soft">not known</span>)}
      </span>
    </td>
  );
}
