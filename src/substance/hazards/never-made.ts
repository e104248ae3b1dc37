// Products that no plan makes, recognised by composition and ions: explosives and deadly gases, which nothing opens, and poisonous
// gases that whoever means them acknowledges by code.

import { ALKALI_METALS } from "../../element/internal";
import { atomsIn, compositionKey, isWater, type Notation, type Part } from "../../ion/internal";
import {
  DEADLY_GASES,
  EXPLOSIVE_WRITINGS,
  EXPLOSIVES,
  type NeverMadeRow,
  POISON_GASES,
  type PoisonGasRow,
} from "../data/never-made";
import { citeHazard, type HazardSourceKey } from "../data/sources";
import { asElements, makeUpOf } from "./make-up";

/** What kind of danger a substance is as a product. */
export interface DangerousProduct {
  readonly code: "explosive" | "deadly-gas" | "poison-gas";
  readonly name: string;
  /** May it be planned where its code is acknowledged? */
  readonly opens: boolean;
  /** Is it refused as a by-product as well? */
  readonly beside: boolean;
  readonly source: HazardSourceKey;
  readonly citation: string;
}

interface Index {
  readonly explosives: ReadonlyMap<string, NeverMadeRow>;
  readonly deadly: ReadonlyMap<string, NeverMadeRow>;
  readonly poison: ReadonlyMap<string, PoisonGasRow>;
}

let built: Index | undefined;

function index(): Index {
  const by = <Row extends NeverMadeRow>(rows: readonly Row[]): Map<string, Row> =>
    new Map(rows.map((row) => [compositionKey(atomsIn(row.formula)), row]));
  built ??= { explosives: by(EXPLOSIVES), deadly: by(DEADLY_GASES), poison: by(POISON_GASES) };
  return built;
}

/** All atoms but those of crystal water: urea nitrate is written CO(NH2)2·HNO3 as well. */
function dryCounts(parts: readonly Part[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const part of parts)
    for (const [symbol, n] of part.counts) counts.set(symbol, (counts.get(symbol) ?? 0) + n * part.multiplier);
  return counts;
}

const HALOGENS: ReadonlySet<string> = /* @__PURE__ */ new Set(["Cl", "Br", "I"]);
const NOBLE: ReadonlySet<string> = /* @__PURE__ */ new Set(["Ag", "Au", "Hg", "Cu"]);
/** Anions whose ammonium salts, and whose salts with ammonia bound to the metal, go off. */
const OXIDISING: ReadonlySet<string> = /* @__PURE__ */ new Set([
  "chlorate",
  "bromate",
  "chlorite",
  "permanganate",
  "azide",
]);
/** So does ammonium with this one; metals with ammonia and nitrite bound to them stand. */
const OXIDISES_AMMONIUM = "nitrite";

/** Nitrogen with chlorine, bromine or iodine, ammonia aside: NI3, NI3·NH3, NCl3. */
function isNitrogenHalide(counts: ReadonlyMap<string, number>): boolean {
  const symbols = [...counts.keys()];
  const halogens = symbols.filter((symbol) => HALOGENS.has(symbol));
  if (!counts.has("N") || halogens.length === 0 || symbols.some((s) => s !== "N" && s !== "H" && !HALOGENS.has(s)))
    return false;
  // salts of ammonium and hydrazinium have four hydrogens and more for each nitrogen that halogen would take
  const halogen = halogens.reduce((sum, symbol) => sum + counts.get(symbol)!, 0);
  return halogen >= 3 && halogen >= counts.get("N")! && (counts.get("H") ?? 0) < 4;
}

/** Acetylides, nitrides, amides, fulminates and azides of silver, gold, mercury and copper. */
function isNobleExplosive(counts: ReadonlyMap<string, number>): boolean {
  if (![...counts.keys()].some((symbol) => NOBLE.has(symbol))) return false;
  const rest = [...counts.keys()].filter((symbol) => !NOBLE.has(symbol)).sort();
  const key = rest.join("");
  if (key === "C" || key === "CH") return counts.get("C")! >= 2;
  if (key === "N" || key === "HN") return (counts.get("H") ?? 0) <= 2 * counts.get("N")!;
  return key === "CNO" && counts.get("C") === counts.get("N") && counts.get("C") === counts.get("O");
}

/** Hydrazinium, and hydroxylammonium as the ion table writes it. */
const HYDRAZINIUM: ReadonlySet<string> = /* @__PURE__ */ new Set(["N2H5", "N2H6"]);
const LIKE_AMMONIUM: ReadonlySet<string> = /* @__PURE__ */ new Set(["N2H5", "N2H6", "NH3OH"]);

const PICRATE = /^(picrate|styphnate)$/;

/** Groups of explosives, by their ions. */
function explosiveGroup(parts: readonly Part[], counts: ReadonlyMap<string, number>): string | undefined {
  if (isNitrogenHalide(counts)) return "a nitrogen halide";
  if (isNobleExplosive(counts)) return "an acetylide, fulminate, azide or nitride of a noble metal";
  for (const part of parts) {
    const { cations, groups, ammonia, isAcid } = makeUpOf(part);
    // those of alkali metals are handled
    if (groups.includes("azide") && !isAcid && !cations.every(({ symbol }) => ALKALI_METALS.has(symbol)))
      return "an azide that explodes";
    if (groups.includes("fulminate")) return "a fulminate";
    if (groups.some((name) => PICRATE.test(name)) || isStyphnate(part)) return "a picrate or styphnate";
    const onAmmonium = groups.includes("ammonium") || cations.some(({ symbol }) => LIKE_AMMONIUM.has(symbol));
    if (onAmmonium && groups.some((name) => name === OXIDISES_AMMONIUM || OXIDISING.has(name)))
      return "an ammonium salt of an oxidising acid: it goes off dry, warmed or boiled down";
    if (ammonia && groups.some((name) => OXIDISING.has(name))) return "an ammine of an oxidising acid";
    if (ammonia && cations.some(({ symbol }) => symbol === "Ag") && groups.includes("hydroxide"))
      return "ammonia on silver hydroxide: it goes off as it stands";
    const onHydrazine = cations.some(({ symbol }) => HYDRAZINIUM.has(symbol));
    if ((ammonia || onHydrazine) && groups.includes("perchlorate")) return "a perchlorate of ammine or hydrazine";
  }
  return undefined;
}

/** C6HN3O8 with a metal. */
function isStyphnate({ counts }: Part): boolean {
  return counts.get("C") === 6 && counts.get("N") === 3 && counts.get("O") === 8 && counts.size > 4;
}

const danger = (
  code: DangerousProduct["code"],
  name: string,
  source: HazardSourceKey,
  beside = true,
): DangerousProduct => ({
  code,
  name,
  opens: code === "poison-gas",
  beside,
  source,
  citation: citeHazard(source),
});

/** The danger of a substance as a product; undefined where it is none of those that are listed. */
export function dangerOf(given: Notation): DangerousProduct | undefined {
  const notation = asElements(given);
  const dry = notation.parts.filter((part) => !isWater(part));
  if (dry.length === 0 || notation.charge !== 0) return undefined;
  const counts = dryCounts(dry);
  const key = compositionKey(counts);
  const { explosives, deadly, poison } = index();
  const writing = EXPLOSIVE_WRITINGS.find((row) => dry.some((part) => part.text === row.formula));
  const explosive = writing ?? explosives.get(key);
  if (explosive !== undefined) return danger("explosive", explosive.name, explosive.source);
  const group = explosiveGroup(dry, counts);
  if (group !== undefined) return danger("explosive", group, "memory");
  const gas = deadly.get(key);
  if (gas !== undefined) return danger("deadly-gas", gas.name, gas.source);
  const other = poison.get(key);
  return other === undefined ? undefined : danger("poison-gas", other.name, other.source, other.beside);
}
