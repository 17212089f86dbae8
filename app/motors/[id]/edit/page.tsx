import type { Metadata } from "next";
import { EditPage } from "#app/_parts/record/edit-page.tsx";

export const metadata: Metadata = { title: "Edit a motor" };
export const dynamic = "force-dynamic";

/** One motor's form. */
export default function EditMotor({ params }: { params: Promise<{ id: string }> }) {
  return <EditPage kind="motor" params={params} />;
}
