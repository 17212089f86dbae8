import { route } from "#app/_http/route.ts";
import { listRecords } from "#lib/db/records.ts";
import { ENGINE_VERSION } from "#lib/fit/report.ts";

/** Whether the server answers and its store can be read. */
export const { GET, POST, PUT, PATCH, DELETE, OPTIONS } = route({
  async GET() {
    await listRecords("motor", { limit: 1 });
    return Response.json({ ok: true, engine: ENGINE_VERSION });
  },
});
