"use client";

import { useState } from "react";

/** Opens, or closes, every list of what a doubt is made of: to read them through, or to print them. */
export function OpenEvery() {
  const [open, setOpen] = useState(false);
  const turn = () => {
    for (const list of document.querySelectorAll<HTMLDetailsElement>("details[data-doubt]")) {
      list.open = !open;
    }
    setOpen(!open);
  };
  return (
    <button type="button" className="not-printed" onClick={turn}>
      {open ? "Close every list of doubts" : "Open every list of doubts"}
    </button>
  );
}
