import { searching } from "#app/_http/searching.ts";

export const { GET, POST, PUT, PATCH, DELETE, OPTIONS } = searching();
