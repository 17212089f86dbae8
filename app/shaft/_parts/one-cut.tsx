import { OutcomeWord } from "#app/_parts/report/outcome-mark.tsx";
import { unbroken } from "#app/_parts/report/writing.ts";
import type { Choices } from "#app/shaft/_parts/choices.ts";
import look from "#app/shaft/_parts/shaft.module.css";
import { rangeWords } from "#app/shaft/_parts/words.ts";
import { type LengthSystem, lengthWriter } from "#lib/quantity/words.ts";

/** One seat and notch for several motors, and what each gives up by it. */
export function OneCutPanel({
  choices: { once, onceRows, chosen },
  lengths,
}: {
  readonly choices: Choices;
  readonly lengths: LengthSystem;
}) {
  if (chosen.length === 0) return null;
  if (!once) {
    return (
      <p className="notice" role="status">
        {chosen.length === 1
          ? "Tick two motors or more to cut once for all of them."
          : "No plate of those ticked can be placed: their numbers, or this stern's rake, are not known."}
      </p>
    );
  }
  const write = lengthWriter(lengths);
  const suited = once.motors.filter(({ room }) => room >= 0).length;
  return (
    <section className="notice kept-together" aria-labelledby="once">
      <h2 id="once">
        Cut once for {chosen.length}: seat at {unbroken(write(once.seat))}
        {once.notchWidth === undefined ? "" : unbroken(`, notch ${write(once.notchWidth)} wide`)}
      </h2>
      <p>
        {suited === chosen.length ? `All ${suited}` : `${suited} of ${chosen.length}`} keep their plate in its
        window there; anywhere from {unbroken(rangeWords(once.between, lengths) ?? write(once.seat))} suits
        the same ones. Heights above the datum, plumb.
      </p>
      <ul>
        {chosen.map((motor, i) => {
          const here = once.motors.find((one) => one.motor === motor.id);
          const row = onceRows[i];
          return (
            <li key={motor.id}>
              <strong>{motor.label}</strong>:{" "}
              {here ? unbroken(givesUp(here, write)) : "its plate cannot be placed for want of a number"}
              {row && (
                <>
                  ; the whole pairing then:{" "}
                  <span className={look.inline}>
                    <OutcomeWord outcome={row.verdict} />
                  </span>
                  {row.verdict !== "fits" && (
                    <span className="soft"> ({row.governs.replaceAll("-", " ")})</span>
                  )}
                </>
              )}
            </li>
          );
        })}
      </ul>
    </section>
  );
}

function givesUp(
  { room, best }: { readonly room: number; readonly best: number },
  write: (mm: number) => string,
): string {
  if (room < 0) return `${write(-room)} outside its window`;
  return `${write(room)} to the nearer edge of its window, ${write(best)} at its own best seat`;
}
