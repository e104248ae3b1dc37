// Is it a gas at all? Water by its vapour pressure, other liquids by their boiling point and the rule of Trouton, salts by
// being salts. What is not known to be a liquid or a solid passes.

import { type Formula, parseFormula } from "../../formula";
import { byElements, isWater, splitWater, withoutPhase } from "../../formula/internal";
import { ATMOSPHERE, ZERO_CELSIUS } from "../../foundation/standards";
import { hasIon } from "../../ion";
import { type Quantity, quantity } from "../../quantity";
import { inSymbol } from "../argument";
import { VOLATILITY } from "../data/volatility";
import { AmountError } from "../error";
import { saturationPressure } from "../jar/water";

/** Trouton's rule: the entropy of boiling is near 88 J/(mol K), 10.6 R (common practice). */
const TROUTON = 10.6;
/** The rule finds vapour pressures near room temperature to a factor of about three; only beyond that is a vapour refused. */
const TROUTON_FACTOR = 3;
/** Salts are no gases below this; far above it some are. */
const SALT_CELSIUS = 300;

/** Metals of which every compound is a solid. */
const OF_SALTS = /* @__PURE__ */ new Set(/* @__PURE__ */ "Li Na K Rb Cs Mg Ca Sr Ba".split(" "));
/** Metals whose compounds without carbon are salts and oxides, which do not boil on a bench; with it some are volatile. */
const METALS = /* @__PURE__ */ new Set(
  /* @__PURE__ */ "Be Al Sc Y La Ce Cr Mn Fe Co Ni Cu Ag Zn Cd Pb Bi Th".split(" "),
);

const volatile = /* @__PURE__ */ byElements(
  VOLATILITY,
  ({ formula }) => formula,
  (rows) => rows.map((row) => ({ ...row, formula: parseFormula(row.formula) })),
);

function boilingOf(formula: Formula): number | undefined {
  const rows = volatile(formula.toString());
  const carbon = rows.length > 0 && formula.symbols.includes("C");
  const row = rows.find((one) => (carbon ? one.formula.equals(formula) : one.formula.hasSameComposition(formula)));
  return row === undefined ? undefined : Number(row.boils);
}

/** Vapour pressure in kPa, and how many times higher it may really be; undefined where nothing is known. */
function vapourPressure(
  formula: Formula,
  kelvin: number,
): { readonly kPa: number; readonly factor: number } | undefined {
  if (isWater(formula)) {
    const kPa = saturationPressure(kelvin);
    return kPa === undefined ? undefined : { kPa, factor: 1 };
  }
  const celsius = boilingOf(formula);
  if (celsius !== undefined) {
    const boils = celsius + ZERO_CELSIUS;
    return { kPa: ATMOSPHERE * Math.exp(-TROUTON * (boils / kelvin - 1)), factor: kelvin < boils ? TROUTON_FACTOR : 1 };
  }
  const carbon = formula.symbols.includes("C");
  if (formula.charge !== 0) return { kPa: 0, factor: 1 };
  // ammonium salts do not boil: they go apart, and only above this
  const ammonium = hasIon(formula, "NH4+");
  const salt = ammonium || formula.symbols.some((symbol) => OF_SALTS.has(symbol) || (!carbon && METALS.has(symbol)));
  const hydrate = !splitWater(formula).waters.equals(0);
  return (salt || hydrate) && kelvin < SALT_CELSIUS + ZERO_CELSIUS ? { kPa: 0, factor: 1 } : undefined;
}

/** @internal Refuses as a gas what is a liquid or a solid at that temperature and pressure. */
export function mustBeGas(gas: Formula | undefined, T: Quantity, p: Quantity): void {
  if (gas === undefined) return;
  const own = withoutPhase(gas);
  const known = vapourPressure(own, T.toNumber("K"));
  if (known === undefined || p.toNumber("kPa") <= known.kPa * known.factor) return;
  const pressure = quantity({ value: known.kPa.toPrecision(3), unit: "kPa" });
  throw new AmountError(
    "amount.not-possible",
    `${inSymbol(own)} is not a gas at ${T.to("°C").format({ uncertainty: "none" })} and ${p.format({ uncertainty: "none" })}`,
    {
      hint:
        known.kPa === 0
          ? "a solid or liquid has a mass or a density, not a volume of gas"
          : `its vapour has ${known.factor === 1 ? "" : "about "}${pressure} there; give the temperature and pressure of the vapour`,
      details: { gas: own.toString(), temperature: String(T), pressure: String(p), vapourPressure: String(pressure) },
    },
  );
}
