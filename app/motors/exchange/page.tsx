import type { Metadata } from "next";
import { ExchangePage } from "#app/_parts/record/exchange-page.tsx";

export const metadata: Metadata = { title: "Import and export motors" };
export const dynamic = "force-dynamic";

/** Motors in and out as plain files. */
export default function MotorExchange() {
  return <ExchangePage kind="motor" />;
}
