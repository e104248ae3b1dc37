// Which reactions might make a compound: feeds by their ions, from the rows of the families. Nothing is judged here; an
// equation is written when somebody asks for it.
import { remembering } from "../foundation/memo";
import { ACID_STEPS, acidOfAnion, chargeOfIon, elementOfIon, isMetalCation, saltFormula } from "../ion/internal";
import { trySolubilityOf } from "../solubility";
import { DOUBLE_SALTS } from "../solubility/internal";
import { thermalRows } from "../substance/internal";
import { type Compound, falls, formOf, keyOf } from "./compound";
import { CARRIERS, FAMILIES, type FamilyRow, LISTED, OTHER_ANIONS, type Slot } from "./data/families";
import { isRefused } from "./safety";
import type { Universe } from "./universe";

/** A reaction that might make a compound. */
export interface Candidate {
  readonly id: string;
  readonly family: FamilyRow;
  readonly product: Compound;
  readonly feeds: readonly Compound[];
  /** Why it is no way although its ions fit; such a reaction is only explained. */
  readonly bar?: string | undefined;
  /** What comes beside the product where a row lists it; else it follows from the ions. */
  readonly beside?: readonly string[] | undefined;
}

const ALKALI = new Set(["Na+", "K+", "NH4+", "Li+"]);
const BASIC = new Set(["OH-", "O^2-", "CO3^2-", "HCO3-"]);
const CARBONATES = new Set(["CO3^2-", "HCO3-"]);
const STRONG = ["HCl", "H2SO4", "HNO3"];
const AMMONIUM = "NH4+";
const AMMONIA = "NH3";

const elementOf = (cation: string): string => elementOfIon(cation) ?? "";

/** Bases dissolve where each of their anions is one. */
const isBase = ({ made: { anions, cations, ligands } }: Compound): boolean =>
  cations.length === 1 &&
  ligands.length === 0 &&
  anions.length > 0 &&
  anions.every(({ formula }) => BASIC.has(formula));

/** A salt of plain ions; a complex that stays together as one of them is an ion like others. */
const isSalt = ({ made }: Compound): boolean =>
  made.kind === "salt" &&
  (made.complex === undefined || made.anions.some(({ formula }) => formula === made.complex!.formula)) &&
  made.ligands.length === 0 &&
  made.molecules.length === 0;

/** The metals that acids and salts take to which ion. */
const ION_OF_METAL: Readonly<Record<string, string>> = {
  Mg: "Mg^2+",
  Al: "Al^3+",
  Mn: "Mn^2+",
  Zn: "Zn^2+",
  Fe: "Fe^2+",
  Co: "Co^2+",
  Ni: "Ni^2+",
  Sn: "Sn^2+",
  Cu: "Cu^2+",
  Ag: "Ag+",
  Ca: "Ca^2+",
  Bi: "Bi^3+",
};
/** The ion from which peroxide makes a higher one. */
const LOWER: Readonly<Record<string, string>> = { "Fe^3+": "Fe^2+" };
/** Oxides that take up water by themselves. */
const SLAKES = new Set(["Ca^2+", "Sr^2+", "Ba^2+"]);
/** Metals that set a nobler one free. */
const CEMENTS = ["Fe", "Zn", "Al", "Cu"];

/** A salt that somebody would use as a source: soluble, neither base nor acid. */
const isSource = (one: Compound): boolean =>
  isSalt(one) && one.made.anions.length === 1 && !BASIC.has(one.made.anions[0]!.formula) && falls(one) === false;

/** Acid that has an anion, by composition; carbon dioxide for carbonates. */
const acidsOf = /* @__PURE__ */ remembering<string | undefined>(300);

function acidKey(anion: string): string | undefined {
  return acidsOf(anion, () => {
    if (CARBONATES.has(anion)) return keyOf("CO2");
    return keyOf(acidOfAnion(anion));
  });
}

/** The compounds that a slot takes, for the product's own cation and anion. */
function choices(slot: Slot, product: Compound, cation: string, anion: string, all: Universe): readonly Compound[] {
  const withCation = (ion: string): readonly Compound[] => all.withCation.get(ion) ?? [];
  const withAnion = (ion: string): readonly Compound[] => all.withAnion.get(ion) ?? [];
  const one = (key: string | undefined): readonly Compound[] => {
    const found = key === undefined ? undefined : all.byKey.get(key);
    return found === undefined ? [] : [found];
  };
  const isOther = (c: Compound): boolean => c.key !== product.key;
  switch (slot) {
    case "salt of M":
      return withCation(cation).filter((c) => isOther(c) && isSource(c) && c.made.anions[0]!.formula !== anion);
    case "solid salt of M":
      return withCation(cation).filter(
        (c) =>
          isOther(c) &&
          isSalt(c) &&
          c.cation === cation &&
          c.anion !== undefined &&
          c.anion !== anion &&
          !BASIC.has(c.anion) &&
          falls(c) === true,
      );
    case "base of M":
      return cation === AMMONIUM
        ? [...one(keyOf(AMMONIA)), ...withCation(cation).filter(isBase)]
        : withCation(cation).filter((c) => isOther(c) && isBase(c));
    case "acid salt of M and A": {
      const acid = ACID_STEPS().find((row) => row.base === anion)?.acid;
      return acid === undefined || chargeOfIon(acid) >= 0
        ? []
        : withCation(cation).filter((c) => c.cation === cation && c.anion === acid);
    }
    case "oxide of M":
      return withCation(cation).filter((c) => c.anion === "O^2-" && SLAKES.has(cation));
    case "metal M": {
      const metal = all.metals.get(elementOf(cation));
      return metal !== undefined && ION_OF_METAL[elementOf(cation)] === cation ? [metal] : [];
    }
    case "alkali salt of A": {
      const anions = [anion, ...(OTHER_ANIONS.find(({ acid }) => keyOf(acid) === product.key)?.anions ?? [])];
      return anions
        .flatMap(withAnion)
        .filter(
          (c) =>
            isOther(c) &&
            c.anion !== undefined &&
            c.cation !== undefined &&
            ALKALI.has(c.cation) &&
            c.cation !== cation &&
            falls(c) === false,
        );
    }
    case "carrier of A":
      return CARRIERS.flatMap((row) => withCation(row.cation)).filter(
        (c) => isOther(c) && c.anion === anion && c.cation !== cation && isSalt(c),
      );
    case "acid of A":
      return one(acidKey(anion)).filter(isOther);
    case "lower salt of M": {
      const lower = LOWER[cation];
      return lower === undefined ? [] : withCation(lower).filter((c) => c.cation === lower && c.anion === anion);
    }
    case "alkali":
      return [
        ...one(keyOf(AMMONIA)),
        ...[...ALKALI].flatMap((ion) =>
          withCation(ion).filter(
            (c) => c.anion === "OH-" || (chargeOfIon(cation) === 3 && c.anion !== undefined && CARBONATES.has(c.anion)),
          ),
        ),
      ];
    case "carbonate":
      return [...ALKALI].flatMap((ion) =>
        withCation(ion).filter((c) => c.anion !== undefined && c.cation === ion && CARBONATES.has(c.anion)),
      );
    case "salt of a nobler metal":
      return withAnion(anion).filter(
        (c) =>
          isSource(c) &&
          c.cation !== undefined &&
          c.cation !== cation &&
          isMetalCation(c.cation) &&
          ION_OF_METAL[elementOf(c.cation)] === c.cation &&
          all.metals.has(elementOf(c.cation)),
      );
    case "strong acid":
      return STRONG.flatMap((acid) => one(keyOf(acid)));
    case "ammonia":
      return one(keyOf(AMMONIA));
    case "peroxide":
      return one(keyOf("H2O2"));
    case "alkali lye":
      return product.made.cations
        .filter(({ formula }) => formula !== cation)
        .flatMap(({ formula }) => withCation(formula).filter((c) => c.anion === "OH-"));
    default:
      return [];
  }
}

function* combined(
  lists: readonly (readonly Compound[])[],
  chosen: readonly Compound[] = [],
): Generator<readonly Compound[]> {
  const [first, ...rest] = lists;
  if (first === undefined) {
    yield chosen;
    return;
  }
  for (const one of first) if (!chosen.includes(one)) yield* combined(rest, [...chosen, one]);
}

const onlyCation = ({ made }: Compound): string | undefined =>
  made.cations.length === 1 ? made.cations[0]!.formula : undefined;

/** Does a family speak of a compound like this? With the cation and the anion that it is asked for. */
function subjects(code: FamilyRow["code"], product: Compound): readonly (readonly [cation: string, anion: string])[] {
  const { made } = product;
  const cation = onlyCation(product);
  const anions = made.anions.map(({ formula }) => formula);
  const simple = isSalt(product) && cation !== undefined && product.anion !== undefined;
  const stays = (): boolean => falls(product) !== true;
  switch (code) {
    case "neutralise":
      return simple && !["OH-", "O^2-"].includes(product.anion!) ? [[cation!, product.anion!]] : [];
    case "neutralise-acid-salt":
      return simple && !BASIC.has(product.anion!) && ALKALI.has(cation!) ? [[cation!, product.anion!]] : [];
    case "slake":
      return simple && product.anion === "OH-" ? [[cation!, "OH-"]] : [];
    case "precipitate":
    case "precipitate-by-acid":
    case "solid-to-solid":
      return simple &&
        isSalt(product) &&
        !ALKALI.has(cation!) &&
        !["OH-", "O^2-"].includes(product.anion!) &&
        (code === "solid-to-solid" || product.anion !== "CO3^2-") &&
        falls(product) === true
        ? [[cation!, product.anion!]]
        : [];
    case "precipitate-carbonate":
      return cation !== undefined && !ALKALI.has(cation) && anions.includes("CO3^2-") && isSalt(product)
        ? [[cation, "CO3^2-"]]
        : [];
    case "precipitate-hydroxide":
      return simple && !ALKALI.has(cation!) && product.anion === "OH-" ? [[cation!, "OH-"]] : [];
    case "metal-and-acid":
    case "displace":
      return simple && isMetalCation(cation!) && stays() ? [[cation!, product.anion!]] : [];
    case "metal-acid-and-peroxide":
      return simple && cation === "Cu^2+" && stays() ? [[cation!, product.anion!]] : [];
    case "oxidise":
      return simple && LOWER[cation!] !== undefined && stays() ? [[cation!, product.anion!]] : [];
    case "salt-pair":
      return simple && ALKALI.has(cation!) && !["OH-", "O^2-"].includes(product.anion!)
        ? [[cation!, product.anion!]]
        : [];
    case "keep-filtrate":
      return simple && stays() && !["O^2-", "CO3^2-"].includes(product.anion!) ? [[cation!, product.anion!]] : [];
    case "alum-from-metal":
      return made.cations.some(({ formula }) => formula === "Al^3+") &&
        made.cations.length === 2 &&
        isCongruent(product) &&
        anions.join() === "SO4^2-"
        ? [["Al^3+", "SO4^2-"]]
        : [];
    case "set-acid-free":
      return made.kind === "acid" && made.acid?.strong !== true ? [["H+", made.acid?.anion ?? ""]] : [];
    case "complex":
      return made.complex !== undefined &&
        made.complex.charge < 0 &&
        (cation !== undefined) === false &&
        made.cations.length === 2 &&
        anions.length === 1
        ? made.cations
            .filter(({ formula }) => !ALKALI.has(formula))
            .map(({ formula }) => [formula, anions[0]!] as const)
        : [];
    default:
      return [];
  }
}

/** Alums and double sulfates that come unmixed from equal amounts of their salts: of potassium or ammonium. */
const isCongruent = ({ key, made }: Compound): boolean =>
  made.cations.some(({ formula }) => formula === "K+" || formula === AMMONIUM) &&
  DOUBLE_SALTS().some(
    ({ solid, ions }) => keyOf(solid) === key && ions.some(([ion, count]) => ion === "SO4^2-" && count === 2),
  );

/** The simple salts that a double salt comes apart into. */
function doubleSalt(product: Compound, all: Universe): (readonly Compound[])[] {
  const { made } = product;
  if (
    made.cations.length !== 2 ||
    made.anions.length !== 1 ||
    made.ligands.length > 0 ||
    made.complex !== undefined ||
    falls(product) === true
  )
    return [];
  const anion = made.anions[0]!.formula;
  const [a, b] = made.cations.map(({ formula }) =>
    (all.withCation.get(formula) ?? []).filter((c) => c.anion === anion && c.cation === formula && falls(c) === false),
  );
  return [...combined([a!, b!])];
}

/** The salt that ammonia is added to. */
function ammine(product: Compound, all: Universe): (readonly Compound[])[] {
  const { made } = product;
  if (
    made.ligands.map(({ formula }) => formula).join() !== AMMONIA ||
    made.cations.length !== 1 ||
    made.anions.length !== 1
  )
    return [];
  const ammonia = all.byKey.get(keyOf(AMMONIA)!);
  const salts = (all.withCation.get(made.cations[0]!.formula) ?? []).filter(
    (c) => c.cation !== undefined && c.anion === made.anions[0]!.formula,
  );
  return ammonia === undefined ? [] : salts.map((salt) => [salt, ammonia]);
}

/** A metal from its salt. */
function cement(product: Compound, all: Universe): (readonly Compound[])[] {
  if (product.made.kind !== "element") return [];
  const symbol = product.forms[0]!;
  const ion = ION_OF_METAL[symbol];
  if (ion === undefined) return [];
  const salts = (all.withCation.get(ion) ?? []).filter((c) => c.cation === ion && isSource(c));
  return CEMENTS.filter((one) => one !== symbol).flatMap((one) => {
    const metal = all.metals.get(one);
    return metal === undefined ? [] : salts.map((salt) => [salt, metal]);
  });
}

const heated = /* @__PURE__ */ remembering<readonly string[]>(1);
const heatIndex = new Map<string, string[]>();

/** What heat makes a compound from, by the table of thermal steps: as the only thing that remains. */
function fromHeat(product: Compound, all: Universe): (readonly Compound[])[] {
  heated("", () => {
    for (const { formula, steps } of thermalRows())
      for (const { remains } of steps) {
        if (remains.length !== 1) continue;
        const [key, from] = [keyOf(remains[0]!.formula), keyOf(formula)];
        if (key === undefined || from === undefined || key === from) continue;
        const list = heatIndex.get(key);
        if (list === undefined) heatIndex.set(key, [from]);
        else if (!list.includes(from)) list.push(from);
      }
    return [];
  });
  return (heatIndex.get(product.key) ?? []).flatMap((key) => {
    const found = all.byKey.get(key);
    return found === undefined ? [] : [[found]];
  });
}

function feedsFor(family: FamilyRow, product: Compound, all: Universe): (readonly Compound[])[] {
  if (family.code === "double-salt") return doubleSalt(product, all);
  if (family.code === "ammine") return ammine(product, all);
  if (family.code === "cement") return cement(product, all);
  if (family.code === "heat") return fromHeat(product, all);
  return subjects(family.code, product).flatMap(([cation, anion]) => [
    ...combined(family.left.map((slot) => choices(slot, product, cation, anion, all))),
  ]);
}

const solubilities = /* @__PURE__ */ remembering<number | undefined>(2000);

/** Grams in 100 g of water, where a curve tells. */
const gramsAt = (formula: string, temperature: "20 °C" | "80 °C"): number | undefined =>
  solubilities(`${formula} ${temperature}`, () => {
    const known = trySolubilityOf(formula, temperature);
    return known.ok ? known.value.perHundredGramsWater.toNumber() : undefined;
  });

/** Figures for two salts that swap ions, g in 100 g of water. */
const PAIR = { steep: 2.5, flat: 1.7, sparing: 12, stays: 15, acid: 6 } as const;

/** Does one salt of a pair come out on cooling, or for want of water, and the other stay? */
function isPair(product: Compound, other: string, feeds: readonly Compound[]): boolean {
  const form = formOf(product);
  const [own, hot] = [gramsAt(form, "20 °C"), gramsAt(form, "80 °C")];
  const [stays, hotToo] = [gramsAt(other, "20 °C"), gramsAt(other, "80 °C")];
  if (own === undefined || stays === undefined || stays < PAIR.stays) return false;
  if (feeds.some((feed) => (gramsAt(formOf(feed), "20 °C") ?? own) <= 1.5 * own && own <= PAIR.sparing)) return false;
  if (own <= PAIR.sparing && stays > 2 * own) return true;
  return hot !== undefined && hotToo !== undefined && hot / own >= PAIR.steep && hotToo / stays <= PAIR.flat;
}

/** pKa above which ammonium lets go of its ammonia. */
const AMMONIA_LEAVES = 9;

/** A salt of ammonium that loses ammonia from its solution. */
const losesAmmonia = (cation: string, anion: string): boolean =>
  cation === AMMONIUM && ACID_STEPS().some(({ base, pKa }) => base === anion && Number(pKa) > AMMONIA_LEAVES);

/** Metals that come out of water: hydrogen comes first where they are baser than tin or so. */
const SET_FREE = new Set(["Ag", "Cu", "Bi", "Sn", "Ni", "Co"]);
const VOLTS_APART: Readonly<Record<string, readonly string[]>> = {
  Fe: ["Ag", "Cu", "Bi", "Sn"],
  Zn: ["Ag", "Cu", "Bi", "Sn", "Ni", "Co"],
  Al: ["Ag", "Cu", "Bi", "Sn", "Ni", "Co"],
  Mg: ["Ag", "Cu"],
  Sn: ["Ag", "Cu"],
  Cu: ["Ag"],
  Ni: ["Ag", "Cu"],
  Co: ["Ag", "Cu"],
  Mn: ["Ag", "Cu"],
};

/** Does a metal set another free from its salt? Aluminium does where chloride breaks its film. */
function setsFree(metal: Compound, salt: Compound): boolean {
  const [symbol, nobler] = [metal.forms[0]!, elementOf(salt.cation ?? "")];
  if (!SET_FREE.has(nobler) || VOLTS_APART[symbol]?.includes(nobler) !== true) return false;
  return symbol !== "Al" || salt.anion === "Cl-";
}

/** Does it come out of a cold liquor, so that a filter parts it from the salt? */
const isSparing = (product: Compound): boolean => {
  const grams = gramsAt(formOf(product), "20 °C");
  return falls(product) === true || (grams !== undefined && grams <= PAIR.acid);
};

/** What a family asks beyond its slots, before any engine is asked: why it does not serve, or undefined. */
function barOf({ code }: FamilyRow, product: Compound, feeds: readonly Compound[]): string | undefined {
  const [a, b] = feeds;
  const unless = (serves: boolean, why: string): string | undefined => (serves ? undefined : why);
  switch (code) {
    case "neutralise":
      return unless(
        b!.key !== keyOf("CO2") ||
          falls(a!) === false ||
          a!.made.kind === "molecule" ||
          (a!.anion === "OH-" && SLAKES.has(a!.cation!)),
        "carbon dioxide is taken by what dissolves: a lye, a soda, ammonia, milk of lime",
      );
    case "salt-pair":
      return unless(
        a!.cation !== undefined &&
          b!.cation !== a!.cation &&
          !losesAmmonia(b!.cation!, a!.anion!) &&
          !losesAmmonia(a!.cation, product.anion!) &&
          isPair(product, saltFormula(b!.cation!, a!.anion!), feeds),
        "no salt of this pair comes by itself: both dissolve too well, their curves run alike, or ammonia leaves",
      );
    case "complex":
      return unless(
        a!.anion !== undefined && (gramsAt(saltFormula(b!.cation!, a!.anion), "20 °C") ?? 0) >= PAIR.stays,
        "the other salt crystallises with it",
      );
    case "keep-filtrate":
      return unless(
        a!.anion !== undefined &&
          (product.anion === "OH-" ? a!.anion === "CO3^2-" : falls(b!) === false) &&
          CARRIERS.some((row) => row.cation === b!.cation && row.takes.includes(a!.anion!)),
        "nothing precipitates that could be filtered off",
      );
    case "set-acid-free":
      return unless(isSparing(product), "the acid stays dissolved beside the salt");
    case "metal-and-acid":
      return unless(b!.key !== keyOf("HNO3"), "nitric acid oxidises by its nitrogen, not by its hydrogen");
    case "precipitate-hydroxide":
      return unless(
        b!.anion !== "OH-" || a!.made.cations.every(({ formula }) => formula !== AMMONIUM),
        "lye sets the ammonia of an ammonium salt free",
      );
    case "displace":
      return unless(
        product.cation !== "Al^3+" && setsFree(a!, b!),
        "it does not set that metal free from water, or its film keeps it",
      );
    case "cement":
      return unless(setsFree(b!, a!), "it does not set that metal free from water, or its film keeps it");
    case "double-salt":
      return unless(isCongruent(product), "no double salt of this kind crystallises from equal amounts");
    case "precipitate":
    case "precipitate-carbonate":
      return unless(a!.key !== b!.key && product.key !== b!.key, "it is the same salt");
    default:
      return undefined;
  }
}

function ofListed(product: Compound, all: Universe): Candidate[] {
  const family = FAMILIES.find(({ code }) => code === "listed")!;
  return LISTED.filter((row) => keyOf(row.product) === product.key).flatMap((row) => {
    const feeds = row.feeds.map((one) => all.byKey.get(keyOf(one)!));
    if (feeds.includes(undefined)) return [];
    return [candidate(family, product, feeds as Compound[], row.beside)];
  });
}

const candidate = (
  family: FamilyRow,
  product: Compound,
  feeds: readonly Compound[],
  beside?: readonly string[],
): Candidate => ({
  id: `${family.code} ${product.key} < ${feeds.map(({ key }) => key).join(" | ")}`,
  family,
  product,
  feeds,
  ...(beside === undefined ? {} : { beside }),
});

/** From one hydrate to another: heat where water goes, crystals where it comes. */
export const changeOfWater = (product: Compound, more: boolean): Candidate =>
  candidate(FAMILIES.find(({ code }) => code === (more ? "recrystallise" : "drive-water-off"))!, product, [product]);

const kept = new WeakMap<Universe, Map<string, readonly Candidate[]>>();

/** Every reaction whose ions fit, in the order of the families; the same list every time. */
function allFor(product: Compound, all: Universe): readonly Candidate[] {
  const known = kept.get(all) ?? new Map<string, readonly Candidate[]>();
  kept.set(all, known);
  const before = known.get(product.key);
  if (before !== undefined) return before;
  const found = isRefused(product)
    ? []
    : [
        ...FAMILIES.flatMap((family) =>
          feedsFor(family, product, all)
            .filter((feeds) => feeds.every(({ key }) => key !== product.key))
            .map((feeds) => {
              const bar = barOf(family, product, feeds);
              const one = candidate(family, product, feeds);
              return bar === undefined ? one : { ...one, bar };
            }),
        ),
        ...ofListed(product, all),
      ];
  known.set(product.key, found);
  return found;
}

const fit = new WeakMap<readonly Candidate[], readonly Candidate[]>();

/** Reactions that might make a compound. */
export function candidatesFor(product: Compound, all: Universe): readonly Candidate[] {
  const every = allFor(product, all);
  let some = fit.get(every);
  if (some === undefined) {
    some = every.filter(({ bar }) => bar === undefined);
    fit.set(every, some);
  }
  return some;
}

/** Reactions that somebody might try, and that are none. */
export const barredFor = (product: Compound, all: Universe): readonly Candidate[] =>
  allFor(product, all).filter(({ bar }) => bar !== undefined);
