"use client";

import type { RefObject } from "react";

const signs = [
  ["1/2", " 1/2"],
  ["1/4", " 1/4"],
  ["3/4", " 3/4"],
  ["1/8", " 1/8"],
  ["1/16", " 1/16"],
  ["″ in", '"'],
  ["mm", " mm"],
] as const;

/** Keys a phone's number pad lacks: they write where the caret stands and leave the pad open. */
export function Chips({
  box,
  label,
  write,
}: {
  box: RefObject<HTMLInputElement | null>;
  label: string;
  write: (text: string) => void;
}) {
  function press(sign: string) {
    const input = box.current;
    if (!input) return;
    const at = input.selectionStart ?? input.value.length;
    const before = input.value.slice(0, at);
    const put = before === "" || before.endsWith(" ") ? sign.trimStart() : sign;
    write(before + put + input.value.slice(input.selectionEnd ?? at));
    input.focus();
    requestAnimationFrame(() => input.setSelectionRange(at + put.length, at + put.length));
  }
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset would announce itself at every field
    <div className="chips" role="group" aria-label={`Signs for ${label}`}>
      {signs.map(([face, sign]) => (
        <button
          key={face}
          type="button"
          // The box keeps the focus, so the pad stays open.
          onPointerDown={(event) => event.preventDefault()}
          onClick={() => press(sign)}
        >
          {face}
        </button>
      ))}
    </div>
  );
}
