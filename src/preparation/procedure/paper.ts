// What indicator paper shows of a liquor, or of a drop of it in water where that is too strong for any model.
import type { Quantity } from "../../quantity";
import { phOf } from "../contents/equilibrium";
import type { Pot } from "../contents/pot";
import { exact } from "../planning/exact";

/** A drop of a liquor that is too strong for any model is tested in so many times its water. */
const DROP = 10;

/** What paper shows. */
interface OnPaper {
  readonly pH: Quantity;
  /** As near as paper shows it. */
  readonly shown: string;
  /** Of a drop of it in nine drops of water. */
  readonly thinned: boolean;
}

/** pH of a liquor, or of a drop of it in water; undefined where neither is known. */
export function onPaper(pot: Pot): OnPaper | undefined {
  const own = phOf(pot);
  const pH = own ?? phOf(pot.plusWater(pot.books.water.times(exact(String(DROP - 1)))));
  if (pH === undefined) return undefined;
  return { pH, shown: pH.format({ decimals: 0, uncertainty: "none" }), thinned: own === undefined };
}
