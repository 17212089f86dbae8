import type { CutAsked } from "#app/_parts/cut-plan/asked.ts";
import { Box, type Told } from "#app/_parts/cut-plan/box.tsx";
import { rowsOf } from "#app/_parts/form/box-rows.ts";
import look from "./cut-plan.module.css";

const ENDS = [
  ["fromMm", "From"],
  ["toMm", "To"],
] as const;
const AXES = ["forward", "to port", "up"] as const;

/** Things that stand up in the way, as boxes between two corners. There is always one empty row more. */
export function BoxRows({
  list,
  title,
  asked: { texts },
  told,
  put,
}: {
  readonly list: "posts" | "frames";
  readonly title: string;
  readonly asked: CutAsked;
  readonly told: (name: string) => Told;
  readonly put: (name: string, text: string) => string;
}) {
  const filled = rowsOf(texts, list);
  const box = (name: string, label: string) => (
    <Box
      key={name}
      name={name}
      label={label}
      text={texts[name] ?? ""}
      told={told(name)}
      hrefWith={(text) => put(name, text)}
    />
  );
  return (
    <fieldset className="stack-near">
      <legend className={look.legend}>{title}</legend>
      <p className="small soft">
        Two opposite corners of each. Forward from the transom's outside face, square to it; to port from the
        centreline, minus to starboard; up along the face from the seat, or from the top where nothing is cut
        yet, minus below it.
      </p>
      {told(list).says && <p className="trouble-words">{told(list).says}</p>}
      {[...filled, filled.length].map((row) => (
        <fieldset key={row} className="box-row">
          <legend>
            {texts[`${list}.${row}.label`] || `${list === "posts" ? "Post" : "Thing"} ${row + 1}`}
          </legend>
          {box(`${list}.${row}.label`, "What it is")}
          {ENDS.map(([end, words]) => (
            <div key={end} className="corners">
              {AXES.map((axis, at) => box(`${list}.${row}.${end}.${at}`, `${words}: ${axis}`))}
            </div>
          ))}
        </fieldset>
      ))}
    </fieldset>
  );
}
