// Searching, naming and reading names over the whole registry: what one call costs, as a multiple of parsing the same text
// as JSON. Checked in the same set: every name read back gives its formula.
import { fileURLToPath } from "node:url";
import { parseFormula } from "../src/formula";
import { cautions, formulaOf, nameOf, search } from "../src/substance";
import { REGISTRY } from "../src/substance/data/registry";
import { heading, inFreshProcesses, interleaved, line } from "./harness";

const names = REGISTRY().map((row) => row.name);
const formulas = REGISTRY().map((row) => row.formula);
// one letter dropped from the middle of each name
const slips = names.map((name) => name.slice(0, name.length >> 1) + name.slice((name.length >> 1) + 1));

function measure(): Record<string, number> {
  const first = performance.now();
  search("epsom sallt");
  const cold = (performance.now() - first) * 1e6;
  let misses = 0;
  for (const [i, name] of names.entries()) {
    if (search(name)[0]?.formula !== formulas[i]) misses += 1;
    const back = formulaOf(name, { literal: true });
    if (!back.hasSameComposition(parseFormula(formulas[i]!))) throw new Error(`${name} gives ${back}`);
  }
  if (misses > names.length / 50) throw new Error(`${misses} names are not found first by themselves`);
  const times = interleaved(
    {
      "JSON.parse of the names": () => JSON.parse(JSON.stringify(names)),
      "search, exact name": () => names.map((name) => search(name)),
      "search, one letter lost": () => slips.map((name) => search(name)),
      "search, formula": () => formulas.map((formula) => search(formula)),
      nameOf: () => formulas.map((formula) => nameOf(formula)),
      formulaOf: () => names.map((name) => formulaOf(name, { literal: true })),
      "cautions of one": () => formulas.map((formula) => cautions([formula])),
    },
    names.length,
    5,
  );
  return { ...times, "first search, index built": cold };
}

const result = inFreshProcesses(fileURLToPath(import.meta.url), measure);
if (result !== undefined) {
  heading(`substance: ${names.length} registry rows, median of 5 processes`);
  for (const [name, ns] of Object.entries(result)) line(name, ns / 1000, "us");
  // under 5 ms per query over the whole registry
  for (const name of ["search, exact name", "search, one letter lost", "search, formula"])
    line(name, result[name]! / 1e6, "ms", 5);
}

if (result !== undefined) {
  const anchor = result["JSON.parse of the names"]!;
  for (const name of ["search, exact name", "nameOf", "formulaOf", "cautions of one"])
    line(`${name} / JSON.parse of the name`, result[name]! / anchor, "x");
}
