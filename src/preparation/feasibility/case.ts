// A reaction as the judges see it: what is put in and what should come, in moles for one mole of the product, and the water.

import { type RedoxAnalysis, redoxAnalysis } from "../../equation";
import { attempt } from "../../foundation/error";
import { remembering } from "../../foundation/memo";
import { type Constitution, constitutionOf } from "../../ion";
import { keyOfPoured, type Poured, pouredOf, waterOf } from "../contents/equilibrium";
import type { Pot as Vessel } from "../contents/pot";
import type { Account } from "../reaction/account";
import { fateOf } from "../reaction/fate";
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
  /** The pot once the equation is done, for each kilogram of its water; undefined for dry work. */
  readonly pot: Poured | undefined;
  /** kg of water in it for one mole of product; one where nobody knows. */
  readonly water: number;
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

/** The case of a batch, and of the pot it comes to. */
export function caseOf(setting: Setting, account: Account, pot: Vessel | undefined): Case {
  const { reactants, products, product, materials, temperature } = setting;
  const extent = account.extent.toNumber("mol");
  const theory = extent * Number(product.coefficient);
  const falls = fateOf(product.formula, temperature).precipitated === true;
  const kg = (pot === undefined ? undefined : waterOf(pot)) ?? theory;
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
    pot: pot === undefined ? undefined : pouredOf(pot, kg),
    water: Number((kg / theory).toPrecision(5)),
    // a liquor that is still hot from dissolving is judged as it is once it has cooled
    celsius: (falls ? (pot?.books.temperature ?? temperature) : temperature).toNumber("°C"),
    redox: redoxOf(setting),
  };
}

/** What two cases that get one verdict have in common. */
export const keyOfCase = ({ setting, put, pot, water, celsius }: Case): string =>
  `${setting.equation} | ${setting.product.formula} | ${setting.wet} | ${put.map(({ moles }) => moles).join(" ")} | ${pot === undefined ? "" : keyOfPoured(pot)} | ${water} | ${celsius} | ${setting.materials.map(({ form, isSolution }) => `${form}${isSolution ? "*" : ""}`).join(" ")}`;
