import { history } from "#app/_http/records/single.ts";

export const { GET, POST, PUT, PATCH, DELETE, OPTIONS } = history("motor");
