// Liquid water from 0 to 100 °C: density of air-free water at 101.325 kPa and saturation vapour pressure.
// Both are equation values (Kell 1975; IAPWS, Wagner and Pruss 2002), so neighbouring rows interpolate smoothly.

/** One temperature: density in g/mL, vapour pressure in kPa, both as decimal text. */
export interface WaterRow {
  readonly celsius: number;
  /** g/mL, source `kell1975`. */
  readonly density: string;
  /** kPa, source `wagnerPruss2002`. */
  readonly vapourPressure: string;
}

// biome-ignore format: a table, one temperature a line
export const WATER: readonly WaterRow[] = [
  { celsius: 0, density: "0.999840", vapourPressure: "0.6112" },
  { celsius: 5, density: "0.999964", vapourPressure: "0.8725" },
  { celsius: 10, density: "0.999700", vapourPressure: "1.2281" },
  { celsius: 15, density: "0.999100", vapourPressure: "1.7057" },
  { celsius: 20, density: "0.998204", vapourPressure: "2.3392" },
  { celsius: 25, density: "0.997045", vapourPressure: "3.1698" },
  { celsius: 30, density: "0.995647", vapourPressure: "4.2469" },
  { celsius: 35, density: "0.994032", vapourPressure: "5.6291" },
  { celsius: 40, density: "0.992216", vapourPressure: "7.3851" },
  { celsius: 45, density: "0.990213", vapourPressure: "9.5953" },
  { celsius: 50, density: "0.988036", vapourPressure: "12.352" },
  { celsius: 55, density: "0.985695", vapourPressure: "15.763" },
  { celsius: 60, density: "0.983199", vapourPressure: "19.947" },
  { celsius: 65, density: "0.980555", vapourPressure: "25.043" },
  { celsius: 70, density: "0.977770", vapourPressure: "31.202" },
  { celsius: 75, density: "0.974849", vapourPressure: "38.597" },
  { celsius: 80, density: "0.971798", vapourPressure: "47.416" },
  { celsius: 85, density: "0.968620", vapourPressure: "57.868" },
  { celsius: 90, density: "0.965320", vapourPressure: "70.183" },
  { celsius: 95, density: "0.961900", vapourPressure: "84.609" },
  { celsius: 100, density: "0.958364", vapourPressure: "101.418" },
];
