import type { Metadata } from "next";
import { ExchangePage } from "#app/_parts/record/exchange-page.tsx";

export const metadata: Metadata = { title: "Import and export sterns" };
export const dynamic = "force-dynamic";

/** Sterns in and out as plain files. */
export default function SternExchange() {
  return <ExchangePage kind="stern" />;
}
