// What a salt is kept from on the bench: air, light, water that takes it apart.
import { type Formula, parseFormula } from "../../formula";
import { remembering } from "../../foundation/memo";
import { constitutionOf } from "../../ion";
import type { Quantity } from "../../quantity";
import { madeOf } from "../../substance/internal";
import { DROPS, IN_THE_DARK, KEPT_SOUR, PROTECTION, type ProtectionRow, SOURED } from "../data/protection";
import { SLOW_METALS } from "../data/waste";
import { exact, planned } from "../planning/exact";
import { isAcid, isAmmonia } from "../reaction/acids";
import { withAlcohol } from "../reaction/with-alcohol";
import type { Material, PutOn } from "../shelf/material";

const remembered = /* @__PURE__ */ remembering<Partial<ProtectionRow> | undefined>(200);

const isElement = ({ elements = [] }: ProtectionRow, { symbols }: Formula): boolean =>
  symbols.length === 1 && elements.includes(symbols[0]!);

/** A complex that light takes apart, from the liquor on. */
const OF_SHY: Readonly<Partial<Record<ProtectionRow["when"], Pick<ProtectionRow, "text" | "dark">>>> = {
  standing: { text: "in the dark", dark: true },
  crystallising: { text: "keep light from it: light decomposes it", dark: true },
  drying: { text: "keep it in the dark", dark: true },
};

/** Does an ammine come apart so fast that it loses its ammonia to open air? */
export const losesAmmonia = (formula: Formula): boolean =>
  madeOf(formula).ammonia && !SLOW_METALS.some(({ metals }) => metals.some((one) => formula.count(one).n !== 0n));

const protecting = (formula: Formula, when: ProtectionRow["when"]) =>
  remembered(`${when} ${formula}`, () => {
    const { cations, groups, complex } = constitutionOf(formula);
    if (complex !== undefined) {
      const isShy = IN_THE_DARK.some((row) => formula.count(row.metal).n !== 0n && groups.includes(row.ligand));
      return isShy ? OF_SHY[when] : undefined;
    }
    return PROTECTION.find(
      (row) =>
        row.when === when &&
        (cations.some((one) => row.cations.includes(one.formula)) || isElement(row, formula)) &&
        (row.groups === undefined || row.groups.some((name) => groups.includes(name))),
    );
  });

/** The acid of a salt's own anion; undefined where none is listed. */
const ownAcid = (formula: Formula): (typeof DROPS)[number] | undefined => {
  const { anions } = constitutionOf(formula);
  return DROPS.find(({ anion }) => anions.some((one) => one.formula === anion));
};

/** The acid of which a few drops keep a salt from water; undefined where none is needed. */
export const dropsFor = (formula: Formula, when: ProtectionRow["when"]): string | undefined =>
  protecting(formula, when)?.drops === true ? (ownAcid(formula)?.acid ?? "dilute acid of its own anion") : undefined;

/** What makes a liquor of a salt acid again, by drops; undefined where no acid of its anion is listed. */
export const dropOfOwnAcid = (formula: Formula): (typeof DROPS)[number]["acid"] | undefined => ownAcid(formula)?.acid;

/** What keeps a salt from turning basic in a liquor whose acid is used up, and the acid for it; undefined where nothing has to. */
export function souredWith(
  formula: Formula,
): { readonly text: string; readonly acid: (typeof DROPS)[number]["acid"] } | undefined {
  const { cations, complex } = constitutionOf(formula);
  const acid = dropOfOwnAcid(formula);
  const isHeld = protecting(formula, "crystallising") !== undefined || complex !== undefined;
  if (acid === undefined || isHeld || !cations.some((one) => SOURED.cations.some((row) => row === one.formula)))
    return undefined;
  return { text: SOURED.text.replace("{acid}", acid), acid };
}

/** Is it a simple or double salt of these two? */
const isOfBoth = (
  formula: Formula,
  { cation, anion }: { readonly cation: string; readonly anion: string },
): boolean => {
  const { cations, anions } = constitutionOf(formula);
  return cations.some((one) => one.formula === cation) && anions.some((one) => one.formula === anion);
};

/** How a salt is dissolved for crystals that come only from sour liquor; undefined where it need not be so. */
export const keptSour = (formula: Formula, product: Formula): (typeof KEPT_SOUR)[number] | undefined =>
  KEPT_SOUR.find((row) => isOfBoth(formula, row) && isOfBoth(product, row));

/** The acid that a salt is dissolved in, and how many times what the salt weighs; undefined where none is. */
export function acidPutOn(formula: Formula, product: Formula): PutOn | undefined {
  const times = keptSour(formula, product)?.times ?? protecting(formula, "dissolving")?.times;
  const row = times === undefined ? undefined : ownAcid(formula);
  return row && { acid: parseFormula(row.formula), called: row.acid, times: exact(times!) };
}

/** What to do as it is dissolved in a vessel that acid comes into later; undefined where nothing else is. */
export const protectionBeforeAcid = (formula: Formula): string | undefined =>
  protecting(formula, "dissolving")?.beforeAcid;

/** What to do besides where its solution has such a mass fraction of it; undefined where nothing is. */
export function careWhereStrong(formula: Formula, massFraction: Quantity): string | undefined {
  const strong = protecting(formula, "dissolving")?.strong;
  return strong !== undefined && massFraction.compare(exact(strong.from)) >= 0 ? strong.text : undefined;
}

/** What to do as a salt is dissolved, or as it is dried and kept; undefined where nothing is. */
export const protectionOf = (formula: Formula, when: ProtectionRow["when"]): string | undefined =>
  protecting(formula, when)?.text?.replace("{acid}", dropsFor(formula, when) ?? "");

/** Is it to be washed with alcohol before it is dried? Not where that dissolves it. */
export const isWashedWithAlcohol = (formula: Formula): boolean =>
  protecting(formula, "drying")?.alcohol === true && withAlcohol(formula) !== "dissolves it";

/** The acid of which a little stays in its liquor until the crystals are off; undefined where none has to. */
export const acidKeptWith = (formula: Formula): string | undefined => protecting(formula, "crystallising")?.acid;

/** Is its liquor kept from the air as it is boiled down? */
export const isKeptCovered = (formula: Formula): boolean => protecting(formula, "crystallising")?.covered === true;

/** Does boiling drive the acid out that its liquor needs? */
export const isNotBoiled = (formula: Formula): boolean => protecting(formula, "crystallising")?.notBoiled === true;

/** Does water turn its crystals basic? */
export const isTurnedByWater = (formula: Formula): boolean => protecting(formula, "crystallising")?.noWater === true;

/** The acid of the first wash of a metal, where plain water makes a basic salt of what its liquor keeps; undefined where none does. */
export function acidOfFirstWash(
  product: Formula,
  salts: readonly Formula[],
): { readonly formula: string; readonly name: string; readonly salt: Formula } | undefined {
  const salt = product.symbols.length === 1 ? salts.find(isTurnedByWater) : undefined;
  const row = salt && ownAcid(salt);
  return row && { formula: row.formula, name: row.acid.replace("dilute ", ""), salt: salt! };
}

/** Does more water cloud its solution instead of clearing it? */
export const isClearedByAcid = (formula: Formula): boolean => protecting(formula, "dissolving")?.noWater === true;

/** How thin a feed of no known solubility is made; undefined for the usual. */
export const thinnedTo = (formula: Formula): string | undefined => protecting(formula, "dissolving")?.thin;

/** Is what precipitates it poured into it? */
export const isPouredInto = (formula: Formula): boolean => protecting(formula, "dissolving")?.first === true;

/** Does what tap water contains cloud its solution? */
export const isInDistilledWater = (formula: Formula): boolean => protecting(formula, "dissolving")?.distilled === true;

/** Does light change it? */
export const isKeptDark = (formula: Formula): boolean => protecting(formula, "drying")?.dark === true;

/** Does air change it as long as it is damp? */
export const isAirless = (formula: Formula): boolean => protecting(formula, "drying")?.airless === true;

/** The colour it has once air has changed it; undefined where none is known. */
export const colourInAir = (formula: Formula): string | undefined => protecting(formula, "drying")?.oxidised;

/** Is it wet with hydrochloric acid as it dries: crystals of a liquor that was kept strongly acid, and not rinsed? */
export const driesWetWithAcid = (formula: Formula): boolean =>
  isTurnedByWater(formula) && ownAcid(formula)?.formula === "HCl";

/** What to mind as a strong solution is poured into water, in brackets. */
export function careOfDiluting(material: Material): string {
  if (isAcid(material.form)) return " (acid into water, never water into acid)";
  const isStrong = (material.massFraction()?.compare(planned("dilute")) ?? 1) > 0;
  return isAmmonia(material.form) && isStrong ? " (goggles on, under a hood or in moving air: its vapour chokes)" : "";
}
