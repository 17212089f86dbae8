"use client";

import { useEffect, useState } from "react";
import { readForm } from "#app/_parts/form/read-form.ts";
import type { Texts } from "#app/_parts/form/texts.ts";
import type { Kind, RecordOf } from "#lib/db/kind.ts";
import { assess } from "#lib/fit/assess.ts";
import type { Report } from "#lib/fit/report.ts";
import type { Motor } from "#lib/rig/motor.ts";
import type { Stern } from "#lib/rig/stern.ts";

/** How long the typing rests before anything is worked out, milliseconds. */
const REST_MS = 450;

/** A value as it was when it last rested. */
export function useRested<T>(value: T): T {
  const [rested, setRested] = useState(value);
  useEffect(() => {
    const timer = setTimeout(() => setRested(value), REST_MS);
    return () => clearTimeout(timer);
  }, [value]);
  return rested;
}

/** The other half of the pairing, fetched once it is chosen; undefined while it is not there. */
export function usePartner(kind: Kind, id: string | undefined): Motor | Stern | undefined {
  const [partner, setPartner] = useState<Motor | Stern>();
  useEffect(() => {
    setPartner(undefined);
    if (!id) return;
    const leaving = new AbortController();
    fetch(`/api/${kind}s/${id}`, { signal: leaving.signal })
      .then((answer) => (answer.ok ? answer.json() : undefined))
      .then(setPartner)
      // Out of reach on the water: the form goes on without the other half.
      .catch(() => undefined);
    return () => leaving.abort();
  }, [kind, id]);
  return partner;
}

/** The report of what has been typed so far against the chosen partner. Boxes that cannot be read yet are left out. */
export function useReport(kind: Kind, texts: Texts, partner: Motor | Stern | undefined): Report | undefined {
  const [report, setReport] = useState<Report>();
  useEffect(() => {
    setReport(partner && reportOf(kind, texts, partner));
  }, [kind, texts, partner]);
  return report;
}

function reportOf(kind: Kind, texts: Texts, partner: Motor | Stern): Report | undefined {
  const { record, troubles } = readForm(kind, "as-typed", { ...texts, label: texts.label || "As typed" });
  const own = record ?? withoutTroubles(kind, texts, troubles);
  if (!own) return undefined;
  return kind === "motor" ? assess(own as Motor, partner as Stern) : assess(partner as Motor, own as Stern);
}

/** The record of the boxes that can be read. */
function withoutTroubles<K extends Kind>(
  kind: K,
  texts: Texts,
  troubles: readonly { readonly name: string }[],
): RecordOf<K> | undefined {
  const bad = new Set(troubles.map(({ name }) => name));
  const left = Object.entries(texts).filter(([name]) => !bad.has(name));
  return readForm(kind, "as-typed", { label: "As typed", ...Object.fromEntries(left) }).record;
}
