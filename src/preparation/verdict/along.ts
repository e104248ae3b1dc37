// What comes along with a product and makes it too heavy: a second solid, water that no formula fixes, salts of the liquor.
import { list } from "../../foundation/wording";
import type { Quantity } from "../../quantity";
import { exact, lessThanAll } from "../planning/exact";
import { heldWaterOf } from "../reaction/held-water";
import { nextByFire } from "./by-fire";
import { belief, EXCLUDED, likelihoodWithin, percent } from "./difference";
import type { Evidence } from "./evidence";
import type { Finding } from "./finding";
import { neverWashedOut } from "./seen";
import { shows } from "./test-outcome";

/** A by-product that precipitates with the product is in every cake, and no washing takes it out. */
export function secondSolid(evidence: Evidence, over: Quantity): Finding[] {
  const { batch, grams } = evidence;
  return batch.byProducts
    .filter(({ where }) => where === "with the product")
    .map(({ formula, mass }): Finding => {
      const part = over.dividedBy(mass);
      const fits = part.compare(exact("1.1")) <= 0;
      return {
        code: "second-solid",
        text: `${grams(mass)} of ${formula} precipitates with the product${fits ? `: ${percent(part, 2)} of it is the ${grams(over)} above the theory` : ", which is not enough to explain the mass"}`,
        mass,
        figure: part.to("%"),
        likelihood: likelihoodWithin(over, exact("0 g"), mass),
        weight: belief("secondSolid") * (fits ? 1 : belief("inPart")),
        next: nextByFire(evidence, `titrate or ignite a weighed sample: the share of ${formula} in it gives the yield`),
      };
    });
}

/** Salts that by the work itself crystallise with the product, as its sheet says, where that is more than handling takes. */
export function saltsOfWork({ batch, candidates, dry, grams, handlingLoss, observed }: Evidence): Finding[] {
  if (batch.isolation.how !== "crystallise") return [];
  const known = [...candidates.map(({ formula }) => formula), ...observed.setting.materials.map((one) => one.formName)];
  const { solids } = batch.steps.at(-1)!.before;
  const own = solids.find(({ formula }) => formula === batch.product.formula)?.mass;
  return solids.flatMap(({ formula, mass }): Finding[] => {
    if (own === undefined || known.includes(formula) || mass.compare(own.times(handlingLoss)) <= 0) return [];
    const all = own.plus(mass);
    const likelihood = likelihoodWithin(dry, all.times(lessThanAll(handlingLoss)), all);
    if (likelihood < EXCLUDED) return [];
    return [
      {
        code: "second-solid",
        text: `${grams(mass)} of ${formula} crystallises with the ${grams(own)} of ${batch.product.formula}: ${grams(all)} in all, by the work as it was done`,
        mass,
        figure: mass.dividedBy(all).to("%"),
        likelihood,
        weight: likelihood * belief("seen"),
        next: "dissolve it in as little hot water as it needs and let it crystallise again; a titration gives the share",
      },
    ];
  });
}

/** A precipitate whose water no formula fixes, where its usual range covers the mass. */
export function variableWater(evidence: Evidence): Finding[] {
  const { dry, expected, grams, handlingLoss, observed } = evidence;
  const { formula, name } = observed.setting.product;
  const held = heldWaterOf(formula);
  if (held === undefined) return [];
  const most = expected.times(held.most).to("g");
  // Salts that the run itself knows of are no part of it.
  const pure = dry.minus(neverWashedOut(evidence) ?? exact("0 g"));
  const likelihood = likelihoodWithin(pure, expected.times(held.least).times(lessThanAll(handlingLoss)).to("g"), most);
  if (likelihood < EXCLUDED) return [];
  return [
    {
      code: "other-hydrate-fits",
      text: `${grams(dry)} is what ${name} gives as it dries in air, with ${held.from} to ${held.to} H₂O that no formula fixes: up to ${grams(most)}`,
      mass: most as Quantity<"mass">,
      figure: dry.dividedBy(most).to("%"),
      likelihood,
      weight: likelihood * belief("otherForm"),
      next: nextByFire(evidence, "count it by its metal: ignite a weighed sample"),
    },
  ];
}

/** Salts of the liquor with crystals that were not rinsed well, or that crystallised along; no more than the liquor contains. */
export function saltsInCrop({ batch, grams, observed }: Evidence, over: Quantity): Finding[] {
  // Of a cake with a plan for its washes these tell more.
  const isPlanned = batch.washing !== undefined && "plan" in batch.washing;
  const isSeen = shows(observed.tests.lastWash);
  if (batch.isolation.how !== "crystallise" && (batch.isolation.how === "residue" || isPlanned)) return [];
  const salts = batch.byProducts.filter(({ where, mass }) => where === "in the liquor" && mass.isPositive());
  if (salts.length === 0) return [];
  const all = salts.reduce((sum, one) => sum.plus(one.mass), exact("0 g"));
  const likelihood = likelihoodWithin(over, exact("0 g"), all);
  const part = over.dividedBy(all).to("%");
  const names = list(salts.map(({ formula }) => formula));
  if (likelihood < EXCLUDED)
    return isSeen !== true
      ? []
      : [
          {
            code: "unwashed",
            text: `the last wash still shows ${names}: all the liquor contained explains ${grams(all)} of the ${grams(over)} that are too much`,
            mass: all as Quantity<"mass">,
            figure: part,
            likelihood,
            weight: belief("saltsSeenPart"),
            next: "wash until the last wash stays clear, dry again, and weigh",
          },
        ];
  return [
    {
      code: "unwashed",
      text: `${grams(over)} of ${names} with the crystals would explain it: ${percent(part, 2)} of what the liquor contains${isSeen === true ? "; the last wash still shows them" : ""}`,
      mass: over as Quantity<"mass">,
      figure: part,
      likelihood,
      weight: likelihood * belief(isSeen === true ? "saltsSeen" : isSeen === false ? "saltsNotSeen" : "saltsInCrop"),
      next: "rinse one half with ice-cold water, dry it, and compare",
    },
  ];
}
