// Hostile values at every door of the amount and hydrate rooms: an answer or a typed refusal, never a crash, never a hang.

import { describe, expect, test } from "vitest";
import * as amount from "../../src/amount";
import * as hydrate from "../../src/hydrate";
import { doorsOf } from "../tools/doors";

const HOSTILE: readonly unknown[] = [
  undefined,
  null,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  -1,
  0,
  5n,
  true,
  "",
  " ",
  "x",
  "1 g",
  "0 g",
  "-5 g",
  "1e400 g",
  "1,5 g",
  "1 mol",
  "5 %",
  "25 °C",
  "NaCl",
  "H2O",
  "__proto__",
  "9".repeat(10_000),
  "(".repeat(2_000),
  {},
  [],
  [null],
  Symbol("s"),
  () => 1,
  new Date(0),
  { unit: "g" },
  { value: "x", unit: "g" },
  { value: 1, unit: "g" },
  { mass: "1 g" },
  { from: "NaCl", to: "KCl" },
  { of: "HCl", to: "mol/L" },
];
/** Equations are read by the room below; nothing and null are its own business. */
const TAKES_EQUATION = new Set([
  "reactionAmounts",
  "limitingReagents",
  "theoreticalYield",
  "atomEconomy",
  "requiredAmount",
]);

const doors = doorsOf({ ...amount, ...hydrate });

describe("hostile values", () => {
  test("meet every function", () => {
    expect(doors.length).toBeGreaterThan(35);
  });

  test.each(doors)("%s answers or refuses", (name, door) => {
    const firsts = TAKES_EQUATION.has(name) ? ["H2 + O2 -> H2O", ...HOSTILE.slice(2)] : HOSTILE;
    for (const first of firsts) for (const second of HOSTILE) expect(typeof door(first, second).ok).toBe("boolean");
    for (const first of ["1 g", "NaCl", "1 mol/L", "H2 + O2 -> H2O"])
      for (const third of HOSTILE) expect(typeof door(first, "NaCl", third).ok).toBe("boolean");
  });
});
