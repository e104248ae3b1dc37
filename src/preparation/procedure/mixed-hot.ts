// Complexes that are mixed hot: cold, the plain salt of metal and ligand precipitates and hardly dissolves again.

import { parseFormula } from "../../formula";
import { constitutionOf } from "../../ion";
import { saltFormula } from "../../ion/internal";
import type { Quantity } from "../../quantity";
import { MIXED_HOT } from "../data/firing";
import { heat } from "../operation/heat";
import { exact } from "../planning/exact";
import { fateInRoom } from "../reaction/fate";
import type { Setting } from "../request/setting";
import type { Material } from "../shelf/material";
import { type Bench, POT } from "./bench";

/** The plain salt of a metal salt's cation and a ligand's anion; undefined where such a ligand is not mixed hot. */
function plainSalt(metal: Material, ligand: Material): string | undefined {
  const anion = constitutionOf(ligand.form).anions.find((one) =>
    MIXED_HOT.anions.some((formula) => formula === one.formula),
  );
  const [cation] = constitutionOf(metal.form).cations;
  return anion === undefined || cation === undefined ? undefined : saltFormula(cation.formula, anion.formula);
}

/** The salt that would precipitate cold in place of a complex, in the notation of the table; undefined where none does. */
export function inTheWay({ materials }: Setting, roles: readonly string[]): string | undefined {
  const metal = materials.find((_, i) => roles[i] === "metal salt");
  const ligand = materials.find((_, i) => roles[i] === "ligand");
  const salt = metal && ligand && plainSalt(metal, ligand);
  return salt !== undefined && fateInRoom(parseFormula(salt)).precipitated === true ? salt : undefined;
}

/** Where a salt stands in the way in the cold, it is stirred hot; what an oxidiser had to be cold for is warmed once that has gone in. */
export function stirredHot(bench: Bench): { readonly stir: string; readonly target?: Quantity<"temperature"> } {
  const { setting, roles, feeds } = bench.frame;
  if (inTheWay(setting, roles) === undefined) return { stir: "Stir" };
  const at = exact(MIXED_HOT.at) as Quantity<"temperature">;
  if (bench.pot.books.temperature.compare(at) >= 0) return { stir: `Stir, still at ${MIXED_HOT.at},` };
  const warmed = heat(bench.pot, at);
  // a solid takes its time, and hot the oxidiser comes apart before it has reacted
  const isSolid = feeds[roles.indexOf("metal salt")]?.how === "solid";
  const first = isSolid ? `Stir on ${MIXED_HOT.solidFirst}; then` : "Once the foam of the last portion has gone,";
  bench.did(POT, warmed, {
    target: at,
    say: () => `${first} warm it slowly to ${MIXED_HOT.at}, stirring; where it foams again, wait.`,
  });
  return { stir: "Stir at that warmth", target: at };
}
