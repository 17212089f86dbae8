"use client";

import { useCallback, useEffect, useRef, useState } from "react";
import type { Texts } from "#app/_parts/form/texts.ts";

/**
 * The texts of a form, kept in the browser as they are typed, so that a reload, a call or a flat battery's
 * warning loses nothing. `resumed` is true once an earlier draft has been taken up again.
 */
export function useDraft(key: string, initial: Texts) {
  const [texts, setTexts] = useState(initial);
  const [resumed, setResumed] = useState(false);
  const first = useRef(initial);

  useEffect(() => {
    const kept = readDraft(key);
    if (!kept || same(kept, first.current)) return;
    setTexts(kept);
    setResumed(true);
  }, [key]);

  const change = useCallback(
    (next: (texts: Texts) => Texts) =>
      setTexts((now) => {
        const changed = next(now);
        keep(key, changed);
        return changed;
      }),
    [key],
  );
  const write = useCallback(
    (name: string, text: string) => change((now) => ({ ...now, [name]: text })),
    [change],
  );
  const startAfresh = useCallback(() => {
    forgetDraft(key);
    setTexts(first.current);
    setResumed(false);
  }, [key]);
  return { texts, write, change, resumed, startAfresh };
}

function readDraft(key: string): Texts | undefined {
  try {
    const kept: unknown = JSON.parse(sessionStorage.getItem(key) ?? "null");
    if (kept === null || typeof kept !== "object") return undefined;
    return Object.fromEntries(Object.entries(kept).filter(([, text]) => typeof text === "string"));
  } catch {
    // Storage switched off, or something else wrote there: there is no draft.
    return undefined;
  }
}

function keep(key: string, texts: Texts): void {
  try {
    sessionStorage.setItem(key, JSON.stringify(texts));
  } catch {
    // Storage switched off or full: the form still works, only without a draft.
  }
}

/** Forgets a draft once it has been saved or thrown away. */
export function forgetDraft(key: string): void {
  try {
    sessionStorage.removeItem(key);
  } catch {
    // Storage switched off: there was nothing to forget.
  }
}

function same(a: Texts, b: Texts): boolean {
  const names = new Set([...Object.keys(a), ...Object.keys(b)]);
  return [...names].every((name) => (a[name] ?? "") === (b[name] ?? ""));
}
