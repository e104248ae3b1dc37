// Solubility lookups on 20 000 distinct (salt, temperature) pairs, nearly all between two figures of the table. The must-hold
// line is on the whole answer, figure and uncertainty as a quantity included; the bare lookup only says where the time goes.
import { fileURLToPath } from "node:url";
import { quantity } from "../src/quantity";
import { solubilityOf } from "../src/solubility";
import { heading, inFreshProcesses, interleaved, line } from "./harness";

const N = 20_000;
const MUST_HOLD_MICROSECONDS = 5;
const SALTS = ["KNO3", "CuSO4·5H2O", "Na2SO4", "NaCl", "ZnSO4·7H2O", "K2SO4", "BaCl2", "NH4Cl"];
const salts = Array.from({ length: N }, (_, i) => SALTS[i % SALTS.length]!);
const texts = Array.from({ length: N }, (_, i) => `${((i * 7919) % 90_001) / 1000} °C` as const);

/** Every figure lies between those of the table on both sides of it, unless the solid changes there (200 pairs looked at). */
function check(): void {
  for (let i = 0; i < N; i += 97) {
    const { perHundredGramsWater, celsius } = solubilityOf(salts[i]!, texts[i]!);
    const sides = [Math.floor(celsius / 10) * 10, Math.ceil(celsius / 10) * 10].map((t) =>
      solubilityOf(salts[i]!, `${t} °C`),
    );
    if (sides[0]!.solidPhase !== sides[1]!.solidPhase) continue;
    const [low, high] = sides.map((side) => side.perHundredGramsWater.in("g").toNumber()).sort((a, b) => a - b);
    const figure = perHundredGramsWater.in("g").toNumber();
    if (!(figure >= low! && figure <= high!))
      throw new Error(`${salts[i]} at ${texts[i]}: ${figure} not in ${low} to ${high}`);
  }
}

function measure(): Record<string, number> {
  const each = (f: (i: number) => unknown) => () => {
    for (let i = 0; i < N; i++) f(i);
  };
  check();
  return interleaved(
    {
      temperature: each((i) => quantity(texts[i]!)),
      bare: each((i) => solubilityOf(salts[i]!, texts[i]!).celsius),
      whole: each((i) => solubilityOf(salts[i]!, texts[i]!).perHundredGramsWater),
    },
    N,
    7,
  );
}

const result = inFreshProcesses(fileURLToPath(import.meta.url), measure);
if (result !== undefined) {
  heading("Solubility lookups, µs each, median over fresh processes");
  line("a temperature read from text, for scale", result["temperature"]! / 1000, "µs");
  line("lookup with interpolation, figure not asked for", result["bare"]! / 1000, "µs");
  line("lookup with interpolation, figure and its uncertainty", result["whole"]! / 1000, "µs", MUST_HOLD_MICROSECONDS);
}
