import { takings } from "#app/_http/records/takings.ts";

export const { GET, POST, PUT, PATCH, DELETE, OPTIONS } = takings("stern");
