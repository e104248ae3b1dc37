// Everything up to the vessel in which it reacts: weighing, dissolving, diluting, and adding in the order of the roles.
import { tryBalance } from "../../equation";
import { parseFormula } from "../../formula";
import type { Quantity } from "../../quantity";
import { keptAtEquilibrium } from "../contents/equilibrium";
import { type Matter, massOfWater, matterOf } from "../contents/matter";
import { Pot } from "../contents/pot";
import { dissolve as redissolve, type Term } from "../contents/react";
import { exact } from "../exact";
import { fateOf, keptByWater } from "../fate";
import { waterOfReaction } from "../feed";
import { add, type Reaction, reacted } from "../operation/add";
import { dilute } from "../operation/dilute";
import { dissolve } from "../operation/dissolve";
import { suspend } from "../operation/suspend";
import { weigh } from "../operation/weigh";
import type { Setting } from "../setting";
import type { Species } from "../species";
import { isGas } from "../vessel";
import { putAsides, weighAside } from "./asides";
import { type Bench, type Look, POT, type Telling } from "./bench";
import { warmingOfDilution } from "./heat-of-dilution";
import { acidsIn, baseAmong, neutralisation } from "./neutralising";
import { protectionOf } from "./protection";
import { isByLye, isLye, isPeroxide } from "./roles";
import { about, celsius, grams, lasting, litres, percent, water } from "./words";

/** A portion as the instrument shows it. */
export function asRead({ steps }: Setting, portion: Quantity): string {
  const step = portion.dimension === "mass" ? steps.mass : steps.volume;
  return portion.format({ unit: step.unit, decimals: step.value.decimalPlaces(), uncertainty: "none" });
}

/** Weigh or measure every material. */
export function weighAll(bench: Bench): void {
  const { setting, portions, account } = bench.frame;
  const alsoAcid = setting.materials.some(({ also }) => also.length > 0);
  setting.materials.forEach((material, i) => {
    const { name } = material.shelf;
    const portion = portions[i]!;
    const other =
      portion.dimension === "volume"
        ? material.massOf(portion)
        : material.isSolution
          ? material.volumeOf(portion)
          : undefined;
    const like = other !== undefined && material.likeWater() ? ", taken to be about as heavy as water" : "";
    const beside = other === undefined ? "" : ` (${other.dimension === "mass" ? grams(other) : litres(other)}${like})`;
    const verb = portion.dimension === "volume" ? "Measure" : "Weigh";
    // The account leaves out the base that acid in a shop material uses; on the balance it is there.
    const whole = alsoAcid ? material.amountIn(portion) : account.supplied[i]!.amount;
    bench.did(name, weigh(material, portion, whole, bench.in(name)), {
      say: () => `${verb} ${asRead(setting, portion)}${beside} of the ${name}.`,
      materials: [name],
      amounts: other === undefined ? [portion] : [portion, other],
      blank: `weighed.${name}`,
      care: "weighing",
    });
  });
  for (const material of setting.asides) weighAside(bench, material, (portion) => asRead(setting, portion));
}

/** Materials in the order in which they come together; equal ranks by formula, never by the order of the request. */
function inOrder({ frame: { setting, ranks, feeds } }: Bench): number[] {
  const order = setting.materials
    .map((_, i) => i)
    .sort((a, b) => {
      const rank = ranks[a]! - ranks[b]!;
      if (rank !== 0) return rank;
      const [one, other] = [setting.materials[a]!, setting.materials[b]!].map(
        ({ formName, shelf }) => `${formName} ${shelf.name}`,
      );
      return one! < other! ? -1 : 1;
    });
  // A solid is stirred into what is liquid, not the other way round.
  const liquid = order.findIndex((i) => feeds[i]!.how !== "solid");
  return liquid <= 0 ? order : [order[liquid]!, ...order.filter((_, at) => at !== liquid)];
}

const clear = (look: Look, name: string): string => {
  const heat = look.dissolvingHeat.find((one) => one.material === name);
  if (heat === undefined || !("rise" in heat)) return "";
  const kelvin = heat.rise.rise.in("ΔK").toNumber();
  if (Math.abs(kelvin) < 5) return "";
  return `; it ${kelvin > 0 ? "warms" : "cools"} by about ${Number(Math.abs(kelvin).toPrecision(2))} K`;
};

/** Dissolve, dilute or pour one material into a vessel. */
function putInto(bench: Bench, i: number, vessel: string): void {
  const { setting } = bench.frame;
  const feed = bench.frame.feeds[i]!;
  const name = bench.name(i);
  const own = bench.in(name);
  const before = bench.in(vessel);
  const into = vessel === POT && !before.isEmpty ? " in the same vessel" : "";
  const common = { materials: [name], from: name, care: "dissolving" } as const;
  // Where nothing is added later, the first step tells the vessel.
  const isOnly = vessel === POT && before.isEmpty && bench.onlyFills;
  const room = (look: Look): string => (isOnly ? vesselIn(look) : "");
  if (feed.how === "dissolve") {
    const { water: of, perHundredGramsWater } = feed.dissolving;
    const isHot = feed.at.compare(setting.temperature) > 0;
    const warm = isHot ? ` at ${celsius(feed.at)} or a little above` : "";
    const needsNone = !of.isPositive();
    const kept = protectionOf(bench.material(i).form, "dissolving");
    const care = kept === undefined ? "" : `; ${kept}`;
    bench.did(vessel, dissolve(before, own, of, feed.at), {
      ...common,
      amounts: [of],
      target: feed.at,
      say: (look) =>
        needsNone
          ? `Warm the ${name}${into} to ${celsius(feed.at)} until it melts in its own crystal water.`
          : `Dissolve the ${name}${into} in ${water(of)}${warm}, stirring until it is clear (100 g of water dissolves ${about(perHundredGramsWater)} anhydrous at ${celsius(feed.at)})${isHot ? "" : clear(look, name)}${care}${room(look)}.`,
    });
  } else if (feed.how === "unknown") {
    bench.did(vessel, dissolve(before, own, feed.water, setting.temperature, [feed.missing]), {
      ...common,
      amounts: [feed.water],
      say: () =>
        `Dissolve the ${name}${into} in ${water(feed.water)}, stirring; no solubility is known: add more water, and write down how much, if it does not get clear.`,
    });
  } else if (feed.how === "solution" && feed.dilution !== undefined) {
    const { water: of, to } = feed.dilution;
    const isAcid = bench.frame.roles[i] === "acid" || bench.frame.roles[i] === "precipitant";
    bench.did(vessel, dilute(before, own, of), {
      ...common,
      amounts: [of],
      target: to,
      say: (look) =>
        `Pour the ${name} slowly into ${water(of)}, stirring${isAcid ? " (acid into water, never water into acid)" : ""}: it is then ${percent(to)}${clear(look, name) || dilutionHeat(bench, i, own.plusWater(of))}.`,
    });
  } else pour(bench, i, vessel);
}

/** Water that the equation takes, crystal water of the products with it. */
function waterUsed({ frame: { setting, account } }: Bench): Quantity {
  const used = waterOfReaction(setting.materials, account, setting.reactants, setting.products).negated();
  const bound = setting.products.map((species) => account.extent.times(species.coefficient).times(species.waters));
  const all = bound.reduce((sum, amount) => sum.plus(massOfWater(amount)), used);
  return all.isPositive() ? all.to("g") : exact("0 g");
}

/** A solution or a solid put in as it is. */
function pour(bench: Bench, i: number, vessel: string): void {
  const name = bench.name(i);
  const own = bench.in(name);
  const before = bench.in(vessel);
  const common = { materials: [name], from: name, amounts: [bench.frame.portions[i]!] } as const;
  if (bench.frame.feeds[i]!.how === "solid")
    bench.did(vessel, suspend(before, own, waterUsed(bench), "how much water the solids are stirred into"), {
      ...common,
      care: "dissolving",
      say: () => `Stir the ${name} into enough water to keep it moving, and write down how much.`,
    });
  else
    bench.did(vessel, add(before, own, []), {
      ...common,
      care: "dissolving",
      say: () => `Pour the ${name} into the vessel.`,
    });
}

/** How hot dilution makes sulfuric acid; of other acids only that it does. */
function dilutionHeat(bench: Bench, i: number, after: Pot): string {
  const { form } = bench.material(i);
  const { amount } = bench.frame.account.supplied[i]!;
  const rise = warmingOfDilution(form, amount, after);
  return rise === undefined
    ? "; it warms: let it cool"
    : `; it warms by up to ${about(rise, "ΔK", 2).replace("ΔK", "K")}: let it cool`;
}

/** Where the products go. */
function wheretoOf(bench: Bench, species: Species): Term["whereto"] {
  const { setting, isolation } = bench.frame;
  if (isGas(species.formula, setting.wet)) return "gas";
  if (!setting.wet) return "left by heat";
  if (species === setting.product) return isolation.how === "precipitate" ? "precipitated" : "dissolved";
  return fateOf(species.formula, setting.temperature).fallsOut === true ? "precipitated" : "dissolved";
}

/** The equation as terms of a reaction. */
export function mainReaction(bench: Bench): Reaction {
  const { setting, account } = bench.frame;
  const brought = new Set(setting.materials.map(({ species }) => species));
  const used = setting.reactants.map((species): Term => {
    const isAir = !brought.has(species) && !species.isWater;
    return { matter: matterOf(species.formula), count: -species.coefficient, whereto: isAir ? "air" : "dissolved" };
  });
  const made = setting.products.map(
    (species): Term => ({
      matter: matterOf(species.formula),
      count: species.coefficient,
      whereto: wheretoOf(bench, species),
    }),
  );
  return { terms: [...used, ...made], extent: account.extent };
}

/** Peroxide over what the equation uses decomposes: 2 H2O2 -> 2 H2O + O2. */
function peroxideLeft(bench: Bench): Reaction[] {
  return bench.frame.setting.materials.flatMap((material, i): Reaction[] => {
    const { left } = bench.frame.account.supplied[i]!;
    if (!isPeroxide(material) || !left.isPositive()) return [];
    const term = (formula: string, count: bigint, whereto: Term["whereto"]): Term => ({
      matter: matterOf(parseFormula(formula)),
      count,
      whereto,
    });
    return [
      {
        terms: [term("H2O2", -2n, "dissolved"), term("H2O", 2n, "dissolved"), term("O2", 1n, "gas")],
        extent: left.dividedBy(exact("2")),
      },
    ];
  });
}

/** Acid that came along in a shop material is neutralised by the base of the plan. */
function acidsUsed(bench: Bench): Reaction[] {
  const { materials } = bench.frame.setting;
  const base = baseAmong(materials);
  if (base === undefined) return [];
  return materials.flatMap((material, i) =>
    acidsIn(material, bench.frame.portions[i]!).flatMap(({ acid, amount }): Reaction[] => {
      const found = neutralisation(base.form, acid);
      return found === undefined ? [] : [{ terms: found.terms, extent: amount.dividedBy(found.acids) }];
    }),
  );
}

/** Hydroxido complexes that metals go into lye as, with its alkali metal for M. */
const IN_LYE: Readonly<Record<string, string>> = { Al: "M[Al(OH)4]", Zn: "M2[Zn(OH)4]", Sn: "M2[Sn(OH)4]" };

/** Lye on a metal before the acid comes: the gas leaves then. */
function lyeStage(
  bench: Bench,
): { readonly first: Reaction; readonly back: Reaction; readonly gas: Matter } | undefined {
  const { setting, roles, account } = bench.frame;
  if (!isByLye(setting, roles)) return undefined;
  const metal = roles.indexOf("metal");
  const lye = setting.materials.find(({ form }) => isLye(form))!;
  const symbol = setting.materials[metal]!.form.symbols[0]!;
  const complex = IN_LYE[symbol]?.replace("M", lye.form.symbols.find((s) => s !== "O" && s !== "H")!);
  if (complex === undefined) return undefined;
  const found = tryBalance(`${symbol} + ${lye.species.formula} + H2O -> ${complex} + H2`);
  if (!found.ok) return undefined;
  const { reactants, products } = found.value;
  const size = reactants.find(({ formula }) => formula.symbols[0] === symbol)!.coefficient;
  const amount = account.extent.times(setting.materials[metal]!.species.coefficient).dividedBy(size);
  const terms = [
    ...reactants.map(
      ({ formula, coefficient }): Term => ({ matter: matterOf(formula), count: -coefficient, whereto: "dissolved" }),
    ),
    ...products.map(
      ({ formula, coefficient }): Term => ({
        matter: matterOf(formula),
        count: coefficient,
        whereto: formula.compositionText === "H2" ? "gas" : "dissolved",
      }),
    ),
  ];
  const back = terms.filter(({ whereto }) => whereto !== "gas").map((one) => ({ ...one, count: -one.count }));
  const gas = terms.find(({ whereto }) => whereto === "gas")!.matter;
  return { first: { terms, extent: amount }, back: { terms: back, extent: amount }, gas };
}

/** What the water keeps of each solid that forms goes back into it. */
function settled(bench: Bench, pot: Pot): Pot {
  const { setting } = bench.frame;
  let after = pot;
  for (const { matter, origin, amount } of pot.books.solids) {
    if (origin === "put in" && fateOf(matter.formula, setting.temperature).fallsOut === false)
      after = redissolve(after, matter, amount);
    if (origin !== "precipitated") continue;
    const { water: of } = after.books;
    const known = (T: Quantity<"temperature">) => (of.isPositive() ? keptByWater(matter.formula, of, T) : undefined);
    const inWater = (): Quantity | undefined =>
      (known(setting.temperature) ?? known(exact("25 °C") as Quantity<"temperature">))
        ?.dividedBy(matter.molarMass)
        .to("mol");
    const atEquilibrium = keptAtEquilibrium(pot, matter);
    const kept = atEquilibrium ?? inWater();
    if (kept === undefined) continue;
    after = redissolve(after, matter, kept);
    if (matter.key === matterOf(setting.product.formula).key)
      bench.kept = { amount: kept, atEquilibrium: atEquilibrium !== undefined };
  }
  return after;
}

/** The vessel to take; nothing where it is not known. */
const vesselIn = ({ vessel }: Look): string =>
  vessel === undefined
    ? ""
    : ` (vessel: ${vessel.smallest === undefined ? `at least ${litres(vessel.needed)}` : `${litres(vessel.smallest)} or larger`})`;

/** The last material comes in, and everything reacts. */
function adding(bench: Bench, i: number, look: Look, isLast: boolean): string {
  const { feeds, roles, portions, setting } = bench.frame;
  const name = bench.name(i);
  const solid = feeds[i]!.how === "solid";
  const alone = feeds[i]!.how === "solid" || (feeds[i]!.how === "solution" && !hasVessel(bench, i));
  const what = alone ? `${asRead(setting, portions[i]!)} of ${name}` : `${name} solution`;
  const verb = solid ? "Add" : "Pour";
  const into = solid ? `the ${what}` : `the ${what} into the vessel`;
  if (!isLast) return `${verb} ${into}, stirring.`;
  const { gas, additionRate, heat } = look;
  const room = vesselIn(look);
  const cool =
    roles[i] === "oxidiser"
      ? ", cooling from outside"
      : "rise" in heat && heat.rise.rise.in("ΔK").toNumber() >= 10
        ? `; it warms by up to ${about(heat.rise.rise, "ΔK", 2).replace("ΔK", "K")} if added at once`
        : "";
  if (gas.length === 0 || additionRate === undefined)
    return solid || roles[i] === "oxidiser"
      ? `${verb} ${into} in small portions, stirring${cool}${room}.`
      : `${verb} ${into}, slowly and stirring${cool}${room}.`;
  const least = additionRate.leastTime && lasting(additionRate.leastTime);
  const over = least === undefined ? "" : ` over at least ${least}`;
  const volumes = gas.map((one) => `${litres(one.volume)} of ${one.formula}`).join(" and ");
  return `${verb} ${into} in at least ${additionRate.portions} portions${over}, stirring; wait until the foam falls before the next portion${cool}${room}: ${volumes} in all, ${litres(additionRate.gasPerPortion)} from one portion.`;
}

const hasVessel = (bench: Bench, i: number): boolean => {
  const feed = bench.frame.feeds[i]!;
  return feed.how === "dissolve" || feed.how === "unknown" || (feed.how === "solution" && feed.dilution !== undefined);
};

const vesselOf = (bench: Bench, i: number): string =>
  hasVessel(bench, i) ? `${bench.name(i)} solution` : bench.name(i);

/** Fill the vessel, bring the rest to it in order, and let it react with the last. */
export function combine(bench: Bench): void {
  const { ranks, roles } = bench.frame;
  const order = inOrder(bench);
  const first = order[0]!;
  // What has the same rank and dissolves goes straight into the vessel.
  const isBase = (i: number): boolean => i === first || (ranks[i] === ranks[first] && hasVessel(bench, i));
  const together = order.filter(isBase);
  // Two that make a precipitate are never dissolved in the same vessel.
  const apart = together.length === order.length && order.length > 1 && bench.frame.isolation.how === "precipitate";
  const base = apart ? together.slice(0, 1) : together;
  const rest = order.filter((i) => !base.includes(i));
  bench.onlyFills = rest.length === 0;
  putAsides(bench, "acidify");
  for (const i of base) putInto(bench, i, POT);
  putAsides(bench, "with the first");
  for (const i of rest) if (hasVessel(bench, i)) putInto(bench, i, vesselOf(bench, i));
  const stage = lyeStage(bench);
  const main = mainReaction(bench);
  const last: Reaction[] =
    stage === undefined
      ? [main]
      : [stage.back, { ...main, terms: main.terms.filter(({ matter }) => matter.key !== stage.gas.key) }];
  const reactions = [...acidsUsed(bench), ...last, ...peroxideLeft(bench)];
  const settle = (pot: Pot): Pot => settled(bench, pot);
  rest.forEach((i, at) => {
    const isLast = at === rest.length - 1;
    const own = vesselOf(bench, i);
    const giving = stage !== undefined && roles[i] === "metal";
    const now = isLast ? reactions : giving ? [stage.first] : [];
    const speaks = stage === undefined ? isLast : giving;
    const done = add(bench.pot, bench.in(own), now, isLast ? settle : undefined);
    const telling: Telling = {
      say: (look) => adding(bench, i, look, speaks),
      ...(hasVessel(bench, i) ? {} : { materials: [bench.name(i)], amounts: [bench.frame.portions[i]!] }),
      from: own,
      ...(isLast ? { care: "mixing" as const, limit: (look: Look) => look.additionRate?.leastTime } : {}),
    };
    bench.did(POT, done, telling);
  });
  if (rest.length === 0) alone(bench, reactions, settle);
  bench.liquor = bench.pot;
  const { before, put } = bench.drafts.at(-1)!;
  bench.mixed = put.reduce((all, one) => all.plus(one.mass), before.mass);
  putAsides(bench, "charcoal");
}

/** What no material brings: led in as gas, or simply missing on the table. */
const bringing = (matter: Matter, amount: Quantity): string =>
  isGas(matter.formula, false)
    ? `Lead in ${about(amount, "mol")} of ${matter.name}, until no more is taken up.`
    : `Add ${about(amount, "mol")} of ${matter.name}, which no material of the plan brings.`;

/** Nothing else is put in: what the air or a gas brings, or only the water. */
function alone(bench: Bench, reactions: readonly Reaction[], settle: (pot: Pot) => Pot): void {
  const { setting } = bench.frame;
  const airs = reactions[0]!.terms.filter(({ whereto, count }) => whereto === "air" && count < 0n);
  const changes = setting.reactants.some(
    ({ formula }) => !setting.products.some((other) => other.formula.hasSameComposition(formula)),
  );
  if (!changes) return;
  if (airs.length === 0 && reactions.every(({ terms }) => terms.every(({ whereto }) => whereto !== "gas"))) {
    bench.amend(settle(reacted(bench.pot, reactions).pot));
    return;
  }
  const done = add(bench.pot, Pot.empty(setting.temperature, setting.pressure), reactions, settle);
  bench.did(POT, done, {
    care: "mixing",
    say: () =>
      airs.length === 0
        ? "Stir until the reaction is over."
        : airs.map(({ matter, count }) => bringing(matter, bench.frame.account.extent.times(-count))).join(" "),
  });
}
