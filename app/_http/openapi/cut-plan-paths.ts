import { z } from "zod";
import { answer, body, problems } from "#app/_http/openapi/words.ts";
import { fileQuerySchema } from "#app/_parts/cut-plan/file-query.ts";
import { cutFields, cutWords } from "#lib/entry/cut-fields.ts";

const inPath = (name: string, schema: object = { type: "string" }) => ({
  name,
  in: "path",
  required: true,
  schema,
});
const inQuery = (name: string, schema: object) => ({ name, in: "query", schema });

const TYPES = { pdf: "application/pdf", svg: "image/svg+xml", dxf: "image/vnd.dxf" } as const;

/** What a file's address may carry: the motors, the unit of marks, the choices, and what the file is to hold. */
function fileParameters(): object[] {
  const { properties = {} } = z.toJSONSchema(fileQuerySchema, { io: "input" });
  return [
    { ...inQuery("motors", { type: "string" }), required: true, description: "Ids with commas between." },
    inQuery("units", { enum: ["mm", "in"], default: "mm" }),
    ...Object.entries(properties).map(([name, schema]) => inQuery(name, schema as object)),
    ...Object.entries(cutWords).map(([name, words]) => inQuery(name, { enum: Object.keys(words) })),
    ...Object.entries(cutFields).map(([name, { name: title, unit }]) => ({
      ...inQuery(name, { type: "string" }),
      description: `${title}: a number in ${unit === "mm" ? "millimetres" : "degrees"}, or as people write it, such as 1/2 in.`,
    })),
  ];
}

/** The paths of the cut plan. */
export const cutPlanPaths = (): Record<string, object> => ({
  "/api/cut-plan": {
    post: {
      operationId: "cutPlan",
      summary:
        "What to saw so that motors suit a stern, and the well to build. Changes nothing; any program may ask.",
      requestBody: body("CutRequest"),
      responses: {
        200: answer(
          "The plan: `notch`, `well`, `missing`, `warnings`, `checklist`, `advice`. Lengths in millimetres, angles in degrees.",
        ),
        ...problems(400, 404, 413, 415, 422),
      },
    },
  },
  "/api/cut-plan/{stern}/{file}": {
    parameters: [inPath("stern"), inPath("file", { enum: Object.keys(TYPES) })],
    get: {
      operationId: "cutPlanFile",
      summary:
        "The plan of a kept stern as a file: `pdf` all of it, `svg` one `sheet` of it, `dxf` a `part` full size.",
      parameters: fileParameters(),
      responses: {
        200: {
          description: "The file.",
          content: Object.fromEntries(Object.values(TYPES).map((type) => [type, {}])),
        },
        ...problems(400, 404, 422, 503),
      },
    },
  },
});
