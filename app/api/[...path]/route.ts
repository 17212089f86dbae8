import { Refused } from "#app/_http/problem.ts";
import { asks, type Handler, route } from "#app/_http/route.ts";

const nothing: Handler = () => {
  throw new Refused(404, "There is nothing at this address. What there is stands in /api/openapi.json.");
};

/** Every other address below /api. */
export const { GET, POST, PUT, PATCH, DELETE, OPTIONS } = route({
  GET: nothing,
  POST: asks(nothing),
  PUT: asks(nothing),
  PATCH: asks(nothing),
  DELETE: asks(nothing),
});
