// Quantities as text in the type system: a wrong unit or dimension in a literal is a compile error. Only the units an
// editor should offer are listed; the reader at run time knows more spellings.
import type { Distribution } from "./read";

type Figure = `${number}` | `${number}(${number})` | `${number} ± ${number}` | `[${number}, ${number}]`;

/** A literal text of a value in one of the units `U`. */
export type TextIn<U extends string> =
  | `${Figure} ${U}`
  | `${number} ${U} ± ${number} ${U | "%"}`
  | `${number} ± ${number} ${U} (${Distribution | `k=${number}`})`;

/** Units of a mass that an editor offers; the reader knows more spellings. */
export type MassUnit = "kg" | "g" | "mg" | "µg" | "t" | "lb" | "oz av" | "grain" | "carat";
/** Units of an amount of substance that an editor offers; the reader knows more spellings. */
export type AmountUnit = "mol" | "mmol" | "µmol" | "kmol";
/** Units of a volume that an editor offers; the reader knows more spellings. */
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
/** Units of a length that an editor offers; the reader knows more spellings. */
export type LengthUnit = "m" | "cm" | "mm" | "km" | "in" | "ft";
/** Units of a time that an editor offers; the reader knows more spellings. */
export type TimeUnit = "s" | "min" | "h" | "d" | "ms";
/** Units of a temperature that an editor offers; the reader knows more spellings. */
export type TemperatureUnit = "°C" | "K" | "°F";
/** Units of a temperature difference that an editor offers; the reader knows more spellings. */
export type TemperatureDifferenceUnit = "ΔK" | "Δ°C" | "Δ°F";
/** Units of a pressure that an editor offers; the reader knows more spellings. */
export type PressureUnit = "Pa" | "kPa" | "hPa" | "MPa" | "bar" | "mbar" | "atm" | "mmHg" | "inHg" | "torr" | "psi";
/** Units of an energy that an editor offers; the reader knows more spellings. */
export type EnergyUnit = "J" | "kJ" | "MJ" | "cal" | "kcal" | "Wh" | "kWh";
/** Units of a density or mass concentration that an editor offers; the reader knows more spellings. */
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
/** Units of a molar mass that an editor offers; the reader knows more spellings. */
export type MolarMassUnit = "g/mol" | "kg/mol" | "kg/kmol";
/** Units of a concentration that an editor offers; the reader knows more spellings. */
export type ConcentrationUnit = "mol/L" | "mmol/L" | "mol/m3" | "mol/dm3";
/** Units of a molality that an editor offers; the reader knows more spellings. */
export type MolalityUnit = "mol/kg" | "mmol/kg" | "mmol/g";
/** Units of a mass fraction that an editor offers; the reader knows more spellings. */
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
/** Units of a volume fraction that an editor offers; the reader knows more spellings. */
export type VolumeFractionUnit = "%" | "% v/v" | "ppm" | "ppm v/v" | "ppb" | "ppb v/v";
/** Units of a mole fraction that an editor offers; the reader knows more spellings. */
export type MoleFractionUnit = "%" | "mol %" | "ppm";
/** Units of a heat capacity that an editor offers; the reader knows more spellings. */
export type HeatCapacityUnit = "J/K" | "kJ/K";
/** Units of a specific heat capacity that an editor offers; the reader knows more spellings. */
export type SpecificHeatCapacityUnit = "J/(g K)" | "kJ/(kg K)" | "J/(kg K)";
/** Units of a molar energy that an editor offers; the reader knows more spellings. */
export type MolarEnergyUnit = "kJ/mol" | "J/mol" | "kcal/mol";

/** Text of a mass with its unit: `"12.5 g"`, also with an uncertainty. */
export type MassText = TextIn<MassUnit>;
/** Text of an amount of substance with its unit: `"0.25 mol"`, also with an uncertainty. */
export type AmountText = TextIn<AmountUnit>;
/** Text of a volume with its unit: `"250 mL"`, also with an uncertainty. */
export type VolumeText = TextIn<VolumeUnit>;
/** Text of a length with its unit: `"12 cm"`, also with an uncertainty. */
export type LengthText = TextIn<LengthUnit>;
/** Text of a time with its unit: `"30 min"`, also with an uncertainty. */
export type TimeText = TextIn<TimeUnit>;
/** Text of a temperature with its unit: `"25 °C"`, also with an uncertainty. */
export type TemperatureText = TextIn<TemperatureUnit>;
/** Text of a temperature difference with its unit: `"5 ΔK"`, also with an uncertainty. */
export type TemperatureDifferenceText = TextIn<TemperatureDifferenceUnit>;
/** Text of a pressure with its unit: `"101.3 kPa"`, also with an uncertainty. */
export type PressureText = TextIn<PressureUnit>;
/** Text of an energy with its unit: `"4.2 kJ"`, also with an uncertainty. */
export type EnergyText = TextIn<EnergyUnit>;
/** Text of a density or mass concentration with its unit: `"1.19 g/mL"`, also with an uncertainty. */
export type DensityText = TextIn<DensityUnit>;
/** Text of a molar mass with its unit: `"58.44 g/mol"`, also with an uncertainty. */
export type MolarMassText = TextIn<MolarMassUnit>;
/** Text of a concentration with its unit: `"0.1 mol/L"`, also with an uncertainty. */
export type ConcentrationText = TextIn<ConcentrationUnit>;
/** Text of a molality with its unit: `"0.5 mol/kg"`, also with an uncertainty. */
export type MolalityText = TextIn<MolalityUnit>;
/** Text of a mass fraction with its unit: `"37 % w/w"`, also with an uncertainty. */
export type MassFractionText = TextIn<MassFractionUnit>;
/** Text of a volume fraction with its unit: `"96 % v/v"`, also with an uncertainty. */
export type VolumeFractionText = TextIn<VolumeFractionUnit>;
/** Text of a mole fraction with its unit: `"12 mol %"`, also with an uncertainty. */
export type MoleFractionText = TextIn<MoleFractionUnit>;
/** Text of a heat capacity with its unit: `"420 J/K"`, also with an uncertainty. */
export type HeatCapacityText = TextIn<HeatCapacityUnit>;
/** Text of a specific heat capacity with its unit: `"4.18 J/(g K)"`, also with an uncertainty. */
export type SpecificHeatCapacityText = TextIn<SpecificHeatCapacityUnit>;
/** Text of a molar energy with its unit: `"-55.8 kJ/mol"`, also with an uncertainty. */
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

/** A dimension that only the run says; a quantity of it goes where any is wanted, and is checked there. */
// biome-ignore lint/suspicious/noExplicitAny: text known only at run time may be of any dimension; run time checks it
export type Unchecked = any;

/** The dimension a literal text stands for; unchecked when the text is only known at run time. */
export type DimensionOf<T extends string> = string extends T
  ? Unchecked
  : [Matching<T>] extends [never]
    ? Unchecked
    : Matching<T>;

/** The dimension of a unit written out in a program; unchecked where it is only known at run time. */
export type UnitDimension<U extends string> = [U] extends [""]
  ? "number"
  : string extends U
    ? Unchecked
    : DimensionOf<`1 ${U}`>;
/** Dimensions of money: a price, whose name says the currency. */
export type PriceDimension = `price (${string})`;
/** Dimensions of money for a mass, a volume or an amount of substance. */
export type UnitPriceDimension = `price per ${"mass" | "volume" | "amount of substance"} (${string})`;
/** Dimensions that the strength of a solution may be given in: which one, the unit says. */
export type StrengthDimension =
  | "mass fraction"
  | "volume fraction"
  | "mole fraction"
  | "concentration"
  | "density"
  | "molality"
  | "number";
/** The dimension of a strength in a unit written out in a program: a plain `%` or `ppm` may be of mass, volume or amount. */
export type StrengthIn<U extends string> = UnitDimension<U> extends "number" ? StrengthDimension : UnitDimension<U>;
