import type { Metadata } from "next";
import { NewPage } from "#app/_parts/record/new-page.tsx";

export const metadata: Metadata = { title: "Enter a stern" };
export const dynamic = "force-dynamic";

/** A new stern, from a tape. */
export default function NewStern() {
  return <NewPage kind="stern" />;
}
