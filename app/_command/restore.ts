/**
 * `npx tsx app/_command/restore.ts COPY`: puts an earlier copy in the store's place; the store as it was is
 * kept among the copies. Without COPY it lists what there is.
 */
import { existsSync } from "node:fs";
import { resolve } from "node:path";
import { endingWell } from "#app/_command/ending.ts";
import { setUpStore } from "#app/_command/set-up-store.ts";
import { copiesOf } from "#lib/db/copies.ts";
import { place } from "#lib/db/place.ts";
import { restoreCopy } from "#lib/db/set-up.ts";

await endingWell(async () => {
  const [copy] = process.argv.slice(2);
  const where = place();
  if (!copy) {
    const copies = copiesOf(where);
    console.log(copies.length > 0 ? copies.join("\n") : `There are no copies in ${where.copies}.`);
    return;
  }
  const kept = await restoreCopy(where, resolve(copy));
  console.log(`Put ${copy} back.${kept ? ` The store as it was: ${kept}.` : ""}`);
  if (existsSync(where.file)) console.log(await setUpStore(where));
});
