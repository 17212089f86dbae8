import type { Metadata } from "next";
import { EditPage } from "#app/_parts/record/edit-page.tsx";

export const metadata: Metadata = { title: "Edit a stern" };
export const dynamic = "force-dynamic";

/** One stern's form. */
export default function EditStern({ params }: { params: Promise<{ id: string }> }) {
  return <EditPage kind="stern" params={params} />;
}
