"use client";

import { useEffect, useRef } from "react";
import type { Trouble } from "#app/_parts/form/trouble.ts";

/** All that keeps the form from being saved, each a link to its box; it takes the focus when it appears or changes. */
export function TroubleSummary({ troubles }: { troubles: readonly Trouble[] }) {
  const summary = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (troubles.length > 0) summary.current?.focus();
  }, [troubles]);
  if (troubles.length === 0) return null;
  const count = troubles.length === 1 ? "one thing" : `${troubles.length} things`;
  return (
    <div className="notice trouble" role="alert" tabIndex={-1} ref={summary}>
      <h2>Not saved yet: {count} to put right</h2>
      <p>Everything you typed is still here.</p>
      <ul>
        {troubles.map(({ name, label, says }) => (
          <li key={name + says}>
            <a
              href={`#${name}`}
              onClick={(event) => {
                const box = document.getElementById(name);
                if (!box) return;
                event.preventDefault();
                openAround(box);
                box.focus();
                box.scrollIntoView({ block: "center" });
              }}
            >
              {label}
            </a>
            : {says}
          </li>
        ))}
      </ul>
    </div>
  );
}

/** A box folded away is unfolded before it is gone to. */
function openAround(box: HTMLElement): void {
  const fold = box.closest("details");
  if (fold) fold.open = true;
}
