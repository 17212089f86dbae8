import Link from "next/link";
import type { ReactNode } from "react";
import { measuringPlace } from "#app/_parts/afloat/measuring-place.ts";

/** Leads from a number to where it comes from: the standard's entry, how the number is taken, or the question that works it out. */
export function SourceLink({
  standard,
  fromKey,
  check,
  source,
  children,
}: {
  readonly standard?: string | undefined;
  readonly fromKey?: string | undefined;
  readonly check: string;
  readonly source: string;
  readonly children: ReactNode;
}) {
  const href = standard
    ? `/checks/sources#${standard}`
    : fromKey
      ? measuringPlace(fromKey)
      : `/checks#${check}`;
  return (
    <Link prefetch={false} href={href} title={source}>
      {children}
    </Link>
  );
}
