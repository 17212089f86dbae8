"use client";

import { useRouter } from "next/navigation";
import { type FormEvent, type KeyboardEvent, useId, useState } from "react";
import type { Found } from "#app/_parts/search/found.ts";
import { type Brought, useFound } from "#app/_parts/search/use-found.ts";
import look from "./search.module.css";

const pathOf = ({ kind, id }: Found): string => `/${kind}s/${id}`;

/**
 * One box that finds motors and sterns while it is typed into, after the combobox with a list popup of the
 * ARIA Authoring Practices: arrows go through what was found, Enter opens it, Escape puts it away. Without
 * script, and with nothing chosen, Enter goes to the motors' drawer with the same search.
 */
export function SearchBox() {
  const router = useRouter();
  const ids = useId();
  const [text, setText] = useState("");
  const [open, setOpen] = useState(false);
  const [active, setActive] = useState(-1);
  const brought = useFound(text);
  const items = open ? (brought?.items ?? []) : [];
  const shown = items.length > 0;
  const chosen = items[active];

  function go(path: string) {
    setText("");
    setOpen(false);
    setActive(-1);
    router.push(path);
  }

  function submit(event: FormEvent) {
    event.preventDefault();
    if (chosen) go(pathOf(chosen));
    else if (text.trim() !== "") go(`/motors?${new URLSearchParams({ query: text.trim() })}`);
  }

  function press(event: KeyboardEvent) {
    if (event.key === "Escape" && (open || text !== "")) {
      event.preventDefault();
      if (shown) setOpen(false);
      else setText("");
      setActive(-1);
    }
    if (event.key !== "ArrowDown" && event.key !== "ArrowUp") return;
    event.preventDefault();
    setOpen(true);
    // One place more than there are lines: the box itself, with nothing chosen.
    const places = (brought?.items.length ?? 0) + 1;
    const step = event.key === "ArrowDown" ? 1 : -1;
    setActive(((active + 1 + step + places) % places) - 1);
  }

  return (
    // biome-ignore lint/a11y/useSemanticElements: <search> is not known to every browser a boatyard has
    <form
      className={`${look.search} not-printed`}
      role="search"
      aria-label="Motors and sterns"
      action="/motors"
      onSubmit={submit}
    >
      <label className="unseen" htmlFor={`${ids}box`}>
        Find a motor or a stern
      </label>
      <input
        type="text"
        id={`${ids}box`}
        name="query"
        role="combobox"
        aria-expanded={shown}
        aria-controls={`${ids}list`}
        aria-autocomplete="list"
        aria-activedescendant={chosen ? `${ids}${active}` : undefined}
        value={text}
        maxLength={64}
        autoComplete="off"
        autoCapitalize="none"
        spellCheck={false}
        enterKeyHint="search"
        placeholder="Find: long 15 hp tiller"
        onChange={(event) => {
          setText(event.target.value);
          setOpen(true);
          setActive(-1);
        }}
        onFocus={() => setOpen(true)}
        onBlur={() => setOpen(false)}
        onKeyDown={press}
      />
      <p className="unseen" role="status">
        {open && brought ? countWords(brought) : ""}
      </p>
      {shown && (
        <div className={look.list} id={`${ids}list`} role="listbox" aria-label="Found">
          {items.map((found, at) => (
            <Option key={pathOf(found)} id={`${ids}${at}`} found={found} active={at === active} go={go} />
          ))}
        </div>
      )}
      {open && brought && !shown && text.trim() !== "" && (
        <p className={look.list} aria-hidden="true">
          {countWords(brought)}
        </p>
      )}
    </form>
  );
}

/** The focus never leaves the box: a press on a line must not take it. */
function Option({
  id,
  found,
  active,
  go,
}: {
  id: string;
  found: Found;
  active: boolean;
  go: (path: string) => void;
}) {
  return (
    // biome-ignore lint/a11y/useFocusableInteractive: in this pattern the box keeps the focus and names the line with aria-activedescendant
    // biome-ignore lint/a11y/useKeyWithClickEvents: the keys are the box's
    <div
      id={id}
      className={look.line}
      role="option"
      aria-selected={active}
      ref={(line) => {
        if (active) line?.scrollIntoView({ block: "nearest" });
      }}
      onMouseDown={(event) => event.preventDefault()}
      onClick={() => go(pathOf(found))}
    >
      <strong>{found.label}</strong>
      <span className={look.facts}>{[found.kind, ...found.facts].join(" · ")}</span>
    </div>
  );
}

function countWords({ items, failed }: Brought): string {
  if (failed) return "The search cannot be reached just now.";
  if (items.length === 0) return "Nothing found.";
  return items.length === 1 ? "1 found." : `${items.length} found, best first.`;
}
