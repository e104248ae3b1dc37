// The hazard statements as a label prints them: the official English text of CLP, Annex III and Annex II (EUH), which is that
// of GHS Annex 3 but for its last signs. The codes that the table of hazards uses; H200 to H319 were read as they are printed,
// the others are from memory.
import { once } from "../../foundation/memo";
import type { SourceKey } from "./sources";

/** A code and its official text. */
interface OfficialStatement {
  readonly code: string;
  readonly text: string;
  readonly source: SourceKey;
}

const rows = (texts: Readonly<Record<string, string>>): readonly OfficialStatement[] =>
  Object.entries(texts).map(([code, text]) => ({ code, text, source: "clpStatements" }));

export const OFFICIAL_STATEMENTS = /* @__PURE__ */ once((): readonly OfficialStatement[] =>
  rows({
    H201: "Explosive; mass explosion hazard",
    H220: "Extremely flammable gas",
    H221: "Flammable gas",
    H224: "Extremely flammable liquid and vapour",
    H225: "Highly flammable liquid and vapour",
    H226: "Flammable liquid and vapour",
    H228: "Flammable solid",
    H251: "Self-heating: may catch fire",
    H252: "Self-heating in large quantities; may catch fire",
    H260: "In contact with water releases flammable gases which may ignite spontaneously",
    H261: "In contact with water releases flammable gases",
    H270: "May cause or intensify fire; oxidiser",
    H271: "May cause fire or explosion; strong oxidiser",
    H272: "May intensify fire; oxidiser",
    H280: "Contains gas under pressure; may explode if heated",
    H290: "May be corrosive to metals",
    H300: "Fatal if swallowed",
    H301: "Toxic if swallowed",
    H302: "Harmful if swallowed",
    H304: "May be fatal if swallowed and enters airways",
    H310: "Fatal in contact with skin",
    H311: "Toxic in contact with skin",
    H312: "Harmful in contact with skin",
    H314: "Causes severe skin burns and eye damage",
    H315: "Causes skin irritation",
    H317: "May cause an allergic skin reaction",
    H318: "Causes serious eye damage",
    H319: "Causes serious eye irritation",
    H330: "Fatal if inhaled",
    H331: "Toxic if inhaled",
    H332: "Harmful if inhaled",
    H334: "May cause allergy or asthma symptoms or breathing difficulties if inhaled",
    H335: "May cause respiratory irritation",
    H336: "May cause drowsiness or dizziness",
    H340: "May cause genetic defects",
    H341: "Suspected of causing genetic defects",
    H350: "May cause cancer",
    H350i: "May cause cancer by inhalation",
    H351: "Suspected of causing cancer",
    H360: "May damage fertility or the unborn child",
    H360F: "May damage fertility",
    H360D: "May damage the unborn child",
    H360FD: "May damage fertility. May damage the unborn child",
    H360Fd: "May damage fertility. Suspected of damaging the unborn child",
    H360Df: "May damage the unborn child. Suspected of damaging fertility",
    H361: "Suspected of damaging fertility or the unborn child",
    H361f: "Suspected of damaging fertility",
    H361d: "Suspected of damaging the unborn child",
    H361fd: "Suspected of damaging fertility. Suspected of damaging the unborn child",
    H362: "May cause harm to breast-fed children",
    H370: "Causes damage to organs",
    H371: "May cause damage to organs",
    H372: "Causes damage to organs through prolonged or repeated exposure",
    H373: "May cause damage to organs through prolonged or repeated exposure",
    H400: "Very toxic to aquatic life",
    H410: "Very toxic to aquatic life with long lasting effects",
    H411: "Toxic to aquatic life with long lasting effects",
    H412: "Harmful to aquatic life with long lasting effects",
    H413: "May cause long lasting harmful effects to aquatic life",
    EUH014: "Reacts violently with water",
    EUH029: "Contact with water liberates toxic gas",
    EUH031: "Contact with acids liberates toxic gas",
    EUH032: "Contact with acids liberates very toxic gas",
    EUH066: "Repeated exposure may cause skin dryness or cracking",
    EUH071: "Corrosive to the respiratory tract",
  }),
);

const texts = /* @__PURE__ */ once(() => new Map(OFFICIAL_STATEMENTS().map(({ code, text }) => [code, text])));

/** The official text of a code; undefined for one that is not in the table. */
export const officialText = (code: string): string | undefined => texts().get(code);
