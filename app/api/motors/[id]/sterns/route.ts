import { listRoute } from "#app/shortlist/_parts/list-route.ts";

/** Every stern against one motor, best first. */
export const { GET, POST, PUT, PATCH, DELETE, OPTIONS } = listRoute("stern");
