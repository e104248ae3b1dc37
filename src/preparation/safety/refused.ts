// What the gate refuses: the error with its code, and what may be done about it.
import { gasVolume } from "../../amount";
import { type Formula, parseFormula } from "../../formula";
import { list } from "../../foundation/wording";
import { isOneOf, readNotation } from "../../ion/internal";
import type { Quantity } from "../../quantity";
import type { Incompatibility } from "../../substance";
import { cautionsOfFormulas, type DangerousProduct, dangerOf } from "../../substance/internal";
import { DEADLY_AIR } from "../data/deadly-air";
import { IF_MIXED, INSTEAD_OF } from "../data/if-mixed";
import { PlanError } from "../error";
import { exact } from "../planning/exact";
import { about, litres } from "../procedure/words";
import { isGas } from "../reaction/fluids";
import { nameOfFormula, type Species } from "../reaction/species";

/** A product, by-product or material that no plan makes or starts from. */
export interface Danger extends DangerousProduct {
  readonly formula: string;
  readonly as: "product" | "by-product" | "material";
}

/** Amount of a product that the batch as it is asked for would form, by its formula; undefined where no such batch can be calculated. */
type Forms = (formula: Formula) => Quantity<"amount of substance"> | undefined;

/** What a gas is looked up by, and how much of it a batch would give. */
export interface InTheAir {
  readonly forms: Forms;
  readonly temperature: Quantity<"temperature">;
  readonly pressure: Quantity<"pressure">;
}

/** How little of a gas in the air is dangerous, and how much air the batch would spoil; in words, empty where no figure is known. */
function howLittle(formula: Formula, air: InTheAir | undefined): string[] {
  const row = DEADLY_AIR.find((one) => isOneOf(formula, one.formula));
  if (row === undefined) return [];
  const name = nameOfFormula(formula);
  const share = `${row.ppm} ppm of ${name} in the air is immediately dangerous to life or health (IDLH value of NIOSH)`;
  const amount = air?.forms(formula);
  if (amount === undefined || !amount.isPositive()) return [share];
  const volume = gasVolume(amount, { temperature: air!.temperature, pressure: air!.pressure });
  const spoilt = volume.dividedBy(exact(`${row.ppm} ppm`));
  return [`${share}: the ${litres(volume)} that this batch could give brings ${about(spoilt, "m3", 2)} of air to it`];
}

/** What is done where it is there already. */
const ifMixed = (danger: Danger): string[] =>
  IF_MIXED.filter(({ code }) => code === danger.code).map(({ text }) => text);

/** The packs that must not meet, whatever is to be made of them, and what is known to come of it. */
function neverTogether(packs: readonly string[], combinations: readonly Incompatibility[]): string[] {
  if (packs.length < 2) return [];
  const [known] = combinations.filter(({ products }) => products.length > 0);
  const gives = known === undefined ? "" : ` (${known.what}: ${list(known.products)})`;
  return [`never bring ${list(packs)} together, in any proportion${gives}`];
}

/** Refuse dangers; `packs` are the materials that were to make them, by name. */
export function refuseDangers(
  dangers: readonly Danger[],
  packs: readonly string[],
  combinations: readonly Incompatibility[],
  air: InTheAir | undefined,
): void {
  const first = dangers[0];
  if (first === undefined) return;
  const little = [...new Set(dangers.map(({ formula }) => formula))].flatMap((text) =>
    howLittle(parseFormula(text), air),
  );
  throw new PlanError("plan.dangerous-product", `${first.formula} (${first.name}) as ${first.as}`, {
    hint: first.opens
      ? [...little, `if this is known and meant, acknowledge it by code: acknowledge: ["${first.code}"]`].join("; ")
      : [
          "explosives and deadly gases are never planned, whatever is acknowledged",
          ...little,
          ...neverTogether(packs, combinations),
          ...ifMixed(first),
        ].join("; "),
    details: {
      dangers: dangers.map(({ code, formula, name, as, opens, citation }) => ({
        code,
        formula,
        name,
        as,
        opens,
        source: citation,
      })),
    },
  });
}

/** Fatal or toxic where it is breathed (CLP). */
const POISON_TO_BREATHE: readonly string[] = ["H330", "H331"];

const isPoisonToBreathe = (text: string): boolean =>
  cautionsOfFormulas([text], []).substances.some(({ statements }) =>
    statements.some(({ code }) => POISON_TO_BREATHE.includes(code)),
  );

/** The poisonous gases that come of a combination, by name, in words; nothing where none is known. */
function poisonousGases({ products }: Incompatibility): string {
  const gases = products.flatMap((text) => {
    const formula = parseFormula(text);
    const danger = dangerOf(readNotation(formula));
    const isGasOfTheList = danger !== undefined && danger.code !== "explosive";
    if (!isGasOfTheList && !isPoisonToBreathe(text)) return [];
    return [danger === undefined ? nameOfFormula(formula) : `${danger.name}, ${nameOfFormula(formula)}`];
  });
  if (gases.length === 0) return "";
  return gases.length === 1 ? ` (a poisonous gas: ${gases[0]})` : ` (poisonous gases: ${gases.join("; ")})`;
}

/** Refuse packs that must not meet; of a gas that is itself the product no code is given, for none leads to a plan. */
export function refuseCombinations(
  combinations: readonly Incompatibility[],
  formed: readonly string[],
  { formula, name }: Species,
  air: InTheAir | undefined,
): void {
  const first = combinations[0];
  if (first === undefined) return;
  const forms = first.materials.find((one) => formed.includes(one));
  const names = first.materials.map((one) => (one === forms ? `${one} that the reaction forms` : one));
  const poison = poisonousGases(first);
  const meant = `if this is known and meant, acknowledge it by code: acknowledge: ["${first.code}"]`;
  const instead = INSTEAD_OF.find(({ code, element }) => code === first.code && formula.count(element).n !== 0n);
  const opened = instead === undefined ? meant : `${instead.text}; ${meant}`;
  const known = poison === "" ? opened : `under a hood that works, or not at all; ${opened}`;
  const hint =
    poison !== "" && isGas(formula, true)
      ? `never in an open vessel, nor in a room: ${name} has to be driven over and caught, and no procedure here does that, whatever is acknowledged`
      : forms === undefined
        ? known
        : `take a base into the equation that binds the ${forms} as it forms; ${known}`;
  const little = first.products.flatMap((text) => howLittle(parseFormula(text), air));
  throw new PlanError("plan.forbidden-combination", `${list(names)}: ${first.what}${poison}`, {
    hint: [hint, ...little].join("; "),
    details: {
      combinations: combinations.map(({ code, materials, what, products, condition, citation }) => ({
        code,
        materials,
        what,
        ...(condition === undefined ? {} : { condition }),
        products,
        source: citation,
      })),
    },
  });
}
