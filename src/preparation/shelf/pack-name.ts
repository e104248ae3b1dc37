// A name and a form that do not go together: somebody took one pack for another, or forgot the water. Only a warning, because
// people call their jars what they like.

import { type Formula, parseFormula } from "../../formula";
import { splitWater } from "../../formula/internal";
import { attempt } from "../../foundation/error";
import { remembering } from "../../foundation/memo";
import { list } from "../../foundation/wording";
import { formulasMeant, formulasSoldAs } from "../../substance/internal";
import { nameOfFormula, sameCore } from "../reaction/species";

/** What a name stands for, and what is sold under it. */
interface Meant {
  readonly formulas: readonly Formula[];
  readonly sold: readonly Formula[];
}

const remembered = /* @__PURE__ */ remembering<Meant>(500);

function meantBy(name: string): Meant {
  return remembered(name, () => {
    const meant = attempt(() => formulasMeant(name));
    if (!meant.ok || meant.value.length === 0) return { formulas: [], sold: [] };
    const formulas = meant.value.map((formula) => parseFormula(formula)).filter(({ charge }) => charge === 0);
    return { formulas, sold: formulasSoldAs(name).map((formula) => parseFormula(formula)) };
  });
}

const saysDry = (name: string): boolean => /\banhydrous\b/i.test(name);

/** Elements that tell substances apart: hydrogen and oxygen come with water and acids. */
const telling = (formula: Formula): string[] => formula.symbols.filter((s) => s !== "H" && s !== "O");

/** A jar called zinc or steel wool may well hold a salt of it. */
const isPartOf = (one: Formula, whole: Formula): boolean => {
  const inside = telling(whole);
  return telling(one).every((s) => inside.includes(s));
};

/**
 * What speaks against a name and a form belonging together; undefined where they may. A name that leaves the water out goes
 * with every hydrate; one that states it, or says anhydrous, with that form alone.
 */
export function contradictionOf(name: string, form: Formula): string | undefined {
  const { formulas, sold } = meantBy(name);
  if (formulas.length === 0) return undefined;
  if ([...formulas, ...sold].some((one) => one.hasSameComposition(form))) return undefined;
  const alike = formulas.filter((one) => sameCore(one, form));
  const leavesOpen = alike.some((one) => splitWater(one).waters.equals(0)) && !saysDry(name);
  if (alike.length > 0 ? leavesOpen : formulas.some((one) => isPartOf(one, form))) return undefined;
  const meant = (alike.length > 0 ? alike : formulas).map(nameOfFormula);
  return `'${name}' means ${list([...new Set(meant)], "or")}, its form is given as ${nameOfFormula(form)}: look at the pack`;
}
