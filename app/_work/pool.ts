import "server-only";
import { availableParallelism } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { Worker } from "node:worker_threads";
import { type Listed, rowsOf, type Stretch } from "#app/_work/pairings.ts";
import type { Said } from "#app/_work/worker.ts";

/** At most so many threads beside the one that answers pages. */
const MOST = 4;
/** Threads without work end after this long, ms. */
const IDLE_MS = 120_000;
/** Pairings the page's own thread works at once while no worker is up yet: some milliseconds. */
const OWN_PAIRS = 12;

/** A worker is started from the sources in the project's folder, whatever the pages were built into: tsx reads them. */
const SOURCE = join(process.cwd(), "app", "_work", "worker.ts");
const START = `import("tsx/esm/api").then(({ register }) => {
  register();
  return import(require("node:worker_threads").workerData);
});`;

/** One stretch that waits, and whoever waits for it. */
interface Waiting {
  readonly stretch: Stretch;
  readonly done: (rows: Listed[]) => void;
  readonly failed: (error: unknown) => void;
}

interface Hand {
  readonly worker: Worker;
  ready: boolean;
  at?: Waiting;
}

/** Threads that work stretches of long lists, so that no page waits behind one. */
class Pool {
  readonly #queue: Waiting[] = [];
  readonly #hands = new Set<Hand>();
  #broken = false;
  #helping = false;
  #idle: NodeJS.Timeout | undefined;

  /** The rows of a stretch, when a thread has had time for it. */
  work(stretch: Stretch): Promise<Listed[]> {
    return new Promise((done, failed) => {
      this.#queue.push({ stretch, done, failed });
      this.#hire();
      this.#hand();
      this.#help();
    });
  }

  /** As many threads as there are processors, the first time there is work. */
  #hire(): void {
    clearTimeout(this.#idle);
    const wanted = Math.min(MOST, availableParallelism(), this.#queue.length);
    while (!this.#broken && this.#hands.size < wanted) this.#hands.add(this.#start());
  }

  #start(): Hand {
    const worker = new Worker(START, { eval: true, workerData: pathToFileURL(SOURCE).href, execArgv: [] });
    worker.unref();
    const hand: Hand = { worker, ready: false };
    worker.on("message", (said: Said) => {
      hand.ready = true;
      if (said !== "ready" && "rows" in said) hand.at?.done(said.rows);
      if (said !== "ready" && "failed" in said) hand.at?.failed(said.failed);
      hand.at = undefined;
      this.#hand();
    });
    worker.once("error", (error) => this.#lose(hand, error));
    worker.once("exit", () => this.#lose(hand, new Error("a worker ended")));
    return hand;
  }

  /** A thread that fails takes nothing with it: its stretch goes back to the queue, and this thread works on alone. */
  #lose(hand: Hand, error: unknown): void {
    if (!this.#hands.delete(hand)) return;
    this.#broken = true;
    console.error("A worker thread is lost; long lists are worked without it.", error);
    if (hand.at) this.#queue.unshift(hand.at);
    this.#help();
  }

  #hand(): void {
    for (const hand of this.#hands) {
      if (!hand.ready || hand.at) continue;
      const next = this.#queue.shift();
      if (!next) break;
      hand.at = next;
      hand.worker.postMessage(next.stretch);
    }
    if (this.#queue.length === 0 && ![...this.#hands].some(({ at }) => at)) this.#rest();
  }

  #rest(): void {
    clearTimeout(this.#idle);
    this.#idle = setTimeout(() => {
      for (const hand of this.#hands) {
        this.#hands.delete(hand);
        void hand.worker.terminate();
      }
    }, IDLE_MS);
    this.#idle.unref();
  }

  /** Until a worker is up, this thread works the queue itself, a few pairings between two looks at whatever else waits. */
  #help(): void {
    if (this.#helping) return;
    this.#helping = true;
    setImmediate(async () => {
      while (this.#queue.length > 0 && ![...this.#hands].some(({ ready }) => ready)) {
        await workHere(this.#queue.shift()!);
      }
      this.#helping = false;
    });
  }
}

/** Works a stretch on this thread, in pieces. */
async function workHere({ stretch, done, failed }: Waiting): Promise<void> {
  try {
    const rows: Listed[] = [];
    for (let from = 0; from < stretch.pairs.length; from += OWN_PAIRS) {
      rows.push(...rowsOf({ ...stretch, pairs: stretch.pairs.slice(from, from + OWN_PAIRS) }));
      await new Promise((resume) => setImmediate(resume));
    }
    done(rows);
  } catch (error) {
    failed(error);
  }
}

/** One per process, whatever a bundler does: it may load this file more than once. */
const KEY = Symbol.for("sternwright.pool");
const shared = globalThis as { [KEY]?: Pool };

/** The rows of a stretch, worked beside the pages. */
export function worked(stretch: Stretch): Promise<Listed[]> {
  shared[KEY] ??= new Pool();
  return shared[KEY].work(stretch);
}
