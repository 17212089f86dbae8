"use client";

import { useEffect, useRef } from "react";
import type { FormConflict } from "#app/_parts/form/save-state.ts";
import { fieldsOf, type Texts } from "#app/_parts/form/texts.ts";
import type { Kind } from "#lib/db/kind.ts";

/** Two people wrote at once: theirs beside yours, number by number, before anything is written over. */
export function ConflictNotice({
  kind,
  conflict,
  texts,
}: {
  kind: Kind;
  conflict: FormConflict;
  texts: Texts;
}) {
  const notice = useRef<HTMLDivElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new conflict takes the focus anew
  useEffect(() => notice.current?.focus(), [conflict]);
  const fields = fieldsOf(kind);
  const names = [...new Set([...Object.keys(conflict.texts), ...Object.keys(texts)])].filter(
    (name) =>
      (fields[name] || name === "label" || name === "notes") && differ(conflict.texts[name], texts[name]),
  );
  return (
    <div className="notice trouble" role="alert" tabIndex={-1} ref={notice}>
      <h2>Somebody else saved this {kind} while you were writing</h2>
      <p>
        It now stands at version {conflict.version}. Nothing of yours is lost: it is all in the boxes below.
        {names.length > 0
          ? " Put in the boxes what should stand, then save over theirs."
          : " What they saved is the same as yours."}
      </p>
      {names.length > 0 && (
        <div className="across">
          <table>
            <caption>Where the two differ</caption>
            <thead>
              <tr>
                <th scope="col">Number</th>
                <th scope="col">Theirs, saved</th>
                <th scope="col">Yours, not saved</th>
              </tr>
            </thead>
            <tbody>
              {names.map((name) => (
                <tr key={name}>
                  <th scope="row">
                    <a href={`#${name}`}>{fields[name]?.name ?? name}</a>
                  </th>
                  <td>{conflict.texts[name] || "left empty"}</td>
                  <td>{texts[name] || "left empty"}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
    </div>
  );
}

const differ = (a = "", b = ""): boolean => a.trim() !== b.trim();
