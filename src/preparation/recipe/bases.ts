// Wrong bases that recipes usually count a percentage on: which of them gives the figure that is printed.
import { type Formula, molarMass } from "../../formula";
import { anhydrousOf, knownHydrates } from "../../hydrate";
import type { Quantity } from "../../quantity";
import { formulasLike, keyElement } from "../reaction/candidates";
import { nameOfFormula } from "../reaction/species";
import type { RecipeFigures } from "./figures";
import type { RecipeFinding } from "./types";
import { near, ratioOf, shown } from "./words";

/** What a mass found may have been divided by. */
interface Basis {
  readonly what: string;
  readonly mass: Quantity;
}

/** Half of the last digit, or so: a printed percentage that was rounded once more than it should be. */
const LEAST_TOLERANCE = 0.002;

/** How near a figure must be to one that is printed with its digits to be that figure. */
const toleranceOf = (printed: Quantity): number =>
  Math.max(LEAST_TOLERANCE, 0.5 / 10 ** printed.value.decimalPlaces() / Math.abs(printed.toNumber()));

/** Forms the product may have been counted as: without water, every known hydrate, what else the same metal precipitates as. */
function productForms({ read }: RecipeFigures): Formula[] {
  const { formula } = read.product;
  const all = [anhydrousOf(formula), ...knownHydrates(formula).map((known) => known.formula), ...formulasLike(formula)];
  const others = all.filter((form) => !form.hasSameComposition(formula));
  return others.filter((form, i) => others.findIndex((one) => one.hasSameComposition(form)) === i);
}

/** The usual wrong bases of a theory: another form of the product, another material than the one that runs out, plain mass. */
function wrongBases(figures: RecipeFigures, withMasses: boolean): Basis[] {
  const { read, account, theoreticalYield } = figures;
  if (account === undefined || theoreticalYield === undefined) return [];
  const M = molarMass(read.product.formula);
  const key = keyElement(read.product.formula);
  /** For each atom of what the product is counted by, which every form contains. */
  const massFor = (form: Formula): Quantity =>
    key === undefined ? molarMass(form) : molarMass(form).dividedBy(form.count(key));
  const asForms = productForms(figures).map((form) => ({
    what: `the theory for ${nameOfFormula(form)}`,
    mass: theoreticalYield.times(massFor(form)).dividedBy(massFor(read.product.formula)).to("g"),
  }));
  const byOthers = account.supplied
    .filter(({ limiting }) => !limiting)
    .map(({ material, timesStoichiometric }) => ({
      what: `the theory from ${material}, which does not run out`,
      mass: theoreticalYield.times(timesStoichiometric).to("g"),
    }));
  // One mole to one mole, whatever the equation says.
  const { formed } = account;
  const made = formed.find(({ formula }) => formula === read.product.name)?.amount;
  const first = account.supplied.find(({ limiting }) => limiting);
  const oneToOne =
    first === undefined || made === undefined || near(ratioOf(first.amount.dividedBy(made)), 1, 1e-6)
      ? []
      : [
          {
            what: `a theory of one mole of product for each mole of ${first.material}`,
            mass: first.amount.times(M).to("g"),
          },
        ];
  const byMass = withMasses
    ? read.materials.flatMap(({ name, portion }) =>
        portion?.dimension === "mass"
          ? [{ what: `the mass of ${name}, which is not a yield`, mass: portion.to("g") }]
          : [],
      )
    : [];
  return [...asForms, ...byOthers, ...oneToOne, ...byMass];
}

/** What a printed percentage of a mass found was counted on, where a usual wrong basis gives just this figure. */
export function basisOfPercent(figures: RecipeFigures, found: Quantity, printed: Quantity): RecipeFinding[] {
  const within = toleranceOf(printed.to("%"));
  return wrongBases(figures, true).flatMap(({ what, mass }): RecipeFinding[] => {
    const percent = found.dividedBy(mass).to("%");
    if (!near(ratioOf(percent), ratioOf(printed), within)) return [];
    return [
      {
        code: "recipe.wrong-basis",
        text: `the printed ${shown(printed.to("%"), 4)} is ${shown(found, 4)} over ${shown(mass, 4)}, ${what}`,
        material: undefined,
        figure: percent,
      },
    ];
  });
}

/** What a printed theory is, where a usual wrong basis gives just this figure. */
export function basisOfTheory(figures: RecipeFigures, printed: Quantity): RecipeFinding[] {
  const within = toleranceOf(printed);
  return wrongBases(figures, false).flatMap(({ what, mass }): RecipeFinding[] =>
    near(ratioOf(mass.dividedBy(printed)), 1, within)
      ? [{ code: "recipe.wrong-basis", text: `the printed ${printed} is ${what}`, material: undefined, figure: mass }]
      : [],
  );
}
