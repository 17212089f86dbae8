/** What a file of a cut plan can hold. */
export const FILES = ["all", "drawings", "templates", "check"] as const;
export type FileOf = (typeof FILES)[number];
