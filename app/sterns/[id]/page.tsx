import type { Metadata } from "next";
import type { Query } from "#app/_parts/list/list-page.tsx";
import { titled } from "#app/_parts/record/named.ts";
import { RecordPage } from "#app/_parts/record/record-page.tsx";
import { Takings } from "#app/_parts/takings/takings.tsx";

export const dynamic = "force-dynamic";

type Params = Promise<{ id: string }>;

export async function generateMetadata({ params }: { params: Params }): Promise<Metadata> {
  return { title: await titled("stern", params) };
}

/** One stern's sheet. */
export default function Stern({ params, searchParams }: { params: Params; searchParams: Query }) {
  return (
    <>
      <RecordPage kind="stern" params={params} searchParams={searchParams} />
      <Takings kind="stern" params={params} searchParams={searchParams} />
    </>
  );
}
