// A second opinion on the dimension of every equation of the corpus, from a general-purpose algebra system: PARI/GP, where
// it is installed, ranks the same matrices (built by the tests' own formula reader, not the library's).
import { execFileSync } from "node:child_process";
import { reactionSpace } from "../src/equation";
import { CORPUS } from "../test/data/equation-corpus";
import { matrixOf } from "../test/equation/composition";
import { heading } from "./harness";

heading("dimension of the solutions, PARI/GP against the library");
const program = CORPUS.map((equation) => {
  const rows = matrixOf(equation).map((row) => row.join(","));
  return `print(matsize([${rows.join(";")}])[2] - matrank([${rows.join(";")}]))`;
}).join("\n");
let answers: number[];
try {
  answers = execFileSync("gp", ["-q", "-f"], { input: `${program}\n`, encoding: "utf8" })
    .trim()
    .split("\n")
    .map(Number);
} catch {
  console.log("  gp is not here: left out");
  process.exit(0);
}
const differing = CORPUS.filter((equation, at) => reactionSpace(equation).dimension !== answers[at]);
console.log(`  ${CORPUS.length} equations, ${differing.length} differ`);
for (const equation of differing) console.log(`    ${equation}`);
if (differing.length > 0 || answers.length !== CORPUS.length) process.exitCode = 1;
