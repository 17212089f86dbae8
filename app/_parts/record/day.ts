const DAY = new Intl.DateTimeFormat("en-GB", {
  day: "numeric",
  month: "short",
  year: "numeric",
  timeZone: "UTC",
});
const MOMENT = new Intl.DateTimeFormat("en-GB", { dateStyle: "medium", timeStyle: "short", timeZone: "UTC" });

/** A moment (ISO 8601) as its day in UTC: "3 Mar 2026". */
export const day = (at: string): string => DAY.format(new Date(at));

/** A moment (ISO 8601) as day and time in UTC. */
export const moment = (at: string): string => `${MOMENT.format(new Date(at))} UTC`;
