import { single } from "#app/_http/records/single.ts";

export const { GET, POST, PUT, PATCH, DELETE, OPTIONS } = single("stern");
