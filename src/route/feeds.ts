// From which compounds each family of reactions may make a product: its slots filled from the compounds there are.

import { once } from "../foundation/memo";
import { ACID_STEPS, chargeOfIon, isMetalCation } from "../ion/internal";
import { DOUBLE_SALTS } from "../solubility/internal";
import { thermalRows } from "../substance/internal";
import { type Compound, falls, keyOf } from "./compound";
import { CARRIERS, type FamilyRow, OTHER_ANIONS, type Slot } from "./data/families";
import {
  ALKALI,
  AMMONIA,
  AMMONIUM,
  acidKey,
  BASIC,
  CARBONATES,
  CEMENTS,
  elementOf,
  ION_OF_METAL,
  isBase,
  isSalt,
  isSource,
  LOWER,
  SLAKES,
  STRONG,
} from "./kinds";
import type { Universe } from "./universe";

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
      return withCation(cation).filter(
        (c) =>
          isOther(c) &&
          // soda is no salt that is taken for its metal, except for its lye
          (isSource(c) || (anion === "OH-" && ALKALI.has(cation) && c.anion === "CO3^2-")) &&
          c.made.anions[0]!.formula !== anion,
      );
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
      return made.complex !== undefined && made.complex.charge < 0 && made.cations.length === 2 && anions.length === 1
        ? made.cations
            .filter(({ formula }) => !ALKALI.has(formula))
            .map(({ formula }) => [formula, anions[0]!] as const)
        : [];
    default:
      return [];
  }
}

/** Alums and double sulfates that come unmixed from equal amounts of their salts: of potassium or ammonium. */
export const isCongruent = ({ key, made }: Compound): boolean =>
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

/** What heat takes to which solid, as the only thing that remains: from the table of thermal steps. */
const heated = /* @__PURE__ */ once(() => {
  const index = new Map<string, string[]>();
  for (const { formula, steps } of thermalRows())
    for (const { remains } of steps) {
      if (remains.length !== 1) continue;
      const [key, from] = [keyOf(remains[0]!.formula), keyOf(formula)];
      if (key === undefined || from === undefined || key === from) continue;
      const list = index.get(key);
      if (list === undefined) index.set(key, [from]);
      else if (!list.includes(from)) list.push(from);
    }
  return index;
});

function fromHeat(product: Compound, all: Universe): (readonly Compound[])[] {
  return (heated().get(product.key) ?? []).flatMap((key) => {
    const found = all.byKey.get(key);
    return found === undefined ? [] : [[found]];
  });
}

export function feedsFor(family: FamilyRow, product: Compound, all: Universe): (readonly Compound[])[] {
  if (family.code === "double-salt") return doubleSalt(product, all);
  if (family.code === "ammine") return ammine(product, all);
  if (family.code === "cement") return cement(product, all);
  if (family.code === "heat") return fromHeat(product, all);
  return subjects(family.code, product).flatMap(([cation, anion]) => [
    ...combined(family.left.map((slot) => choices(slot, product, cation, anion, all))),
  ]);
}
