"use client";

import { useEffect, useState } from "react";
import type { Found } from "#app/_parts/search/found.ts";

/** How long the typing rests before it is searched for, ms: shorter than a pause, longer than a letter. */
const REST_MS = 120;

/** What a search brought, and for which text; undefined while nothing has been searched for. */
export interface Brought {
  readonly query: string;
  readonly items: readonly Found[];
  /** True where the server could not be asked. */
  readonly failed?: true;
}

/** What the server finds for a text, asked once the typing rests; what was found before stays until then. */
export function useFound(text: string): Brought | undefined {
  const [brought, setBrought] = useState<Brought>();
  const query = text.trim();
  useEffect(() => {
    if (query === "") {
      setBrought(undefined);
      return;
    }
    const leaving = new AbortController();
    const timer = setTimeout(() => {
      fetch(`/api/search?${new URLSearchParams({ query, limit: "8" })}`, { signal: leaving.signal })
        .then((answer) => (answer.ok ? answer.json() : Promise.reject(answer.status)))
        .then(({ items }: { items: readonly Found[] }) => setBrought({ query, items }))
        .catch(() => {
          if (!leaving.signal.aborted) setBrought({ query, items: [], failed: true });
        });
    }, REST_MS);
    return () => {
      clearTimeout(timer);
      leaving.abort();
    };
  }, [query]);
  return brought;
}
