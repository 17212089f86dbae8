import { z } from "zod";
import { answer, problems } from "#app/_http/openapi/words.ts";
import { listQuerySchema } from "#app/shortlist/_parts/list-query.ts";
import type { Kind } from "#lib/db/kind.ts";

const id = { name: "id", in: "path", required: true, schema: { type: "string" } };

function listPath(kind: Kind, operationId: string, summary: string): object {
  const { properties = {} } = z.toJSONSchema(listQuerySchema(kind), { io: "input" });
  const queries = Object.entries(properties).map(([name, schema]) => ({ name, in: "query", schema }));
  return {
    parameters: [id],
    get: {
      operationId,
      summary,
      parameters: queries,
      responses: {
        200: answer(
          "`counts` of each verdict, `settlesMost`, `items` best first, and `next`, the `from` of the next page, while there is more. As `format=csv` one file.",
        ),
        ...problems(400, 404, 503),
      },
    },
  };
}

/** The paths of the two lists: motors for a stern, sterns for a motor. */
export const listPaths = (): Record<string, object> => ({
  "/api/sterns/{id}/shortlist": listPath("motor", "shortlist", "Every motor against one stern, best first."),
  "/api/motors/{id}/sterns": listPath("stern", "sternsFor", "Every stern against one motor, best first."),
});
