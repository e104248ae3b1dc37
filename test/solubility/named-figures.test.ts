// Every figure of an answer says what it is, and every calculated one how it was calculated: what a sheet and `explain` print.
import * as preparative from "preparative";
import * as solubility from "preparative/solubility";
import { describe, expect, it } from "vitest";
import type { Quantity } from "../../src/quantity";
import { REQUESTS } from "../tools/requests";

interface Figure {
  readonly place: string;
  readonly quantity: Quantity;
}

/** All quantities of an answer, with their places in it. */
function figuresIn(answer: unknown, place: string, seen = new Set<unknown>()): Figure[] {
  if (typeof answer !== "object" || answer === null || seen.has(answer)) return [];
  seen.add(answer);
  if (preparative.isQuantity(answer)) return [{ place, quantity: answer }];
  return [...Object.keys(answer), ...gettersOf(answer)].flatMap((key) =>
    figuresIn(answer[key as never], `${place}.${key}`, seen),
  );
}
const gettersOf = (answer: object): string[] =>
  Object.entries(Object.getOwnPropertyDescriptors(Object.getPrototypeOf(answer) ?? {}))
    .filter(([, { get }]) => get !== undefined)
    .map(([key]) => key);

/** Their field says all there is to say: shares of what stands beside them. */
const PLAIN = [
  "crystallise.crop.share",
  "crystallise.secondCrop.share",
  "crystallise.totalWater",
  "fractionalCrystallization.contamination",
  "fractionalCrystallization.purity",
  "fractionalCrystallization.ratios.other",
  "fractionalCrystallization.ratios.wanted",
  "fractionalCrystallization.wantedFilteredHot",
  "fractionalCrystallization.yield",
  "lossToLiquor.share",
  "saturatedSolution.density",
  "willPrecipitate.byHand.ions.#.shareLeft",
  "willPrecipitate.ions.#.shareLeft",
];
/** Read off an equilibrium, which `explain` follows another way. */
const SOLVED = [
  "molarSolubility.byHand.ions.#.concentration",
  "molarSolubility.ions.#.concentration",
  "precipitatedCarbonate.liquor.aired.left",
  "precipitatedCarbonate.liquor.aired.solids.#.share",
  "precipitatedCarbonate.liquor.boiled.left",
  "precipitatedCarbonate.liquor.boiled.solids.#.share",
  "precipitatedCarbonate.liquor.kept.left",
  "precipitatedCarbonate.liquor.kept.solids.#.share",
  "willPrecipitate.byHand.ions.#.after",
  "willPrecipitate.byHand.precipitated",
  "willPrecipitate.precipitated",
];
const anyOf = (places: readonly string[]) => [...new Set(places.map((place) => place.replace(/\.\d+/g, ".#")))].sort();

describe("the figures of an answer", () => {
  const figures = REQUESTS.filter(([door]) => door in solubility).flatMap(([door, args]) =>
    figuresIn(
      (preparative as unknown as Record<string, (...all: readonly unknown[]) => unknown>)[door]!(...args),
      door,
    ),
  );

  it("have a label each, but for shares that stand beside what they are shares of", () => {
    expect(figures.length).toBeGreaterThan(130);
    expect(anyOf(figures.filter(({ quantity }) => quantity.label === undefined).map(({ place }) => place))).toEqual(
      PLAIN,
    );
  });

  it("state the rule they were calculated by", () => {
    const silent = figures.filter(({ place, quantity }) => {
      const { steps } = preparative.explain(quantity);
      return !PLAIN.includes(anyOf([place])[0]!) && steps.length > 0 && steps.at(-1)!.rule === undefined;
    });
    expect(anyOf(silent.map(({ place }) => place))).toEqual(SOLVED);
  });

  it("carry the symbols that the rules are written in", () => {
    const symbols = (door: string) =>
      Object.fromEntries(
        figures
          .filter(({ place, quantity }) => place.startsWith(`${door}.`) && quantity.symbol !== undefined)
          .map(({ place, quantity }) => [quantity.symbol, place.slice(door.length + 1)]),
      );
    expect(symbols("washPlan")).toEqual({
      "V(wash)": "washVolume",
      "V(total)": "totalWater",
      "V(ret)": "retainedVolume",
      m0: "residueUnwashed",
      m1: "residueAfter.0",
      m2: "residueAfter.1",
      m3: "residueAfter.2",
      "m(target)": "target",
      f: "leftByOneWash",
      "m(CaCO3, lost)": "productLost",
    });
    expect(symbols("saturatedSolution")).toEqual({
      "S(CuSO4, 20 °C)": "perHundredGramsWater",
      h: "asNamedPerHundredGramsAdded",
      w: "massFraction",
      b: "molality",
      c: "concentration",
      "ρ(salt)": "massConcentration",
    });
  });
});
