import { importingAll } from "#app/_http/records/importing.ts";

export const { GET, POST, PUT, PATCH, DELETE, OPTIONS } = importingAll();
