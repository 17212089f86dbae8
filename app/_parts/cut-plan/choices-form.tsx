import { type CutAsked, cutQuery } from "#app/_parts/cut-plan/asked.ts";
import { Box, type Told, withText } from "#app/_parts/cut-plan/box.tsx";
import { BoxRows } from "#app/_parts/cut-plan/box-rows.tsx";
import type { Planned } from "#app/_parts/cut-plan/planned.ts";
import { TidyForm } from "#app/_parts/cut-plan/tidy-form.tsx";
import { usualTexts, usualWords } from "#app/_parts/cut-plan/usual.ts";
import { type CutGroup, type CutKey, type CutWordKey, cutFields, cutWords } from "#lib/entry/cut-fields.ts";
import look from "./cut-plan.module.css";

const GROUPS: readonly (readonly [CutGroup, string])[] = [
  ["notch", "Notch"],
  ["well", "Well"],
  ["stock", "Wood"],
  ["fastening", "Screws, drain and fillets"],
];

const WORDS: readonly (readonly [CutWordKey, string, string])[] = [
  ["soleLies", "The sole lies", "Square to the transom is simpler to build; level keeps your feet flat."],
  ["well", "Build a well", "A well is built where the stern is uncut and its well has numbers."],
  ["underSides", "Under the sole's sides", "Cleats are screwed to; fillets alone bond to the sides."],
  ["wood", "Wood of the cleats", "Soft wood takes a smaller pilot hole."],
];

/** What the builder chooses; all of it stands in the address. Nothing needs to be filled in. */
export function ChoicesForm({
  path,
  asked,
  planned,
}: {
  readonly path: string;
  readonly asked: CutAsked;
  readonly planned: Planned;
}) {
  const { reading } = planned;
  const told = (name: string): Told =>
    reading.ok
      ? {}
      : {
          says: reading.errors.find(({ field }) => field === name)?.says,
          ask: reading.asks.find(({ field }) => field === name),
        };
  const set = Object.keys(asked.texts).length;
  const usual = usualTexts(planned, asked.lengths);
  const put = withText(path, asked, "texts");
  return (
    <details className="not-printed" open={!reading.ok || planned.impossible !== undefined}>
      <summary>{set === 0 ? "Your choices: wood, sole, screws, posts" : `Your choices (${set} set)`}</summary>
      <TidyForm action={path} label="Your choices" className="stack">
        <input type="hidden" name="motors" value={asked.motors.join(",")} />
        <input type="hidden" name="units" value={asked.lengths} />
        <p className="soft">
          Nothing has to be filled in. The grey figures stand where a box is left empty: the stern's own
          numbers first, then what the trade usually does. Write lengths as your tape has them: 12 mm, 1/2 in.
        </p>
        <div className={look.choices}>
          {WORDS.map(([name, label, hint]) => (
            <div key={name}>
              <label htmlFor={name}>{label}</label>
              <p className="small soft" id={`${name}-hint`}>
                {hint}
              </p>
              <select
                id={name}
                name={name}
                defaultValue={asked.texts[name] ?? ""}
                aria-describedby={`${name}-hint`}
              >
                <option value="">{usualWords(name, planned)}</option>
                {Object.entries(cutWords[name]).map(([value, words]) => (
                  <option key={value} value={value}>
                    {words}
                  </option>
                ))}
              </select>
              {told(name).says && <p className="trouble-words">{told(name).says}</p>}
            </div>
          ))}
        </div>
        {GROUPS.map(([group, title]) => (
          <fieldset key={group} className="stack-near">
            <legend className={look.legend}>{title}</legend>
            <div className={look.choices}>
              {(Object.keys(cutFields) as CutKey[])
                .filter((key) => cutFields[key].group === group)
                .map((key) => (
                  <Box
                    key={key}
                    name={key}
                    label={cutFields[key].name}
                    hint={cutFields[key].hint}
                    text={asked.texts[key] ?? ""}
                    usual={usual[key]}
                    told={told(key)}
                    hrefWith={(text) => put(key, text)}
                  />
                ))}
            </div>
          </fieldset>
        ))}
        <BoxRows list="posts" title="Stern posts and frames the sole goes round" {...{ asked, told, put }} />
        <BoxRows list="frames" title="Frames, knees and fittings near the cut" {...{ asked, told, put }} />
        <p className="row">
          <button type="submit" className="main">
            Plan it so
          </button>
          {set > 0 && (
            <a className="button" href={`${path}${cutQuery(asked, { texts: {} })}`}>
              Back to the usual
            </a>
          )}
        </p>
      </TidyForm>
    </details>
  );
}
