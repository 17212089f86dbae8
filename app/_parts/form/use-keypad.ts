"use client";

import { useEffect } from "react";

/**
 * Keeps `--keypad`, the height of the phone's keypad where it lies over the page, up to date, so that what
 * stands at the foot of the page stands above it.
 */
export function useKeypad(): void {
  useEffect(() => {
    const view = window.visualViewport;
    if (!view) return;
    const measure = () => {
      const covered = Math.max(0, window.innerHeight - view.height - view.offsetTop);
      document.documentElement.style.setProperty("--keypad", `${Math.round(covered)}px`);
    };
    view.addEventListener("resize", measure);
    view.addEventListener("scroll", measure);
    return () => {
      view.removeEventListener("resize", measure);
      view.removeEventListener("scroll", measure);
      document.documentElement.style.removeProperty("--keypad");
    };
  }, []);
}
