import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { columnsOf } from "#lib/share/column.ts";
import { readCsv, writeCsv } from "#lib/share/csv.ts";
import { MOST_COLUMNS, readTable, writeTable } from "#lib/share/table.ts";
import { anyMotor, anyStern } from "#tests/lib/entry/any-record.ts";

const table = (...lines: string[]): string => lines.join("\n");
const distinct = { maxLength: 6, selector: ({ id }: { readonly id: string }) => id };

describe("round trip", () => {
  test("motors come back as they were, to the last bit", () => {
    fc.assert(
      fc.property(fc.uniqueArray(anyMotor, distinct), (motors) => {
        expect(readCsv("motor", writeCsv("motor", motors))).toEqual({ records: motors, errors: [] });
      }),
      { numRuns: 150 },
    );
  });

  test("sterns come back as they were, also as bytes", () => {
    fc.assert(
      fc.property(fc.uniqueArray(anyStern, distinct), (sterns) => {
        const bytes = new TextEncoder().encode(writeCsv("stern", sterns));
        expect(readCsv("stern", bytes)).toEqual({ records: sterns, errors: [] });
      }),
      { numRuns: 150 },
    );
  });

  test("a record as full as the schema allows goes through", () => {
    const edge = { plusMinus: 499.1234567890123, how: "estimated" } as const;
    const corner = (at: number) =>
      [-2999.123456789012 + at, -1234.567890123456, -0.1234567890123456] as const;
    const extraSolids = Array.from({ length: 20 }, (_, at) => ({
      label: `${String.fromCharCode(97 + at)}${'"\\'.repeat(39)}`,
      group: "tilting" as const,
      fromMm: corner(at),
      toMm: [2999.123456789012, 1234.567890123456, 987.6543210987654] as const,
    }));
    const motor = {
      id: "a".repeat(80),
      label: "👍".repeat(80),
      notes: '="'.repeat(1000),
      pinAnglesDeg: { value: Array.from({ length: 12 }, (_, hole) => hole + 0.1234567890123456), ...edge },
      extraSolids,
    };
    expect(readCsv("motor", writeCsv("motor", [motor]))).toEqual({ records: [motor], errors: [] });
  });

  test("text of any kind comes back from a table as it was, apart from blanks before it", () => {
    const beginnings = fc.constantFrom("=", "+", "-", "@", "'", "''", "'=", "＝", "－", '"', ",", ";", "");
    const text = fc
      .tuple(beginnings, fc.string({ unit: "grapheme", maxLength: 12 }))
      .map((parts) => parts.join("").replaceAll("\0", "").replace(/^\s+/, ""));
    fc.assert(
      fc.property(fc.array(fc.tuple(text, text), { minLength: 1, maxLength: 5 }), (rows) => {
        const read = readTable(writeTable(["id", "label"], rows).slice(1), ["id", "label"]);
        expect("rows" in read && read.rows).toEqual(rows);
      }),
      { numRuns: 2000 },
    );
    const tab = writeTable(["id"], [["\t=1"]]);
    expect(tab).toContain("'\t=1");
    expect(readTable(tab.slice(1), ["id"])).toMatchObject({ rows: [["\t=1"]] });
  });
});

describe("what is written", () => {
  const motor = {
    id: "m",
    label: "=HYPERLINK(1)",
    tillerOffsetMm: { value: -12.5, plusMinus: 2, how: "measured" },
    pinAnglesDeg: { value: [-4, 0], how: "declared" },
    tillerFolds: false,
  } as const;
  const [heading = "", row = ""] = writeCsv("motor", [motor])
    .replace(/^\ufeff/, "")
    .split("\r\n");
  const at = (name: string) => row.split(",")[heading.split(",").indexOf(name)];

  test("formulas are text, numbers are numbers, and each number has three columns", () => {
    expect(at("label")).toBe("'=HYPERLINK(1)");
    expect([at("tillerOffsetMm"), at("tillerOffsetMm plusMinus"), at("tillerOffsetMm how")]).toEqual([
      "-12.5",
      "2",
      "measured",
    ]);
    expect(at("pinAnglesDeg")).toBe("'-4 0");
    expect(at("tillerFolds")).toBe("false");
    expect(at("shaftLengthMm")).toBe("");
  });

  test("there is room for every column", () => {
    for (const kind of ["motor", "stern"] as const) {
      const headings = columnsOf(kind).map((column) => column.heading);
      expect(headings.length).toBeLessThanOrEqual(MOST_COLUMNS);
      expect(new Set(headings).size).toBe(headings.length);
    }
  });
});

describe("what spreadsheets make of it", () => {
  const record = { id: "a", label: "A, b", seatMm: { value: 393.7, how: "measured" } };
  test.each([
    ["commas", table("id,label,seatMm", 'a,"A, b",393.7')],
    ["semicolons and points", table("id;label;seatMm", "a;A, b;393.7")],
    ["semicolons and decimal commas", table("id;label;seatMm", "a;A, b;393,7")],
    ["tabs", table("id\tlabel\tseatMm", "a\tA, b\t393.7")],
    ["a line naming the separator", table("sep=;", "id;label;seatMm", "a;A, b;393,7")],
    [
      "byte-order mark, NULs, blanks before cells, empty lines, CRLF",
      '\ufeffid, label,seatMm\0\r\n\r\n  a, "A, b",  393.7\r\n\r\n',
    ],
    [
      "columns in another order, empty ones without a heading",
      table("seatMm,label,id,,", '393.7,"A, b",a,,'),
    ],
    ["capital words for how", table("id,label,seatMm,seatMm how", 'a,"A, b",393.7, measured ')],
  ])("%s", (_, text) => {
    expect(readCsv("stern", text)).toEqual({ records: [record], errors: [] });
  });

  test("a decimal comma among commas, and a point among decimal commas, are refused at their cell", () => {
    expect(readCsv("stern", table("id,label,seatMm", 'a,A,"393,7"')).errors).toMatchObject([
      { row: 2, column: "seatMm", says: expect.stringContaining("with a point") },
    ]);
    const mixed = table("id;label;seatMm;beamMm", "a;A;393,7;1500", "b;B;1.234;1500");
    expect(readCsv("stern", mixed)).toMatchObject({
      records: [{ id: "a" }],
      errors: [{ row: 3, column: "seatMm", says: expect.stringContaining("with a comma") }],
    });
  });
});

describe("row by row", () => {
  test("good rows are read, the others are told by row and column", () => {
    const text = table(
      "id,label,seatMm,seatMm plusMinus,seatMm how,drainCount,hardChine,obstacles,notes",
      "a,A,394,2,declared,2,TRUE,[],fine",
      "b,B,20,,,,,,",
      "c,C,15 in,,,,,,",
      "d,D,,2,,,,,",
      "e,E,394,,guessed,1.5,maybe,{,",
      "a,A again,394,,,,,,",
      `f,${"x".repeat(501)},,,,,,,`,
      "g,G,,,,,,,,more",
      "h,H,1e309,,,,,,",
      "i,I,0x10,,,,,,",
      `j,J,${"9".repeat(400)},,,,,,`,
    );
    const { records, errors } = readCsv("stern", text);
    expect(records.map(({ id }) => id)).toEqual(["a"]);
    expect(errors.map(({ row, column }) => `${row} ${column}`).sort()).toEqual(
      [
        "3 seatMm",
        "4 seatMm",
        "5 seatMm",
        "6 drainCount",
        "6 hardChine",
        "6 obstacles",
        "6 seatMm how",
        "7 id",
        "8 label",
        "9 ",
        "10 seatMm",
        "11 seatMm",
        "12 seatMm",
      ].sort(),
    );
    for (const { says } of errors) expect(says).not.toMatch(/Invalid|undefined|received/);
  });

  test.each([
    ["shaftLenghtMm", "Did you mean shaftLengthMm?"],
    ["__proto__", "no column called"],
    ["constructor", "no column called"],
    ["label", "two columns"],
    ["", "has no heading"],
  ])("a strange heading %o leaves nothing to chance", (heading, words) => {
    const { records, errors } = readCsv("motor", table(`id,label,${heading}`, "a,A,1"));
    expect(records).toEqual([]);
    expect(errors).toMatchObject([{ row: 1, says: expect.stringContaining(words) }]);
  });
});

describe("hostile files", () => {
  const wide = (text: string, mark: boolean) => {
    const bytes = new Uint8Array(text.length * 2 + 2);
    bytes.set(mark ? [0xff, 0xfe] : [], 0);
    [...text].forEach((char, at) => {
      bytes[at * 2 + (mark ? 2 : 0)] = char.charCodeAt(0);
    });
    return mark ? bytes : bytes.subarray(0, text.length * 2);
  };
  const head = "id,label\n";
  test.each<[string, string | Uint8Array, RegExp]>([
    ["UTF-16 with its mark", wide("id,label\na,A\n", true), /UTF-16/],
    ["UTF-16 without its mark", wide("id,label\na,A\n", false), /UTF-16/],
    ["UTF-16 taken for text", "\ufffd\ufffdi\0d\0", /UTF-16/],
    ["not UTF-8", new Uint8Array([0x69, 0x64, 0x2c, 0xe9, 0xff]), /UTF-8/],
    ["more than 1 MB", `${head}${"a,A\n".repeat(300_000)}`, /1 MB/],
    ["more than 1 MB once written out", `${head}a,${"é".repeat(600_000)}`, /1 MB/],
    ["a million columns", `${head}${",".repeat(1_000_000)}`, /150 columns/],
    ["a million columns in the heading", `id,label${",".repeat(1_000_000)}`, /150 columns/],
    ["5,001 rows", head + Array.from({ length: 5001 }, (_, at) => `a${at},A`).join("\n"), /5000 rows/],
    [
      "a number a million characters long",
      `id;label;shaftLengthMm\na;A;${"1,".repeat(500_000)}x`,
      /500 characters/,
    ],
    ["a quotation mark never closed", `${head}a,"${"x\n".repeat(500_000)}`, /never closed/],
    ["a quotation mark amid a cell", `${head}a,b"c\n`, /quotation mark/],
    ["no heading", "1,2,3\n", /first row/],
    ["nothing", "", /first row/],
    ["blanks", "\n \n", /first row/],
    ["JSON", '{"id":"a"}', /./],
  ])("%s", (_, input, words) => {
    const { records, errors } = readCsv("motor", input);
    expect(records).toEqual([]);
    expect(errors[0]?.says).toMatch(words);
  });

  test("nothing is thrown, whatever is sent", () => {
    const piece = fc.constantFrom(
      "id",
      "label",
      "seatMm",
      ",",
      ";",
      "\n",
      "\r\n",
      '"',
      '""',
      "=",
      "'",
      "\0",
      "\ufeff",
      "a",
      "1",
      "-",
      "[",
      "{",
    );
    const anything = fc.oneof(
      fc.string({ unit: "binary" }),
      fc.array(piece, { maxLength: 40 }).map((list) => list.join("")),
    );
    fc.assert(
      fc.property(anything, (text) => {
        expect(readCsv("stern", text)).toHaveProperty("errors");
        expect(readCsv("stern", `id,label,seatMm\n${text}`)).toHaveProperty("errors");
      }),
      { numRuns: 2000 },
    );
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => void readCsv("motor", bytes)),
      { numRuns: 1000 },
    );
  });
});
