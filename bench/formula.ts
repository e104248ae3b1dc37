// Formulas: text to a full object with its exact mass, against JSON.parse of the same strings as one array.
// Must hold: 4x JSON.parse on 20 000 distinct formulas, every object kept; goal 2.5x. Growth up to 100 kB: exponent 1.05.
// One process per variant, five processes each, medians. Every formula of the set is also checked against a BigInt sum.
import { fileURLToPath } from "node:url";
import { molarMass, parseFormula, tryParseFormula } from "../src/formula";
import * as corpusGroups from "../test/data/formulas";
import { makeFormulas, referenceMass, referenceWeights } from "./formula-set";
import { heading, inFreshProcesses, interleaved, line } from "./harness";

const N = 20_000;
const FILE = fileURLToPath(import.meta.url);
const VARIANT = "PREPARATIVE_BENCH_VARIANT";

/** Results are put here, so that nothing is optimised away. */
const sink: { last: unknown } = { last: undefined };

/** Wrong answers stop the benchmark: the set, an error in between, and the set again from dirty hands. */
function check(): void {
  const set = makeFormulas(N);
  const weights = referenceWeights();
  for (const [i, made] of set.entries()) {
    if (i % 100 === 0) tryParseFormula(`${made.text}(Qq`);
    const formula = parseFormula(made.text);
    const expected = referenceMass(made, weights) * BigInt(formula.denominator);
    if (formula.exactNano! * 1000n !== expected || formula.charge !== made.charge) {
      throw new Error(`${made.text}: ${formula.nano} / ${formula.denominator}, expected ${expected} / 1000`);
    }
    for (const [symbol, thousandths] of made.thousandths) {
      const count = formula.count(symbol);
      if (count.n * 1000n !== thousandths * count.d) throw new Error(`${made.text}: ${count} of ${symbol}`);
    }
  }
}

/** Formulas as people write them, each once: labels with a full stop, complexes, minerals, ions. */
const corpus = [...new Set(Object.values(corpusGroups).flat())].filter((text) => {
  const outcome = tryParseFormula(text);
  return outcome.ok && outcome.value.size > 0 && outcome.value.hasStandardMass;
});
const corpusJson = JSON.stringify(corpus);

const texts = makeFormulas(N).map(({ text }) => text);
const json = JSON.stringify(texts);

const anchors = {
  json: () => {
    sink.last = JSON.parse(json);
  },
  characters: () => {
    let sum = 0;
    for (const text of texts) for (let i = 0; i < text.length; i += 1) sum += text.charCodeAt(i);
    sink.last = sum;
  },
};

const variants: Record<string, () => void> = {
  kept: () => {
    const list = new Array<unknown>(N);
    let mass = 0;
    for (let i = 0; i < N; i += 1) {
      const formula = parseFormula(texts[i]!);
      mass += formula.nano;
      list[i] = formula;
    }
    sink.last = [list, mass];
  },
  dropped: () => {
    let mass = 0;
    for (let i = 0; i < N; i += 1) mass += parseFormula(texts[i]!).nano;
    sink.last = mass;
  },
  quantity: () => {
    for (let i = 0; i < N; i += 1) sink.last = molarMass(parseFormula(texts[i]!));
  },
};

/** One variant beside the anchors. */
function measureVariant(): Record<string, number> {
  check();
  const times = interleaved({ ...anchors, subject: variants[process.env[VARIANT]!]! }, N, 21);
  return {
    ns: times["subject"]!,
    json: times["json"]!,
    perJson: times["subject"]! / times["json"]!,
    perCharacters: times["subject"]! / times["characters"]!,
  };
}

/** The corpus, formula by formula: parsed, weighed as a number, weighed as a quantity, beside JSON.parse of the texts. */
function measureCorpus(): Record<string, number> {
  const tasks = {
    json: () => {
      sink.last = JSON.parse(corpusJson);
    },
    parse: () => {
      for (const text of corpus) sink.last = parseFormula(text);
    },
    number: () => {
      let sum = 0;
      for (const text of corpus) sum += parseFormula(text).gramsPerMole;
      sink.last = sum;
    },
    quantity: () => {
      for (const text of corpus) sink.last = molarMass(text);
    },
  };
  const { json: anchor, ...times } = interleaved(tasks, corpus.length, 101);
  return { json: anchor!, ...Object.fromEntries(Object.entries(times).map(([name, ns]) => [name, ns / anchor!])) };
}

/** ns per character at growing lengths, and the slope between 1 kB and 100 kB on log scales. */
function measureGrowth(): Record<string, number> {
  const shapes: Record<string, (length: number) => string> = {
    flat: (length) => "C2H5OH".repeat(Math.ceil(length / 6)).slice(0, length - (length % 6)),
    groups: (length) => "(SO4)2".repeat(Math.ceil(length / 6)).slice(0, length - (length % 6)),
    decimals: (length) => "Fe0.5O".repeat(Math.ceil(length / 6)).slice(0, length - (length % 6)),
  };
  const out: Record<string, number> = {};
  for (const [shape, make] of Object.entries(shapes)) {
    // All lengths read the same number of characters, interleaved, so that a busy machine slows them alike.
    const lengths = [1000, 10_000, 100_000];
    const tasks = Object.fromEntries(
      lengths.map((length) => {
        const text = make(length);
        const repeats = 1_000_000 / length;
        const run = (): void => {
          for (let i = 0; i < repeats; i += 1) sink.last = parseFormula(text);
        };
        return [`${shape} ${length}`, run];
      }),
    );
    const times = interleaved(tasks, 1_000_000, 15);
    Object.assign(out, times);
    const perCharacter = lengths.map((length) => times[`${shape} ${length}`]!);
    out[`${shape} exponent`] = 1 + Math.log10(perCharacter[2]! / perCharacter[0]!) / 2;
  }
  return out;
}

function measure(): Record<string, number> {
  if (process.env[VARIANT] === "growth") return measureGrowth();
  return process.env[VARIANT] === "corpus" ? measureCorpus() : measureVariant();
}

function runVariant(name: string): Record<string, number> | undefined {
  // A child already knows its variant.
  if (process.env["PREPARATIVE_BENCH_CHILD"] !== "1") process.env[VARIANT] = name;
  return inFreshProcesses(FILE, measure);
}

const whole = runVariant("kept");
if (whole !== undefined) {
  heading(`formulas: ${N} distinct, one process per variant, medians of 5 processes; all checked against BigInt sums`);
  const dropped = runVariant("dropped")!;
  const quantities = runVariant("quantity")!;
  const growth = runVariant("growth")!;
  line("JSON.parse of the array, per string", whole["json"]!, "ns");
  line("formula and exact mass, objects kept", whole["ns"]!, "ns");
  line("  / JSON.parse (goal 2.5)", whole["perJson"]!, "x", 4);
  line("  / one charCodeAt pass", whole["perCharacters"]!, "x");
  line("formula and exact mass, objects dropped", dropped["ns"]!, "ns");
  line("  / JSON.parse", dropped["perJson"]!, "x");
  line("formula and molar mass as a quantity", quantities["ns"]!, "ns");
  line("  / JSON.parse", quantities["perJson"]!, "x");
  const real = runVariant("corpus")!;
  line(`corpus of ${corpus.length} real formulas, JSON.parse of the texts, each`, real["json"]!, "ns");
  line("  parsed / JSON.parse (goal 2.5)", real["parse"]!, "x", 4);
  line("  parsed and weighed as a number / JSON.parse (goal 3)", real["number"]!, "x", 5);
  line("  molar mass as a quantity / JSON.parse", real["quantity"]!, "x", 10);
  for (const shape of ["flat", "groups", "decimals"]) {
    for (const length of [1000, 10_000, 100_000]) {
      line(`${shape}, ${length} characters, per character`, growth[`${shape} ${length}`]!, "ns");
    }
    line(`  growth exponent`, growth[`${shape} exponent`]!, "", 1.05);
  }
}
