import type { Metadata } from "next";
import Link from "next/link";
import { TitleStrip } from "#app/_parts/sheet/title-strip.tsx";

export const metadata: Metadata = { title: "No such sheet" };

/** Nothing is kept at this address. */
export default function NotFound() {
  return (
    <>
      <TitleStrip kind="404" title="No such sheet in the drawer" />
      <p>
        Nothing is kept at this address. It may have been removed, or the address was copied with a letter
        missing.
      </p>
      <p className="row">
        <Link className="button" href="/motors">
          All motors
        </Link>
        <Link className="button" href="/sterns">
          All sterns
        </Link>
      </p>
    </>
  );
}
