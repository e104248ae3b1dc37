// Slow check, not part of the tests: npx tsx test/aqueous/many-systems.ts 100000
// Every random system is either solved and proved, or refused with a code.
import { isPreparativeError } from "../../src";
import { Equilibrium } from "../../src/aqueous/solve/equilibrium";
import { systemOf } from "../../src/aqueous/solve/system";
import { numbersFrom, randomSystem } from "./systems";

const count = Number(process.argv[2] ?? 10_000);
const random = numbersFrom(Number(process.argv[3] ?? 12345));
const outcomes: Record<string, number> = {};
const steps: number[] = [];
let [mass, saturation, negative] = [0, 0, 0];
for (let i = 0; i < count; i += 1) {
  const rows = randomSystem(random);
  const equilibrium = new Equilibrium(systemOf(rows));
  let outcome: string;
  try {
    const proof = equilibrium.solve(rows.totals);
    outcome = `solved (${equilibrium.way})`;
    steps.push(equilibrium.tableau.iterations);
    mass = Math.max(mass, proof.mass);
    saturation = Math.max(saturation, proof.saturation);
    negative = Math.min(negative, proof.negative);
  } catch (error) {
    outcome = isPreparativeError(error) ? error.code : `FAULT ${String(error)}`;
  }
  outcomes[outcome] = (outcomes[outcome] ?? 0) + 1;
}
steps.sort((a, b) => a - b);
const at = (share: number): number | undefined => steps[Math.floor(share * (steps.length - 1))];
console.log(outcomes);
console.log({ newtonSteps: { median: at(0.5), "90 %": at(0.9), "99 %": at(0.99), most: at(1) } });
console.log({ worst: { mass, saturation, negative } });
