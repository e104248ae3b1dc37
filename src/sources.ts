// The bibliography: the sources of all layers, merged, lowest layer first.
import { amountAccess, amountSources } from "./amount/data/sources";
import { aqueousAccess, aqueousSources } from "./aqueous/data/sources";
import { elementAccess, elementSources, periodicTableSources, yearSources } from "./element/data/sources";
import { formulaAccess, formulaSources } from "./formula/data/sources";
import { generalSources } from "./foundation/data/sources";
import { frozen } from "./foundation/frozen";
import { citation, entryIn, type Source } from "./foundation/source";
import { heatingSources, hydrateAccess, hydrateSources } from "./hydrate/data/sources";
import { ionAccess, ionSources } from "./ion/data/sources";
import { quantitySources } from "./quantity/data/sources";
import { routeSources } from "./route/data/sources";
import { solubilityAccess, solubilitySources } from "./solubility/data/sources";
import { hazardSources, substanceAccess, substanceSources } from "./substance/data/sources";
import { thermochemistryAccess, thermochemistrySources } from "./thermochemistry/data/sources";

/** Key of a source in the bibliography. */
export type SourceKey = KeyOf<(typeof tables)[number]>;

type KeyOf<Table> = Table extends Table ? keyof Table : never;

const tables = [
  generalSources,
  quantitySources,
  elementSources,
  periodicTableSources,
  yearSources,
  formulaSources,
  ionSources,
  amountSources,
  hydrateSources,
  heatingSources,
  substanceSources,
  hazardSources,
  aqueousSources,
  solubilitySources,
  thermochemistrySources,
  routeSources,
] as const;

const accesses: readonly Readonly<Record<string, string>>[] = [
  amountAccess,
  aqueousAccess,
  elementAccess,
  formulaAccess,
  hydrateAccess,
  ionAccess,
  solubilityAccess,
  substanceAccess,
  thermochemistryAccess,
];

/**
 * The full entry behind a source key.
 *
 * @category Sources
 * @example
 * source("siBrochure9").year // => 2019
 */
export function source(key: SourceKey): Source {
  const entry = entryIn(tables, key);
  const access = accesses.find((table) => Object.hasOwn(table, key))?.[key];
  return frozen(access === undefined ? entry : { ...entry, access });
}

/**
 * A source on one line, as it is printed under a working; says so where the figures were recalled and not read in it.
 *
 * @category Sources
 * @example
 * cite("siBrochure9") // => "The International System of Units (SI), BIPM, 9th ed., 2019"
 * cite("prudentPractices") // => "Prudent Practices in the Laboratory, National Research Council (from memory)"
 */
export function cite(key: SourceKey): string {
  return citation(key, tables);
}

/**
 * Every source key, for printing the whole list.
 *
 * @category Sources
 * @example
 * sourceKeys().includes("jcgm100") // => true
 */
export function sourceKeys(): readonly SourceKey[] {
  return tables.flatMap(Object.keys) as SourceKey[];
}
