/** Pieces that every path of the OpenAPI document is put together from. */

const MEANINGS: Readonly<Record<number, string>> = {
  400: "Not understood.",
  403: "Does not come from this site.",
  404: "There is none.",
  409: "The id is taken or was used before.",
  412: "Somebody else has changed it; `current` is how it stands.",
  413: "Too large.",
  415: "Not this kind of content.",
  422: "Not possible; `errors` says where and why.",
  428: "If-Match is needed.",
  503: "Busy; try again after Retry-After.",
};

const schemaOf = (name?: string) => (name ? { $ref: `#/components/schemas/${name}` } : { type: "object" });

/** A JSON body of a named schema. */
export const body = (name: string) => ({
  required: true,
  content: { "application/json": { schema: schemaOf(name) } },
});

/** A JSON answer, of a named schema where it has one. */
export const answer = (description: string, name?: string) => ({
  description,
  content: { "application/json": { schema: schemaOf(name) } },
});

/** The refusals a path can give. */
export const problems = (...statuses: number[]) =>
  Object.fromEntries(
    statuses.map((status) => [
      status,
      {
        description: MEANINGS[status],
        content: { "application/problem+json": { schema: schemaOf("Problem") } },
      },
    ]),
  );

/** A header that a request must carry. */
export const neededHeader = (name: string, description: string) => ({
  name,
  in: "header",
  required: true,
  description,
  schema: { type: "string" },
});
