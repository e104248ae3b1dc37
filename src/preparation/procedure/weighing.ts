// The weighing table: every material weighed or measured, with its other unit beside it.
import { keptBeside } from "../../foundation/memo";
import type { Quantity } from "../../quantity";
import { weigh } from "../operation/weigh";
import { isLedIn, staysInWater } from "../reaction/fluids";
import { givingAmong } from "../reaction/neutralising";
import type { Setting } from "../request/setting";
import { weighAside } from "./asides";
import type { Bench } from "./bench";
import { gasInRoom } from "./trap";
import { litres } from "./words";

/** Digits after the point of what an instrument shows. */
const decimalsOf = /* @__PURE__ */ keptBeside((step: Quantity) => step.value.decimalPlaces());

/** A portion as the instrument shows it. */
export function asRead({ steps }: Setting, portion: Quantity): string {
  const step = portion.dimension === "mass" ? steps.mass : steps.volume;
  return portion.format({ unit: step.unit, decimals: decimalsOf(step), uncertainty: "none" });
}

/** Weigh or measure every material. */
export function weighAll(bench: Bench): void {
  const { setting, portions, account } = bench.frame;
  const gives = givingAmong(setting.materials) !== undefined;
  setting.materials.forEach((material, i) => {
    const { name } = material.shelf;
    const portion = portions[i]!;
    const other =
      portion.dimension === "volume"
        ? material.massOf(portion)
        : material.isSolution
          ? material.volumeOf(portion)
          : undefined;
    const beside = (): string => {
      if (other === undefined) return "";
      const like = material.likeWater() ? ", taken to be about as heavy as water" : "";
      return ` (${other.dimension === "mass" ? bench.hand.grams(other) : bench.hand.litres(other)}${like})`;
    };
    const verb = portion.dimension === "volume" ? "Measure" : "Weigh";
    // The account leaves out the base that acid in a shop material uses, or the acid; on the balance it is there.
    const whole = gives ? material.amountIn(portion) : account.supplied[i]!.amount;
    bench.did(bench.pack(name), weigh(material, portion, whole, bench.in(bench.pack(name))), {
      say: () =>
        isLedIn(material)
          ? `Have the source of the ${name} ready, for ${litres(gasInRoom(bench, whole))} (${asRead(setting, portion)}) and more: a cylinder with pressure reducer and needle valve, or a generator, with a tube${staysInWater(material.form) ? "" : ", a wash bottle with a little water"} and an empty bottle between, so that nothing is sucked back.`
          : `${verb} ${asRead(setting, portion)}${beside()} of the ${name}.`,
      materials: [name],
      amounts: other === undefined ? [portion] : [portion, other],
      blank: `weighed.${name}`,
      care: "weighing",
    });
  });
  for (const material of setting.asides) weighAside(bench, material, (portion) => asRead(setting, portion));
}
