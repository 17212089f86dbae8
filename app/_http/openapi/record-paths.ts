import { z } from "zod";
import { answer, body, neededHeader, problems } from "#app/_http/openapi/words.ts";
import { querySchemas } from "#app/_http/records/query.ts";
import type { Kind } from "#lib/db/kind.ts";

const id = { name: "id", in: "path", required: true, schema: { type: "string" } };
const origin = neededHeader("Origin", "The address of this site.");
const ifMatch = neededHeader("If-Match", "The ETag the record was read with.");

const format = { name: "format", in: "query", schema: { enum: ["json", "csv"], default: "json" } };
const file = { description: "The file.", content: { "application/json": {}, "text/csv": {} } };

/** The paths at which records of one kind are read and changed. */
export function recordPaths(kind: Kind): Record<string, object> {
  const name = kind === "motor" ? "Motor" : "Stern";
  const operation = (verb: string, summary: string) => ({ operationId: `${verb}${name}`, summary });
  return {
    [`/api/${kind}s`]: {
      get: {
        ...operation("list", `${name}s by label, or those a search finds, best first.`),
        parameters: queryParameters(kind),
        responses: { 200: answer("`items`, and `next` while there is more."), ...problems(400) },
      },
      post: {
        ...operation("create", `Stores a new ${kind}.`),
        parameters: [origin],
        requestBody: body(name),
        responses: { 201: answer("As stored.", name), ...problems(400, 403, 409, 413, 415, 422, 503) },
      },
    },
    [`/api/${kind}s/{id}`]: {
      parameters: [id],
      get: {
        ...operation("read", `One ${kind}; its version is the ETag.`),
        responses: { 200: answer("The record.", name), ...problems(404) },
      },
      patch: {
        ...operation("change", "Changes the keys that are sent; null takes a number away."),
        parameters: [origin, ifMatch],
        requestBody: body(`${name}Patch`),
        responses: {
          200: answer("As it stands now.", name),
          ...problems(400, 403, 404, 412, 413, 415, 422, 428, 503),
        },
      },
      delete: {
        ...operation("remove", `Removes the ${kind}; it can be restored.`),
        parameters: [origin, ifMatch],
        responses: { 204: { description: "Removed." }, ...problems(403, 404, 412, 428, 503) },
      },
    },
    [`/api/${kind}s/export`]: {
      get: {
        ...operation("exportAll", `All ${kind}s as one file, which can be imported again.`),
        parameters: [format],
        responses: { 200: file, ...problems(400) },
      },
    },
    [`/api/${kind}s/import`]: {
      post: {
        ...operation(
          "import",
          "Stores all records of a file, or none; those that stand already are passed over.",
        ),
        parameters: [origin],
        requestBody: { required: true, content: { "application/json": {}, "text/csv": {} } },
        responses: {
          201: answer("How many were `stored` and `unchanged`."),
          ...problems(400, 403, 409, 413, 415, 422, 503),
        },
      },
    },
    [`/api/${kind}s/{id}/export`]: {
      parameters: [id],
      get: {
        ...operation("export", `The ${kind} as a file.`),
        parameters: [format],
        responses: { 200: file, ...problems(400, 404) },
      },
    },
    [`/api/${kind}s/{id}/restore`]: {
      parameters: [id],
      post: {
        ...operation("restore", `Brings a removed ${kind} back.`),
        parameters: [origin],
        responses: { 200: answer("As it stands now.", name), ...problems(403, 404, 503) },
      },
    },
    [`/api/${kind}s/{id}/history`]: {
      parameters: [id],
      get: {
        ...operation("historyOf", "Every version of it, and every number ever taken of it."),
        responses: { 200: answer("`versions` and `takings`, oldest first."), ...problems(404) },
      },
    },
    [`/api/${kind}s/{id}/takings`]: {
      parameters: [id],
      get: {
        ...operation("takingsOf", "Every number ever taken of it, with what its takings come to."),
        responses: { 200: answer("`numbers` by key: `takings` and `consensus`."), ...problems(404) },
      },
      post: {
        ...operation(
          "takeAgain",
          "Adds one taking beside the earlier ones; the record's number becomes their consensus.",
        ),
        parameters: [origin, ifMatch],
        requestBody: body("Taking"),
        responses: {
          201: answer("The record as it stands now.", name),
          ...problems(400, 403, 404, 412, 413, 415, 422, 428, 503),
        },
      },
    },
  };
}

function queryParameters(kind: Kind): object[] {
  const { properties = {} } = z.toJSONSchema(querySchemas[kind], { io: "input" });
  return Object.entries(properties).map(([name, schema]) => ({ name, in: "query", schema }));
}
