/** Where the browser keeps what was typed into a form until it is saved; a new record's has no id yet. */
export const draftKey = (kind: string, id: string | undefined): string => `draft ${kind} ${id ?? "new"}`;
