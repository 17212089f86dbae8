/**
 * Freeboards rules ask for, each by its name. They differ by up to 2.7 times for the same boat, and most
 * bind boats that carry passengers or work: there is no one minimum, so a figure is never shown without
 * its rule.
 */
import { inches } from "#lib/quantity/length.ts";
import type { Citation } from "#lib/standards/citation.ts";

export interface FreeboardRule {
  readonly id: string;
  readonly citation: Citation;
  /** Which boat, and freeboard from where to where. */
  readonly what: string;
  /** Least freeboard, mm, for a hull `lengthMm` long; undefined where the rule as read gives none for that length. */
  readonly leastMm: (lengthMm: number) => number | undefined;
}

const workboatCode: Citation = {
  document: "MCA Workboat Code",
  clause: "Table 13.1.2",
  edition: "Edition 3, in force 13 December 2023",
  status: "published",
  read: "in a secondary text",
  binds: "small workboats and pilot boats of the United Kingdom",
  url: "https://assets.publishing.service.gov.uk/media/667c2220aec8650b10090087/Workboat_Code_Edition_3.pdf",
};

const nscv: Citation = {
  document: "National Standard for Commercial Vessels, part C6A",
  clause: "Tables 26 and 29",
  edition: "edition not stated where read",
  status: "published",
  read: "in a secondary text",
  binds: "commercial vessels in Australia on the simplified route, passengers, area C",
};

const ukInland: Citation = {
  document: "Inland Waters Small Passenger Boat Code",
  clause: "freeboard, categories A and B",
  edition: "as read in March 2025",
  status: "published",
  read: "in a secondary text",
  binds: "small passenger boats on the United Kingdom's inland waters",
  url: "https://content.yudu.com/web/43kj8/0A43kug/ReportMar2025/html/102.html",
};

const mgn280: Citation = {
  ...ukInland,
  document: "Marine Guidance Note 280",
  clause: "freeboard",
  binds: "small vessels in commercial use for sport, pleasure and as workboats, United Kingdom",
};

const cockpitDeck: Citation = {
  document: "46 CFR",
  clause: "178.420(b)",
  edition: "as read in a transcription",
  status: "published",
  read: "in a secondary text",
  binds: "inspected small passenger vessels in the United States, exposed or partially protected waters",
  url: "https://www.law.cornell.edu/cfr/text/46/178.420",
};

const coded: Citation = {
  document: "common practice",
  clause: "no clause",
  edition: "no source",
  status: "common practice",
  read: "in a secondary text",
  binds: "inflatable-sided boats put forward for commercial use",
};

/** `atFrom` at `fromMm` of length, `atTo` at `toMm`, straight between. */
const straight = (lengthMm: number, fromMm: number, toMm: number, atFrom: number, atTo: number): number =>
  atFrom + ((atTo - atFrom) * (lengthMm - fromMm)) / (toMm - fromMm);

/** The Workboat Code's shape: one figure under 7 m, another from 18 m, straight between. */
const sevenToEighteen = (under: number, over: number) => (lengthMm: number) =>
  straight(Math.min(Math.max(lengthMm, 7000), 18_000), 7000, 18_000, under, over);

export const FREEBOARD_RULES: readonly FreeboardRule[] = [
  {
    id: "workboat-open",
    citation: workboatCode,
    what: "open boat, laden: water to the lowest place water can come over the side",
    leastMm: sevenToEighteen(400, 800),
  },
  {
    id: "workboat-decked",
    citation: workboatCode,
    what: "decked boat, laden: water to the weather deck at side",
    leastMm: sevenToEighteen(300, 750),
  },
  {
    id: "workboat-stepped",
    citation: workboatCode,
    what: "boat with a stepped or recessed deck, laden: water to the lower deck",
    leastMm: sevenToEighteen(200, 400),
  },
  {
    id: "nscv-c6a",
    citation: nscv,
    what: "laden, before the simplified stability route may be taken",
    leastMm: (lengthMm) => 150 + (25 * (Math.min(Math.max(lengthMm, 6000), 10_000) - 6000)) / 1000,
  },
  {
    id: "uk-inland",
    citation: ukInland,
    what: "any boat on category A waters, a decked boat on category B",
    leastMm: () => 250,
  },
  {
    id: "uk-inland-open",
    citation: ukInland,
    what: "open boat on category B waters that does not pass the swamp test",
    leastMm: () => 400,
  },
  {
    id: "mgn-280",
    citation: mgn280,
    what: "laden; only the figures at 7 and 18 m were read, and nothing is taken outside them",
    leastMm: (lengthMm) =>
      lengthMm < 7000 || lengthMm > 18_000 ? undefined : straight(lengthMm, 7000, 18_000, 200, 400),
  },
  {
    id: "cockpit-deck",
    citation: cockpitDeck,
    what: "cockpit deck above the deepest waterline, for a cockpit that drains overboard",
    leastMm: () => inches(10),
  },
  {
    id: "transom-cutout",
    citation: coded,
    what: "water to the lowest part of the transom, the motor's cutout included",
    leastMm: () => 250,
  },
];

/** Mass of one person the Workboat Code loads a boat with, kg. */
export const WORKBOAT_PERSON_KG = 82.5;
