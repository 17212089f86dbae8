/** The bytes of a file made into text, or the reason why not. */
import { MOST_BYTES } from "#lib/share/imported.ts";

/** Text of a file, or what is wrong with it. */
export type FileText = { readonly text: string } | { readonly says: string };

const TOO_LARGE = "The file is larger than 1 MB. Split it and send the parts one by one.";
const UTF_16 =
  "The file is written in UTF-16. Save it as “CSV UTF-8” (or plain UTF-8 text) and send it again.";
const NOT_UTF_8 =
  "The file is not written in UTF-8. Save it as “CSV UTF-8” (or plain UTF-8 text) and send it again.";

const startsWith = (bytes: Uint8Array, ...mark: number[]): boolean =>
  mark.every((byte, at) => bytes[at] === byte);

/** UTF-16 without its mark: every other byte of ordinary text is nought. */
function looksWide(text: string): boolean {
  const head = text.slice(0, 400);
  return head.length >= 8 && head.split("\0").length - 1 >= head.length / 3;
}

function decode(bytes: Uint8Array): FileText {
  if (startsWith(bytes, 0xff, 0xfe) || startsWith(bytes, 0xfe, 0xff)) return { says: UTF_16 };
  try {
    return { text: new TextDecoder("utf-8", { fatal: true }).decode(bytes) };
  } catch {
    return { says: NOT_UTF_8 };
  }
}

/** Reads a file of at most 1 MB as UTF-8; the byte-order mark and NUL characters are dropped. Never throws. */
export function fileText(input: string | Uint8Array): FileText {
  if (input.length > MOST_BYTES) return { says: TOO_LARGE };
  const read = typeof input === "string" ? { text: input } : decode(input);
  if ("says" in read) return read;
  if (typeof input === "string" && new TextEncoder().encode(input).length > MOST_BYTES)
    return { says: TOO_LARGE };
  if (/^(\ufffe|\ufffd\ufffd)/.test(read.text) || looksWide(read.text)) return { says: UTF_16 };
  return { text: read.text.replaceAll("\0", "").replace(/^\ufeff/, "") };
}
