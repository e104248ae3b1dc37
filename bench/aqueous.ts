// The equilibrium solver on distinct totals, cold start each time; a titration curve; a whole answer. Systems are those of the
// tables: weak acid, phosphate, zinc with soda, copper with ammonia, nine ions with all their solids.
import { fileURLToPath } from "node:url";
import { aqueousComposition, titrationCurve } from "../src/aqueous";
import { ingredientOf } from "../src/aqueous/mixture/material";
import { broughtBy, keysOf, molesOf } from "../src/aqueous/mixture/mixture";
import { modelOf } from "../src/aqueous/mixture/model";
import { admission } from "../src/aqueous/mixture/request";
import { network } from "../src/aqueous/mixture/tabulated";
import { heading, inFreshProcesses, interleaved, line } from "./harness";

const N = 2000;
const MIXTURES: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  "weak acid": { CH3COOH: "0.1 mol" },
  phosphate: { KH2PO4: "0.025 mol", Na2HPO4: "0.025 mol" },
  "zinc and soda": { ZnSO4: "0.1 mol", Na2CO3: "0.105 mol" },
  "copper and ammonia": { CuSO4: "0.05 mol", NH3: "0.3 mol" },
  "nine ions": {
    CaCl2: "0.02 mol",
    MgSO4: "0.02 mol",
    ZnSO4: "0.01 mol",
    "Fe(NO3)2": "0.01 mol",
    Na2CO3: "0.05 mol",
  },
};

function solving(mixture: Readonly<Record<string, string>>, warm: boolean): { run: () => void; size: string } {
  const brought = Object.entries(mixture).map(([formula, amount]) =>
    broughtBy(ingredientOf({ formula, amount: amount as "1 mol" }, network(), undefined, formula), network()),
  );
  const holding = { pH: false, carbonDioxide: { atm: 1, held: false } };
  const model = modelOf(network(), keysOf(brought), 25, holding, admission("fresh", 25));
  const moles = molesOf(model, brought);
  const totals = Float64Array.from(moles);
  const run = (): void => {
    for (let i = 0; i < N; i += 1) {
      const share = 0.5 + ((i * 0.7548776662466927) % 1);
      for (let j = 0; j < totals.length; j += 1) totals[j] = moles[j]! * (j % 2 === 0 ? share : 1);
      model.equilibrium.solve(totals, undefined, warm);
    }
  };
  const solids = model.conditions.filter(({ kind }) => kind === "solid").length;
  return { run, size: `${model.species.length} species, ${solids} solids` };
}

/** Volumes of a titration of 400 points, never the same. */
let shift = 0;
const curve = (): unknown => {
  shift += 1e-4;
  return titrationCurve({
    flask: { volume: "25 mL", dissolved: [{ formula: "H3PO4", concentration: "0.1 mol/L" }] },
    burette: { formula: "NaOH", concentration: "0.1 mol/L" },
    at: Array.from({ length: 400 }, (_, i) => `${i * 0.18 + shift} mL` as "1 mL"),
  });
};

let turn = 0;
const whole = (): unknown => {
  turn += 1;
  return aqueousComposition({
    water: "1 kg",
    dissolved: [
      { formula: "ZnSO4·7H2O", mass: `${28 + (turn % 997) / 1000} g` },
      { formula: "Na2CO3", amount: "0.105 mol" },
    ],
  }).pH;
};

function measure(): Record<string, number> {
  const cold = Object.fromEntries(Object.entries(MIXTURES).map(([name, m]) => [name, solving(m, false).run]));
  const near = Object.fromEntries(Object.entries(MIXTURES).map(([name, m]) => [`${name}, warm`, solving(m, true).run]));
  const solve = interleaved({ ...cold, ...near }, N, 5);
  const answers = interleaved({ curve: () => curve(), whole: () => whole() }, 1, 15);
  const built = interleaved({ building: () => solving(MIXTURES["nine ions"]!, false) }, 1, 15);
  return { ...solve, ...answers, ...built };
}

const result = inFreshProcesses(fileURLToPath(import.meta.url), measure, 3);
if (result !== undefined) {
  const goals: Readonly<Record<string, number>> = { "weak acid": 10, "zinc and soda": 40, "nine ions": 120 };
  heading("Aqueous equilibria, µs each, Davies, from a cold start, proof included");
  for (const [name, mixture] of Object.entries(MIXTURES)) {
    line(`${name} (${solving(mixture, false).size})`, result[name]! / 1000, "µs", goals[name]);
    line(`${name}, from a neighbour's answer`, result[`${name}, warm`]! / 1000, "µs");
  }
  line("titration curve of 400 points", result["curve"]! / 1e6, "ms", 15);
  line("whole answer, pH looked at", result["whole"]! / 1e6, "ms");
  line("reading six salts and building their system", result["building"]! / 1e6, "ms");
}
