// Ions to a neutral formula: counts from the name's prefixes where it has them, else the smallest that balance.
import { gcd } from "../../foundation/gcd";
import type { Species } from "./species";

/** Species with counts, and what is still open about them. */
interface Balanced {
  readonly cations: readonly { species: Species; count: number; charge: number }[];
  readonly anions: readonly { species: Species; count: number }[];
  /** What had to be assumed: the charge of a metal without its oxidation number, or proportions. */
  readonly open?: "charge" | "proportions";
}

/** Anions with which a metal of several charges has one usual charge only (the salts of oxoacids). */
const USUAL_WITH_OXOANIONS: Readonly<Record<string, number>> = {
  Ag: 1,
  Co: 2,
  Ni: 2,
  Cu: 2,
  Mn: 2,
  Pb: 2,
  Bi: 3,
  Cr: 3,
  Ga: 3,
  In: 3,
  Zr: 4,
  Hf: 4,
  Th: 4,
  La: 3,
  Pd: 2,
  Rh: 3,
};

/** And with simple anions: the metals of which only one charge is met in trade. */
const USUAL_WITH_SIMPLE_ANIONS: Readonly<Record<string, number>> = {
  Ag: 1,
  Ni: 2,
  Bi: 3,
  Ga: 3,
  In: 3,
  Zr: 4,
  Hf: 4,
  Th: 4,
};
/** Halides only: the oxides of these come in several charges. */
const USUAL_WITH_HALIDES: Readonly<Record<string, number>> = { Co: 2, Mn: 2, Pb: 2, Cr: 3 };

const HALIDES = /* @__PURE__ */ new Set(["F", "Cl", "Br", "I"]);

function isOxoanion({ ion, text }: Species): boolean {
  return (ion?.counts.has("O") ?? false) && !["OH", "O2", "O3", "O"].includes(text);
}

/** Charges a metal may have with an anion when the name does not say. */
function openCharges(cation: Species, anion: Species): number[] {
  const { element } = cation;
  if (element?.charges === undefined) return [];
  if (element.charges.length === 1) return [element.charges[0]!];
  const oxo = isOxoanion(anion);
  const halide = HALIDES.has(anion.text);
  const usual = oxo
    ? USUAL_WITH_OXOANIONS[element.symbol]
    : (USUAL_WITH_SIMPLE_ANIONS[element.symbol] ?? (halide ? USUAL_WITH_HALIDES[element.symbol] : undefined));
  if (usual !== undefined) return [usual];
  return element.charges.filter((charge) => charge <= (oxo || halide ? 4 : 8)).slice(0, 3);
}

/** Smallest counts for one kind of cation and one of anion. */
function simplest(charge: number, other: number): [number, number] {
  const g = gcd(charge, other);
  return [other / g, charge / g];
}

/** Can a metal of these charges have this one, or this mean in mixed valence? */
function canAverage(charges: readonly number[], mean: number): boolean {
  if (Number.isInteger(mean)) return charges.includes(mean);
  return charges.some((charge) => charge < mean) && charges.some((charge) => charge > mean);
}

function pairWithCounts(cation: Species, anion: Species): Balanced[] {
  const c = cation.count ?? 1;
  // tricalcium phosphate: the trade counts the metal and leaves the oxoanions to the charge
  const owed = ((cation.charge ?? 0) * c) / -anion.charge!;
  const tradeCount = cation.element !== undefined && anion.ion !== undefined && anion.ion.element === undefined;
  const a = anion.count ?? (tradeCount && owed > 1 && Number.isInteger(owed) ? owed : 1);
  const needed = (-anion.charge! * a) / c;
  if (cation.charge !== undefined) {
    if (Math.abs(cation.charge * c + anion.charge! * a) > 1e-9) return [];
    return [
      { cations: [{ species: cation, count: c, charge: cation.charge }], anions: [{ species: anion, count: a }] },
    ];
  }
  const usual = cation.element?.charges;
  if (usual === undefined) return [];
  if (!canAverage(usual, needed)) return [];
  return [{ cations: [{ species: cation, count: c, charge: needed }], anions: [{ species: anion, count: a }] }];
}

/** Mercury(I) is met with halides and oxoanions; its oxide, sulfide and cyanide are those of mercury(II). */
function formsMercuryOne(anion: Species): boolean {
  return HALIDES.has(anion.text) || isOxoanion(anion);
}

/** Mercury without its number: two of them share the charge of mercury(I). */
function mercury(cation: Species, anion: Species): Balanced[] {
  const pairOf: Species = { ...cation, text: "Hg2", group: true };
  return [
    { species: cation, charge: 2 },
    { species: pairOf, charge: 1 },
  ].map(({ species, charge }) => {
    const [c, a] = simplest(2, -anion.charge!);
    return { cations: [{ species, count: c, charge }], anions: [{ species: anion, count: a }], open: "charge" };
  });
}

/** One kind of each. */
function pair(cation: Species, anion: Species): Balanced[] {
  if (cation.mixed !== undefined) {
    // M3X4 of the spinels and of red lead: two charges that add up to eight over three metals
    const [low, high] = cation.mixed;
    const eight = low + 2 * high === 8 || 2 * low + high === 8;
    return anion.charge === -2 && eight
      ? [{ cations: [{ species: cation, count: 3, charge: 8 / 3 }], anions: [{ species: anion, count: 4 }] }]
      : [];
  }
  if (cation.count !== undefined || anion.count !== undefined) return pairWithCounts(cation, anion);
  if (cation.charge === undefined && cation.element?.symbol === "Hg" && formsMercuryOne(anion))
    return mercury(cation, anion);
  const charges = cation.charge === undefined ? openCharges(cation, anion) : [cation.charge];
  return charges.map((charge) => {
    const [c, a] = simplest(charge, -anion.charge!);
    const open = charges.length > 1 ? { open: "charge" as const } : {};
    return { cations: [{ species: cation, count: c, charge }], anions: [{ species: anion, count: a }], ...open };
  });
}

const MOST_TOTAL = 24;

/** Counts from 1 up for what the name leaves open; the smallest neutral sets. */
function several(cations: readonly Species[], anions: readonly Species[]): Balanced[] {
  const all = [...cations, ...anions];
  const anyCount = all.some((one) => one.count !== undefined);
  const unknown = cations.filter((one) => one.charge === undefined);
  if (unknown.length > 1) return pairsOfUnknown(cations, anions);
  if (unknown.length === 1 && anyCount) return solveCharge(cations, anions);
  const options = unknown.length === 1 ? openCharges(unknown[0]!, anions[0]!) : [0];
  const found: Balanced[] = [];
  for (const option of options) {
    const charges = all.map((one) => one.charge ?? option);
    const best = minimum(
      charges,
      all.map((one) => one.count),
      anyCount,
    );
    if (best === undefined) continue;
    const open =
      options.length > 1
        ? { open: "charge" as const }
        : anions.length > 1 && !anyCount
          ? { open: "proportions" as const }
          : {};
    found.push(shape(cations, anions, best, charges, open));
  }
  return found;
}

function shape(
  cations: readonly Species[],
  anions: readonly Species[],
  counts: readonly number[],
  charges: readonly number[],
  open: { open?: "charge" | "proportions" },
): Balanced {
  return {
    cations: cations.map((species, i) => ({ species, count: counts[i]!, charge: charges[i]! })),
    anions: anions.map((species, i) => ({ species, count: counts[cations.length + i]! })),
    ...open,
  };
}

/** Least total of counts with no charge left; given counts stay, and with any given the others default to one first. */
function minimum(
  charges: readonly number[],
  given: readonly (number | undefined)[],
  anyCount: boolean,
): number[] | undefined {
  const ones = given.map((count) => count ?? 1);
  const sum = (counts: readonly number[]) => counts.reduce((total, n, i) => total + n * charges[i]!, 0);
  if (sum(ones) === 0) return ones;
  if (anyCount && given.every((count) => count !== undefined)) return undefined;
  let best: number[] | undefined;
  const walk = (i: number, counts: number[], total: number): void => {
    if (total > MOST_TOTAL || (best !== undefined && total >= best.reduce((a, b) => a + b, 0))) return;
    if (i === charges.length) {
      if (sum(counts) === 0) best = [...counts];
      return;
    }
    const fixed = given[i];
    if (fixed !== undefined) walk(i + 1, [...counts, fixed], total + fixed);
    else for (let n = 1; n <= 12; n += 1) walk(i + 1, [...counts, n], total + n);
  };
  walk(0, [], 0);
  return best;
}

/** Prefixes tell all counts; the one metal without a number takes the charge that is left. */
function solveCharge(cations: readonly Species[], anions: readonly Species[]): Balanced[] {
  const counts = [...cations, ...anions].map((one) => one.count ?? 1);
  const at = cations.findIndex((one) => one.charge === undefined);
  const total = [...cations, ...anions].reduce((sum, one, i) => sum + (one.charge ?? 0) * counts[i]!, 0);
  const charge = -total / counts[at]!;
  if (!canAverage(cations[at]!.element?.charges ?? [], charge)) return [];
  const charges = [...cations, ...anions].map((one) => one.charge ?? charge);
  return [shape(cations, anions, counts, charges, {})];
}

/** Two metals without numbers: only all counts given by prefixes make sense of it. */
function pairsOfUnknown(cations: readonly Species[], anions: readonly Species[]): Balanced[] {
  const counts = [...cations, ...anions].map((one) => one.count ?? 1);
  const needed = -anions.reduce((sum, one, i) => sum + one.charge! * counts[cations.length + i]!, 0);
  const ways: number[][] = [];
  const walk = (i: number, left: number, charges: number[]): void => {
    if (i === cations.length) {
      if (left === 0) ways.push(charges);
      return;
    }
    const one = cations[i]!;
    for (const charge of one.charge === undefined ? (one.element?.charges ?? []) : [one.charge])
      walk(i + 1, left - charge * counts[i]!, [...charges, charge]);
  };
  walk(0, needed, []);
  if (ways.length === 0) return [];
  return [shape(cations, anions, counts, [...ways[0]!, ...anions.map((one) => one.charge!)], {})];
}

/** Every neutral combination of the species a name gives. */
export function balanced(cations: readonly Species[], anions: readonly Species[]): Balanced[] {
  return cations.length === 1 && anions.length === 1 ? pair(cations[0]!, anions[0]!) : several(cations, anions);
}

/** The formula text: cations by charge then symbol, anions as the name gives them. */
export function saltText({ cations, anions }: Balanced): string {
  const piece = ({ species, count }: { species: Species; count: number }): string => {
    if (count === 1) return species.text;
    return species.group ? `(${species.text})${count}` : species.text + count;
  };
  const ordered = [...cations].sort((a, b) => a.charge - b.charge || (a.species.text < b.species.text ? -1 : 1));
  const oxygenLast = [...anions].sort((a, b) => Number(a.species.text === "OH") - Number(b.species.text === "OH"));
  const tail = oxygenLast.map((one) =>
    one.species.text === "OH" && oxygenLast.length > 1 && one.count === 1 ? "(OH)" : piece(one),
  );
  return ordered.map(piece).join("") + tail.join("");
}
