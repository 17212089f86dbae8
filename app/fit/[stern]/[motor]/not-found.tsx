import type { Metadata } from "next";
import Link from "next/link";
import { TitleStrip } from "#app/_parts/sheet/title-strip.tsx";

export const metadata: Metadata = { title: "No such pairing" };

/** The motor or the stern of an address is not kept. */
export default function NoSuchPairing() {
  return (
    <>
      <TitleStrip kind="404" title="No such pairing" />
      <p>
        The motor or the stern this address names is not in its drawer. It may have been removed, or the
        address was copied with a letter missing. Pick both again:
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
