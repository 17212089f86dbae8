import type { Metadata } from "next";
import { ListPage, type Query } from "#app/_parts/list/list-page.tsx";

export const metadata: Metadata = { title: "Sterns" };
export const dynamic = "force-dynamic";

/** The drawer of sterns. */
export default function Sterns({ searchParams }: { searchParams: Query }) {
  return <ListPage kind="stern" searchParams={searchParams} />;
}
