// A reaction as the judges see it: what is put in and what should come, in moles for one mole of the product, and the water.

import { type RedoxAnalysis, redoxAnalysis } from "../../equation";
import { attempt } from "../../foundation/error";
import { remembering } from "../../foundation/memo";
import { type Constitution, constitutionOf } from "../../ion";
import type { Account } from "../reaction/account";
import { isGas } from "../reaction/fluids";
import type { Species } from "../reaction/species";
import type { Setting } from "../request/setting";

/** A reactant with all there is of it. */
export interface Put {
  readonly species: Species;
  readonly made: Constitution;
  /** mol for one mole of product. */
  readonly moles: number;
  /** Part that the limiting material leaves unused. */
  readonly left: number;
}

/** A product of the equation. */
interface Made {
  readonly species: Species;
  readonly made: Constitution;
  readonly moles: number;
  readonly gas: boolean;
}

/** One reaction, per mole of its product. */
export interface Case {
  readonly setting: Setting;
  readonly put: readonly Put[];
  readonly made: readonly Made[];
  readonly product: Made;
  /** kg of water that the plan would use; undefined where nobody knows. */
  readonly water: number | undefined;
  readonly celsius: number;
  /** Changes of oxidation state, where the equation has any. */
  readonly redox: RedoxAnalysis | undefined;
}

const analysed = /* @__PURE__ */ remembering<RedoxAnalysis | undefined>(200);

/** What an equation oxidises and reduces; undefined where it does neither or nobody can say. */
function redoxOf({ equation }: Setting): RedoxAnalysis | undefined {
  return analysed(String(equation), () => {
    const found = attempt(() => redoxAnalysis(String(equation)));
    return found.ok && found.value.isRedox ? found.value : undefined;
  });
}

/** Four figures are plenty for a verdict, and plans of any size then share one. */
const rounded = (x: number): number => (x === 0 ? 0 : Number(x.toPrecision(4)));

/** The case of a batch. */
export function caseOf(setting: Setting, account: Account, water: number | undefined): Case {
  const { reactants, products, product, materials, temperature } = setting;
  const extent = account.extent.toNumber("mol");
  const theory = extent * Number(product.coefficient);
  const put = reactants.map((species): Put => {
    const own = materials.flatMap((m, i) => (m.species === species ? [account.supplied[i]!] : []));
    const used = (extent * Number(species.coefficient)) / theory;
    const all = own.reduce((n, { amount }) => n + amount.toNumber("mol"), 0) / theory;
    const moles = own.length === 0 ? used : Math.max(all, used);
    return {
      species,
      made: constitutionOf(species.formula),
      moles: rounded(moles),
      // what rounding to the balance leaves over is no excess
      left: moles - used < 0.002 * used ? 0 : rounded(moles - used),
    };
  });
  const made = products.map(
    (species): Made => ({
      species,
      made: constitutionOf(species.formula),
      moles: Number(species.coefficient) / Number(product.coefficient),
      gas: isGas(species.formula, setting.wet),
    }),
  );
  return {
    setting,
    put,
    made,
    product: made[products.indexOf(product)]!,
    water: water === undefined || !(water > 0) ? undefined : Number((water / theory).toPrecision(3)),
    celsius: temperature.toNumber("°C"),
    redox: redoxOf(setting),
  };
}

/** What two cases that get one verdict have in common. */
export const keyOfCase = ({ setting, put, water, celsius }: Case): string =>
  `${setting.equation} | ${setting.product.formula} | ${setting.wet} | ${put.map(({ moles }) => moles).join(" ")} | ${water} | ${celsius} | ${setting.materials.map(({ form, isSolution }) => `${form}${isSolution ? "*" : ""}`).join(" ")}`;
