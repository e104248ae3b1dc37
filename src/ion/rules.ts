// What the solubility rules say of a salt, asked by its ions.
import { ALKALI_MISFITS, ION_GROUPS, SOLUBILITY_RULES, type SolubilityClass } from "./data/rules";

/** Cations whose salts dissolve. */
export const ALKALI: readonly string[] = ION_GROUPS.alkali;
/** Anions whose salts react with water. */
export const REACTS_WITH_WATER: readonly string[] = ION_GROUPS.reactWithWater;

/** What a rule says of a salt. */
interface RuleVerdict {
  readonly class: SolubilityClass;
  /** The rule in words. */
  readonly rule: string;
}

const WORST_FIRST: readonly SolubilityClass[] = ["insoluble", "slightly soluble", "soluble"];

function verdictOn(cation: string, anion: string): RuleVerdict | undefined {
  const row = SOLUBILITY_RULES().find(({ anions }) => anions.includes(anion));
  if (row === undefined && REACTS_WITH_WATER.includes(anion)) return undefined;
  if (ALKALI.includes(cation)) {
    const misfit = WORST_FIRST.find(
      (kind) => kind !== "soluble" && ALKALI_MISFITS[kind].includes(`${cation} ${anion}`),
    );
    return { class: misfit ?? "soluble", rule: ION_GROUPS.alkaliRule };
  }
  if (row === undefined) return undefined;
  const kind = WORST_FIRST.find((one) => {
    const list = row.except?.[one];
    return list?.includes(cation) === true || list?.includes(`${cation} ${anion}`) === true;
  });
  return { class: kind ?? row.class, rule: row.rule };
}

/**
 * The rule for a salt of these ions; undefined where no rule speaks of one of its pairs and none calls it insoluble. A double
 * salt or a basic one is as soluble as its least soluble pair.
 */
export function ruleFor(cations: readonly string[], anions: readonly string[]): RuleVerdict | undefined {
  // in one order, whatever the order of writing: the words are those of the first
  const verdicts = [...anions].sort().flatMap((anion) => [...cations].sort().map((cation) => verdictOn(cation, anion)));
  const worst = WORST_FIRST.map((kind) => verdicts.find((verdict) => verdict?.class === kind)).find(
    (verdict) => verdict !== undefined,
  );
  return worst !== undefined && worst.class !== "insoluble" && verdicts.includes(undefined) ? undefined : worst;
}
