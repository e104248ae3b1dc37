// Every source the tables and rules rest on, under one key each. A row of data names its key; no key, no row.
// `memory` and `commonPractice` are keys too: the user is told when a figure has no better ground.

/** One source: what it is, and how far it was checked for our rows. */
export interface Source {
  readonly title: string;
  readonly edition?: string;
  readonly year?: number;
  readonly where?: string;
  readonly doi?: string;
  /** How the figures reached us, when not read in the source itself. */
  readonly access?: string;
}

const sources = {
  // -- general ------------------------------------------------------------------------------------------------------
  memory: { title: "recalled from memory, not confirmed in a source" },
  commonPractice: { title: "common practice, no source" },
  // -- quantity -----------------------------------------------------------------------------------------------------
  jcgm100: {
    title: "JCGM 100:2008, Evaluation of measurement data - Guide to the expression of uncertainty in measurement",
    year: 2008,
  },
  siBrochure9: { title: "The International System of Units (SI), BIPM", edition: "9th", year: 2019 },
  // -- element ------------------------------------------------------------------------------------------------------
  // -- formula ------------------------------------------------------------------------------------------------------
  // -- equation -----------------------------------------------------------------------------------------------------
  // -- amount and hydrate -------------------------------------------------------------------------------------------
  // -- substance ----------------------------------------------------------------------------------------------------
  // -- solubility ---------------------------------------------------------------------------------------------------
  // -- thermochemistry ----------------------------------------------------------------------------------------------
  // -- preparation --------------------------------------------------------------------------------------------------
} as const satisfies Record<string, Source>;

/** Key of a source in the bibliography. */
export type SourceKey = keyof typeof sources;

/**
 * The full entry behind a source key.
 *
 * @category Sources
 * @example
 * source("siBrochure9").year // => 2019
 */
export function source(key: SourceKey): Source {
  return sources[key];
}

/**
 * A source on one line, as it is printed under a working.
 *
 * @category Sources
 * @example
 * cite("siBrochure9") // => "The International System of Units (SI), BIPM, 9th ed., 2019"
 */
export function cite(key: SourceKey): string {
  const { title, edition, where, year, doi }: Source = sources[key];
  return [
    title,
    edition === undefined ? undefined : `${edition} ed.`,
    where,
    year,
    doi === undefined ? undefined : `doi ${doi}`,
  ]
    .filter((part) => part !== undefined)
    .join(", ");
}

/** Every source key, for tests and for printing the whole list. */
export function sourceKeys(): readonly SourceKey[] {
  return Object.keys(sources) as SourceKey[];
}
