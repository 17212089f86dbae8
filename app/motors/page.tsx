import type { Metadata } from "next";
import { ListPage, type Query } from "#app/_parts/list/list-page.tsx";

export const metadata: Metadata = { title: "Motors" };
export const dynamic = "force-dynamic";

/** The drawer of motors. */
export default function Motors({ searchParams }: { searchParams: Query }) {
  return <ListPage kind="motor" searchParams={searchParams} />;
}
