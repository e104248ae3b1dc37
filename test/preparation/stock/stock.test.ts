// The ledger of the invented pottery studio. Sums by hand beside each check.
import {
  evaluateRun,
  facts,
  fromJSON,
  issue,
  issueForRun,
  lotAsMaterial,
  onHand,
  openStock,
  planPreparation,
  quantity,
  receive,
  receiveProduct,
  runsOutFirst,
  type Stock,
  shoppingList,
  stockFromJSON,
  stocktake,
} from "preparative";
import { describe, expect, it } from "vitest";

const grams = (stock: Stock, index = 0): number => onHand(stock)[index]!.onHand.in("g").toNumber();

const soda = receive(openStock(), {
  name: "soda",
  lot: "A7",
  form: "Na2CO3",
  assay: "98 ± 1 %",
  amount: "1000 ± 2 g",
  cost: "3.00 EUR",
  from: "drugstore",
});
const two = receive(soda, { name: "soda", form: "Na2CO3·10H2O", amount: "500 g", cost: "1.00 EUR" });

describe("a ledger", () => {
  it("is never changed, only written on", () => {
    const before = JSON.stringify(soda);
    const after = issue(soda, { name: "soda", amount: "100 g" });
    expect(JSON.stringify(soda)).toBe(before);
    expect(after).not.toBe(soda);
    expect(() => (after.entries as unknown[]).push({})).toThrow();
    expect(grams(after)).toBe(900);
  });

  it("takes from the oldest lot first, and goes on with the next", () => {
    const after = issue(two, { name: "soda", amount: "1200 g", purpose: "wash" });
    expect([grams(after, 0), grams(after, 1)]).toEqual([0, 300]);
    expect(after.entries.filter(({ kind }) => kind === "issued")).toHaveLength(2);
    const own = issue(two, { name: "soda", lot: "2", amount: "200 g" });
    expect([grams(own, 0), grams(own, 1)]).toEqual([1000, 300]);
  });

  // 1 kg for 3 EUR, of which 640 g are left: 0.64 × 3 EUR = 1.92 EUR
  it("begins with packs that are open already, at the price of the whole, with nothing unaccounted for", () => {
    const open = receive(openStock(), { name: "soda", form: "Na2CO3", amount: "1 kg", left: "640 g", cost: "3 EUR" });
    const [lot] = onHand(open);
    expect([grams(open), lot!.unaccounted.isZero(), lot!.value!.in("EUR").toString()]).toEqual([640, true, "1.92"]);
    expect(grams(issue(stockFromJSON(JSON.parse(JSON.stringify(open))), { name: "soda", amount: "40 g" }))).toBe(600);
    for (const left of ["1.2 kg", "500 mL"] as const)
      expect(() => receive(openStock(), { name: "soda", form: "Na2CO3", amount: "1 kg", left })).toThrow(
        expect.objectContaining({ code: "plan.observation" }),
      );
  });

  it("carries the uncertainty of what came in and of what went", () => {
    const [lot] = onHand(issue(soda, { name: "soda", amount: "400 ± 1 g" }));
    expect(lot!.onHand.standardUncertainty!.toNumber()).toBeCloseTo(Math.sqrt(5), 9);
  });

  // 1000 - 400 = 600 by the books, 588 found: 12 unaccounted; then 30 out of 588
  it("is put right by weighing, and counts on from there", () => {
    const counted = stocktake(issue(soda, { name: "soda", amount: "400 g" }), { name: "soda", found: "588.0 ± 0.5 g" });
    const [lot] = onHand(issue(counted, { name: "soda", amount: "30 g" }));
    expect(lot!.unaccounted.in("g").toNumber()).toBe(12);
    expect(lot!.onHand.in("g").toNumber()).toBe(558);
    expect(lot!.onHand.standardUncertainty!.toNumber()).toBeCloseTo(0.5, 9);
    // 3.00 EUR/1000 g × 558 g
    expect(lot!.value!.in("EUR").toNumber()).toBeCloseTo(1.674, 9);
  });

  it("goes through JSON and back, by the door for everything too", () => {
    const stock = stocktake(issue(two, { name: "soda", amount: "1200 g", day: "3 May" }), {
      name: "soda",
      lot: "2",
      found: "290 g",
    });
    const back = fromJSON(JSON.parse(JSON.stringify(stock))) as Stock;
    expect(back).toEqual(stock);
    expect(String(onHand(back)[1]!.onHand)).toBe(String(onHand(stock)[1]!.onHand));
    expect(structuredClone(stock)).toEqual(stock);
  });

  it("conserves: received = on hand + issued + unaccounted, whatever was done", () => {
    let stock = two;
    let issued = 0;
    for (const [amount, found] of [
      [37, 0],
      [210, 1240],
      [5, 0],
      [333, 0],
      [1, 880],
    ] as const) {
      stock = issue(stock, { name: "soda", amount: `${amount} g` as "1 g" });
      issued += amount;
      if (found > 0) {
        const second = grams(stock, 1);
        stock = stocktake(stock, { name: "soda", lot: "A7", found: `${found - second} g` as "1 g" });
      }
      const lots = onHand(stock);
      const there = lots.reduce(
        (sum, { onHand: q, unaccounted }) => sum + q.in("g").toNumber() + unaccounted.in("g").toNumber(),
        0,
      );
      expect(there + issued).toBeCloseTo(1500, 9);
    }
  });
});

const lime = planPreparation({
  title: "lime",
  equation: "CaCO3 -> CaO + CO2",
  product: "CaO",
  materials: [{ name: "chalk", form: "CaCO3", pack: { size: "1 kg", price: "4 EUR" } }],
  scale: { material: "chalk", portion: "100 g" },
});

describe("stock and preparations", () => {
  const chalk = receive(openStock(), { name: "chalk", form: "CaCO3", amount: "450 g", cost: "1.80 EUR" });

  it("gives what a run really used and takes in what it made, with its form and cost", () => {
    const run = evaluateRun(lime, { weighed: { chalk: "101.5 g" }, dried: "56.1 g" });
    const after = receiveProduct(issueForRun(chalk, run), run, { name: "lime", lot: "R1" });
    expect(grams(after, 0)).toBe(348.5);
    const [, made] = onHand(after);
    expect(made).toMatchObject({ name: "lime", lot: "R1", form: "CaO", from: "lime" });
    expect(grams(after, 1)).toBe(56.1);
    // 101.5 g at 4 EUR/kg = 0.406 EUR
    expect(made!.value!.in("EUR").toNumber()).toBeCloseTo(0.406, 6);
    expect(() => receiveProduct(after, evaluateRun(lime, {}))).toThrow(
      expect.objectContaining({ code: "plan.observation" }),
    );
  });

  // 450/100 = 4.5 rounds; for five rounds 50 g are short: one pack of 450 g, 1.80 EUR; for ten 550 g: two
  it("says what runs out first, and what to buy", () => {
    expect(runsOutFirst(chalk, [lime])[0]).toMatchObject({ name: "chalk", rounds: 4.5 });
    expect(runsOutFirst(openStock(), [lime])[0]!.rounds).toBe(0);
    expect(shoppingList(chalk, [lime, lime])).toEqual([]);
    const five = shoppingList(
      chalk,
      Array.from({ length: 5 }, () => lime),
    );
    expect(
      five.map(({ missing, packs, cost }) => [missing.in("g").toNumber(), packs, cost!.in("EUR").toNumber()]),
    ).toEqual([[50, 1, 1.8]]);
    expect(
      shoppingList(
        chalk,
        Array.from({ length: 10 }, () => lime),
      )[0]!.packs,
    ).toBe(2);
    expect(shoppingList(openStock(), [lime])[0]!).toMatchObject({ packs: undefined, cost: undefined });
  });

  it("is a shelf for a plan", () => {
    const material = lotAsMaterial(onHand(soda)[0]!);
    const plan = planPreparation({
      equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
      product: "CaCO3",
      materials: [{ name: "de-icer", form: "CaCl2·2H2O", excess: "5 %" }, material],
      scale: { material: "soda", portion: "100 g" },
    });
    // 100 g × 98 % / 105.988 × 100.086
    expect(plan.product.theoreticalYield.in("g").toNumber()).toBeCloseTo(92.54, 1);
    expect(
      plan.cost.lines
        .find(({ material: name }) => name === "soda")!
        .cost!.in("EUR")
        .toNumber(),
    ).toBeCloseTo(0.3, 6);
  });
});

describe("a ledger refuses", () => {
  it.each([
    ["more than there is", () => issue(soda, { name: "soda", amount: "2 kg" }), "plan.observation"],
    ["millilitres of what came in grams", () => issue(soda, { name: "soda", amount: "2 mL" }), "plan.observation"],
    ["what is not there", () => issue(soda, { name: "borax", amount: "2 g" }), "plan.no-such-material"],
    ["a lot twice", () => receive(soda, { name: "soda", lot: "A7", form: "Na2CO3", amount: "1 g" }), "plan.request"],
    [
      "an assay above the whole",
      () => receive(soda, { name: "lye", form: "NaOH", amount: "1 kg", assay: "120 %" }),
      "plan.request",
    ],
    ["a count of an open lot", () => stocktake(two, { name: "soda", found: "1 g" }), "plan.request"],
    ["a count in another dimension", () => stocktake(soda, { name: "soda", found: "1 L" }), "plan.observation"],
    ["a slip of the pen", () => issue(soda, { name: "soda", amont: "1 g" } as never), "plan.unknown-option"],
    ["nothing", () => issue(soda, { name: "soda", amount: "0 g" }), "plan.not-positive"],
    ["a poem", () => stockFromJSON({ type: "poem" }), "plan.json"],
    ["a line of another kind", () => stockFromJSON({ ...soda, entries: [{ kind: "lost" }] }), "plan.json"],
    [
      "a line without an amount",
      () => stockFromJSON({ ...soda, entries: [{ kind: "received", name: "x", lot: "1", form: "NaCl" }] }),
      "plan.json",
    ],
    ["a newer layout", () => stockFromJSON({ ...soda, schema: 2 }), "plan.json"],
  ])("%s", (_, act, code) => {
    expect(act).toThrow(expect.objectContaining({ code }));
  });
});

// One scoop of the studio is 4.2 g: 100 scoops are 420 g, of which 10 scoops, 42 g, go.
describe("a ledger in units of the studio", () => {
  const studio = { facts: facts({ source: "weighed (invented)", units: [{ symbol: "scoop", is: "4.2 g" }] }) };
  const bought = receive(
    openStock(),
    { name: "soda", form: "Na2CO3", amount: "100 scoop" as never, cost: "3 EUR" },
    studio,
  );

  it("reads what comes in, goes and is found, with the facts of the call", () => {
    expect(grams(bought)).toBe(420);
    const after = issue(bought, { name: "soda", amount: "10 scoop" as never }, studio);
    expect(grams(after)).toBe(378);
    const found = stocktake(after, { name: "soda", found: "89 scoop" as never }, studio);
    expect([grams(found), onHand(found)[0]!.unaccounted.in("g").toString()]).toEqual([373.8, "4.2"]);
    expect(() => issue(bought, { name: "soda", amount: "10 scoop" as never })).toThrow(
      expect.objectContaining({ code: "quantity.unknown-unit" }),
    );
  });

  it("keeps grams, so that the books stay true when the scoop is weighed anew, and are read without it", () => {
    expect(bought.entries).toMatchObject([{ amount: { value: "420", unit: "g" }, cost: "3 EUR" }]);
    expect(grams(fromJSON(JSON.parse(JSON.stringify(bought))) as Stock)).toBe(420);
    const given = quantity("100 scoop", studio);
    expect(grams(receive(openStock(), { name: "soda", form: "Na2CO3", amount: given as never }))).toBe(420);
  });

  it("reads lines that were written by hand with the facts that are given", () => {
    const [line] = soda.entries;
    const byHand = { ...soda, entries: [{ ...line!, amount: "50 scoop" }] } as Stock;
    expect(onHand(byHand, studio)[0]!.onHand.in("g").toNumber()).toBe(210);
    expect(stockFromJSON(JSON.parse(JSON.stringify(byHand)), studio).entries).toEqual(byHand.entries);
    expect(() => stockFromJSON(JSON.parse(JSON.stringify(byHand)))).toThrow(
      expect.objectContaining({ code: "plan.json" }),
    );
  });
});

describe("another hydrate under the name of a plan", () => {
  const plan = planPreparation({
    equation: "ZnSO4 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + Na2SO4 + CO2",
    product: "Zn5(CO3)2(OH)6",
    materials: [
      { name: "zinc sulfate", form: "ZnSO4·H2O" },
      { name: "soda", form: "Na2CO3", excess: "5 %" },
    ],
    scale: { material: "zinc sulfate", portion: "100 g" },
  });
  const hepta = receive(openStock(), { name: "zinc sulfate", form: "ZnSO4·7H2O", amount: "1 kg", cost: "6 EUR" });
  const needOf = (stock: Stock) => runsOutFirst(stock, [plan]).find(({ name }) => name === "zinc sulfate")!;

  // 1000 g × 179.45 / 287.54 = 624.1 g of monohydrate.
  it("counts by its salt", () => {
    expect(needOf(hepta).rounds).toBeCloseTo(6.241, 3);
    const line = shoppingList(hepta, Array(7).fill(plan)).find(({ name }) => name === "zinc sulfate")!;
    // 700 - 624.1 = 75.9 g, in packs worth 624.1 g each
    expect([line.missing.toNumber("g").toFixed(1), line.packs, String(line.cost)]).toEqual(["75.9", 1, "6 EUR"]);
    // 1400 - 624.1 = 775.9 g: two packs, where a kilogram each would be one
    expect(shoppingList(hepta, Array(14).fill(plan)).find(({ name }) => name === "zinc sulfate")!.packs).toBe(2);
  });

  it("another salt under the name counts as nothing", () => {
    const oxide = receive(openStock(), { name: "zinc sulfate", form: "ZnO", amount: "1 kg" });
    expect(needOf(oxide).rounds).toBe(0);
  });

  it("a run takes its own form first, whatever came in before", () => {
    const both = receive(hepta, { name: "zinc sulfate", lot: "M", form: "ZnSO4·H2O", amount: "500 g" });
    const left = onHand(
      issueForRun(both, evaluateRun(plan, { weighed: { "zinc sulfate": "101.0 g" }, dried: "57 g" })),
    );
    // 500 - 101
    expect(left.map(({ onHand: there }) => there.toNumber("g"))).toEqual([1000, 399]);
  });

  // 1000 - 250 - 101 by the books, 640 found: 9 are missing; then 640 - 40.
  it("counts, uses and makes add up", () => {
    let stock = issue(hepta, { name: "zinc sulfate", amount: "250 g" });
    stock = issue(stock, { name: "zinc sulfate", amount: "101 g" });
    stock = issue(stocktake(stock, { name: "zinc sulfate", found: "640 g" }), { name: "zinc sulfate", amount: "40 g" });
    const [lot] = onHand(fromJSON(JSON.parse(JSON.stringify(stock))) as Stock);
    expect([lot!.onHand.toNumber("g"), lot!.unaccounted.toNumber("g")]).toEqual([600, 9]);
    // 6 EUR for 1000 g
    expect(lot!.value!.toNumber("EUR")).toBeCloseTo(3.6, 6);
  });
});
