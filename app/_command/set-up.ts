/** `npx tsx app/_command/set-up.ts`: makes the store or brings it up to date, as `npm start` does first, and ends. */
import { endingWell } from "#app/_command/ending.ts";
import { setUpStore } from "#app/_command/set-up-store.ts";

await endingWell(async () => console.log(await setUpStore()));
