// What a step leaves to write down, in the reader's words: the same that the sheet of the run prints beside what was seen.
import type { Blank } from "../document/blocks";
import type { SheetWords } from "../words";

/** Words of each observation, by the name that the run has for it. */
const NAMES = {
  weighed: "obsWeighed",
  measured: "obsMeasured",
  strengths: "obsStrengths",
  assays: "obsAssays",
  temperature: "obsTemperature",
  lost: "obsLost",
  "tests.filtrate": "obsFiltrateTest",
  pH: "obsPH",
  filtrateVolume: "obsFiltrateVolume",
  washes: "obsWashes",
  "tests.lastWash": "obsLastWashTest",
  wetCake: "obsWetCake",
  dried: "obsDried",
  ignition: "obsIgnition",
  acidPerGram: "obsAcidPerGram",
  assay: "obsProductAssay",
} as const satisfies Readonly<Record<string, keyof SheetWords>>;

/** An observation of a run. */
export type Observed = keyof typeof NAMES;

const UNITS: Partial<Record<Observed, string>> = {
  temperature: "°C",
  filtrateVolume: "mL",
  wetCake: "g",
  dried: "g",
};

export const observationName = (observed: Observed, words: SheetWords): string => words[NAMES[observed]];

const isObserved = (name: string): name is Observed => Object.hasOwn(NAMES, name);

/** The lines to fill in for the observation that a step takes. */
export function blanksFor(name: string, words: SheetWords, choices?: readonly [string, string]): Blank[] {
  const observed = name.split(".")[0] === "weighed" ? "weighed" : name;
  // An observation without words of its own is printed by its name.
  if (!isObserved(observed)) return [{ name }];
  const text = observationName(observed, words);
  if (observed === "tests.filtrate" || observed === "tests.lastWash")
    return [{ name: text, choices: choices ?? [words.clear, words.cloudy] }];
  if (observed === "ignition")
    return [
      { name: `${text}: ${words.before}`, unit: "g" },
      { name: words.after, unit: "g" },
    ];
  const unit = UNITS[observed];
  return [{ name: text, ...(unit === undefined ? {} : { unit }) }];
}
