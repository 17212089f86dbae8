/** A program of its own that holds the lock of the store of DATABASE_URL until it is told to end. */
import { takeLock } from "#lib/db/lock.ts";
import { place } from "#lib/db/place.ts";

process.on("exit", takeLock(place().lock));
process.on("SIGTERM", () => process.exit(0));
console.log("holding");
setInterval(() => {}, 1000);
