"use client";

import { Boxes } from "#app/_parts/form/boxes.tsx";
import { ChoiceField } from "#app/_parts/form/choice-field.tsx";
import { FormLimits } from "#app/_parts/form/form-limits.tsx";
import { TextField } from "#app/_parts/form/text-field.tsx";
import type { Texts } from "#app/_parts/form/texts.ts";
import type { Trouble } from "#app/_parts/form/trouble.ts";
import { choices } from "#app/_parts/form/words.ts";

interface Asked {
  readonly name: string;
  readonly texts: Texts;
  readonly troubles: readonly Trouble[];
  readonly write: (name: string, text: string) => void;
}

/** A fact of a record that is not a measured number, asked in its own way. */
export function FormFact({ name, texts, troubles, write }: Asked) {
  const choice = choices[name];
  const text = texts[name] ?? "";
  if (choice) return <ChoiceField {...{ name, text, write }} {...choice} />;
  if (name === "extraSolids" || name === "obstacles")
    return <InTheWay {...{ name, texts, troubles, write }} />;
  if (name === "limits") return <FormLimits {...{ texts, troubles, write }} />;
  const count = counts[name];
  const trouble = troubles.find((each) => each.name === name)?.says;
  return count ? <TextField {...{ name, text, trouble, write }} {...count} inputMode="numeric" /> : null;
}

const counts: Readonly<Record<string, { readonly label: string; readonly hint: string }>> = {
  year: { label: "Year built", hint: "As far as known." },
  drainCount: {
    label: "Number of drains",
    hint: "How many drains the motor well has; empty without a well.",
  },
};

function InTheWay({ name, ...rest }: Asked) {
  return name === "extraSolids" ? (
    <Boxes
      list="extraSolids"
      {...rest}
      axes={["forward", "to port", "up"]}
      groups={[
        ["tilting", "with the tilt only"],
        ["steered", "with tilt and steering"],
      ]}
      hint="A tank, a handle, a cable tray, a steering arm: anything else that moves with the motor. Each is a box between two corners. Forward is from the tilt tube (from the steering axis, where it steers too), up is from the saddle along the leg; aft, starboard and down are minus."
    />
  ) : (
    <Boxes
      list="obstacles"
      {...rest}
      axes={["forward", "to port", "up"]}
      hint="A cleat, a fuel filler, a pipe, a locker: anything else that stands in the motor's way. Each is a box between two corners, taken from the saddle corner on the seat: forward square to the transom's face, up along it; aft, starboard and down are minus."
    />
  );
}
