import type { Metadata } from "next";
import Link from "next/link";
import { TitleStrip } from "#app/_parts/sheet/title-strip.tsx";

export const metadata: Metadata = { title: "No such stern" };

/** The stern of an address is not kept. */
export default function NoSuchStern() {
  return (
    <>
      <TitleStrip kind="404" title="No such stern to cut" />
      <p>
        The stern this address names is not in its drawer. It may have been removed, or the address was copied
        with a letter missing.
      </p>
      <p className="row">
        <Link className="button" href="/cut-plan">
          Pick a stern
        </Link>
      </p>
    </>
  );
}
