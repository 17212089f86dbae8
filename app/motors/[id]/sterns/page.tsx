import type { Metadata } from "next";
import { titled } from "#app/_parts/record/named.ts";
import type { Query } from "#app/shortlist/_parts/asked.ts";
import { ShortlistPage } from "#app/shortlist/_parts/shortlist-page.tsx";

export const dynamic = "force-dynamic";

interface Address {
  readonly params: Promise<{ id: string }>;
  readonly searchParams: Promise<Query>;
}

export async function generateMetadata({ params }: Address): Promise<Metadata> {
  return { title: `Sterns for ${await titled("motor", params)}` };
}

/** Every stern against one motor, best first. */
export default async function Sterns({ params, searchParams }: Address) {
  const [{ id }, query] = await Promise.all([params, searchParams]);
  return <ShortlistPage kind="stern" id={id} query={query} />;
}
