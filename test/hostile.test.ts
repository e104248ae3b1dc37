// One drawer of hostile values, thrown at every door: each public function must answer with a value or with one of the
// library's own errors, soon, whatever it is given.
import * as preparative from "preparative";
import { describe, expect, it } from "vitest";
import { doorsOf } from "./tools/doors";
import { HOSTILE } from "./tools/hostile";

const doors = doorsOf(preparative);

describe("hostile values", () => {
  it("meet many doors", () => expect(doors.length).toBeGreaterThan(150));

  it.each(doors)("%s answers every one of them", (name, door) => {
    const start = performance.now();
    const leaks: string[] = [];
    const knock = (...args: unknown[]): void => {
      try {
        const outcome = door(...args);
        if (outcome.ok) return;
        const { error } = outcome;
        if (error.message.length > 4000) leaks.push(`${name}: a message of ${error.message.length} characters`);
        if (JSON.stringify(error) === undefined || JSON.stringify(error.details) === undefined)
          leaks.push(`${name}: no data`);
      } catch (error) {
        const shown = args.map((arg) =>
          typeof arg === "symbol"
            ? "symbol"
            : `${typeof arg}:${String(JSON.stringify(arg, (_, v) => (typeof v === "bigint" ? "big" : v)))?.slice(0, 40)}`,
        );
        leaks.push(`(${shown.join(", ")}) ${String(error).slice(0, 120)}`);
      }
    };
    for (const a of HOSTILE) {
      knock(a);
      knock(a, a);
      knock("NaCl", a);
      knock("1 g", a);
      knock({ formula: a, mass: a, temperature: a, equation: a, of: a, from: a, to: a });
    }
    expect(leaks.slice(0, 4)).toEqual([]);
    expect(performance.now() - start).toBeLessThan(10_000);
  });

  it.each(doors)("%s quotes no megabyte", (name, door) => {
    const long = "y ".repeat(5e5);
    const word = "y".repeat(1e6);
    for (const args of [[long], [word], ["1 g", word], ["NaCl", word], [{ [word]: 1 }], ["NaCl", { [long]: 1 }]]) {
      const outcome = door(...args);
      if (!outcome.ok) expect(outcome.error.message.length, `${name}: ${outcome.error.code}`).toBeLessThan(4000);
    }
  });
});
