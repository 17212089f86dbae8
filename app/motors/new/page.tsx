import type { Metadata } from "next";
import { NewPage } from "#app/_parts/record/new-page.tsx";

export const metadata: Metadata = { title: "Enter a motor" };
export const dynamic = "force-dynamic";

/** A new motor, from a tape. */
export default function NewMotor() {
  return <NewPage kind="motor" />;
}
