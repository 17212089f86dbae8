import { z } from "zod";
import { readQuery } from "#app/_http/body.ts";
import { route } from "#app/_http/route.ts";
import type { Found } from "#app/_parts/search/found.ts";
import { currentIndex } from "#app/_parts/search/kept-index.ts";

const USUAL = 10;
const MOST = 50;

/** What a search over everything may be asked for in its address. */
export const searchQuery = z.strictObject({
  query: z.string().max(1000, { error: "A search has at most 1,000 characters." }).default(""),
  limit: z
    .string()
    .refine((text) => /^\d{1,2}$/.test(text) && Number(text) >= 1 && Number(text) <= MOST, {
      error: `Give a limit from 1 to ${MOST}.`,
    })
    .transform(Number)
    .default(USUAL),
});

/** `GET` the motors and sterns a search finds, best first. */
export function searching() {
  return route({
    async GET(request) {
      const { query, limit } = readQuery(request, searchQuery);
      const index = await currentIndex();
      const items = index
        .search(query, limit)
        .map(({ kind, record: { id, label }, facts }): Found => ({ kind, id, label, facts }));
      return Response.json({ items });
    },
  });
}
