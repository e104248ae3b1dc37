// Routes from a shelf of two hundred jars, up to three steps: warm, with the index of the shelf kept; after a jar was added,
// which makes the index anew; a target that is asked for the first time, for which reactions are judged anew; and everything that
// the shelf gives in up to three steps, without a target.
import { fileURLToPath } from "node:url";
import type { ShelfMaterial } from "../src/preparation";
import { findRoutes } from "../src/route";
import { registryFormulas } from "../src/substance/internal";
import { heading, inFreshProcesses, line, median } from "./harness";

const JARS = 200;
const TARGETS =
  "Zn(CH3COO)2·2H2O Cu2(OH)2CO3 (NH4)2Fe(SO4)2·6H2O CaC2O4·H2O SrCO3 Co(CH3COO)2·4H2O MnCl2·4H2O KAl(SO4)2·12H2O CuCl NiC2O4·2H2O".split(
    " ",
  );
/** Asked for the first time, when the tables have been read. */
const NEW = "FeC2O4·2H2O Mg(CH3COO)2·4H2O BaC2O4·2H2O ZnC2O4·2H2O Ni(OH)2".split(" ");

/** A shelf of so many jars: every second row of the registry, the targets left out. */
function shelfOf(count: number): ShelfMaterial[] {
  const wanted = new Set([...TARGETS, ...NEW]);
  return registryFormulas()
    .filter((form, i) => i % 2 === 0 && !wanted.has(form))
    .slice(0, count)
    .map((form, i) => ({ name: `jar ${i}`, form, pack: { size: "1 kg", price: "10 EUR" } }));
}

const timed = (run: () => unknown): number => {
  const start = process.hrtime.bigint();
  run();
  return Number(process.hrtime.bigint() - start);
};

const WARM = "200 jars, three steps, warm";
const CHANGED = "the same after a jar was added";
const FIRST = "a target asked for the first time";
const EVERYTHING = "everything that can be made, three steps, warm";
const ROUNDS = 5;

function measure(): Record<string, number> {
  const shelf = shelfOf(JARS);
  const ask = (target: string, jars: readonly ShelfMaterial[] = shelf): number =>
    timed(() => findRoutes({ target, shelf: jars }).routes.map((route) => route.rank));
  for (const target of TARGETS) ask(target);
  const warm = TARGETS.map((target) => ask(target));
  const first = NEW.map((target) => ask(target));
  const changed = TARGETS.map((target, i) => ask(target, [...shelf, { name: `added ${i}`, form: "C12H22O11" }]));
  const all = (): number => timed(() => findRoutes({ shelf, steps: 3 }).routes.map((route) => route.rank));
  const everything = Array.from({ length: ROUNDS + 1 }, all).slice(1);
  return {
    [WARM]: Math.max(...warm),
    [CHANGED]: median(changed),
    [FIRST]: median(first),
    [EVERYTHING]: median(everything),
  };
}

const result = inFreshProcesses(fileURLToPath(import.meta.url), measure, 3);
if (result !== undefined) {
  heading(`route: ${JARS} jars, three steps, the slowest of ${TARGETS.length} targets, median of 3 processes`);
  line(WARM, result[WARM]! / 1e6, "ms", 200);
  line(CHANGED, result[CHANGED]! / 1e6, "ms");
  line(FIRST, result[FIRST]! / 1e6, "ms");
  line(EVERYTHING, result[EVERYTHING]! / 1e6, "ms", 200);
}
