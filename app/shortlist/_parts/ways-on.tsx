import Link from "next/link";
import type { Kind } from "#lib/db/kind.ts";

/** From a record to the lists it stands at the head of: a stern's motors and shaft lengths, a motor's sterns. */
export function WaysOn({ kind, id }: { readonly kind: Kind; readonly id: string }) {
  return (
    <p className="row not-printed">
      {kind === "stern" ? (
        <>
          <Link className="button" href={`/shortlist/${id}`} prefetch={false}>
            All motors, best first
          </Link>
          <Link className="button" href={`/shaft/${id}`} prefetch={false}>
            Which shaft length?
          </Link>
          <Link className="button" href={`/sale?stern=${id}`} prefetch={false}>
            Quick check at a sale
          </Link>
        </>
      ) : (
        <Link className="button" href={`/motors/${id}/sterns`} prefetch={false}>
          All sterns, best first
        </Link>
      )}
    </p>
  );
}
