/** Runs once when the server starts, before it answers: it must have a sound store, or end saying why. */
export async function register(): Promise<void> {
  if (process.env.NEXT_RUNTIME === "nodejs") {
    const { openStoreOrEnd } = await import("#app/_command/open-store.ts");
    const { guardFrontDoor } = await import("#app/_http/front-door.ts");
    guardFrontDoor();
    await openStoreOrEnd();
  }
}
