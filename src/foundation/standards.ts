// Figures fixed by convention, for whoever calculates with plain numbers: zero of the Celsius scale (BIPM, SI Brochure, 9th ed.,
// 2019) and the standard atmosphere (10th CGPM, 1954).

/** 0 °C in kelvin. */
export const ZERO_CELSIUS = 273.15;

/** The standard atmosphere in kPa, and as text. */
export const ATMOSPHERE = 101.325;
export const ATMOSPHERE_TEXT = "101.325 kPa";
