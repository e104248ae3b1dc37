// A flux that stands in a fired powder: hot water takes it out of what it leaves alone. The figures stay those of the powder as it is fired.
import { ALKALI_METALS } from "../../element/internal";
import { type Formula, parseFormula } from "../../formula";
import { list } from "../../foundation/wording";
import { isOneOf } from "../../ion/internal";
import { massOf, type SolidEntry } from "../contents/entry";
import { matterOf } from "../contents/matter";
import { WET_GRINDING } from "../data/firing";
import { FLUX_OUT } from "../data/kiln";
import { exact } from "../planning/exact";
import { fateOf } from "../reaction/fate";
import type { Bench } from "./bench";
import { glassOf } from "./fired-beside";
import { standsWater } from "./grinding";

/** Does hot water leave a fired powder as it is? */
const standsHotWater = (formula: Formula): boolean =>
  standsWater(formula) &&
  FLUX_OUT.metals.some((metal) => formula.symbols.includes(metal)) &&
  !formula.symbols.some((symbol) => ALKALI_METALS.has(symbol));

/** How what the flux leaves is washed out of the product, in words; empty where there is none, or water would take the product. */
export function fluxOut({ pot, hand, frame: { setting, theory } }: Bench): string {
  const { product, asides, temperature } = setting;
  if (!standsHotWater(product.formula)) return "";
  const put = new Set(
    asides.flatMap(({ form }) => {
      const glass = glassOf(form);
      return [form, ...(glass === undefined ? [] : [parseFormula(glass)])].map((one) => matterOf(one).key);
    }),
  );
  const isTaken = ({ matter: { formula, key } }: SolidEntry): boolean =>
    isOneOf(formula, ...FLUX_OUT.taken) || (put.has(key) && fateOf(formula, temperature).precipitated === false);
  const left = pot.books.solids.filter(isTaken);
  const shown = left.filter((one) => massOf(one).compare(setting.steps.mass) >= 0);
  if (shown.length === 0) return "";
  const what = list(shown.map((one) => `${hand.grams(massOf(one))} of ${one.matter.name}`));
  const water = hand.water(theory.times(exact(FLUX_OUT.water)).to("g"));
  return `To rid it of the ${what}, as far as water takes that: once it is weighed, crush it closed, stir it with ${water}, hot, let it settle and pour off, again ${FLUX_OUT.end}; filter it, dry it at ${WET_GRINDING.driedAt} and weigh it again (all figures here are for the powder as it is fired); what was poured off goes to the waste of its metals. `;
}
