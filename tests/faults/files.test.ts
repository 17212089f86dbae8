/** Store files nobody can use: each is refused with its own line, left as it was, and never shown as an empty list. */
import {
  chmodSync,
  cpSync,
  existsSync,
  mkdirSync,
  readFileSync,
  rmSync,
  truncateSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { createClient } from "@libsql/client";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { Connection } from "#lib/db/connection.ts";
import { copiesOf } from "#lib/db/copies.ts";
import { allRecords, createRecord } from "#lib/db/records.ts";
import { restoreCopy, setUp } from "#lib/db/set-up.ts";
import { creation } from "#lib/db/statements.ts";
import { closeStore, store } from "#lib/db/store.ts";
import { run } from "#tests/faults/programs.ts";
import { aMotor } from "#tests/lib/db/samples.ts";
import { temporaryPlace } from "#tests/lib/db/temporary-store.ts";

let there: ReturnType<typeof temporaryPlace>;
beforeEach(() => {
  there = temporaryPlace();
});
afterEach(() => there.remove());

const AT = "2026-01-01T00:00:00.000Z";
const demo = () =>
  Array.from({ length: 40 }, (_, i) => creation("motor", aMotor(`demo-${i}`), AT, { demo: true })).flat();

async function sql(...statements: string[]): Promise<void> {
  const client = createClient({ url: pathToFileURL(there.file).href });
  for (const statement of statements) await client.execute(statement);
  client.close();
}

/** Overwrites bytes in the middle of the file. */
function flip(at: number, bytes: number): void {
  const content = readFileSync(there.file);
  content.fill(0xa5, at, at + bytes);
  writeFileSync(there.file, content);
}

describe("set-up", () => {
  test("makes a store with its first records in it, once", async () => {
    expect(await setUp(there, demo())).toEqual({ did: "made" });
    expect(await setUp(there, demo())).toEqual({ did: "kept" });
    const records = await allRecords("motor");
    expect(records).toHaveLength(40);
    expect(records.every((record) => record.demo && record.version === 1)).toBe(true);
  });

  test("leaves nothing where the first records cannot be stored, and begins anew the next time", async () => {
    await expect(setUp(there, ["INSERT INTO motor VALUES ('half')"])).rejects.toThrow();
    expect(existsSync(there.file)).toBe(false);
    writeFileSync(`${there.file}.making`, "left by a killed set-up");
    expect(await setUp(there, demo())).toEqual({ did: "made" });
  });

  test("by two programs at once makes one store", async () => {
    const programs = [1, 2, 3].map(() => run("app/_command/set-up.ts"));
    const codes = await Promise.all(programs.map(({ ended }) => ended));
    expect(codes).toContain(0);
    for (const [i, code] of codes.entries()) {
      if (code !== 0) expect(programs[i]!.said()).toMatch(/in use by process \d+/);
    }
    expect((await allRecords("motor")).length).toBeGreaterThan(0);
  });
});

describe("a store file is refused where it", () => {
  /** Refused by the server and by set-up alike, with this line, and not touched. */
  async function refused(line: RegExp): Promise<void> {
    const before = existsSync(there.file) ? readFileSync(there.file) : undefined;
    await expect(store()).rejects.toMatchObject({ trouble: "refused", message: expect.stringMatching(line) });
    await expect(allRecords("motor")).rejects.toMatchObject({ trouble: "refused" });
    if (before) {
      await expect(setUp(there)).rejects.toMatchObject({
        trouble: "refused",
        message: expect.stringMatching(line),
      });
      expect(readFileSync(there.file).equals(before)).toBe(true);
    }
    expect(existsSync(there.file)).toBe(before !== undefined);
    expect(existsSync(there.lock)).toBe(false);
  }

  test("is missing", () => refused(/There is none\. Make one with "npm start"\. There is no earlier copy\./));

  test("is empty", async () => {
    writeFileSync(there.file, "");
    await refused(/It is empty \(0 bytes\)/);
  });

  test.each(["hello", "SQLite format 3\0", "x".repeat(9000)])("is junk: %#", async (junk) => {
    writeFileSync(there.file, junk);
    await refused(/It is not a database/);
  });

  test("belongs to another program", async () => {
    await sql("CREATE TABLE note (text)");
    await refused(/It belongs to another program/);
  });

  describe("was sound once and", () => {
    beforeEach(async () => {
      await setUp(there, demo());
      await setUp(there);
    });

    test("was made by a newer version", async () => {
      await sql("INSERT INTO __drizzle_migrations (hash, created_at) VALUES ('x', 9999999999999)");
      await refused(/made by a newer version/);
    });

    test("has had a change that was edited afterwards", async () => {
      await sql(
        "UPDATE __drizzle_migrations SET hash = 'x' WHERE created_at = (SELECT max(created_at) FROM __drizzle_migrations)",
      );
      await refused(/The change "0002_.*" was edited after it was applied/);
    });

    test("is cut short", async () => {
      truncateSync(there.file, 4096 * 3);
      await refused(/It is damaged/);
    });

    test("has a page overwritten", async () => {
      flip(4096 * 2, 600);
      await refused(/It is damaged/);
    });

    test("has its list of tables overwritten", async () => {
      flip(100, 300);
      await refused(/It is damaged/);
    });

    test("and then the last good copy is named, and can be put back", async () => {
      flip(4096 * 2, 600);
      const copy = copiesOf(there).at(-1)!;
      await expect(store()).rejects.toThrow(`The last good copy is ${copy}; put it back with:`);
      const aside = await restoreCopy(there, copy);
      expect(await allRecords("motor")).toHaveLength(40);
      expect(readFileSync(aside!).subarray(4096 * 2, 4096 * 2 + 600)).toEqual(Buffer.alloc(600, 0xa5));
    });

    test("a damaged copy is not put back", async () => {
      const copy = join(there.folder, "bad.db");
      cpSync(there.file, copy);
      truncateSync(copy, 4096 * 2);
      const before = readFileSync(there.file);
      await expect(restoreCopy(there, copy)).rejects.toMatchObject({ trouble: "refused" });
      expect(readFileSync(there.file).equals(before)).toBe(true);
    });
  });
});

describe("a change of the schema", () => {
  /** The folder of changes with one more in it. */
  function oneMore(text: string): typeof there {
    const migrations = join(there.folder, "drizzle");
    cpSync(there.migrations, migrations, { recursive: true });
    const journal = JSON.parse(readFileSync(join(migrations, "meta/_journal.json"), "utf8"));
    const last = journal.entries.at(-1);
    journal.entries.push({ ...last, idx: last.idx + 1, when: last.when + 1, tag: "9999_one-more" });
    writeFileSync(join(migrations, "meta/_journal.json"), JSON.stringify(journal));
    writeFileSync(join(migrations, "9999_one-more.sql"), text);
    return { ...there, migrations };
  }

  beforeEach(() => setUp(there, demo()));

  test("is made by set-up, after copying the file", async () => {
    const before = readFileSync(there.file);
    const later = oneMore("ALTER TABLE stern ADD COLUMN colour text");
    const done = await setUp(later);
    expect(done).toMatchObject({ did: "changed", changes: ["9999_one-more"] });
    expect(readFileSync((done as { copy: string }).copy).equals(before)).toBe(true);
    expect(await setUp(later)).toEqual({ did: "kept" });
  });

  test("is not made by a server, which asks for set-up instead", async () => {
    const migrations = oneMore("SELECT 1").migrations;
    const path = join(migrations, "meta/_journal.json");
    const journal = JSON.parse(readFileSync(path, "utf8"));
    writeFileSync(path, JSON.stringify({ ...journal, entries: journal.entries.slice(0, 1) }));
    rmSync(there.file);
    await setUp({ ...there, migrations });
    const before = readFileSync(there.file);
    await expect(store()).rejects.toThrow(/from an older version\. Start with "npm start"/);
    expect(readFileSync(there.file).equals(before)).toBe(true);
    expect(await setUp(there)).toMatchObject({ did: "changed" });
    expect(await allRecords("motor")).toEqual([]);
  });

  test("that fails half-way leaves the file as its copy, byte for byte", async () => {
    const before = readFileSync(there.file);
    const broken = oneMore(
      "ALTER TABLE stern ADD COLUMN colour text;--> statement-breakpoint\nINSERT INTO nowhere VALUES (1)",
    );
    await expect(setUp(broken)).rejects.toThrow(
      /failed and was undone .*The last good copy is .*before-9999_one-more\.db/,
    );
    expect(readFileSync(there.file).equals(before)).toBe(true);
    expect(await setUp(there)).toEqual({ did: "kept" });
    expect(await allRecords("motor")).toHaveLength(40);
  });

  test("slipped in before one that was applied is noticed", async () => {
    const migrations = oneMore("SELECT 1").migrations;
    const path = join(migrations, "meta/_journal.json");
    const journal = JSON.parse(readFileSync(path, "utf8"));
    const slipped = { ...journal.entries.pop(), when: journal.entries[0].when + 1 };
    journal.entries.splice(1, 0, slipped);
    writeFileSync(path, JSON.stringify(journal));
    await expect(setUp({ ...there, migrations })).rejects.toThrow(
      /"9999_one-more" was put in before changes it has already had/,
    );
  });
});

describe("copies", () => {
  test("are made at a start where something changed, five of them, in order whatever the clock says", async () => {
    await setUp(there);
    for (let i = 0; i < 7; i++) {
      await createRecord("motor", aMotor(`m-${i}`));
      await closeStore();
      await setUp(there);
      await setUp(there);
    }
    const names = copiesOf(there).map((path) => path.slice(there.copies.length + 1));
    expect(names).toEqual([3, 4, 5, 6, 7].map((number) => `000${number}-start.db`));
  });

  test("that cannot be made are told, and the store is used all the same", async () => {
    await setUp(there, demo());
    writeFileSync(there.copies, "a file where the folder should be");
    expect(await setUp(there)).toEqual({ did: "kept", uncopied: expect.stringMatching(/EEXIST|ENOTDIR/) });
    expect(await allRecords("motor")).toHaveLength(40);
  });
});

describe("a disk", () => {
  test("that is full says so, can still be read, and is written again when there is room", async () => {
    await setUp(there, demo());
    const connection = new Connection(there.file);
    const pages = Number((await connection.read("PRAGMA page_count")).rows[0]?.[0]);
    await connection.alone((client) => client.execute(`PRAGMA max_page_count=${pages}`));
    const big = Array.from({ length: 50 }, (_, i) =>
      creation("motor", aMotor(`big-${i}`, { notes: "n".repeat(2000) }), AT),
    ).flat();
    await expect(connection.write(big)).rejects.toMatchObject({ trouble: "full" });
    expect((await connection.read("SELECT count(*) FROM motor")).rows[0]?.[0]).toBe(40);
    await connection.write(big);
    expect((await connection.read("SELECT count(*) FROM motor")).rows[0]?.[0]).toBe(90);
    await connection.close();
  });

  test("that cannot be written says so, and can still be read", async () => {
    await setUp(there, demo());
    chmodSync(there.file, 0o444);
    chmodSync(there.folder, 0o555);
    // The owner of all files may write anything: there the program runs as nobody.
    const nobody = process.getuid?.() === 0 ? { uid: 65534, gid: 65534 } : {};
    const visitor = run("tests/faults/visitor.ts", [], {}, nobody);
    await visitor.ended;
    chmodSync(there.folder, 0o755);
    expect(visitor.said()).toBe("read 40, write read-only, read 40\n");
  });
});

test("a place is a file and nothing else", async () => {
  for (const url of [
    "http://127.0.0.1:8080",
    "file::memory:",
    ":memory:",
    "file:",
    "store.db",
    "libsql://x",
  ]) {
    process.env.DATABASE_URL = url;
    await expect(store()).rejects.toMatchObject({ trouble: "refused" });
  }
  mkdirSync(join(there.folder, "a folder with blanks and %41"));
  process.env.DATABASE_URL = `file:${join(there.folder, "a folder with blanks and %41", "s.db")}`;
  const program = run("app/_command/set-up.ts");
  expect(await program.ended).toBe(0);
  expect(existsSync(join(there.folder, "a folder with blanks and %41", "s.db"))).toBe(true);
});
