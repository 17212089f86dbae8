import { z } from "zod";
import { cutPlanPaths } from "#app/_http/openapi/cut-plan-paths.ts";
import { listPaths } from "#app/_http/openapi/list-paths.ts";
import { recordPaths } from "#app/_http/openapi/record-paths.ts";
import { answer, body, neededHeader, problems } from "#app/_http/openapi/words.ts";
import { cutRequestSchema } from "#lib/entry/cut-choices.ts";
import { limitsSchema } from "#lib/entry/limits.ts";
import { HOWS, PLUS_MINUS_MOST } from "#lib/entry/measured.ts";
import { motorPatchSchema, motorSchema } from "#lib/entry/motor.ts";
import { fitRequestSchema } from "#lib/entry/pairing.ts";
import { sternPatchSchema, sternSchema } from "#lib/entry/stern.ts";
import { COMMENT_MOST, RAW_MOST } from "#lib/entry/taking.ts";
import { twoRequestSchema } from "#lib/entry/two.ts";
import { ENGINE_VERSION } from "#lib/fit/report.ts";

/** What is sent, as JSON Schema, out of the very schemas that check it. */
const sent = (schema: z.ZodType): object => {
  const { $schema: _, ...rest } = z.toJSONSchema(schema, { io: "input" });
  return rest;
};

const problem = {
  type: "object",
  description: "Problem details (RFC 9457).",
  required: ["type", "title", "status", "detail", "errors"],
  properties: {
    type: { type: "string" },
    title: { type: "string" },
    status: { type: "integer" },
    detail: { type: "string" },
    errors: {
      type: "array",
      items: {
        type: "object",
        required: ["pointer", "detail", "code"],
        properties: {
          pointer: { type: "string", description: "JSON pointer (RFC 6901) into what was sent." },
          detail: { type: "string" },
          code: { type: "string" },
        },
      },
    },
  },
};

const taking = {
  type: "object",
  required: ["key", "value", "how"],
  additionalProperties: false,
  properties: {
    key: { type: "string", description: "A number of the vocabulary, such as `shaftLengthMm`." },
    value: { description: "The number in the key's unit; a list for `pinAnglesDeg`." },
    plusMinus: { type: "number", minimum: 0, maximum: PLUS_MINUS_MOST },
    how: { enum: HOWS },
    raw: { type: "string", maxLength: RAW_MOST, description: "The text as it was typed." },
    comment: { type: "string", maxLength: COMMENT_MOST },
  },
};

const report = {
  type: "object",
  description: "Lengths in millimetres, angles in degrees. An absent number is one that cannot be told.",
  required: [
    ...["engine", "motor", "stern", "verdict", "governs"],
    ...["clearances", "needs", "checks", "afloat", "remedies"],
  ],
  properties: {
    engine: { type: "string", description: "Version of the engine; raised when any number can change." },
    motor: { type: "string", description: "Id of the motor." },
    stern: { type: "string", description: "Id of the stern." },
    verdict: { enum: ["fits", "fouls", "cannot tell"] },
    governs: { type: "string", description: "Id of the check that governs the verdict." },
    plate: { type: "object" },
    clearances: { type: "array", items: { type: "object" } },
    needs: { type: "object" },
    checks: { type: "array", items: { type: "object" } },
    afloat: {
      type: "array",
      items: { type: "object" },
      description: "The boat afloat with this motor. Decides neither `verdict` nor `governs`.",
    },
    remedies: { type: "array", items: { type: "object" } },
  },
};

/** The OpenAPI 3.1 document of the HTTP API. */
export function openApiDocument(): object {
  return {
    openapi: "3.1.1",
    info: {
      title: "Sternwright",
      version: ENGINE_VERSION,
      description:
        "Tells whether an outboard motor will hang, steer and tilt on a small boat's stern. Lengths are millimetres, angles degrees, masses kilograms, power kilowatts. A number nobody knows is an absent key. A change must carry the site's own Origin.",
      license: { name: "MIT", identifier: "MIT" },
    },
    servers: [{ url: "/" }],
    paths: {
      "/api/fit": {
        post: {
          operationId: "fit",
          summary: "The report of one motor on one stern. Changes nothing; any program may ask.",
          requestBody: body("FitRequest"),
          responses: { 200: answer("The report.", "Report"), ...problems(400, 404, 413, 415, 422) },
        },
      },
      "/api/fit/two": {
        post: {
          operationId: "fitTwo",
          summary: "The report of two motors on one stern. Changes nothing; any program may ask.",
          requestBody: body("TwoRequest"),
          responses: { 200: answer("The report."), ...problems(400, 404, 413, 415, 422) },
        },
      },
      ...recordPaths("motor"),
      ...recordPaths("stern"),
      ...listPaths(),
      ...cutPlanPaths(),
      "/api/search": {
        get: {
          operationId: "search",
          summary: "Motors and sterns a search finds, best first; it minds neither word order nor a slip.",
          parameters: [
            { name: "query", in: "query", schema: { type: "string", maxLength: 1000 } },
            { name: "limit", in: "query", schema: { type: "integer", minimum: 1, maximum: 50, default: 10 } },
          ],
          responses: {
            200: answer("`items`: `kind`, `id`, `label` and a few `facts` of each."),
            ...problems(400),
          },
        },
      },
      "/api/export": {
        get: {
          operationId: "exportEverything",
          summary: "All motors and sterns as one JSON file.",
          responses: { 200: answer("`motors` and `sterns`.") },
        },
      },
      "/api/import": {
        post: {
          operationId: "importEverything",
          summary: "Stores all motors and sterns of such a file, or none.",
          parameters: [neededHeader("Origin", "The address of this site.")],
          requestBody: { required: true, content: { "application/json": {} } },
          responses: {
            201: answer("How many were `stored` and `unchanged`."),
            ...problems(400, 403, 409, 413, 415, 422, 503),
          },
        },
      },
      "/api/health": {
        get: {
          operationId: "health",
          summary: "Whether the server answers and its store can be read.",
          responses: { 200: answer("It does."), ...problems(503) },
        },
      },
    },
    components: {
      schemas: {
        Motor: sent(motorSchema),
        MotorPatch: sent(motorPatchSchema),
        Stern: sent(sternSchema),
        SternPatch: sent(sternPatchSchema),
        Limits: sent(limitsSchema),
        FitRequest: sent(fitRequestSchema),
        TwoRequest: sent(twoRequestSchema),
        CutRequest: sent(cutRequestSchema),
        Taking: taking,
        Report: report,
        Problem: problem,
      },
    },
  };
}
