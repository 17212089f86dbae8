import { Refused } from "#app/_http/problem.ts";
import { isStoreError, type StoreError, type StoreTrouble } from "#lib/db/store-error.ts";

const STATUS: Readonly<Record<StoreTrouble, number>> = {
  busy: 503,
  "read-only": 503,
  full: 507,
  damaged: 500,
  refused: 503,
  constraint: 500,
  "duplicate id": 409,
  "bad cursor": 400,
};

/** Whatever was thrown, as the refusal its sender may see. What they may not see goes to the log, under a number that both get. */
export function refusalOf(caught: unknown): Refused {
  if (caught instanceof Refused) return caught;
  if (isStoreError(caught) && STATUS[caught.trouble] !== 500) return ofStore(caught);
  const number = crypto.randomUUID();
  console.error(`Failure ${number}:`, caught);
  return new Refused(
    500,
    `Something failed here; nothing of what you sent is at fault. The log has it as ${number}.`,
  );
}

function ofStore(error: StoreError): Refused {
  const status = STATUS[error.trouble];
  if (error.trouble === "duplicate id") {
    const detail = error.message;
    return new Refused(status, detail, { errors: [{ pointer: "/id", detail, code: "taken" }] });
  }
  if (error.trouble === "bad cursor") {
    const detail = error.message;
    return new Refused(status, detail, { errors: [{ pointer: "/cursor", detail, code: "not-allowed" }] });
  }
  if (error.trouble === "refused") {
    console.error(error.message);
    return new Refused(status, "The store cannot be used just now.");
  }
  return new Refused(
    status,
    error.message,
    error.trouble === "busy" ? { headers: { "Retry-After": "1" } } : {},
  );
}
