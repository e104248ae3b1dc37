// Quantities as text in the type system: a wrong unit or dimension in a literal is a compile error. Only the units an
// editor should offer are listed; the reader at run time knows more spellings.
import type { Distribution } from "./read";

type Figure = `${number}` | `${number}(${number})` | `${number} ± ${number}` | `[${number}, ${number}]`;

/** A literal text of a value in one of the units `U`. */
export type TextIn<U extends string> =
  | `${Figure} ${U}`
  | `${number} ${U} ± ${number} ${U | "%"}`
  | `${number} ± ${number} ${U} (${Distribution | `k=${number}`})`;

export type MassUnit = "kg" | "g" | "mg" | "µg" | "t" | "lb" | "oz av" | "grain";
export type AmountUnit = "mol" | "mmol" | "µmol" | "kmol";
export type VolumeUnit =
  | "L"
  | "mL"
  | "µL"
  | "cL"
  | "dL"
  | "cm3"
  | "m3"
  | "dm3"
  | "cc"
  | "US gal"
  | "US qt"
  | "US pt"
  | "US cup"
  | "US fl oz"
  | "imp gal"
  | "imp qt"
  | "imp pt"
  | "imp fl oz";
export type LengthUnit = "m" | "cm" | "mm" | "km" | "in" | "ft";
export type TimeUnit = "s" | "min" | "h" | "d" | "ms";
export type TemperatureUnit = "°C" | "K" | "°F";
export type TemperatureDifferenceUnit = "ΔK" | "Δ°C" | "Δ°F";
export type PressureUnit = "Pa" | "kPa" | "hPa" | "MPa" | "bar" | "mbar" | "atm" | "mmHg" | "inHg" | "torr" | "psi";
export type EnergyUnit = "J" | "kJ" | "MJ" | "cal" | "kcal" | "Wh" | "kWh";
export type DensityUnit =
  | "g/mL"
  | "g/cm3"
  | "kg/m3"
  | "kg/L"
  | "g/L"
  | "mg/L"
  | "mg/mL"
  | "mg/dL"
  | "µg/L"
  | "µg/mL"
  | "% w/v";
export type MolarMassUnit = "g/mol" | "kg/mol" | "kg/kmol";
export type ConcentrationUnit = "mol/L" | "mmol/L" | "mol/m3" | "mol/dm3";
export type MolalityUnit = "mol/kg" | "mmol/kg" | "mmol/g";
export type MassFractionUnit =
  | "%"
  | "% w/w"
  | "ppm"
  | "ppm w/w"
  | "ppb"
  | "ppb w/w"
  | "g/g"
  | "mg/g"
  | "g/kg"
  | "mg/kg"
  | "µg/kg";
export type VolumeFractionUnit = "%" | "% v/v" | "ppm" | "ppm v/v" | "ppb" | "ppb v/v";
export type MoleFractionUnit = "%" | "mol %" | "ppm";
export type HeatCapacityUnit = "J/K" | "kJ/K";
export type SpecificHeatCapacityUnit = "J/(g K)" | "kJ/(kg K)" | "J/(kg K)";
export type MolarEnergyUnit = "kJ/mol" | "J/mol" | "kcal/mol";

export type MassText = TextIn<MassUnit>;
export type AmountText = TextIn<AmountUnit>;
export type VolumeText = TextIn<VolumeUnit>;
export type LengthText = TextIn<LengthUnit>;
export type TimeText = TextIn<TimeUnit>;
export type TemperatureText = TextIn<TemperatureUnit>;
export type TemperatureDifferenceText = TextIn<TemperatureDifferenceUnit>;
export type PressureText = TextIn<PressureUnit>;
export type EnergyText = TextIn<EnergyUnit>;
export type DensityText = TextIn<DensityUnit>;
export type MolarMassText = TextIn<MolarMassUnit>;
export type ConcentrationText = TextIn<ConcentrationUnit>;
export type MolalityText = TextIn<MolalityUnit>;
export type MassFractionText = TextIn<MassFractionUnit>;
export type VolumeFractionText = TextIn<VolumeFractionUnit>;
export type MoleFractionText = TextIn<MoleFractionUnit>;
export type HeatCapacityText = TextIn<HeatCapacityUnit>;
export type SpecificHeatCapacityText = TextIn<SpecificHeatCapacityUnit>;
export type MolarEnergyText = TextIn<MolarEnergyUnit>;
/** A price for a quantity: an ISO 4217 code over a unit. */
export type PriceText = `${number} ${Uppercase<string>}` | `${number} ${Uppercase<string>}/${string}`;

/** The literal texts of each dimension. A plain `%` is a number: what it is a fraction of, the text does not say. */
interface TextByDimension {
  mass: MassText;
  "amount of substance": AmountText;
  volume: VolumeText;
  length: LengthText;
  time: TimeText;
  temperature: TemperatureText;
  "temperature difference": TemperatureDifferenceText;
  pressure: PressureText;
  energy: EnergyText;
  density: DensityText;
  "molar mass": MolarMassText;
  concentration: ConcentrationText;
  molality: MolalityText;
  "heat capacity": HeatCapacityText;
  "specific heat capacity": SpecificHeatCapacityText;
  "molar energy": MolarEnergyText;
  "mass fraction": TextIn<"% w/w" | "ppm w/w" | "ppb w/w">;
  "volume fraction": TextIn<"% v/v" | "ppm v/v" | "ppb v/v">;
  "mole fraction": TextIn<"mol %">;
  number: TextIn<"%" | "ppm" | "ppb"> | `${number}`;
}

type Matching<T> = { [D in keyof TextByDimension]: T extends TextByDimension[D] ? D : never }[keyof TextByDimension];

// biome-ignore lint/suspicious/noExplicitAny: text known only at run time may be of any dimension; run time checks it
type Unchecked = any;

/** The dimension a literal text stands for; unchecked when the text is only known at run time. */
export type DimensionOf<T extends string> = string extends T
  ? Unchecked
  : [Matching<T>] extends [never]
    ? Unchecked
    : Matching<T>;
