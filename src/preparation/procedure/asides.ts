// What takes no part in the equation and is used all the same: acid against hydrolysis, charcoal, seed crystals, alcohol. What
// it is for follows from what it is.

import { parseFormula } from "../../formula";
import { list } from "../../foundation/wording";
import { isOneOf } from "../../ion/internal";
import type { Quantity } from "../../quantity";
import { massOf } from "../contents/entry";
import { matterOf } from "../contents/matter";
import { Pot } from "../contents/pot";
import { add } from "../operation/add";
import { cool } from "../operation/cool";
import { heat } from "../operation/heat";
import { rinse } from "../operation/rinse";
import { weigh } from "../operation/weigh";
import { exact, planned } from "../planning/exact";
import { isAmmonia } from "../reaction/acids";
import { neutralisation } from "../reaction/neutralising";
import { formulaFrom } from "../reaction/species";
import type { Material } from "../shelf/material";
import { volumeOf } from "../shelf/strength";
import { acidAtHand } from "./acid-at-hand";
import { takenFirst } from "./acid-taken";
import { comingAlong, liquorAtCrystals } from "./alcohol";
import { type Bench, POT } from "./bench";
import { isHarshOxidiser, isPeroxide } from "./roles";
import { boundBy, catalystOf } from "./slow-complex";
import type { Use } from "./use";
import { celsius } from "./words";

/** Harsh oxidisers of the plan, which alcohol must not meet. */
function oxidisersOf({ frame: { setting } }: Bench): string {
  const { materials, product } = setting;
  const isOxidiser = ({ form }: Material): boolean => isHarshOxidiser(form) && !isHarshOxidiser(product.formula);
  return list(materials.filter(isOxidiser).map(({ shelf }) => shelf.name));
}

/** What must be so before alcohol goes in. */
function onceReady(bench: Bench): string {
  const oxidisers = oxidisersOf(bench);
  if (oxidisers === "") return "once it is cold";
  return bench.frame.setting.materials.some(isPeroxide)
    ? `once it is cold and a test strip shows no peroxide (what does not go by itself does at the boil)`
    : `once it is cold and none of the ${oxidisers} is left by the test above`;
}

const WORDS: Readonly<Record<Use, (name: string, bench: Bench) => string>> = {
  acidify: (name) => `Put the ${name} into the vessel: it keeps hydroxide and carbonate from precipitating.`,
  "takes metal": (name) => `Stir in the ${name}: it dissolves what may be left of the other metal.`,
  bound: (name) => `Pour in the ${name}, slowly and under a hood.`,
  "against acid": (name) => `Stir in the ${name}.`,
  "against base": (name) => `Stir in the ${name}.`,
  "with the first": (name) => `Put the ${name} into the vessel and stir.`,
  charcoal: (name) => `Stir in the ${name}; it is filtered off later.`,
  seed: (name) => `Put in the ${name} as seed.`,
  alcohol: (name, bench) =>
    `Add the ${name} slowly, stirring, ${onceReady(bench)}: it brings the product out of the water.`,
};

/** A portion of an aside as it is measured. */
export function weighAside(bench: Bench, material: Material, show: (portion: Quantity) => string): void {
  const { name, portion } = material.shelf;
  const before = bench.in(bench.pack(name));
  const own = material.asideTaken();
  if (portion === undefined || own === undefined) {
    const unknown = [`how much ${name} is taken`];
    const after = before.with({ unknown });
    bench.did(
      bench.pack(name),
      { operation: "weigh", before, after, put: [], left: [] },
      {
        materials: [name],
        care: "weighing",
        say: () => `Have the ${name} ready; write down how much is used.`,
      },
    );
    return;
  }
  bench.did(bench.pack(name), weigh(material, own.portion, own.amount, before), {
    materials: [name],
    amounts: [own.portion],
    care: "weighing",
    blank: `weighed.${name}`,
    say: () => `${own.portion.dimension === "volume" ? "Measure" : "Weigh"} ${show(own.portion)} of the ${name}.`,
  });
}

/** All asides of a use that are not in yet go into the vessel. */
export function putAsides(bench: Bench, use: Use): void {
  for (const material of bench.asidesFor(use)) {
    const { name } = material.shelf;
    const own = material.asideTaken();
    const { grams, litres } = bench.hand;
    // crystals that stand in it are none of the liquor
    const liquor = use === "alcohol" ? liquorAtCrystals(bench.frame, bench.pot) : bench.pot.liquor.volume;
    const along = use === "alcohol" ? comingAlong(bench) : [];
    const isShort = (portion: Quantity): boolean =>
      use === "alcohol" && volumeOf(material, portion)?.compare(liquor.times(planned("enoughAlcohol"))) === -1;
    bench.did(POT, add(bench.pot, bench.in(bench.pack(name)), []), {
      materials: [name],
      amounts: own === undefined ? [] : [own.portion],
      from: bench.pack(name),
      // an acid goes into water
      care: use === "acidify" ? "dissolving" : undefined,
      ...(use === "alcohol" && bench.frame.setting.materials.some(isPeroxide)
        ? { atHand: ["peroxide test strips"] as const }
        : {}),
      say: () => {
        const first = use === "acidify" ? takenFirst(bench, material) : "";
        if (own === undefined) return `${WORDS[use](name, bench)}${first}`;
        const { portion } = own;
        const what = `${portion.dimension === "volume" ? litres(portion) : grams(portion)} of ${name}`;
        const words = WORDS[use](what, bench);
        return `${words}${first}${
          along.length > 0
            ? ` It brings out ${list(along.map((one) => `${grams(massOf(one))} of ${one.matter.name}`))} beside it as well, or may: no more of it.`
            : isShort(portion)
              ? ` It is less than there is liquor (${litres(liquor)}): more of it, up to as much as that, brings out more.`
              : ""
        }${use === "alcohol" && bench.frame.crystallising !== undefined ? " How much it brings is in no table, and comes on top of what is expected below." : ""}`;
      },
    });
  }
}

/** The strong acid of a plan, or of the shelf, that brings an anion in, after it has taken the ammonia that is left in the pot. */
function pourBoundAcid(bench: Bench, row: NonNullable<ReturnType<typeof boundBy>>): void {
  const { theory } = bench.frame;
  const acid = parseFormula(row.acid);
  const { molarMass } = matterOf(acid);
  const ammonia = bench.pot.books.dissolved.find(({ matter }) => isAmmonia(matter.formula));
  const free = ammonia?.amount ?? exact("0 mol");
  const pure = (times: string): Quantity => theory.times(exact(times)).times(exact(row.strength)).dividedBy(molarMass);
  const least = free.plus(pure(row.over)).to("mol");
  const usual = pure(row.times).to("mol");
  const needed = least.compare(usual) > 0 ? least : usual;
  const taken = (amount: Quantity) => {
    const found = ammonia && neutralisation(ammonia.matter.formula, acid);
    return found === undefined
      ? []
      : [{ terms: found.terms, extent: free.compare(amount) < 0 ? free : amount.to("mol") }];
  };
  const fumes = "slowly and under a hood: it takes the ammonia that is left first, with heat and white fumes";
  const [own] = bench.asidesFor("bound");
  const portion = own?.asideTaken();
  if (own !== undefined && portion !== undefined) {
    const { grams, litres } = bench.hand;
    const asked = portion.portion.dimension === "volume" ? litres(portion.portion) : grams(portion.portion);
    const share = least.dividedBy(portion.amount);
    const all = portion.portion.times(share);
    const short =
      portion.amount.compare(least) < 0
        ? ` The ${grams(free.times(matterOf(ammonia!.matter.formula).molarMass).to("g"))} of ammonia that is left takes ${free.compare(portion.amount) < 0 ? "most" : "all"} of that: take ${portion.portion.dimension === "volume" ? litres(all.to("mL")) : grams(all.to("g"))} of it in all, or the chloride stays out.`
        : "";
    bench.did(POT, add(bench.pot, bench.in(bench.pack(own.shelf.name)), taken(portion.amount)), {
      materials: [own.shelf.name],
      amounts: [portion.portion],
      from: bench.pack(own.shelf.name),
      apparatus: "fume hood",
      say: () => `Pour in the ${asked} of ${own.shelf.name}, ${fumes}.${short}`,
    });
    return;
  }
  const strength = own?.massFraction() ?? exact(row.strength);
  const mass = needed.times(molarMass).dividedBy(strength).to("g");
  const called = own?.shelf.name ?? `${row.called} (${row.strength})`;
  bench.did(POT, add(bench.pot, acidAtHand(bench.pot, acid, needed, strength), taken(needed)), {
    ...(own === undefined ? { later: true as const } : { materials: [own.shelf.name] }),
    amounts: [mass],
    apparatus: "fume hood",
    say: () => `Pour in ${bench.hand.grams(mass)} of ${called}, ${fumes}.`,
  });
}

/** Strong acid that brings an anion in beside the ligands of a complex, and the warmth it asks for. */
export function putBoundAcid(bench: Bench): void {
  const { product } = bench.frame.setting;
  const row = boundBy(product.formula);
  if (row === undefined) return;
  pourBoundAcid(bench, row);
  const at = exact(row.at) as Quantity<"temperature">;
  bench.did(POT, heat(bench.pot, at), {
    target: at,
    apparatus: "fume hood",
    say: () => `Keep it at ${row.at}, covered and stirred, ${row.time}: ${row.text}.`,
  });
  const { temperature } = bench.frame.setting;
  bench.did(POT, cool(bench.pot, temperature), {
    target: temperature,
    say: () => `Let it cool to ${celsius(temperature)}, then in ice.`,
    atHand: ["ice"],
  });
}

/** What brings the last ligand of a complex in, where no pack of the plan does: it is there before the oxidiser. */
export function putCatalyst(bench: Bench): void {
  const { setting, theory } = bench.frame;
  const row = catalystOf(setting.product.formula);
  if (row === undefined || setting.asides.some(({ form }) => isOneOf(form, row.formula))) return;
  const matter = matterOf(parseFormula(row.formula));
  const mass = theory.times(exact(row.share)).to("g");
  const { temperature, pressure } = bench.pot.books;
  const some = Pot.empty(temperature, pressure).plusSolid(matter, mass.dividedBy(matter.molarMass).to("mol"), "put in");
  bench.did(POT, add(bench.pot, some, []), {
    atHand: [row.called],
    amounts: [mass],
    say: () =>
      `Stir in ${bench.hand.grams(mass)} of ${row.called}: it brings the last of the ${formulaFrom(row.ligand).toUnicode()} in, and is filtered off later.`,
  });
}

/** Alcohol over a washed cake, so that it dries faster. */
export function rinseWithAlcohol(bench: Bench): void {
  for (const material of bench.asidesFor("alcohol")) {
    const { name } = material.shelf;
    const liquid = bench.in(bench.pack(name));
    const own = material.asideTaken();
    if (liquid.isEmpty) continue;
    bench.did(POT, rinse(bench.pot, liquid, undefined), {
      materials: [name],
      amounts: own === undefined ? [] : [own.portion],
      from: bench.pack(name),
      say: () => `Rinse with the ${name} (${bench.hand.grams(liquid.mass)}), so that it dries faster.`,
    });
  }
}

/** Whatever is still on the table goes in now. */
export function putTheRest(bench: Bench): void {
  for (const use of Object.keys(WORDS) as Use[]) putAsides(bench, use);
}
