"use client";

import { type FormEvent, useCallback } from "react";
import { themeCookie } from "#app/_parts/theme/theme.ts";
import { turnTheme } from "#app/_parts/theme/turn-theme.ts";

/** Turns the sheet from light to dark and back, and remembers it. Without script the form does the same by a round trip. */
export function ThemeSwitch() {
  const turn = useCallback((event: FormEvent) => {
    event.preventDefault();
    const root = document.documentElement;
    const dark = root.dataset.theme
      ? root.dataset.theme === "dark"
      : matchMedia("(prefers-color-scheme: dark)").matches;
    const theme = dark ? "light" : "dark";
    root.dataset.theme = theme;
    // biome-ignore lint/suspicious/noDocumentCookie: the Cookie Store API is not in every browser a boatyard has
    document.cookie = themeCookie(theme);
  }, []);
  return (
    <form className="theme" action={turnTheme} onSubmit={turn}>
      <button type="submit" aria-label="Switch between light and dark sheet">
        <svg viewBox="0 0 20 20" width="20" height="20" aria-hidden="true">
          <circle cx="10" cy="10" r="8" fill="none" stroke="currentColor" strokeWidth="1.5" />
          <path d="M10 2a8 8 0 0 1 0 16z" fill="currentColor" />
        </svg>
      </button>
    </form>
  );
}
