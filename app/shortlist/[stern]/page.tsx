import type { Metadata } from "next";
import { titled } from "#app/_parts/record/named.ts";
import type { Query } from "#app/shortlist/_parts/asked.ts";
import { ShortlistPage } from "#app/shortlist/_parts/shortlist-page.tsx";

export const dynamic = "force-dynamic";

interface Address {
  readonly params: Promise<{ stern: string }>;
  readonly searchParams: Promise<Query>;
}

export async function generateMetadata({ params }: Address): Promise<Metadata> {
  const label = await titled(
    "stern",
    params.then(({ stern }) => ({ id: stern })),
  );
  return { title: `Motors for ${label}` };
}

/** Every motor against one stern, best first. */
export default async function Shortlist({ params, searchParams }: Address) {
  const [{ stern }, query] = await Promise.all([params, searchParams]);
  return <ShortlistPage kind="motor" id={stern} query={query} />;
}
