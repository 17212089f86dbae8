import { openApiDocument } from "#app/_http/openapi/document.ts";
import { route } from "#app/_http/route.ts";

/** What the API takes and gives, for programs and for those who write them. */
export const { GET, POST, PUT, PATCH, DELETE, OPTIONS } = route({
  GET: () => Response.json(openApiDocument()),
});
