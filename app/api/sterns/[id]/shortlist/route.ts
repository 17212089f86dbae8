import { listRoute } from "#app/shortlist/_parts/list-route.ts";

/** Every motor against one stern, best first. */
export const { GET, POST, PUT, PATCH, DELETE, OPTIONS } = listRoute("motor");
