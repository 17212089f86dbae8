import { exportingOne } from "#app/_http/records/exporting.ts";

export const { GET, POST, PUT, PATCH, DELETE, OPTIONS } = exportingOne("stern");
