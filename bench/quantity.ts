// Quantities against bare decimals doing the same sums on the same 20 000 distinct inputs: what the unit, the exactness
// and the graph cost. Every pass is also checked: the printed results must agree.
import { fileURLToPath } from "node:url";
import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { Decimal } from "decimal.js";
import { explain, type Quantity, quantity } from "../src/quantity";
import { heading, inFreshProcesses, interleaved, line } from "./harness";

const N = 20_000;
const masses = Array.from({ length: N }, (_, i) => `${((i * 7919) % 90_000) + 10_000}`.replace(/(\d{2})$/, ".$1"));
const percents = Array.from({ length: N }, (_, i) => `${50 + ((i * 31) % 500) / 10}`);
const molar = Array.from({ length: N }, (_, i) => `${100 + ((i * 104_729) % 400_000) / 1000}`);

/** Bytes kept for each operation after its result is dropped: the graph must die with it. */
function retained(): number {
  setFlagsFromString("--expose-gc");
  const collect = runInNewContext("gc") as () => void;
  const base = quantity("1.0(1) g");
  const churn = (): void => {
    for (let i = 0; i < N; i++) base.times(`${1 + (i % 97) / 7}`.slice(0, 6)).plus("1 g").standardUncertainty;
  };
  churn();
  collect();
  const before = process.memoryUsage().heapUsed;
  for (let round = 0; round < 5; round++) churn();
  collect();
  return (process.memoryUsage().heapUsed - before) / (5 * N);
}

function measure(): Record<string, number> {
  const texts = masses.map((m) => `${m} g`);
  const q = texts.map((t) => quantity(t));
  const w = percents.map((p) => quantity(`${p} %`));
  const M = molar.map((m) => quantity(`${m} g/mol`));
  const D = Decimal.clone({ precision: 34 });
  const d = masses.map((m) => new D(m));
  const dw = percents.map((p) => new D(p).div(100));
  const dM = molar.map((m) => new D(m));
  const named = q.map((x, i) => x.times(w[i]!).dividedBy(M[i]!).named({ symbol: "n" }));

  const chain = (i: number): Quantity => q[i]!.times(w[i]!).dividedBy(M[i]!).plus("1 mol").times(3);
  const bare = (i: number): Decimal => d[i]!.times(dw[i]!).div(dM[i]!).plus(1).times(3);
  for (let i = 0; i < N; i += 97) {
    if (chain(i).format({ significant: 12 }) !== `${bare(i).toSignificantDigits(12, 6).toPrecision(12)} mol`) {
      throw new Error(`differs at ${i}: ${chain(i)} and ${bare(i)}`);
    }
  }
  const each = (f: (i: number) => unknown) => () => {
    for (let i = 0; i < N; i++) f(i);
  };
  const times = interleaved(
    {
      "JSON.parse of the texts": () => JSON.parse(JSON.stringify(texts)),
      "decimal from text": each((i) => new D(masses[i]!)),
      "quantity from text": each((i) => quantity(texts[i]!)),
      "decimal multiply": each((i) => d[i]!.times(dM[i]!)),
      "quantity multiply": each((i) => q[i]!.times(M[i]!)),
      "decimal divide": each((i) => d[i]!.div(dM[i]!)),
      "quantity divide": each((i) => q[i]!.dividedBy(M[i]!)),
      "decimal add": each((i) => d[i]!.plus(dM[i]!)),
      "quantity add": each((i) => q[i]!.plus(q[(i + 1) % N]!)),
      "decimal chain": each(bare),
      "quantity chain": each(chain),
      "decimal to 2 decimals": each((i) => d[i]!.toFixed(2)),
      "quantity to 2 decimals": each((i) => q[i]!.format({ decimals: 2 })),
      "quantity in another unit": each((i) => q[i]!.in("kg")),
      explain: each((i) => explain(named[i]!).toString()),
    },
    N,
    7,
  );
  return { ...times, retained: retained() };
}

const result = inFreshProcesses(fileURLToPath(import.meta.url), measure);
if (result !== undefined) {
  heading("quantity: 20 000 distinct inputs, median of 5 processes");
  const { retained: bytes, ...times } = result;
  for (const [name, ns] of Object.entries(times)) line(name, ns, "ns");
  line("bytes kept for each dropped operation", bytes!, "B", 1);
  const ratio = (a: string, b: string): number => result[a]! / result[b]!;
  line("multiply / bare decimal", ratio("quantity multiply", "decimal multiply"), "x", 3);
  line("divide / bare decimal", ratio("quantity divide", "decimal divide"), "x", 3);
  line("add / bare decimal", ratio("quantity add", "decimal add"), "x", 3);
  line("chain of five / bare decimals", ratio("quantity chain", "decimal chain"), "x", 3);
}
