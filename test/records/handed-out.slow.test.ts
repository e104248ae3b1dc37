// Whatever a public function hands out, a caller may try to alter: the next caller gets the same answer as the first. Every
// answer is walked to its ends, everything in it that can be set, deleted or emptied is, and the question is put again.
import * as preparative from "preparative";
import { describe, expect, it } from "vitest";
import { type Door, doorsOf } from "../tools/doors";
import { REQUESTS } from "../tools/requests";

/** Arguments that one or the other function takes; the first that a function accepts are its call. */
const ARGUMENTS: readonly (readonly unknown[])[] = [
  ["ZnSO4"],
  ["moss killer"],
  ["BaSO4"],
  ["CuSO4·5H2O"],
  ["Cu"],
  ["63Cu"],
  ["Zn^2+"],
  ["sulfate"],
  ["H314"],
  ["washing soda"],
  ["12.5(2) g"],
  ["zinc sulfate"],
  ["AgNO3 + NaCl -> AgCl + NaNO3"],
  ["KMnO4 + HCl -> KCl + MnCl2 + Cl2 + H2O"],
  ["memory"],
  ["20 °C"],
  [["H2SO4", "NaClO", "HCl"]],
  [["1.0(1) g", "2.0(1) g", "2.0(2) g"]],
  [["S + O2 -> SO2", "SO2 + O2 -> SO3"]],
  ["ZnSO4", "20 °C"],
  ["CuSO4", "25 °C"],
  ["S", "CuSO4"],
  ["1 g", "NaCl"],
  ["1 mol", "NaCl"],
  ["5.00 g", { from: "CuSO4·5H2O", to: "CuSO4" }],
  [{ metal: "Zn^2+", precipitant: "soda", concentration: "0.1 mol/L" }],
];

/** Getters that an object's classes give it. */
function inherited(value: object): string[] {
  const names: string[] = [];
  for (let of = Object.getPrototypeOf(value); of !== null && of !== Object.prototype; of = Object.getPrototypeOf(of))
    for (const [name, { get }] of Object.entries(Object.getOwnPropertyDescriptors(of)))
      if (get !== undefined && name !== "__proto__") names.push(name);
  return names;
}

const keysOf = (value: object): string[] => [...Object.keys(value), ...inherited(value)];

const read = (value: object, key: string): unknown => {
  try {
    return (value as Record<string, unknown>)[key];
  } catch (error) {
    return String(error);
  }
};

/** All that can be seen of a value, as text. */
function seen(value: unknown, path: readonly unknown[] = []): string {
  if (typeof value === "function") return "function";
  if (typeof value !== "object" || value === null) return `${typeof value} ${String(value)}`;
  if (path.includes(value) || path.length > 8) return "again";
  if (preparative.isQuantity(value)) return `${JSON.stringify(value)} ${value.symbol}`;
  const inner = [...path, value];
  return `{${keysOf(value).map((key) => `${key}: ${seen(read(value, key), inner)}`)}}${String(value).slice(0, 100)}`;
}

/** Set, delete and empty whatever lets itself. */
function spoil(value: unknown, done = new Set<unknown>()): void {
  if (typeof value !== "object" || value === null || done.has(value) || done.size > 20_000) return;
  done.add(value);
  if (preparative.isQuantity(value)) return;
  for (const key of keysOf(value)) spoil(read(value, key), done);
  if (value instanceof Map || value instanceof Set) value.clear();
  for (const key of Object.keys(value)) {
    Reflect.set(value, key, "spoilt");
    Reflect.deleteProperty(value, key);
  }
  Reflect.set(value, "extra", "spoilt");
  if (Array.isArray(value)) Reflect.set(value, "length", 0);
}

const doors = doorsOf(preparative);

/** Calls of a door that it answers: its requests, else the first arguments that suit it. */
function callsOf(name: string, door: Door): readonly (readonly unknown[])[] {
  const own = REQUESTS.filter(([of]) => of === name).map(([, args]) => args);
  const guessed = ARGUMENTS.filter((args) => {
    try {
      const outcome = door(...args);
      return outcome.ok && typeof outcome.value === "object";
    } catch {
      return false;
    }
  });
  return [...own, ...guessed.slice(0, 8)];
}

/** What a call that is answered gives. */
function answerOf(door: Door, args: readonly unknown[]): unknown {
  const outcome = door(...args);
  return outcome.ok ? outcome.value : undefined;
}

const called = new Set<string>();

describe("what is handed out", () => {
  it.each(doors)("by %s is nobody's to alter", (name, door) => {
    for (const args of callsOf(name, door)) {
      const first = answerOf(door, args);
      const before = seen(first);
      spoil(first);
      expect(seen(answerOf(door, args)), JSON.stringify(args)?.slice(0, 100)).toBe(before);
      called.add(name);
    }
  });

  it("was altered through many doors", () => expect(called.size).toBeGreaterThan(70));

  it("by functions without a twin is nobody's to alter either", () => {
    const calls: readonly (() => unknown)[] = [
      () => preparative.source("memory"),
      () => preparative.cite("memory"),
      () => preparative.sourceKeys(),
      () => preparative.ions(),
      () => preparative.elements(),
    ];
    for (const call of calls) {
      const before = seen(call());
      spoil(call());
      expect(seen(call()), String(call)).toBe(before);
    }
  });

  it("stays what it is for whoever already has it", () => {
    const formula = preparative.parseFormula("NaCl");
    expect(Reflect.set(formula, "text", "KCl")).toBe(false);
    expect(Reflect.set(formula, "charge", 1)).toBe(false);
    expect(String(formula)).toBe("NaCl");
    const forms = preparative.knownHydrates("ZnSO4");
    expect(() => (forms as unknown[]).pop()).toThrow(TypeError);
  });
});
