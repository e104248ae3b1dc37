// Taking a portion from its pack: by mass on the balance, by volume in a cylinder.
import type { Quantity } from "../../quantity";
import { matterOf } from "../contents/matter";
import type { Pot } from "../contents/pot";
import { exact } from "../planning/exact";
import { isGas } from "../reaction/fluids";
import type { Material } from "../shelf/material";
import { type Done, done } from "./operation";

/** The portion of a material as it stands in its weighing vessel. */
export function weigh(material: Material, portion: Quantity, amount: Quantity, before: Pot): Done {
  const { form, isSolution, shelf, also } = material;
  const matter = matterOf(form);
  const mass = material.massOf(portion);
  const own = amount.times(matter.molarMass).to("g");
  const others =
    mass === undefined ? [] : also.map((one) => ({ matter: matterOf(one.form), mass: mass.times(one.share) }));
  const rest = others.reduce((left, one) => left.minus(one.mass), mass?.minus(own) ?? exact("0 g"));
  const waterMissing = mass === undefined ? [`density of ${shelf.name}, for the water in it`] : [];
  // A gas, which a cylinder holds, stands dissolved where it is led; nothing else of a portion is.
  const alone = isGas(form, false) ? before.plusDissolved(matter, amount) : before.plusSolid(matter, amount, "put in");
  const pure = matter.isWater
    ? before.plusWater(own)
    : isSolution
      ? before.plusDissolved(matter, amount).plusWater(rest)
      : alone.with({ other: rest.isPositive() ? rest : exact("0 g") });
  const after = others.reduce((pot, one) => {
    if (one.matter.isWater) return pot.plusWater(one.mass);
    const n = one.mass.dividedBy(one.matter.molarMass).to("mol");
    return isSolution ? pot.plusDissolved(one.matter, n) : pot.plusSolid(one.matter, n, "put in");
  }, pure.with({ waterMissing }));
  return done("weigh", before, after, [after]);
}
