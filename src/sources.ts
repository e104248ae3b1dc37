// The bibliography: the sources of all layers, merged, lowest layer first.
import { amountSources } from "./amount/data/sources";
import { aqueousSources } from "./aqueous/data/sources";
import { elementSources, yearSources } from "./element/data/sources";
import { formulaSources } from "./formula/data/sources";
import { generalSources } from "./foundation/data/sources";
import { frozen } from "./foundation/frozen";
import { citation, entryIn, type Source } from "./foundation/source";
import { hydrateSources } from "./hydrate/data/sources";
import { ionSources } from "./ion/data/sources";
import { quantitySources } from "./quantity/data/sources";
import { routeSources } from "./route/data/sources";
import { solubilitySources } from "./solubility/data/sources";
import { substanceSources } from "./substance/data/sources";
import { thermochemistrySources } from "./thermochemistry/data/sources";

/** Key of a source in the bibliography. */
export type SourceKey = KeyOf<(typeof tables)[number]>;

type KeyOf<Table> = Table extends Table ? keyof Table : never;

const tables = [
  generalSources,
  quantitySources,
  elementSources,
  yearSources,
  formulaSources,
  ionSources,
  amountSources,
  hydrateSources,
  substanceSources,
  aqueousSources,
  solubilitySources,
  thermochemistrySources,
  routeSources,
] as const;

/**
 * The full entry behind a source key.
 *
 * @category Sources
 * @example
 * source("siBrochure9").year // => 2019
 */
export function source(key: SourceKey): Source {
  return frozen(entryIn(tables, key));
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
