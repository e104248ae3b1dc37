// What an ignition test of a product gives off.

import type { Formula } from "../../formula";
import { remembering } from "../../foundation/memo";
import { madeOf } from "../../substance/internal";
import { type FumeGround, type FumeRow, IGNITION_FUMES } from "../data/work-cautions";
import { holdsCyanide } from "../identity/by-ignition";
import { residueOf } from "../identity/ignition";

const holds = (formula: Formula, symbol: string): boolean => formula.count(symbol).n !== 0n;

/** Whether a solid has what the fume comes from. */
const GIVES_OFF: Readonly<Record<FumeGround, (formula: Formula) => boolean>> = {
  sulfur: (formula) => holds(formula, "S"),
  "nitrogen oxides": (formula) => ["nitrate", "nitrite"].some((name) => madeOf(formula).groups.has(name)),
  ammonia: (formula) => madeOf(formula).ammonium || madeOf(formula).ammonia,
  organic: (formula) => madeOf(formula).organic,
  cyanide: holdsCyanide,
  chlorine: (formula) => holds(formula, "Cl"),
  carbonate: (formula) => madeOf(formula).groups.has("carbonate"),
};

const remembered = /* @__PURE__ */ remembering<readonly FumeRow[] | undefined>(200);

/** What red heat drives out of a product; undefined where it leaves nothing by which the product is recognised. */
export const fumesOf = (formula: Formula): readonly FumeRow[] | undefined =>
  remembered(formula.toString(), () => {
    const left = residueOf(formula, undefined)?.residue;
    if (left === undefined || left.hasSameComposition(formula)) return undefined;
    return IGNITION_FUMES.filter(
      ({ of, element }) => GIVES_OFF[of](formula) && (element === undefined || left.count(element).n === 0n),
    );
  });
