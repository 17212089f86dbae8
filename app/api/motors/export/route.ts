import { exporting } from "#app/_http/records/exporting.ts";

export const { GET, POST, PUT, PATCH, DELETE, OPTIONS } = exporting("motor");
