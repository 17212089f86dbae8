"use client";

import { useRouter } from "next/navigation";
import { useEffect } from "react";

/** How often it is asked how far the list is, ms. */
const AGAIN_MS = 500;

/** A long list being worked: how far it is. Asks again until it is done; without script the browser does. */
export function Waiting({ total, done }: { readonly total: number; readonly done: number }) {
  const router = useRouter();
  useEffect(() => {
    const again = setInterval(() => router.refresh(), AGAIN_MS);
    return () => clearInterval(again);
  }, [router]);
  const words = `${done.toLocaleString("en-GB")} of ${total.toLocaleString("en-GB")} pairings worked`;
  return (
    <div className="notice" role="status">
      <p>
        <label htmlFor="worked">{words}</label>
      </p>
      <progress
        id="worked"
        max={total}
        value={done}
        style={{ width: "100%", height: "1.5rem", accentColor: "var(--accent)" }}
      >
        {words}
      </progress>
      <noscript>
        <meta httpEquiv="refresh" content="1" />
        <p>This page asks again every second.</p>
      </noscript>
    </div>
  );
}
