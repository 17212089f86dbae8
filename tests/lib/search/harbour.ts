/** Invented records of a harbour, and what people ask for when they look for one of them: written by hand, each from memory of the thing and not from its record. */
import type { Motor } from "#lib/rig/motor.ts";
import type { Stern } from "#lib/rig/stern.ts";

const motor = (id: string, label: string, kW: number, more: Partial<Motor> = {}): Motor => ({
  id,
  label,
  powerKw: { value: kW, how: "declared" },
  ...more,
});
const stern = (id: string, label: string, metres: number, more: Partial<Stern> = {}): Stern => ({
  id,
  label,
  lengthOverallMm: { value: metres * 1000, how: "measured" },
  ...more,
});

export const harbour: readonly (Motor | Stern)[] = [
  motor("launch", "Harbour launch's old two-stroke", 11.2, {
    shaftClass: "long",
    steering: "tiller",
    strokes: 2,
  }),
  motor("kelp", "Kelp cutter, weed-cleared propeller", 18.6, {
    shaftClass: "long",
    steering: "remote",
    strokes: 4,
  }),
  motor("heron", "Heron's auxiliary", 4.5, {
    shaftClass: "extra-long",
    steering: "tiller",
    strokes: 4,
    year: 2011,
  }),
  motor("lobster", "Lobster boat engine", 29.8, { shaftClass: "ultra-long", steering: "remote", year: 2003 }),
  motor("whisper", "Whisper, the electric trolling motor", 0.8, {
    shaftClass: "short",
    strokes: 0,
    steering: "tiller",
  }),
  motor("museum", "Museum piece with the brass tank", 1.8, {
    year: 1938,
    strokes: 2,
    notes: "Rope start. The carburettor floods.",
  }),
  motor("regatta", "Regatta marshal's outboard", 7.4, {
    shaftClass: "short",
    strokes: 4,
    massKg: { value: 41, how: "measured" },
  }),
  motor("drowned", "Drowned in the spring flood, rinsed and dried", 6, {
    notes: "Kept by the miller at the weir.",
  }),
  motor("twin-port", "Catamaran port engine", 7.4, { shaftClass: "extra-long", steering: "remote" }),
  motor("twin-starboard", "Catamaran starboard engine", 7.4, {
    shaftClass: "extra-long",
    steering: "remote",
  }),
  motor("jetty", "Motor under the jetty tarpaulin", 14.9, { shaftClass: "long", year: 1987 }),
  motor("folding", "Folding kayak bracket motor", 1.5, {
    shaftClass: "short",
    notes: "Weighs next to nothing.",
  }),
  motor("borrowed", "Borrowed from Ægir bay", 3.7, { shaftClass: "short", steering: "tiller" }),
  motor("thirty", "Thirty horse pusher for the mud barge", 22.4, { shaftClass: "extra-long", strokes: 4 }),
  stern("wherry", "Clinker wherry with the sawn-off sternpost", 5.4, { hullForm: "round" }),
  stern("garvey", "Garvey for the oyster beds", 4.6, {
    hullForm: "flat",
    seatMm: { value: 392, how: "measured" },
  }),
  stern("canoe", "Square-sterned canoe", 4.8, { notes: "Mahogany, eighty years old." }),
  stern("catboat", "Catboat, transom rotten to port", 5, { seatMm: { value: 505, how: "measured" } }),
  stern("nutshell", "Nutshell dinghy, school project", 2.3, {
    hullForm: "round",
    notes: "Built by the fourth form.",
  }),
  stern("inspection", "Bridge inspection punt", 6.1, { hullForm: "flat", hardChine: true }),
  stern("ketch", "Ketch's tender, sheathed in glass", 3.1, { hullForm: "vee" }),
];

type Query = readonly [query: string, wanted: string];

/** One slip of the finger in one word or two. */
export const slipped: readonly Query[] = [
  ["harbor launch", "launch"],
  ["harbour lanuch", "launch"],
  ["kelp cuter", "kelp"],
  ["herons auxilary", "heron"],
  ["lobstr", "lobster"],
  ["lobster boat engien", "lobster"],
  ["wisper", "whisper"],
  ["trollign", "whisper"],
  ["musuem brass", "museum"],
  ["carburetor floods", "museum"],
  ["regata marshall", "regatta"],
  ["druwned flood", "drowned"],
  ["catamarran starboard", "twin-starboard"],
  ["jety tarpaulin", "jetty"],
  ["tarpauline", "jetty"],
  ["foldnig kayak", "folding"],
  ["kajak bracket", "folding"],
  ["wherrry", "wherry"],
  ["clincker wherry", "wherry"],
  ["sternopst", "wherry"],
  ["gravey oyster", "garvey"],
  ["oister beds", "garvey"],
  ["mahagony", "canoe"],
  ["square sterned canoo", "canoe"],
  ["cat baot", "catboat"],
  ["nutshel", "nutshell"],
  ["inspecton punt", "inspection"],
  ["sheeted in glass ketch", "ketch"],
  ["shcool project", "nutshell"],
  ["pushr mud barge", "thirty"],
];

/** Words and amounts from different places of the record, in any order, some with a slip. */
export const crossing: readonly Query[] = [
  ["long 15 hp tiller launch", "launch"],
  ["harbour launch 15hp", "launch"],
  ["11.2 kW two-stroke launch", "launch"],
  ["kelp 25 hp remote", "kelp"],
  ["extra long 6hp heron", "heron"],
  ["6 hp 25 in heron", "heron"],
  ["heron 2011 four stroke", "heron"],
  ['40 hp 30" lobster', "lobster"],
  ["lobster ultra-long", "lobster"],
  ["electric whisper tiller", "whisper"],
  ["brass 1938", "museum"],
  ["2.4 hp brass tank", "museum"],
  ["10 hp marshal", "regatta"],
  ["41 kg regatta", "regatta"],
  ["miller 8 hp", "drowned"],
  ["catamaran 9.9 hp xl port", "twin-port"],
  ["tarpaulin 20 in 20 hp", "jetty"],
  ["jetty 1987 long", "jetty"],
  ["kayak 2 hp short", "folding"],
  ["aegir 5 hp", "borrowed"],
  ["barge 22,4 kW", "thirty"],
  ["mud barge 30 hp four-stroke", "thirty"],
  ["wherry 5.4 m round", "wherry"],
  ["garvey 15 in", "garvey"],
  ["canoe mahogany 4.8 m", "canoe"],
  ["20 inch catboat", "catboat"],
  ["round dinghy fourth form", "nutshell"],
  ["hard chine bridge punt", "inspection"],
  ["ketch vee 10 ft", "ketch"],
  ["20 ft inspection", "inspection"],
];

/** The last word not typed to its end. */
export const begun: readonly Query[] = [
  ["harbour lau", "launch"],
  ["kelp cut", "kelp"],
  ["her", "heron"],
  ["lobs", "lobster"],
  ["whis", "whisper"],
  ["muse", "museum"],
  ["regatta mar", "regatta"],
  ["drow", "drowned"],
  ["catamaran st", "twin-starboard"],
  ["tarp", "jetty"],
  ["folding k", "folding"],
  ["Æg", "borrowed"],
  ["mud b", "thirty"],
  ["wher", "wherry"],
  ["oyster be", "garvey"],
  ["square-st", "canoe"],
  ["catb", "catboat"],
  ["nut", "nutshell"],
  ["bridge ins", "inspection"],
  ["ketch's t", "ketch"],
];
