// What stays together in water: neutral ligands that brackets show, metals with their ligands, oxo cations.
import { type ConstituentIon, type Content, canonical, hasMetal, ionFormula } from "./content";
import { ionsAs, timesIn, without } from "./ion-index";
import { bareIon, chargedText, isComplexIon } from "./ion-text";
import { compositionKey, countsOf, type Part, readNotation, type Unit } from "./notation";

/** Neutral ligands that the brackets of a part show. */
export function shownLigands(units: readonly Unit[], inside: boolean): { ammines: number; aquas: number } {
  let [ammines, aquas] = [0, 0];
  for (const unit of units) {
    if (unit.members === undefined) continue;
    const key = compositionKey(countsOf(unit.members));
    if (key === "H3 N1") ammines += unit.count;
    else if (key === "H2 O1" && inside) aquas += unit.count;
    else {
      const more = shownLigands(unit.members, unit.bracket === "[");
      ammines += more.ammines * unit.count;
      aquas += more.aquas * unit.count;
    }
  }
  return { ammines, aquas };
}

/** Anions that a metal beside an alkali holds as ligands, in brackets or not; oxalate and nitrite by the metal's charge. */
const HELD_FAST: Readonly<Record<string, readonly string[]>> = {
  "CN-": [
    "Cr",
    "Mn",
    "Fe",
    "Co",
    "Ni",
    "Cu",
    "Zn",
    "Mo",
    "Ru",
    "Rh",
    "Pd",
    "Ag",
    "Cd",
    "W",
    "Os",
    "Ir",
    "Pt",
    "Au",
    "Hg",
  ],
  "C2O4^2-": ["Fe3", "Cr3", "Al3", "Co3", "Cu2"],
  "NO2-": ["Co3"],
};

const isTransition = ({ element }: ConstituentIon): boolean =>
  element !== undefined && !["Li", "Na", "K", "Rb", "Cs", "Mg", "Ca", "Sr", "Ba", "H"].includes(element);

/** A complex and the ions around it. */
interface Kept {
  readonly complex: ConstituentIon;
  readonly around: readonly ConstituentIon[];
}

const kept = (text: string, charge: number, count: number, around: readonly ConstituentIon[]): Kept => ({
  complex: { formula: canonical(chargedText(text, charge)), charge, count },
  around,
});

/** What square brackets hold together. */
function bracketed(part: Part, { members, text, count }: Unit, ions: readonly ConstituentIon[]): Kept | undefined {
  const inside = countsOf(members!);
  let outside: ReadonlyMap<string, number> = without(part.counts, inside, count);
  let charge = 0;
  const around: ConstituentIon[] = [];
  for (const ion of ions) {
    const { counts } = readNotation(ion.formula).parts[0]!;
    const times = Math.min(timesIn(counts, outside), ion.count);
    if (times < 1) continue;
    outside = without(outside, counts, times);
    charge += times * ion.charge;
    around.push({ ...ion, count: times });
  }
  const own = -charge / count;
  if (outside.size > 0 || own === 0 || !Number.isInteger(own)) return undefined;
  return kept(`[${text}]`, own, count, around);
}

/** The ion that the square brackets of a part, or its ammonias or cyanides, hold together. */
export function complexOf(part: Part, { cations, anions, ammines }: Content): Kept | undefined {
  const ions = [...cations, ...anions];
  const bracket = part.units.find(({ bracket, members }) => bracket === "[" && hasMetal(countsOf(members!)));
  if (bracket !== undefined) return bracketed(part, bracket, ions);
  const others = (gone: readonly ConstituentIon[]) => ions.filter((ion) => !gone.includes(ion));
  // an anion of the table that is a complex, written without its square brackets
  const listed = anions.find(({ formula }) => isComplexIon(formula));
  if (listed !== undefined) return { complex: listed, around: others([listed]) };
  const metals = cations.filter(isTransition);
  const [metal] = metals;
  if (metal === undefined || metals.length > 1) return undefined;
  const perMetal = ammines / metal.count;
  if (perMetal > 0 && Number.isInteger(perMetal)) {
    const text = `[${metal.element}(NH3)${perMetal === 1 ? "" : perMetal}]`;
    return kept(text, metal.charge, metal.count, others([metal]));
  }
  const [anion] = anions;
  // with no other cation nothing is left for the complex to be the anion of
  if (anions.length !== 1 || cations.length < 2) return undefined;
  const each = anion!.count / metal.count;
  const charge = metal.charge + anion!.charge * each;
  const holds = HELD_FAST[anion!.formula]?.includes(`${metal.element}${anion!.formula === "CN-" ? "" : metal.charge}`);
  if (holds !== true || !Number.isInteger(each)) return undefined;
  const text = bareIon(anion!.formula);
  return kept(`[${metal.element}(${text})${each}]`, charge, metal.count, others([metal, anion!]));
}

// -- the whole

/** Vanadyl and its like, which stand in water as they stand in the salt beside another anion: VOSO4, TiOSO4. */
export function withOxoCation(cations: readonly ConstituentIon[], anions: readonly ConstituentIon[]): ConstituentIon[] {
  const oxide = anions.find(({ formula }) => formula === "O^2-");
  if (oxide === undefined) return [...cations, ...anions];
  for (const metal of cations) {
    if (metal.element === undefined) continue;
    const oxygens = oxide.count / metal.count;
    const counts = new Map([
      [metal.element, 1],
      ["O", oxygens],
    ]);
    const oxo = ionsAs(counts, metal.charge - 2 * oxygens).find(({ row }) => row.alone);
    if (oxo === undefined) continue;
    const cation = { formula: ionFormula(oxo), charge: oxo.charge, count: metal.count };
    return [...cations.map((ion) => (ion === metal ? cation : ion)), ...anions.filter((ion) => ion !== oxide)];
  }
  return [...cations, ...anions];
}
