// What no route makes, passes or sets free: decided by composition and ions, so that the way of writing decides nothing. The
// classes are those of the cautions; a refusal names the class and nothing else.
import { attempt } from "../foundation/error";
import { remembering } from "../foundation/memo";
import { isCationElement, readNotation, type Unit } from "../ion/internal";
import { classesOf, dangerOf, type HazardClass } from "../substance/internal";
import { type Compound, formulaFrom, keyOf, madeOf } from "./compound";
import { PRECURSORS } from "./data/precursors";
import { RouteError } from "./error";

/** Classes of hazard that nothing made here may belong to. */
const REFUSED: readonly HazardClass[] = [
  "arsenic",
  "arsenide",
  "azide",
  "bromate",
  "bromine",
  "cadmium",
  "chlorate",
  "chlorine",
  "chlorite",
  "chromium(VI)",
  "cyanide",
  "hydride",
  "hydrogen sulfide",
  "hypochlorite",
  "lead",
  "mercury",
  "nitromethane",
  "perchlorate",
  "permanganate",
  "peroxide salt",
  "persulfate",
  "phosphide",
  "selenide",
];
/** Elements of which no compound is made. */
const ELEMENTS = ["Be", "Tl", "Pb", "Hg", "Cd", "As", "Os", "U", "Th", "Pu", "Ra"];

/** What takes oxygen: with what gives it in one solid, that solid burns or explodes by itself, as nitrates of ammines do. */
const FUELS: readonly HazardClass[] = ["ammonia", "ammonium", "amine", "strong amine", "carbon", "sulfur"];
const GIVES_OXYGEN: readonly HazardClass[] = ["oxidiser", "nitrite"];

const found = /* @__PURE__ */ remembering<string | null>(3000);

/** Hydrazine and the cations that it makes with acids, as they are written. */
const HYDRAZINES: readonly string[] = ["N2H4", "N2H5", "N2H6", "N1H2N1H2", "N1H2N1H3", "H2N1N1H2"];

/** Is hydrazine in it: free, as an ion, or bound to a metal? */
function hasHydrazine(units: readonly Unit[]): boolean {
  const written = units.map(({ text, count }) => `${text}${count}`);
  const stands = written.some((_, i) =>
    HYDRAZINES.some((one) => [2, 4].some((n) => written.slice(i, i + n).join("") === one)),
  );
  return stands || units.some(({ members }) => members !== undefined && hasHydrazine(members));
}

/** A metal with nitrogen, hydrogen and oxygen of which no ions are read: the ammine of a nitrate, for all that is known. */
function isHiddenAmmine(formula: string): boolean {
  const symbols = formulaFrom(formula).symbols;
  const isHidden = ["N", "H", "O"].every((symbol) => symbols.includes(symbol)) && !symbols.includes("C");
  return isHidden && symbols.some(isCationElement) && madeOf(formula)?.kind === "molecule";
}

/** The class for which a formula is refused as something made; undefined for what may be made. */
export function refusedClass(formula: string): string | undefined {
  return (
    found(formula, () => {
      const read = attempt(() => readNotation(formulaFrom(formula)));
      if (!read.ok) return null;
      // by composition as well: a formula that does not show its groups is not answered either
      const precursor = PRECURSORS.find(
        (row) =>
          keyOf(row.formula) === keyOf(formula) || formulaFrom(row.formula).hasSameComposition(formulaFrom(formula)),
      );
      if (precursor !== undefined) return precursor.class;
      const notation = read.value;
      const danger = attempt(() => dangerOf(notation));
      if (danger.ok && danger.value !== undefined) return danger.value.code;
      const symbols = formulaFrom(formula).symbols;
      const element = ELEMENTS.find((symbol) => symbols.includes(symbol));
      if (element !== undefined) return "toxic element";
      const classes = attempt(() => classesOf(notation));
      if (!classes.ok) return null;
      const has = (one: HazardClass): boolean => classes.value.has(one);
      if (GIVES_OXYGEN.some(has) && FUELS.some(has)) return "explosive";
      // silver oxalate explodes when it is warmed or struck dry
      if (classes.value.has("silver salt") && classes.value.has("oxalate")) return "explosive";
      const one = REFUSED.find(has);
      if (one !== undefined) return one;
      const ammine = symbols.includes("Ag") && symbols.includes("N") && symbols.includes("H");
      if (ammine || isHiddenAmmine(formula)) return "explosive";
      return notation.parts.some(({ units }) => hasHydrazine(units)) ? "hydrazine" : null;
    }) ?? undefined
  );
}

/** Is it never made? */
export const isRefused = ({ forms }: Compound): boolean => forms.some((form) => refusedClass(form) !== undefined);

/** Refuses a target of a class that is never made: the class, and nothing else. */
export function refuseClass(name: string | undefined): void {
  if (name === undefined) return;
  throw new RouteError("route.refused-target", "no route is given to a substance of this class", {
    details: { class: name },
  });
}

/** Refuses a target that is never made. */
export const refuseTarget = (formula: string): void => refuseClass(refusedClass(formula));
