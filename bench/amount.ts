// What a bench conversion costs with its working kept: amounts, hydrates, strengths and reactions on 20 000 distinct inputs,
// against the same sums in bare decimals. Every timed set is also a correctness set: results must agree to twelve figures.
import { fileURLToPath } from "node:url";
import { Decimal } from "decimal.js";
import { amountOf, convertStrength, densityOfSolution, dilute, gasVolume, reactionAmounts } from "../src/amount";
import { balance } from "../src/equation";
import { molarMass, parseFormula } from "../src/formula";
import { equivalentMass, hydrateMixUps } from "../src/hydrate";
import { explain, type Quantity, quantity } from "../src/quantity";
import { heading, inFreshProcesses, interleaved, line } from "./harness";

const N = 20_000;
/** The heavier tasks run on fewer of them. */
const FEW = 2_000;
/** 20 000 masses between 10 and 1000 g with two decimals, all different. */
const masses = Array.from({ length: N }, (_, i) => `${10 + ((i * 7919) % 99_000) / 100}`);
/** Mass percents between 0.001 and 37 %, all different. */
const percents = Array.from({ length: N }, (_, i) => (0.001 + ((i * 31_337) % N) * 0.00185).toFixed(5));

function measure(): Record<string, number> {
  const D = Decimal.clone({ precision: 34 });
  const grams = masses.map((value) => quantity({ value, unit: "g" }));
  const decimals = masses.map((value) => new D(value));
  const [hepta, mono] = [parseFormula("ZnSO4·7H2O"), parseFormula("ZnSO4·H2O")];
  const [M7, M1] = [hepta, mono].map((f) => new D(molarMass(f).in("g/mol").toString())) as [Decimal, Decimal];
  const equation = balance("2 CuSO4 + 4 NaHCO3 -> Cu2(OH)2CO3 + 2 Na2SO4 + 3 CO2 + H2O");
  const formulas = ["CuSO4", "NaHCO3", "Cu2(OH)2CO3"].map((f) => new D(molarMass(f).in("g/mol").toString()));
  const [MCu, MNa, MProduct] = formulas as [Decimal, Decimal, Decimal];
  const acid = percents.map((value) => ({ value, unit: "% w/w" }) as const);

  const tasks = {
    amount: (i: number): Quantity => amountOf(grams[i]!, hepta),
    "equivalent mass": (i: number): Quantity => equivalentMass(grams[i]!, { from: hepta, to: mono }),
    reaction: (i: number): Quantity =>
      reactionAmounts(equation, { CuSO4: grams[i]!, NaHCO3: grams[(i * 3 + 1) % N]! }).of("Cu2(OH)2CO3").mass,
  };
  const bare = {
    amount: (i: number): Decimal => decimals[i]!.div(M7),
    "equivalent mass": (i: number): Decimal => decimals[i]!.div(M7).times(M1),
    reaction: (i: number): Decimal =>
      D.min(decimals[i]!.div(MCu).div(2), decimals[(i * 3 + 1) % N]!.div(MNa).div(4)).times(MProduct),
  };
  const unit = { amount: "mol", "equivalent mass": "g", reaction: "g" };
  for (const name of ["amount", "equivalent mass", "reaction"] as const) {
    for (let i = 0; i < N; i += 37) {
      const [mine, theirs] = [tasks[name](i).in(unit[name]), bare[name](i)];
      if (mine.toSignificantDigits(12).toString() !== theirs.toSignificantDigits(12).toString()) {
        throw new Error(`${name} differs at ${i}: ${mine} and ${theirs}`);
      }
    }
  }
  // A strength there and back is the exact check of the lookup.
  for (let i = 0; i < N; i += 997) {
    const back = convertStrength(convertStrength(acid[i]!, { of: "HCl", to: "mol/L" }), { of: "HCl", to: "% w/w" });
    if (back.in("%").minus(percents[i]!).abs().greaterThan(1e-9)) throw new Error(`strength differs at ${i}: ${back}`);
  }
  const each =
    (f: (i: number) => unknown, n = N) =>
    () => {
      for (let i = 0; i < n; i++) f(i);
    };
  const texts = JSON.stringify(masses);
  const many = interleaved(
    {
      "JSON.parse of the masses": () => JSON.parse(texts),
      "decimals: amount": each(bare.amount),
      "amount of a weighed mass": each(tasks.amount),
      "decimals: equivalent mass": each(bare["equivalent mass"]),
      "equivalent mass of another hydrate": each(tasks["equivalent mass"]),
      "gas volume": each((i) => gasVolume({ value: masses[i]!, unit: "mmol" }, { temperature: "20 °C" })),
    },
    N,
    5,
  );
  const lookups = interleaved(
    {
      "decimals: product of two feeds": each(bare.reaction, FEW),
      "product of two feeds, limiting found": each(tasks.reaction, FEW),
      "density looked up": each((i) => densityOfSolution("HCl", acid[i * 10]!), FEW),
      "% w/w to mol/L": each((i) => convertStrength(acid[i * 10]!, { of: "HCl", to: "mol/L" }), FEW),
      dilution: each((i) => dilute({ of: "HCl", from: "37 % w/w", to: acid[i * 10]!, makeUpTo: "1 kg" }), FEW),
      "mix-up in one salt": each((i) => hydrateMixUps({ ratio: (1 + i / FEW).toFixed(4), of: "ZnSO4" }), FEW),
      "working of an equivalent mass": each((i) => explain(tasks["equivalent mass"](i)).toString(), FEW),
      "uncertainty of an equivalent mass": each((i) => tasks["equivalent mass"](i).standardUncertainty, FEW),
    },
    FEW,
    5,
  );
  const start = process.hrtime.bigint();
  hydrateMixUps({ ratio: "1.60" });
  const cold = Number(process.hrtime.bigint() - start);
  return { ...many, ...lookups, "mix-up over every salt, first call": cold };
}

const result = inFreshProcesses(fileURLToPath(import.meta.url), measure);
if (result !== undefined) {
  heading("amount and hydrate: 20 000 distinct inputs, median of 5 processes");
  for (const [name, ns] of Object.entries(result)) line(name, ns, "ns");
  const ratio = (a: string, b: string): number => result[a]! / result[b]!;
  const hold = (name: string, mine: string, theirs: string, limit: number): void =>
    line(`${name} / bare decimals`, ratio(mine, theirs), "x", limit);
  hold("amount", "amount of a weighed mass", "decimals: amount", 5);
  hold("equivalent mass", "equivalent mass of another hydrate", "decimals: equivalent mass", 12);
  hold("product of two feeds", "product of two feeds, limiting found", "decimals: product of two feeds", 25);
}
