import { collection } from "#app/_http/records/collection.ts";

export const { GET, POST, PUT, PATCH, DELETE, OPTIONS } = collection("motor");
