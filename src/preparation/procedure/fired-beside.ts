// What else stands in a charge goes through the same fire: of a hydroxide that is left over the oxide is weighed at the end, and its
// steam is gone. What no table tells is counted as it was, and said.
import { tryBalance } from "../../equation";
import { type Formula, parseFormula } from "../../formula";
import { isWater } from "../../formula/internal";
import { inLowestTerms, wholeNumbers } from "../../foundation/rational";
import type { Quantity } from "../../quantity";
import type { ThermalAmount, ThermalStep } from "../../substance";
import { thermalStepsOf } from "../../substance/internal";
import type { SolidEntry } from "../contents/entry";
import { type Matter, matterOf } from "../contents/matter";
import type { Pot } from "../contents/pot";
import { type Term, termsOf } from "../contents/react";
import { GLASS } from "../data/kiln";
import { residueOf } from "../identity/ignition";
import { type Reaction, reacted } from "../operation/add";
import { exact } from "../planning/exact";
import { isGas } from "../reaction/fluids";

/** What the fire does to all that the equation leaves alone. */
interface FiredBeside {
  readonly reactions: readonly Reaction[];
  /** Solids that heat may take apart, and no table tells into what. */
  readonly unknown: readonly SolidEntry[];
}

/** Where what heat drives out goes: water is no gas of the books, nor is what is liquid when it is cold. */
const gone = (formula: Formula): "gas" | "dissolved" =>
  isGas(formula, false) && !isWater(formula) ? "gas" : "dissolved";

const ratio = ({ coefficient }: ThermalAmount) => {
  const [n, d = "1"] = coefficient.split("/");
  return inLowestTerms(BigInt(n!), BigInt(d));
};

/** The steps that a temperature completes, as one reaction of whole numbers. */
function byTheTable(matter: Matter, steps: readonly ThermalStep[]): readonly Term[] {
  const amounts = [
    ...steps.flatMap(({ takes }) => takes.map((one) => ({ one, whereto: "air" as const, sign: -1n }))),
    ...steps.flatMap(({ leaves }) =>
      leaves.map((one) => ({ one, whereto: gone(parseFormula(one.formula)), sign: 1n })),
    ),
    ...steps.at(-1)!.remains.map((one) => ({ one, whereto: "left by heat" as const, sign: 1n })),
  ];
  const [own, ...counts] = wholeNumbers([inLowestTerms(1n, 1n), ...amounts.map(({ one }) => ratio(one))]);
  return [
    { matter, count: -own!, whereto: "dissolved" },
    ...amounts.map(
      ({ one, whereto, sign }, i): Term => ({
        matter: matterOf(parseFormula(one.formula)),
        count: sign * counts[i]!,
        whereto,
      }),
    ),
  ];
}

const OXIDE_OF = ["H2O", "CO2"] as const;

/** A carbonate or hydroxide without steps of its own: the oxide of its metal, where steam and carbon dioxide alone leave it. */
function byIgnition({ formula }: Matter): readonly Term[] | undefined {
  const residue = residueOf(formula, undefined)?.residue;
  if (residue === undefined || residue.hasSameComposition(formula)) return undefined;
  const leaving = OXIDE_OF.filter((gas) => formula.symbols.includes(gas === "H2O" ? "H" : "C"));
  const balanced = tryBalance(`${formula} -> ${[residue, ...leaving].join(" + ")}`);
  if (!balanced.ok) return undefined;
  return termsOf(balanced.value, (one) => (one.hasSameComposition(residue) ? "left by heat" : gone(one)));
}

/** The silicate that silica makes of an alkali carbonate in the fire; undefined for any other. */
export function glassOf(formula: Formula): string | undefined {
  const { key } = matterOf(formula).core;
  return Object.entries(GLASS.silicates).find(([carbonate]) => matterOf(parseFormula(carbonate)).key === key)?.[1];
}

/** An alkali carbonate beside silica that nothing else takes: as far as the silica goes, for each of them in turn. */
function intoGlass(charge: Pot, at: Quantity<"temperature"> | undefined): readonly Reaction[] {
  if (at === undefined || at.compare(exact(GLASS.from)) < 0) return [];
  const there = charge.books.solids.filter(({ origin, amount }) => origin === "put in" && amount.isPositive());
  const of = (formula: string) => there.find(({ matter }) => matter.key === matterOf(parseFormula(formula)).key);
  const silica = of(GLASS.silica);
  let left = silica?.amount ?? exact("0 mol");
  return Object.entries(GLASS.silicates).flatMap(([carbonate, silicate]): readonly Reaction[] => {
    const own = of(carbonate);
    if (silica === undefined || own === undefined || !left.isPositive()) return [];
    const extent = own.amount.compare(left) < 0 ? own.amount : left;
    left = left.minus(extent);
    const term = (formula: string, count: bigint, whereto: Term["whereto"]): Term => ({
      matter: matterOf(parseFormula(formula)),
      count,
      whereto,
    });
    const terms = [
      term(carbonate, -1n, "dissolved"),
      term(GLASS.silica, -1n, "dissolved"),
      term(silicate, 1n, "left by heat"),
      term("CO2", 1n, "gas"),
    ];
    return [{ terms, extent }];
  });
}

/** Has it anything that heat drives out of solids: water, carbonate, nitrate, ammonium? */
const mayDecompose = (formula: Formula): boolean => formula.symbols.some((symbol) => ["H", "C", "N"].includes(symbol));

/** The next reaction of a solid at this temperature, and how hot it begins; undefined where it stays as it is or nothing is known. */
function nextOf(
  matter: Matter,
  at: Quantity<"temperature">,
  after: Quantity<"temperature"> | undefined,
): { readonly terms: readonly Term[]; readonly from: Quantity<"temperature"> } | undefined {
  const steps = thermalStepsOf(matter.formula);
  const reached = steps.filter(
    ({ from, to = from }) => to.compare(at) <= 0 && (after === undefined || from.compare(after) > 0),
  );
  if (reached.length > 0) return { terms: byTheTable(matter, reached), from: reached.at(-1)!.from };
  if (steps.length > 0 || after !== undefined) return undefined;
  const terms = byIgnition(matter);
  return terms === undefined ? undefined : { terms, from: at };
}

/**
 * What a fire makes of the solids that stand beside the product.
 *
 * @param charge - after the reaction of the plan
 * @param product - its matter, which the temperature is chosen for
 */
export function firedBeside(charge: Pot, product: Matter, at: Quantity<"temperature"> | undefined): FiredBeside {
  const reactions: Reaction[] = [...intoGlass(charge, at)];
  const unknown: SolidEntry[] = [];
  let pot = reacted(charge, reactions).pot;
  const open = pot.books.solids
    .filter(({ matter, origin, amount }) => origin === "put in" && matter.key !== product.key && amount.isPositive())
    .map((solid) => ({ solid, after: undefined as Quantity<"temperature"> | undefined }));
  for (let one = open.shift(); one !== undefined; one = open.shift()) {
    const { solid, after } = one;
    const next = at === undefined ? undefined : nextOf(solid.matter, at, after);
    if (next === undefined) {
      const isKnown = after !== undefined || (at !== undefined && thermalStepsOf(solid.matter.formula).length > 0);
      if (!isKnown && mayDecompose(solid.matter.formula)) unknown.push(solid);
      continue;
    }
    const own = -next.terms.find(({ matter }) => matter.key === solid.matter.key)!.count;
    const extent = own === 1n ? solid.amount : solid.amount.dividedBy(exact(String(own)));
    const reaction = { terms: next.terms, extent };
    reactions.push(reaction);
    pot = reacted(pot, [reaction]).pot;
    for (const { matter, count, whereto } of next.terms)
      if (whereto === "left by heat")
        open.push({
          solid: { matter, amount: extent.times(exact(String(count))), origin: "left by heat" },
          after: next.from,
        });
  }
  return { reactions, unknown };
}
