// What the solubility rules say of a salt, asked by its ions.
import { ALKALI, ALKALI_MISFITS, ALKALI_RULE, SOLUBILITY_RULES, type SolubilityClass } from "./data/rules";

/** What a rule says of a salt. */
export interface RuleVerdict {
  readonly class: SolubilityClass;
  /** The rule in words. */
  readonly rule: string;
}

const WORST_FIRST: readonly SolubilityClass[] = ["insoluble", "slightly soluble", "soluble"];

function verdictOn(cation: string, anion: string): RuleVerdict | undefined {
  if (ALKALI.includes(cation)) {
    const misfit = WORST_FIRST.find(
      (kind) => kind !== "soluble" && ALKALI_MISFITS[kind].includes(`${cation} ${anion}`),
    );
    return { class: misfit ?? "soluble", rule: ALKALI_RULE };
  }
  const row = SOLUBILITY_RULES.find(({ anions }) => anions.includes(anion));
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
  const verdicts = anions.flatMap((anion) => cations.map((cation) => verdictOn(cation, anion)));
  const worst = WORST_FIRST.map((kind) => verdicts.find((verdict) => verdict?.class === kind)).find(
    (verdict) => verdict !== undefined,
  );
  return worst !== undefined && worst.class !== "insoluble" && verdicts.includes(undefined) ? undefined : worst;
}
