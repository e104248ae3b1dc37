// Names brought to one spelling before they are compared: case, dashes, spaces, and the spellings that IUPAC does not use.
// Every respelling is remembered, so that the answer can name the preferred form.

import { once } from "../../foundation/memo";

/** Names that are offered at most for one that is not known. */
export const MOST_NEAREST = 3;

/** Spellings of other traditions, and what IUPAC writes. */
const RESPELLINGS: readonly (readonly [RegExp, string])[] = [
  [/sulph/g, "sulf"],
  [/aluminum/g, "aluminium"],
  [/\bcesium/g, "caesium"],
  [/phosphorous(?! acid)/g, "phosphorus"],
  [/\bammonium hydrate\b/g, "ammonium hydroxide"],
  [/\bvapor/g, "vapour"],
  [/peroxy(?:mono)?|peroxomono|peroxido(?=sulf|disulf|nitr|phosph)/g, "peroxo"],
  [/\b(arsen|selen)ious\b/g, "$1ous"],
  [/\bsalts$/g, "salt"],
  [/saltpeter\b/g, "saltpetre"],
  [/\bniter\b/g, "nitre"],
  [/\bchromic salt/g, "chromium salt"],
  [/tetrahydrated\b/g, "tetrahydrate"],
  [/\bhepta hydrate/g, "heptahydrate"],
  [/\bpenta hydrate/g, "pentahydrate"],
  [/\bdeca hydrate/g, "decahydrate"],
  [/\bmono hydrate/g, "monohydrate"],
  [/\bdi hydrate/g, "dihydrate"],
  [/\bhexa hydrate/g, "hexahydrate"],
  [/\bhemi hydrate/g, "hemihydrate"],
];

/** Whether any of them is in a name: most have none, and an index asks thousands. */
const anyRespelling = /* @__PURE__ */ once(() => new RegExp(RESPELLINGS.map(([{ source }]) => source).join("|")));

/** Older names of bases, as in "sulfate of potash", and what stands in the salt. */
const BASES: Readonly<Record<string, string>> = {
  potash: "potassium",
  soda: "sodium",
  ammonia: "ammonium",
  lime: "calcium",
  magnesia: "magnesium",
  baryta: "barium",
  strontia: "strontium",
  alumina: "aluminium",
};
const OF_A_BASE =
  /^((?:[a-z]+)(?:ate|ite|ide|uret)) of (potash|soda|ammonia|lime|magnesia|baryta|strontia|alumina|iron|copper|zinc|lead|tin|silver|mercury|manganese)$/;

/** "acetate of lead" with its base in front: `lead acetate`; other names as they are. */
export function baseFirst(name: string): string {
  return name.replace(OF_A_BASE, (_, acid: string, base: string) => `${BASES[base] ?? base} ${acid}`);
}

/** A name in one spelling, and the respellings that were needed. */
interface PlainName {
  readonly name: string;
  readonly respelled: readonly string[];
}

/** One spelling for comparison: lower case, plain dashes and quotes, single spaces, IUPAC spelling. */
export function plainName(text: string): PlainName {
  let name = text
    .normalize("NFKC")
    .toLowerCase()
    .replace(/[’‘`´]/g, "'")
    .replace(/[‐‑‒–−]/g, "-")
    .replace(/\s*(?:—|--)\s*/g, "—")
    .replace(/ ?- ?(?=[a-z ()]+ \(\d+(?:\/\d+)+\)$)/g, "—")
    .replace(/\s+/g, " ")
    .replace(/\s+([,)])/g, "$1")
    .trim();
  // copper(II)sulfate, copper II sulfate, copper-II sulfate, hydrogen-carbonate
  name = name
    .replace(/\(((?:i|ii|iii|iv|v|vi|vii|viii)(?:,[iv]+)?)\)(?=[a-z])/g, "($1) ")
    .replace(/\b([a-z]{3,})[ -](i{1,3}|iv|vi{0,3})[ -](?=[a-z])/g, "$1($2) ")
    .replace(/hydrogen-(?=[a-z])/g, "hydrogen")
    .replace(/ oxy((?:di|tri|tetra)?(?:fluoride|chloride|bromide|iodide|nitrate|sulfate|hydroxide))\b/g, " $1 oxide")
    .replace(/ hydroxy((?:fluor|chlor|brom|iod)ide|carbonate|sulfate|nitrate|acetate)\b/g, " $1 hydroxide")
    .replace(/^(?:cis|trans|fac|mer)-/, "");
  const respelled: string[] = [];
  if (!anyRespelling().test(name)) return { name, respelled };
  for (const [pattern, right] of RESPELLINGS) {
    pattern.lastIndex = 0;
    const found = pattern.exec(name);
    if (found === null) continue;
    name = name.replace(pattern, right);
    respelled.push(`${found[0]} is written ${right.includes("$") ? found[0].replace(pattern, right) : right}`);
  }
  return { name, respelled };
}

/** Key for looking a trade or traditional name up: letters and digits only, words joined by single spaces. */
export function nameKey(text: string): string {
  return plainName(text)
    .name.replace(/'?s(?= salt$)/g, "")
    .replace(/'s\b/g, "s")
    .replace(/[^a-z0-9()+]+/g, " ")
    .trim();
}

/** Words of a name for matching in part. */
export function nameWords(text: string): string[] {
  return nameKey(text)
    .replace(/[()]/g, " ")
    .split(" ")
    .filter((word) => word !== "" && !["of", "the", "and", "or", "a", "in", "for"].includes(word))
    .map((word) => (word.length > 4 && word.endsWith("s") && !word.endsWith("ss") ? word.slice(0, -1) : word));
}
