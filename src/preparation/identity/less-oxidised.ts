// Solids that are left where the oxidiser was short, and that the mass does not tell from the product.
import { parseFormula } from "../../formula";
import { isOneOf } from "../../ion/internal";
import type { Quantity } from "../../quantity";
import { matterOf } from "../contents/matter";
import { LESS_OXIDISED } from "../data/ends";
import type { Plan } from "../plan";
import { isGel } from "../procedure/isolation";
import { isAgent } from "../procedure/roles";
import { isLye } from "../reaction/acids";
import { withGelWater } from "../reaction/held-water";

/** What all of the product would weigh as each of them, dry and with the water of a gel. */
interface LessOxidised {
  readonly formulas: readonly string[];
  readonly least: Quantity;
  readonly most: Quantity;
}

/** Where a product is oxidised in lye; undefined for all others. */
export function lessOxidised({
  product,
  weighings,
  isolation,
}: Pick<Plan, "product" | "weighings" | "isolation">): LessOxidised | undefined {
  const formula = parseFormula(product.formula);
  const forms = weighings.map(({ form }) => parseFormula(form));
  const row = LESS_OXIDISED.find((one) => isOneOf(formula, one.product));
  const isOxidised = forms.some((form) => isAgent(form, "oxidiser")) && forms.some(isLye);
  if (row === undefined || isolation.how !== "precipitate" || !isOxidised) return undefined;
  const { molarMass } = matterOf(formula);
  const masses = row.others
    .map((other) =>
      product.theoreticalYield.times(matterOf(parseFormula(other)).molarMass.dividedBy(molarMass)).to("g"),
    )
    .sort((one, other) => one.compare(other));
  const most = masses.at(-1)!;
  return {
    formulas: row.others.map((other) => parseFormula(other).toUnicode()),
    least: masses[0]!,
    most: isGel(formula) ? withGelWater(most) : most,
  };
}
