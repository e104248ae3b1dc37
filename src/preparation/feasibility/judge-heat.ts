// What heat does to a dry solid, by the table of thermal steps.

import { type Formula, parseFormula } from "../../formula";
import { attempt } from "../../foundation/error";
import { list } from "../../foundation/wording";
import { isOneOf } from "../../ion/internal";
import { quantity } from "../../quantity";
import type { ThermalStep } from "../../substance";
import { reactionEnthalpy } from "../../thermochemistry";
import { GIVES_OFF_GAS } from "../data/firing";
import { firedInAir, givesBackFrom } from "../reaction/fired-in-air";
import { firingRow } from "../reaction/firing-row";
import { heatingOf } from "../reaction/heating";
import { sameCore } from "../reaction/species";
import type { Case, Put } from "./case";
import type { Ruling } from "./feasibility";

/** A solid that is heated, by the steps of the table. */
interface Heated {
  readonly feed: Put;
  readonly steps: readonly ThermalStep[];
}

const gives = (step: ThermalStep, is: (made: Formula) => boolean): boolean =>
  [...step.remains, ...step.leaves].some((made) => is(parseFormula(made.formula)));

/** It goes, from or at a temperature of a table, °C. */
const goesAt = (
  product: Case["product"],
  at: number,
  { text, label, source }: Pick<Ruling["reasons"][number], "text" | "source"> & { readonly label: string },
): Ruling => ({
  verdict: "goes",
  share: 1,
  solids: product.gas ? [] : [{ formula: product.species.name, moles: 1, share: 1 }],
  reasons: [{ code: "thermal", text, figures: [{ value: at, unit: "°C", label }], source }],
});

/** A step that ends in the product. A hydrate on the way is not the salt: another solid, hotter. */
function madeBy({ product }: Case, { feed, steps }: Heated): Ruling | undefined {
  const { name, formula } = product.species;
  const step = steps.find((one) => gives(one, (made) => made.hasSameComposition(formula)));
  if (step === undefined) return undefined;
  const from = step.from.toNumber("°C");
  return goesAt(product, from, {
    text: `${feed.species.name} gives ${name} from ${from} °C on`,
    label: `heat from which ${name} forms`,
    source: step.source,
  });
}

/** A solid that takes up oxygen of the air. */
function madeInAir({ product, put }: Case): Ruling | undefined {
  const { name, formula } = product.species;
  const [feed, ...others] = put.filter(({ species }) => !isOneOf(species.formula, "O2"));
  const fired = feed === undefined || others.length > 0 ? undefined : firedInAir(feed.species.formula, formula);
  if (feed === undefined || fired === undefined) return undefined;
  const at = fired.at.toNumber("°C");
  const back = givesBackFrom(formula)?.toNumber("°C");
  return goesAt(product, at, {
    text: `${feed.species.name} absorbs oxygen of the air at about ${at} °C and gives ${name}${back === undefined ? "" : `, which heat takes apart from ${back} °C on`}`,
    label: `heat at which ${name} forms in air`,
    source: fired.source,
  });
}

/** A charge of several solids whose product is usually fired, and drives out gas and steam only. */
function madeOfCharge({ product, put, made }: Case): Ruling | undefined {
  const solids = put.filter(({ species }) => !isOneOf(species.formula, "O2"));
  const row = solids.length > 1 ? firingRow(product.species.formula) : undefined;
  const isLeft = made.some((one) => one.species !== product.species && !one.gas && !one.species.isWater);
  if (row === undefined || isLeft) return undefined;
  const { name } = product.species;
  const at = Number(row.at);
  return goesAt(product, at, {
    text: `${list(solids.map(({ species }) => species.name))} are usually fired at ${at} °C to ${name}`,
    label: `heat at which ${name} is usually fired`,
    source: row.source,
  });
}

/** A salt that has crystal water as long as it is the salt. */
function neverDry({ product }: Case, { feed, steps }: Heated): Ruling | undefined {
  const { name, formula } = product.species;
  const isSalt = (one: ThermalStep): boolean => gives(one, (made) => sameCore(made, formula));
  const last = steps.reduce((found, one, i) => (isSalt(one) ? i : found), -1);
  const next = last >= 0 || sameCore(feed.species.formula, formula) ? steps[last + 1] : undefined;
  if (next === undefined) return undefined;
  const names = (amounts: ThermalStep["remains"]): string =>
    list(amounts.map((one) => parseFormula(one.formula).toUnicode()));
  const from = next.from.toNumber("°C");
  return {
    verdict: "does not go",
    share: 0,
    solids: [],
    reasons: [
      {
        code: "thermal",
        text: `${feed.species.name} never gives ${name}: it still contains water when it turns into ${names(next.remains)}, from ${from} °C on, and ${names(next.leaves)} leave`,
        figures: [{ value: from, unit: "°C", label: "heat from which it decomposes" }],
        source: next.source,
      },
    ],
  };
}

/** The verdict on a thermal decomposition. */
export function judgeHeat(c: Case): Ruling {
  const feed = c.put.find(({ made }) => made.kind !== "element") ?? c.put[0]!;
  const steps = heatingOf(feed.species.formula);
  return (
    madeBy(c, { feed, steps }) ??
    madeInAir(c) ??
    madeOfCharge(c) ??
    neverDry(c, { feed, steps }) ??
    tooHot(c) ?? {
      verdict: "unknown",
      solids: [],
      reasons: [
        {
          code: "missing",
          text:
            steps.length === 0
              ? `missing: what heat does to ${feed.species.name}, step by step`
              : c.put.length > 1
                ? `missing: what heat makes of this charge; by itself the ${feed.species.name} in it leaves ${steps.map((s) => s.remains.map((one) => one.formula).join(" + ")).join(", then ")}`
                : `missing: a step in which ${feed.species.name} gives ${c.product.species.name}; by itself it leaves ${steps.map((s) => s.remains.map((one) => one.formula).join(" + ")).join(", then ")}`,
          source: steps[0]?.source ?? "commonPractice",
        },
      ],
    }
  );
}

/** A salt that no kiln is hot enough to take apart, by its heat of decomposition; undefined where it may be, or no figure is known. */
function tooHot({ setting, put, made, product }: Case): Ruling | undefined {
  const gases = made.filter(({ gas }) => gas);
  const [feed, ...others] = put;
  if (gases.length === 0 || feed === undefined || others.length > 0) return undefined;
  const found = attempt(() => reactionEnthalpy(setting.equation));
  if (!found.ok) return undefined;
  // of the equation as it is balanced, for each mole of gas
  const moles = gases.reduce((sum, { species }) => sum + Number(species.coefficient), 0);
  const each = found.value.enthalpy.toNumber("kJ/mol") / moles;
  const kelvin = each / quantity(GIVES_OFF_GAS.entropy).toNumber("kJ/(K mol)");
  const celsius = kelvin - 273.15;
  if (celsius <= quantity(GIVES_OFF_GAS.hottestKiln).toNumber("°C")) return undefined;
  const { name } = feed.species;
  return {
    verdict: "does not go",
    share: 0,
    solids: [{ formula: name, moles: feed.moles, share: 1 }],
    reasons: [
      {
        code: "thermal",
        text: `no kiln takes ${name} apart to ${product.species.name}: each mole of gas asks for ${Math.round(each)} kJ, and it is given off above ${Math.round(celsius / 100) * 100} °C at the earliest`,
        figures: [
          { value: each, unit: "kJ/mol", label: "heat for each mole of gas" },
          { value: celsius, unit: "°C", label: "temperature at which it reaches one atmosphere, at the earliest" },
        ],
        source: GIVES_OFF_GAS.source,
      },
    ],
  };
}
