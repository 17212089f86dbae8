import type { Metadata } from "next";
import { HistoryPage } from "#app/_parts/record/history-page.tsx";

export const metadata: Metadata = { title: "History of a motor" };
export const dynamic = "force-dynamic";

/** Every version of one motor. */
export default function MotorHistory({ params }: { params: Promise<{ id: string }> }) {
  return <HistoryPage kind="motor" params={params} />;
}
