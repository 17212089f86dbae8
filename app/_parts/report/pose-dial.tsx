"use client";

import { useId, useState } from "react";
import look from "./report.module.css";

/** One angle of the motor: a slider, and the same angle typed. What is typed and cannot be reached is said, and the motor stays where it was. */
export function PoseDial({
  name,
  hint,
  value,
  from,
  to,
  onTurn,
}: {
  readonly name: string;
  readonly hint: string;
  readonly value: number;
  readonly from: number;
  readonly to: number;
  readonly onTurn: (degrees: number) => void;
}) {
  const id = useId();
  const [typed, setTyped] = useState<string>();
  const wrong = typed !== undefined && !within(typed, from, to);
  const type = (text: string) => {
    setTyped(text);
    if (within(text, from, to)) onTurn(number(text));
  };
  return (
    <div className={look.dial}>
      <label htmlFor={`${id}-slider`}>{name}</label>
      <input
        id={`${id}-slider`}
        type="range"
        min={from}
        max={to}
        step={0.5}
        value={value}
        aria-valuetext={`${value}°`}
        onChange={(event) => {
          setTyped(undefined);
          onTurn(Number(event.target.value));
        }}
      />
      <span className={look.typed}>
        <input
          type="text"
          inputMode="text"
          aria-label={`${name}, degrees, typed`}
          aria-describedby={`${id}-hint`}
          aria-invalid={wrong}
          value={typed ?? String(value)}
          onChange={(event) => type(event.target.value)}
          onBlur={() => !wrong && setTyped(undefined)}
        />
        <span aria-hidden="true">°</span>
      </span>
      <p id={`${id}-hint`} className={wrong ? "trouble-words small" : "soft small"}>
        {wrong ? `Give degrees from ${from} to ${to}.` : hint}
      </p>
    </div>
  );
}

/** Degrees as typed; a comma or a true minus sign does as well. */
const number = (text: string): number =>
  Number(text.trim().replace("°", "").replace(",", ".").replace("−", "-"));

const within = (text: string, from: number, to: number): boolean => {
  const degrees = number(text);
  return text.trim() !== "" && degrees >= from && degrees <= to;
};
