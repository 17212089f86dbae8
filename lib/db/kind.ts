import type { Motor } from "#lib/rig/motor.ts";
import type { Stern } from "#lib/rig/stern.ts";

/** What is kept: motors and sterns. A pairing is never kept; its report is worked out where it is read. */
export const KINDS = ["motor", "stern"] as const;
export type Kind = (typeof KINDS)[number];

/** The record of a kind, in the vocabulary of lib/rig. */
export type RecordOf<K extends Kind> = K extends "motor" ? Motor : Stern;
