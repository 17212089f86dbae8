"use client";

import { TitleStrip } from "#app/_parts/sheet/title-strip.tsx";

/** Something broke while this sheet was drawn; what was typed is still in the browser. */
export default function ErrorSheet({
  error,
  reset,
}: {
  error: Error & { digest?: string };
  reset: () => void;
}) {
  return (
    <>
      <TitleStrip kind="Fault" title="This sheet could not be drawn" />
      <p>
        The fault is ours, not in what you typed; an entry you had begun is kept in this browser. Try once
        more. If it happens again, tell whoever runs this copy
        {error.digest ? ` and quote ${error.digest}` : ""}.
      </p>
      <p>
        <button type="button" className="main" onClick={reset}>
          Try again
        </button>
      </p>
    </>
  );
}
