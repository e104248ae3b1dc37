// What a refused unit may have been meant as, for hints: units a dimension is usually given in, and symbols of another
// quantity that are written for the one asked for.

/** `a mass`, `an amount of substance`. */
export const withArticle = (noun: string): string => `${/^[aeiou]/i.test(noun) ? "an" : "a"} ${noun}`;

/** Symbols of another quantity that are written for the one asked for, by dimension and symbol. */
const MEANT: Readonly<Record<string, string>> = {
  "temperature C": "C is the coulomb; write °C",
  "temperature ΔK": "ΔK is a difference of temperatures; write K or °C",
  "temperature Δ°C": "Δ°C is a difference of temperatures; write °C",
  "temperature Δ°F": "Δ°F is a difference of temperatures; write °F",
  "temperature difference C": "C is the coulomb; write Δ°C",
  "temperature difference °C": "°C is a point on the scale; a difference is written Δ°C or ΔK",
  "temperature difference K": "K is a temperature here; a difference is written ΔK",
  "concentration N": "N is the newton; write mol/L",
  "concentration m": "m is the metre; write mol/L",
  "molality m": "m is the metre; write mol/kg",
};

/** Units that stand on labels and instruments, by dimension; only those that fit a bare number. */
export const USUAL: Readonly<Record<string, readonly string[]>> = {
  mass: ["g", "kg", "mg"],
  volume: ["mL", "L"],
  "amount of substance": ["mol", "mmol"],
  temperature: ["°C", "K", "°F"],
  "temperature difference": ["ΔK", "Δ°C", "Δ°F"],
  pressure: ["kPa", "bar", "mmHg"],
  time: ["min", "h", "s"],
  length: ["cm", "mm", "m"],
  energy: ["kJ", "J", "kcal"],
  density: ["g/mL", "kg/m3", "g/L"],
  "molar mass": ["g/mol"],
  "molar volume": ["L/mol"],
  "molar energy": ["kJ/mol"],
  concentration: ["mol/L", "mmol/L"],
  molality: ["mol/kg"],
  "heat capacity": ["J/K"],
  "specific heat capacity": ["J/(g K)"],
  "volume flow rate": ["mL/min"],
};

/** The same figure with the units it may have been meant in: `25 °C, 25 K or 25 °F?`. */
export function withUnits(figure: string, dimension: string): string | undefined {
  const meant = USUAL[dimension]?.map((unit) => `${figure} ${unit}`);
  if (meant === undefined) return undefined;
  const last = meant.pop()!;
  return `a unit is missing: ${meant.length === 0 ? last : `${meant.join(", ")} or ${last}`}?`;
}

/** What may have been meant by a unit that does not fit the dimension asked for. */
export function hintFor(dimension: string, unit: string, figure: string): string | undefined {
  return unit === "" ? withUnits(figure, dimension) : MEANT[`${dimension} ${unit}`];
}
