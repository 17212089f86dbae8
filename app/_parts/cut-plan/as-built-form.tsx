import { BUILT, type CutAsked } from "#app/_parts/cut-plan/asked.ts";
import { Box, type Told, withText } from "#app/_parts/cut-plan/box.tsx";
import { Carried } from "#app/_parts/cut-plan/downloads.tsx";
import { TidyForm } from "#app/_parts/cut-plan/tidy-form.tsx";
import { AS_BUILT_KEYS, type AsBuiltKey } from "#lib/entry/cut-choices.ts";
import { formatLength } from "#lib/entry/length-format.ts";
import { inDegrees } from "#lib/quantity/words.ts";
import { type Stern, sternFields } from "#lib/rig/stern.ts";
import look from "./cut-plan.module.css";

/** Asks what the tape shows after the saw. `sawn` is the stern as its plan leaves it: what it has, can be measured. */
export function AsBuiltForm({
  path,
  asked,
  sawn,
  told = () => ({}),
}: {
  readonly path: string;
  readonly asked: CutAsked;
  readonly sawn: Stern;
  readonly told?: (key: AsBuiltKey) => Told;
}) {
  const keys = AS_BUILT_KEYS.filter((key) => sawn[key] !== undefined);
  const put = withText(path, asked, "built");
  const usual = (key: AsBuiltKey): string => {
    const value = sawn[key]!.value;
    return `planned: ${sternFields[key].unit === "deg" ? inDegrees(value) : formatLength(value, asked.lengths)}`;
  };
  return (
    <TidyForm action={path} label="As built" className="stack-near not-printed">
      <Carried asked={asked} />
      <div className={look.choices}>
        {keys.map((key) => (
          <Box
            key={key}
            name={`${BUILT}${key}`}
            label={sternFields[key].name}
            hint={sternFields[key].take.replace("; left empty where nothing is cut", "")}
            text={asked.built[key] ?? ""}
            usual={usual(key)}
            told={told(key)}
            hrefWith={(text) => put(key, text)}
          />
        ))}
      </div>
      <p>
        <button type="submit" className="main">
          Show what is left
        </button>
      </p>
    </TidyForm>
  );
}
