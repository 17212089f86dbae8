import type { Metadata } from "next";
import { HistoryPage } from "#app/_parts/record/history-page.tsx";

export const metadata: Metadata = { title: "History of a stern" };
export const dynamic = "force-dynamic";

/** Every version of one stern. */
export default function SternHistory({ params }: { params: Promise<{ id: string }> }) {
  return <HistoryPage kind="stern" params={params} />;
}
