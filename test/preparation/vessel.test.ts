// Operations on the contents of vessels, worked by plain arithmetic with molar masses from atomic weights (IUPAC 2021, abridged):
// H2O 18.015, CuSO4 159.60, CuSO4·5H2O 249.68, NaCl 58.44 g/mol. What goes in comes out, in every operation.
import { describe, expect, it } from "vitest";
import { densityOfWater } from "../../src/amount";
import { parseFormula } from "../../src/formula";
import { matterOf } from "../../src/preparation/contents/matter";
import { less, Pot } from "../../src/preparation/contents/pot";
import { add, type reacted } from "../../src/preparation/operation/add";
import { concentrate } from "../../src/preparation/operation/concentrate";
import { cool } from "../../src/preparation/operation/cool";
import { dilute } from "../../src/preparation/operation/dilute";
import { dissolve } from "../../src/preparation/operation/dissolve";
import { dry } from "../../src/preparation/operation/dry";
import { filterCake, filterLiquor } from "../../src/preparation/operation/filter";
import { hold } from "../../src/preparation/operation/hold";
import type { Done } from "../../src/preparation/operation/operation";
import { rinse } from "../../src/preparation/operation/rinse";
import { suspend } from "../../src/preparation/operation/suspend";
import { wash } from "../../src/preparation/operation/wash";
import { type Quantity, quantity } from "../../src/quantity";

const of = (text: string) => matterOf(parseFormula(text));
const q = (text: string): Quantity => quantity(text as "1 g");
const room = q("20 °C") as Quantity<"temperature">;
const hot = q("80 °C") as Quantity<"temperature">;
const empty = Pot.empty(room, q("101.325 kPa") as Quantity<"pressure">);
const [salt, vitriol, anhydrous, chalk, ammonia] = ["NaCl", "CuSO4·5H2O", "CuSO4", "CaCO3", "NH3"].map(of);
const grams = (pot: Pot): number => pot.mass.toNumber("g");
const water = (pot: Pot): number => pot.books.water.toNumber("g");
const moles = (list: readonly { matter: { key: string }; amount: Quantity }[], matter: { key: string }): number =>
  list.filter((one) => one.matter.key === matter.key).reduce((n, one) => n + one.amount.toNumber("mol"), 0);
const mol = (n: number): Quantity => q(`${n} mol`);

/** What was there and came in is there or left. */
function balanced(done: Done): void {
  const all = (pots: readonly Pot[]): number => pots.reduce((n, pot) => n + grams(pot), 0);
  expect(grams(done.before) + all(done.put)).toBeCloseTo(grams(done.after) + all(done.left.map(({ pot }) => pot)), 9);
}

/** 0.1 mol of salt in 100 g of water, over 0.2 mol of chalk. */
const sludge = empty.plusWater(q("100 g")).plusDissolved(salt!, mol(0.1)).plusSolid(chalk!, mol(0.2), "precipitated");

describe("a vessel", () => {
  it.each([
    ["water", empty.plusWater(q("1 g"))],
    ["a solid", empty.plusSolid(chalk!, mol(1), "put in")],
    ["something dissolved", empty.plusDissolved(salt!, mol(1))],
    ["what a pack has besides", empty.with({ other: q("1 g") })],
  ])("is empty, and not with %s", (_, pot) => {
    expect(empty.isEmpty).toBe(true);
    expect(pot.isEmpty).toBe(false);
  });

  it("weighs all that is in it", () => {
    expect(grams(sludge.with({ other: q("2 g") }))).toBeCloseTo(100 + 5.844 + 20.017 + 2, 2);
    // water at 20 °C: 0.9982 g/mL (Kell 1975)
    expect(empty.plusWater(q("99.82 g")).volume.toNumber("mL")).toBeCloseTo(100, 2);
  });

  it("has the crystal water of what dissolves as water", () => {
    const pot = empty.plusDissolved(vitriol!, mol(0.1)).plusDissolved(anhydrous!, mol(0.1));
    expect(moles(pot.books.dissolved, anhydrous!)).toBeCloseTo(0.2, 12);
    expect(water(pot)).toBeCloseTo(0.5 * 18.015, 3);
    expect(water(empty.plusDissolved(of("H2O"), mol(2)))).toBeCloseTo(36.03, 3);
  });

  it("keeps one row for a solid of one origin, and others apart", () => {
    const pot = empty
      .plusSolid(chalk!, mol(0.1), "put in")
      .plusSolid(chalk!, mol(0.2), "put in")
      .plusSolid(chalk!, mol(0.4), "precipitated")
      .plusSolid(salt!, mol(0.8), "put in");
    expect(pot.books.solids.map(({ amount }) => Number(amount.toNumber("mol").toFixed(9)))).toEqual([0.3, 0.4, 0.8]);
    expect(empty.plusGas(ammonia!, mol(1)).plusGas(ammonia!, mol(2)).books.gas).toHaveLength(1);
    expect(empty.plusGas(ammonia!, mol(1)).plusGas(of("CO2"), mol(2)).books.gas).toHaveLength(2);
  });

  it("poured into another has what both had, and says once what is not known", () => {
    const open = { unknown: ["a", "b"], waterMissing: ["c"], other: q("1 g") };
    const pot = empty.with(open).plusAll(sludge.with({ ...open, unknown: ["b"] }));
    expect(pot.books.unknown).toEqual(["a", "b"]);
    expect(pot.books.waterMissing).toEqual(["c"]);
    expect(pot.books.other.toNumber("g")).toBeCloseTo(2, 12);
    expect(grams(pot)).toBeCloseTo(grams(sludge) + 2, 9);
    expect(pot.books.solids[0]!.origin).toBe("precipitated");
  });

  it("gives of a substance what is dissolved first, and from a solid its crystal water", () => {
    const pot = empty.plusWater(q("50 g")).plusDissolved(anhydrous!, mol(0.1)).plusSolid(vitriol!, mol(0.1), "put in");
    const less = pot.minus(anhydrous!, mol(0.15));
    expect(less.books.dissolved).toEqual([]);
    expect(moles(less.books.solids, vitriol!)).toBeCloseTo(0.05, 12);
    // five waters of 0.05 mol stay behind
    expect(water(less)).toBeCloseTo(50 + 0.25 * 18.015, 3);
    expect(water(pot.minus(vitriol!, mol(0.1)))).toBeCloseTo(50 - 0.5 * 18.015, 3);
    expect(water(pot.minus(of("H2O"), mol(1)))).toBeCloseTo(50 - 18.015, 3);
    expect(pot.minus(salt!, mol(1)).books).toEqual(pot.books);
  });

  it("takes the rounding of a sum for nothing", () => {
    expect(less(mol(1), mol(1))).toBeUndefined();
    expect(less(q("1 mol"), q("0.9999999999999 mol"))).toBeUndefined();
    expect(less(q("1 mol"), q("0.99999999999 mol"))!.toNumber("mol")).toBeCloseTo(1e-11, 15);
    expect(less(mol(1), mol(2))).toBeUndefined();
  });

  it("keeps its solids and a share of the liquor", () => {
    const { kept, rest } = sludge
      .with({ other: q("1 g") })
      .plusGas(ammonia!, mol(1))
      .split(q("0.25"));
    expect([water(kept), water(rest)]).toEqual([25, 75]);
    expect(moles(kept.books.dissolved, salt!)).toBeCloseTo(0.025, 12);
    expect(moles(rest.books.dissolved, salt!)).toBeCloseTo(0.075, 12);
    expect([kept.books.other.toNumber("g"), rest.books.other.toNumber("g")]).toEqual([0.25, 0.75]);
    expect([kept.books.solids.length, rest.books.solids.length]).toEqual([1, 0]);
    expect([kept.books.gas.length, rest.books.gas.length]).toEqual([1, 0]);
    expect(sludge.split(q("1")).rest.isEmpty).toBe(true);
    expect(sludge.split(q("0")).kept.books.dissolved).toEqual([]);
  });
});

describe("an operation", () => {
  const pack = empty.plusSolid(vitriol!, mol(0.1), "put in");

  it("dissolves a solid: its crystal water is water then", () => {
    const done = dissolve(empty, pack, q("50 g"), hot);
    balanced(done);
    expect(water(done.after)).toBeCloseTo(50 + 0.5 * 18.015, 3);
    expect(done.after.books.solids).toEqual([]);
    expect(done.after.books.temperature).toBe(hot);
    expect(done.after.books.unknown).toEqual([]);
    expect(dissolve(empty.with({ unknown: ["a"] }), pack, q("50 g"), hot, ["b"]).after.books.unknown).toEqual([
      "a",
      "b",
    ]);
  });

  it("stirs a solid into water, and says what is missing of it", () => {
    const done = suspend(empty, empty.plusSolid(chalk!, mol(0.1), "put in"), q("20 g"));
    balanced(done);
    expect(moles(done.after.books.solids, chalk!)).toBeCloseTo(0.1, 12);
    expect(done.after.books.waterMissing).toEqual([]);
    expect(suspend(empty.with({ waterMissing: ["a"] }), pack, q("20 g"), "b").after.books.waterMissing).toEqual([
      "a",
      "b",
    ]);
  });

  it("dilutes, adds, and lets stand", () => {
    const done = dilute(empty, sludge, q("100 g"));
    balanced(done);
    expect(water(done.after)).toBeCloseTo(200, 9);
    balanced(add(sludge, pack, []));
    expect(hold(sludge).after).toBe(sludge);
    expect(hold(sludge, hot).after.books.temperature).toBe(hot);
  });

  it("makes of a reaction what its equation says, and the gas of it leaves", () => {
    // CaCO3 + 2 HCl -> CaCl2 + CO2 + H2O, 0.1 mol of it
    const terms = [
      { matter: chalk!, count: -1n, whereto: "dissolved" },
      { matter: of("HCl"), count: -2n, whereto: "dissolved" },
      { matter: of("CaCl2"), count: 1n, whereto: "dissolved" },
      { matter: of("CO2"), count: 1n, whereto: "gas" },
      { matter: of("H2O"), count: 1n, whereto: "dissolved" },
    ] as Parameters<typeof reacted>[1][number]["terms"];
    const start = empty.plusWater(q("100 g")).plusDissolved(of("HCl"), mol(0.3));
    const done = add(start, empty.plusSolid(chalk!, mol(0.1), "put in"), [{ terms, extent: mol(0.1) }]);
    expect(done.after.books.solids).toEqual([]);
    expect(moles(done.after.books.dissolved, of("HCl"))).toBeCloseTo(0.1, 12);
    expect(moles(done.after.books.dissolved, of("CaCl2"))).toBeCloseTo(0.1, 12);
    expect(water(done.after)).toBeCloseTo(101.8015, 3);
    expect(done.left.map(({ what, pot }) => [what, Number(grams(pot).toFixed(2))])).toEqual([["gas", 4.4]]);
    balanced(done);
  });

  it("boils off and cools: crystals take their water along", () => {
    const boiled = concentrate(dissolve(empty, pack, q("50 g"), hot).after, q("30 g"), hot);
    balanced(boiled);
    expect(boiled.left.map(({ what }) => what)).toEqual(["vapour"]);
    const cooled = cool(boiled.after, room, [{ matter: vitriol!, amount: mol(0.06) }]);
    balanced(cooled);
    expect(moles(cooled.after.books.solids, vitriol!)).toBeCloseTo(0.06, 12);
    expect(moles(cooled.after.books.dissolved, anhydrous!)).toBeCloseTo(0.04, 12);
    expect(water(cooled.after)).toBeCloseTo(20 + 0.2 * 18.015, 3);
    expect(cooled.after.books.solids[0]!.origin).toBe("crystallised");
  });

  it("filters: the cake keeps a volume of the liquor, and no more than there is", () => {
    // 105.84 g of liquor with 5.52 % of NaCl: 1.0376 g/mL between 5 and 6 % (Mizerski, Tablice chemiczne, or any handbook), 102.0 mL; a tenth
    const done = filterCake(sludge, q("10.2 mL"));
    balanced(done);
    expect(water(done.after)).toBeCloseTo(10, 1);
    expect(moles(done.after.books.dissolved, salt!)).toBeCloseTo(0.01, 4);
    expect(done.left[0]!.what).toBe("filtrate");
    expect(water(filterCake(sludge, q("1 L")).after)).toBeCloseTo(100, 9);
    expect(filterCake(empty.plusSolid(chalk!, mol(1), "put in"), q("1 mL")).left[0]!.pot.isEmpty).toBe(true);
    const clear = filterLiquor(sludge);
    balanced(clear);
    expect(clear.after.books.solids).toEqual([]);
    expect(clear.left.map(({ what, pot }) => [what, pot.books.solids.length])).toEqual([["residue", 1]]);
  });

  it("washes: a third is left by one wash, a ninth by two, in clean water", () => {
    const done = wash(sludge, 2, q("200 g"), q("0.3333333333333"), { matter: chalk!, amount: mol(0.01) });
    balanced(done);
    // of 102.0 mL, clean water in place of eight ninths: 90.5 g, and 11.1 g of the liquor's own
    expect(water(done.after)).toBeCloseTo(102 * (8 / 9) * 0.9982 + 100 / 9, 1);
    expect(moles(done.after.books.dissolved, salt!)).toBeCloseTo(0.1 / 9, 9);
    expect(moles(done.after.books.solids, chalk!)).toBeCloseTo(0.19, 12);
    expect(done.put.map(water)).toEqual([400]);
    expect(done.left[0]!.what).toBe("wash water");
    expect(moles(wash(sludge, 1, q("200 g"), q("0.5"), undefined).after.books.solids, chalk!)).toBeCloseTo(0.2, 12);
  });

  it("rinses: of the liquor is left what the portions leave, and as much of the rinse clings in its place", () => {
    const cake = filterCake(sludge, q("10 mL")).after;
    // 10 mL of the liquor, and 40 g are 40.07 mL of water
    const done = rinse(cake, empty.plusWater(q("40 g")), { matter: chalk!, amount: mol(0.01) });
    balanced(done);
    // two portions of half of it, each mixed with what clings
    const heavy = densityOfWater("20 °C").toNumber("g/mL");
    const portion = 20 / heavy;
    const left = (10 / (10 + portion)) ** 2;
    const salt = cake.books.dissolved[0]!;
    expect(moles(done.after.books.dissolved, salt.matter)).toBeCloseTo(left * salt.amount.in("mol").toNumber(), 9);
    expect(moles(done.after.books.dissolved, chalk!)).toBeCloseTo(left * 0.01, 9);
    expect(water(done.after)).toBeCloseTo(left * water(cake) + (1 - left) * 10 * heavy, 6);
    expect(moles(done.after.books.solids, chalk!)).toBeCloseTo(0.19, 12);
    expect(done.left[0]!.what).toBe("wash water");
  });

  it("dries: water and ammonia go, salts stay, and crystals take up their own salt with its water", () => {
    const wet = sludge.plusDissolved(ammonia!, mol(0.1));
    const done = dry(wet);
    balanced(done);
    expect(water(done.after)).toBe(0);
    expect(done.after.books.dissolved).toEqual([]);
    expect(done.after.books.solids.map(({ matter, origin }) => [matter.name, origin])).toEqual([
      ["CaCO₃", "precipitated"],
      ["NaCl", "from the liquor"],
    ]);
    expect(
      moles(
        done.left.flatMap(({ pot }) => pot.books.dissolved),
        ammonia!,
      ),
    ).toBeCloseTo(0.1, 12);
    const crystals = empty.plusSolid(vitriol!, mol(0.1), "crystallised").plusDissolved(anhydrous!, mol(0.01));
    // 0.05 mol of water for 0.01 mol of salt: 0.90 g
    const enough = dry(crystals.plusWater(q("1 g")));
    expect(moles(enough.after.books.solids, vitriol!)).toBeCloseTo(0.11, 12);
    expect(grams(enough.left[0]!.pot)).toBeCloseTo(1 - 0.05 * 18.015, 3);
    const short = dry(crystals.plusWater(q("0.5 g")));
    expect(moles(short.after.books.solids, vitriol!)).toBeCloseTo(0.1, 12);
    expect(moles(short.after.books.solids, anhydrous!)).toBeCloseTo(0.01, 12);
    balanced(short);
  });
});
