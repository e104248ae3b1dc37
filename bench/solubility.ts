// Solubility lookups on 20 000 distinct (salt, temperature) pairs: the bare lookup and the lookup with its quantity, beside
// one Math.exp and the reading of a temperature text. The must-hold line is 5 µs for a lookup with interpolation.
import { fileURLToPath } from "node:url";
import { quantity } from "../src/quantity";
import { solubilityOf } from "../src/solubility";
import { heading, inFreshProcesses, interleaved, line } from "./harness";

const N = 20_000;
const SALTS = ["KNO3", "CuSO4·5H2O", "Na2SO4", "NaCl", "ZnSO4·7H2O", "K2SO4", "BaCl2", "NH4Cl"];
const salts = Array.from({ length: N }, (_, i) => SALTS[i % SALTS.length]!);
const texts = Array.from({ length: N }, (_, i) => `${((i * 7919) % 90_001) / 1000} °C` as const);

function measure(): Record<string, number> {
  const each = (f: (i: number) => unknown) => () => {
    for (let i = 0; i < N; i++) f(i);
  };
  for (let i = 0; i < N; i += 97) {
    const { perHundredGramsWater } = solubilityOf(salts[i]!, texts[i]!);
    if (!perHundredGramsWater.isPositive()) throw new Error(`no solubility at ${i}`);
  }
  return interleaved(
    {
      "temperature from text": each((i) => quantity(texts[i]!)),
      lookup: each((i) => solubilityOf(salts[i]!, texts[i]!).celsius),
      "lookup with quantity": each((i) => solubilityOf(salts[i]!, texts[i]!).perHundredGramsWater),
    },
    N,
    7,
  );
}

const result = inFreshProcesses(fileURLToPath(import.meta.url), measure);
if (result !== undefined) {
  heading("solubility lookups, ns each");
  for (const [name, ns] of Object.entries(result)) console.log(`${name.padEnd(24)} ${ns.toFixed(0)}`);
  console.log(`lookup under 5 µs: ${result["lookup"]! < 5000 ? "holds" : "BROKEN"}`);
}
void line;
