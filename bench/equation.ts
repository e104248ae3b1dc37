// Equations: text to balanced objects against JSON.parse, the kernel against plain big-integer elimination in the same
// process and, where their libraries and a C compiler are installed, against PARI and FLINT on one thread. Every timed set
// is also a correctness set. Node >= 20; nothing here is needed by the tests.
import { execFileSync } from "node:child_process";
import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { balance, reactionSpace, tryBalance } from "../src/equation";
import { nullspaceInBigInts } from "../src/equation/kernel/bareiss";
import { nullspaceInDoubles } from "../src/equation/kernel/doubles";
import { nullspaceModular } from "../src/equation/kernel/modular";
import { integerNullspace, nullspaceOf } from "../src/equation/kernel/nullspace";
import { extremeRays } from "../src/equation/kernel/rays";
import { parseEquation } from "../src/equation/read/parse";
import { seeded } from "../test/tools/random";
import {
  type BenchMatrix,
  bigRows,
  equationTexts,
  plainBareiss,
  randomSystem,
  typicalSystems,
} from "./equation-inputs";
import { heading, inFreshProcesses, interleaved, line, median } from "./harness";

const N = 20_000;
const random = seeded(3);
const several = (count: number, make: () => BenchMatrix) => Array.from({ length: count }, make);
const typical = typicalSystems(N);
const shapes: Readonly<Record<string, readonly BenchMatrix[]>> = {
  "10x15": several(1000, () => randomSystem(random, 10, 15, 0.5, 8)),
  "15x16": several(400, () => randomSystem(random, 15, 16, 0.9, 8)),
  "60x80 sparse": several(10, () => randomSystem(random, 60, 80, 0.06, 8)),
  "60x80 dense": several(3, () => randomSystem(random, 60, 80, 0.9, 8)),
};
const GROWTH = [10, 20, 40, 80, 150];
const growth = Object.fromEntries(
  GROWTH.map((n) => [`${n - 1}x${n}`, several(n < 50 ? 20 : 2, () => randomSystem(random, n - 1, n, 0.9, 8))]),
);
const digit = () => String(Math.floor(random() * 10));
const manyDigits = Array.from({ length: 40 }, () =>
  Array.from({ length: 5 }, () =>
    Array.from({ length: 6 }, () =>
      BigInt(`${random() < 0.5 ? "-" : ""}1${Array.from({ length: 198 }, digit).join("")}`),
    ),
  ),
);

const text = (vectors: readonly (readonly (number | bigint)[])[]) =>
  vectors.map((vector) => vector.map((value) => BigInt(value)).join()).join(";");

/** Wrong answers end the bench. */
function check(): void {
  for (let at = 0; at < N; at += 7) {
    const { entries, rows, columns } = typical[at]!;
    const reference = text(nullspaceInBigInts(bigRows(typical[at]!), columns));
    if (text(nullspaceOf(entries, rows, columns)) !== reference) throw new Error(`typical system ${at} differs`);
    if (text(plainBareiss(bigRows(typical[at]!), columns)) !== reference)
      throw new Error(`plain elimination ${at} differs`);
  }
  for (const [name, set] of Object.entries({ ...shapes, "19x20": growth["19x20"]!, "39x40": growth["39x40"]! })) {
    for (const matrix of set.slice(0, 3)) {
      const { entries, rows, columns } = matrix;
      if (text(nullspaceOf(entries, rows, columns)) !== text(nullspaceInBigInts(bigRows(matrix), columns))) {
        throw new Error(`${name} differs`);
      }
    }
  }
}

/** The overflow fuzz: entries to 10^7, so that about half the systems leave the exact doubles. */
function fuzz(): { systems: number; overflowed: number; wrong: number } {
  const any = seeded(20261125);
  let overflowed = 0;
  let wrong = 0;
  for (let round = 0; round < N; round++) {
    const rows = 2 + Math.floor(any() * 6);
    const matrix = randomSystem(any, rows, rows + 1 + Math.floor(any() * 2), 0.6, 1e7);
    const { entries, columns } = matrix;
    const fast = nullspaceInDoubles(entries, rows, columns);
    if (fast === undefined) overflowed++;
    const reference = text(nullspaceInBigInts(bigRows(matrix), columns));
    if (text(fast ?? nullspaceModular(entries, rows, columns)) !== reference) wrong++;
  }
  return { systems: N, overflowed, wrong };
}

/** Best of some rounds, in nanoseconds per item; for the large shapes, where rounds are few. */
function best(run: () => unknown, items: number, rounds = 5): number {
  let least = Number.POSITIVE_INFINITY;
  for (let round = 0; round < rounds; round++) {
    const start = process.hrtime.bigint();
    run();
    least = Math.min(least, Number(process.hrtime.bigint() - start) / items);
  }
  return least;
}

const solveAll = (set: readonly BenchMatrix[]) => () => {
  for (const { entries, rows, columns } of set) nullspaceOf(entries, rows, columns);
};

function measure(): Record<string, number> {
  const texts = equationTexts(30_000)
    .filter((one) => tryBalance(one).ok)
    .slice(0, N);
  const equations = texts.map((one) => parseEquation(one));
  const lists = JSON.stringify(
    equations.map(({ reactants, products }) => [
      reactants.map((t) => t.formula.text),
      products.map((t) => t.formula.text),
    ]),
  );
  const array = JSON.stringify(texts);
  const quoted = texts.map((one) => JSON.stringify(one));
  const ends = interleaved(
    {
      "JSON lists": () => JSON.parse(lists),
      "JSON array": () => JSON.parse(array),
      "JSON each": () => {
        for (const one of quoted) JSON.parse(one);
      },
      balanced: () => {
        for (const one of texts) balance(one);
      },
      "balanced with big integers": () => {
        for (const one of texts) balance(one).coefficients;
      },
    },
    texts.length,
    9,
  );
  const big = typical.map(bigRows);
  const kernels = interleaved(
    {
      kernel: solveAll(typical),
      "plain Bareiss": () => {
        // from the same doubles to the same vectors, as the kernel is timed
        for (const matrix of typical) plainBareiss(bigRows(matrix), matrix.columns);
      },
      "own big integers": () => {
        for (let at = 0; at < N; at++) nullspaceInBigInts(big[at]!, typical[at]!.columns);
      },
    },
    N,
    7,
  );
  const wide = several(2000, () => randomSystem(random, 5, 9, 0.55, 6)).filter(
    ({ entries, rows, columns }) => nullspaceOf(entries, rows, columns).length === 4,
  );
  const bases = wide.map(({ entries, rows, columns }) => nullspaceOf(entries, rows, columns));
  const spaces = interleaved(
    {
      "5x9 nullspace": solveAll(wide),
      "5x9 rays": () => {
        for (const basis of bases) extremeRays(basis, 10_000);
      },
    },
    wide.length,
    9,
  );
  const large: Record<string, number> = {};
  for (const [name, set] of [...Object.entries(shapes), ...Object.entries(growth)])
    large[name] = best(solveAll(set), set.length, 3);
  large["5x6 of 199 digits"] = best(() => manyDigits.map((matrix) => integerNullspace(matrix)), manyDigits.length, 3);
  return { ...ends, ...kernels, ...spaces, ...large, texts: texts.length };
}

/** Nanoseconds per matrix in PARI and FLINT, or undefined where they cannot be built. */
function others():
  | ((set: readonly (readonly (readonly (bigint | number)[])[])[]) => { pari: number; flint: number })
  | undefined {
  const source = fileURLToPath(new URL("./equation-kernels.c", import.meta.url));
  const program = join(mkdtempSync(join(tmpdir(), "kernels-")), "kernels");
  try {
    execFileSync("cc", ["-O2", source, "-o", program, "-lpari", "-lflint", "-lgmp"], { stdio: "ignore" });
  } catch {
    return undefined;
  }
  return (set) => {
    const input = [
      set.length,
      ...set.map((matrix) => `${matrix.length} ${matrix[0]!.length}\n${matrix.flat().join(" ")}`),
    ].join("\n");
    const runs = Array.from({ length: 3 }, () => {
      const out = execFileSync(program, ["3"], { input, encoding: "utf8", maxBuffer: 1e8 });
      return { pari: Number(/pari (\d+)/.exec(out)![1]), flint: Number(/flint (\d+)/.exec(out)![1]) };
    });
    return { pari: median(runs.map(({ pari }) => pari)), flint: median(runs.map(({ flint }) => flint)) };
  };
}

const result = inFreshProcesses(fileURLToPath(import.meta.url), measure, 5);
if (result !== undefined) {
  heading(`equations: ${result["texts"]} distinct texts, ${N} distinct systems, median of 5 processes`);
  check();
  const { systems, overflowed, wrong } = fuzz();
  console.log(`  overflow fuzz: ${systems} systems, ${overflowed} left the exact doubles, ${wrong} wrong`);
  if (wrong > 0) process.exitCode = 1;
  if (reactionSpace("KClO3 + HCl -> KCl + H2O + Cl2 + ClO2").elementary.length !== 2) throw new Error("wrong rays");
  const of = (name: string) => result[name]!;
  console.log("text to balanced equation");
  line("balanced", of("balanced"), "ns");
  line("balanced, coefficients as bigint", of("balanced with big integers"), "ns");
  line(
    "  in JSON.parse of the same equations as formula lists",
    of("balanced with big integers") / of("JSON lists"),
    "x",
    10,
  );
  line("  in JSON.parse of each text by itself", of("balanced with big integers") / of("JSON each"), "x");
  line("  in JSON.parse of one array of the texts", of("balanced with big integers") / of("JSON array"), "x");
  console.log("kernel");
  line("typical, distinct", of("kernel"), "ns");
  line("  in plain Bareiss with big integers, same process", of("kernel") / of("plain Bareiss"), "x", 0.1);
  line("  in the library's own big-integer path", of("kernel") / of("own big integers"), "x");
  line("elementary reactions of 5x9 in its nullspace", of("5x9 rays") / of("5x9 nullspace"), "x", 10);
  const exponent = (a: number, b: number) => Math.log(of(`${b - 1}x${b}`) / of(`${a - 1}x${a}`)) / Math.log(b / a);
  for (let at = 1; at < GROWTH.length; at++) {
    const [a, b] = [GROWTH[at - 1]!, GROWTH[at]!];
    line(`growth exponent, dense, ${a} to ${b} species`, exponent(a, b), "");
  }
  const compare = others();
  if (compare === undefined) console.log("  PARI and FLINT are not here: left out");
  else {
    const limits: Readonly<Record<string, number>> = {
      typical: 1,
      "10x15": 1,
      "15x16": 1.5,
      "60x80 sparse": 3,
      "60x80 dense": 3,
    };
    for (const [name, set] of Object.entries({ typical, ...shapes, ...growth })) {
      const { pari, flint } = compare(set.map(bigRows));
      const own = of(name === "typical" ? "kernel" : name);
      line(`${name}: ${(own / 1000).toFixed(1)} us, in PARI's kernel`, own / pari, "x", limits[name]);
      line(`${name}: in FLINT's nullspace`, own / flint, "x");
    }
    const { pari, flint } = compare(manyDigits);
    line("5x6 of 199 digits, in PARI's kernel", of("5x6 of 199 digits") / pari, "x", 3);
    line("5x6 of 199 digits, in FLINT's nullspace", of("5x6 of 199 digits") / flint, "x");
  }
}
