import type { Metadata } from "next";
import type { Query } from "#app/_parts/list/list-page.tsx";
import { titled } from "#app/_parts/record/named.ts";
import { RecordPage } from "#app/_parts/record/record-page.tsx";
import { Takings } from "#app/_parts/takings/takings.tsx";

export const dynamic = "force-dynamic";

type Params = Promise<{ id: string }>;

export async function generateMetadata({ params }: { params: Params }): Promise<Metadata> {
  return { title: await titled("motor", params) };
}

/** One motor's sheet. */
export default function Motor({ params, searchParams }: { params: Params; searchParams: Query }) {
  return (
    <>
      <RecordPage kind="motor" params={params} searchParams={searchParams} />
      <Takings kind="motor" params={params} searchParams={searchParams} />
    </>
  );
}
