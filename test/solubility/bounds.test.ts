// What small changes of a line could alter unseen: shares, orders, refusals with their advice, and the figures that textbooks print.
// Molar masses by hand (IUPAC weights): Na2SO4 142.04, H2O 18.015, NaCl 58.44, CuSO4·5H2O 249.677, of which 90.075 are water.
import {
  explain,
  hydroxidePrecipitationRange,
  molarSolubility,
  precipitatedCarbonate,
  precipitationOrder,
  quantity,
  remainsInSolution,
  retainedLiquor,
  solubilityOf,
  washPlan,
  willPrecipitate,
} from "preparative";
import { describe, expect, it } from "vitest";
import { attempt } from "../../src/foundation/error";
import { saturatedBy, settleSalts, shareOf } from "../../src/solubility/crystallising/crop-balance";
import { branchesOf } from "../../src/solubility/curves/branch";
import { gramsAt, ordinateOf, solidScale } from "../../src/solubility/curves/solid-scale";
import { soluteOf } from "../../src/solubility/curves/solute";
import { CARBONATES, SETTLED } from "../../src/solubility/data/carbonates";
import { daviesExponent } from "../../src/solubility/davies";
import { judgePairing, pairingsOf } from "../../src/solubility/precipitating/pairings";

type Liquor = Parameters<typeof remainsInSolution>[0];
const liquor = (salts: Readonly<Record<string, string>>, water = "100 g", temperature = "20 °C") =>
  remainsInSolution({
    substances: Object.entries(salts).map(([formula, mass]) => ({ formula, mass })),
    water,
    temperature,
  } as Liquor);

describe("several salts that precipitate together", () => {
  const salt = (formula: string, dry: string, s: string, solidPhase = formula) => ({
    dry: quantity(dry),
    saturated: saturatedBy(quantity(s), solidPhase),
  });

  // each gram of Na2SO4 takes 180.15/142.04 = 1.26830 g of water with it: of 100 g
  // (100 - 1.26830 × 60) / (1 - 1.26830 × 0.2) = 23.902 / 0.74634 = 32.026 g are left
  it("leave less water where one is a hydrate, so that another precipitates as well", () => {
    const both = settleSalts(
      [salt("Na2SO4", "60 g", "20 g", "Na2SO4·10H2O"), salt("NaCl", "15 g", "36 g")],
      quantity("100 g"),
    );
    expect(both.water.toNumber("g")).toBeCloseTo(32.026, 2);
    // 60 - 0.2 × 32.026 and 15 - 0.36 × 32.026; in all the water 36 g of the second would stay
    expect(both.solids[0]!.toNumber("g")).toBeCloseTo(53.595, 2);
    expect(both.solids[1]!.toNumber("g")).toBeCloseTo(3.471, 2);
  });

  it("leave all the water where none is a hydrate", () => {
    const both = settleSalts([salt("KNO3", "60 g", "30 g"), salt("NaCl", "15 g", "36 g")], quantity("100 g"));
    expect(both.water.toNumber("g")).toBe(100);
    expect(both.solids.map((solid) => solid.toNumber("g"))).toEqual([30, 0]);
  });

  it("bind all the water at last", () => {
    // 80 g of Na2SO4 would bind 101 g
    const outcome = attempt(() => settleSalts([salt("Na2SO4", "80 g", "5 g", "Na2SO4·10H2O")], quantity("100 g")));
    expect(outcome).toMatchObject({
      ok: false,
      error: { code: "solubility.no-liquor", details: { solids: ["Na2SO4·10H2O"] } },
    });
  });

  it("are counted without their water: 159.602 of 249.677 g of blue vitriol, all of common salt", () => {
    expect(shareOf(soluteOf("CuSO4·5H2O")).toNumber("")).toBeCloseTo(159.602 / 249.677, 6);
    expect(shareOf(soluteOf("NaCl")).toNumber("")).toBe(1);
  });
});

describe("the scale of a hydrate", () => {
  const scale = solidScale("Na2SO4", "Na2SO4·10H2O");

  it("ends at its own composition: 142.04 g with 180.15 g of water are 78.846 g with 100 g", () => {
    expect(scale.waters).toBe(10);
    expect(scale.ceiling).toBeCloseTo(78.846, 2);
    expect(solidScale("NaCl", "NaCl").ceiling).toBe(Number.POSITIVE_INFINITY);
    expect(solidScale("NaCl", undefined)).toMatchObject({ waters: 0, ceiling: Number.POSITIVE_INFINITY });
  });

  it.each([0.001, 1, 20, 50, 70, 78, 78.8])("reads back %d g of its own", (grams) => {
    expect(gramsAt(scale, ordinateOf(scale, grams)) / grams).toBeCloseTo(1, 6);
  });

  it("gives its own composition for a place above all it reaches", () => {
    expect(gramsAt(scale, ordinateOf(scale, 78.84) + 1)).toBe(scale.ceiling);
  });
});

describe("a curve whose hydrate melts before the next figure", () => {
  // CaCl2·6H2O is 110.98 g with 108.09 g of water, 102.67 g with 100 g: of 74.5 g at 20 °C the rise to it is
  // ln(102.67/74.5) = 0.3207, and three tenths of that are uncertain
  it("ends at the composition of the hydrate, uncertain by a share of the rise", () => {
    const [hydrate] = branchesOf({
      formula: "CaCl2",
      points: [
        [0, "59.5"],
        [20, "74.5"],
        [40, "128"],
        [60, "137"],
      ],
      solids: [
        { solid: "CaCl2·6H2O", waters: 6, upTo: "30" },
        { solid: "CaCl2·2H2O", waters: 2 },
      ],
    } as never);
    const end = hydrate!.knots.at(-1)!;
    expect(end.celsius).toBe(30);
    expect(end.grams).toBeCloseTo(102.67, 1);
    expect(end.spread).toBeCloseTo(0.3 * Math.log(102.67 / 74.5), 3);
  });
});

describe("a liquor", () => {
  it("is held against the caller's own figure: 30 g in 100 g of water that dissolve 10 g", () => {
    const [own] = remainsInSolution({
      substances: [{ formula: "NaCl", mass: "30 g", solubility: "10 g" }],
      water: "100 g",
      temperature: "20 °C",
    }).substances;
    expect(own).toMatchObject({ stays: "no", solubility: undefined });
    expect(own!.capacity!.toNumber("g")).toBe(10);
    expect(own!.saturation!.toNumber("")).toBe(3);
    expect(own!.excess!.toNumber("g")).toBe(20);
  });

  it("counts the crystal water of what is put in: 50 g of blue vitriol bring 50 × 90.075/249.677 = 18.04 g", () => {
    const [own] = liquor({ CuSO4·5H2O: "50 g" }).substances;
    const s = solubilityOf("CuSO4", "20 °C").perHundredGramsWater.toNumber("g");
    expect(own!.capacity!.toNumber("g") / s).toBeCloseTo(1.18038, 4);
    expect(own!.anhydrousMass.toNumber("g")).toBeCloseTo((50 * 159.602) / 249.677, 4);
    const symbols = (formula: string) =>
      explain(liquor({ [formula]: "10 g" }).substances[0]!.capacity!).given.map(({ symbol }) => symbol);
    expect(symbols("NaCl")).toContain("m(H2O)");
  });

  it("lets two acids stay that share no ion", () => {
    const { remainsInSolution: stays, substances } = liquor({ H2C2O4: "3 g", H3BO3: "2 g" });
    expect(stays).toBe("yes");
    expect(substances.every(({ capacity }) => capacity!.isPositive())).toBe(true);
  });

  // cold solutions of iron(III) with acetate or sulfate are clear: the acetate precipitates on boiling (qualitative analysis,
  // from memory). Nothing in them is an acid that the equilibrium is asked for.
  it.each([{ FeCl3: "5 g", NaCH3COO: "8 g" }, { FeCl3: "5 g", Na2SO4: "5 g" }, { FeCl3: "5 g" }, { AlCl3: "5 g" }])(
    "of %j stays clear",
    (salts) => {
      const { remainsInSolution: stays, pairings } = liquor(salts as never);
      expect([stays, pairings]).toEqual(["yes", []]);
    },
  );

  it.each<[Readonly<Record<string, string>>, string, string]>([
    [{ CuSO4: "1 g", Na2CO3: "2 g" }, "CuCO3", "acid"],
    [{ MgSO4: "5 g", Na3PO4: "2 g" }, "Mg3(PO4)2", "acid"],
  ])("of %j names one solid, by its own figure", (salts, solid, word) => {
    const { pairings } = liquor(salts);
    expect(pairings.map(({ formula }) => formula)).toEqual([solid]);
    expect(pairings[0]!.why).not.toContain(word);
  });

  it("says of an anion that was put in that its own figure tells, and of one that an acid gives up that the equilibrium does", () => {
    const { pairings } = liquor({ BaCl2: "5 g", NaHCO3: "5 g", Na2SO4: "3 g" });
    const why = (solid: string) => pairings.find(({ formula }) => formula === solid)!.why;
    expect(why("BaSO4")).not.toContain("acid");
    expect(why("BaCO3")).toContain("acid gives its anion up");
  });
});

describe("an ion that is made", () => {
  type Ion = readonly [formula: string, charge: number, moles: number];
  const pool = (...ions: readonly Ion[]) =>
    ions.map(([formula, charge, moles]) => ({ formula, charge, moles, from: new Set([formula]) }));
  const made = (ammonium: number, carbonate: number) =>
    pairingsOf(pool(["NH4+", 1, ammonium], ["CO3^2-", -2, carbonate], ["Na+", 1, 3]))
      .find(({ formula }) => formula === "NaHCO3")!
      .ions.find(({ ion }) => ion.formula === "HCO3-")!.ion;

  it("is as much as there is of the scarcer of acid and base", () => {
    expect(made(0.5, 2).moles).toBe(0.5);
    expect(made(2, 0.5).moles).toBe(0.5);
    expect(made(2, 0.5)).toMatchObject({ charge: -1, made: true });
    expect([...made(2, 0.5).from].sort()).toEqual(["CO3^2-", "NH4+"]);
  });

  it("is none of ammonium and hydroxide, which are ammonia, nor of oxide", () => {
    const formulas = (...ions: readonly Ion[]) => pairingsOf(pool(...ions)).map(({ formula }) => formula);
    expect(formulas(["NH4+", 1, 1], ["OH-", -1, 1])).toEqual([]);
    expect(formulas(["Ca^2+", 2, 1], ["O^2-", -2, 1])).toEqual([]);
    expect(formulas(["Ca^2+", 2, 1], ["OH-", -1, 1])).toEqual(["Ca(OH)2"]);
    // what one salt brings is that salt
    const salt = new Set(["NaCl"]);
    const brought = pool(["Na+", 1, 1], ["Cl-", -1, 1]).map((ion) => ({ ...ion, from: salt }));
    expect(pairingsOf(brought)).toEqual([]);
  });

  it("is not judged where neither figure, product nor rule speaks of the solid: zinc phosphite", () => {
    const [pairing] = pairingsOf(pool(["Zn^2+", 2, 1], ["HPO3^2-", -2, 1]));
    expect(judgePairing(pairing!, 0.5, "20 °C")).toMatchObject({
      formula: "ZnHPO3",
      stays: "unknown",
      saturation: undefined,
      falls: undefined,
      why: "neither a figure nor a rule speaks of it",
    });
  });
});

describe("which sulfide precipitates first", () => {
  const solids = [
    { solid: "ZnS", concentration: "0.01 mol/L" },
    { solid: "CuS", concentration: "0.01 mol/L" },
  ] as const;

  it("is that of copper, from acid (qualitative analysis)", () => {
    const order = precipitationOrder({ precipitant: "HS-", pH: "1", solids });
    expect(order.map(({ solid, metal }) => `${solid} ${metal}`)).toEqual(["CuS Cu^2+", "ZnS Zn^2+"]);
    const [copper, zinc] = order;
    expect(copper!.startsAt!.toNumber("mol/L")).toBeLessThan(zinc!.startsAt!.toNumber("mol/L") / 1e10);
    expect(copper!.byHand.startsAt!.toNumber("mol/L")).toBeLessThan(zinc!.byHand.startsAt!.toNumber("mol/L") / 1e10);
    // of the copper hardly any is left when the zinc begins, and nothing comes after zinc
    expect(copper!.leftWhenNextStarts!.toNumber("%")).toBeLessThan(1e-8);
    expect(zinc!.leftWhenNextStarts).toBeUndefined();
  });

  it("is asked with a pH, a list of solids and a precipitant that is in them", () => {
    const code = (request: object) => {
      const outcome = attempt(() => precipitationOrder({ precipitant: "HS-", solids, pH: "1", ...request } as never));
      return outcome.ok ? "read" : [outcome.error.code, outcome.error.details];
    };
    expect(code({ pH: undefined })).toEqual(["solubility.missing-option", { solid: "ZnS" }]);
    expect(code({ pH: "20" })).toEqual(["solubility.out-of-reach", {}]);
    expect(code({ precipitant: "Cl-" })).toEqual(["solubility.other-solute", { solid: "ZnS", precipitant: "Cl-" }]);
  });
});

describe("a hydroxide", () => {
  const range = (metal: string, form?: string) =>
    hydroxidePrecipitationRange({ metal, concentration: "0.1 mol/L", ...(form === undefined ? {} : { form }) });

  it.each([
    ["Zn", undefined, "write the ion with its charge, such as Zn^2+"],
    ["K+", undefined, "some metals precipitate as another solid"],
    ["Zn^2+", "blue", "forms: amorphous"],
  ])("of %s (%s) is refused with the advice: %s", (metal, form, hint) => {
    expect(attempt(() => range(metal, form))).toMatchObject({
      ok: false,
      error: { code: "solubility.no-data", hint: expect.stringContaining(hint), input: metal },
    });
  });

  it("is warned of where no or one complex is known, and of basic salts, which hold hydroxide and another anion", () => {
    const said = (metal: string) => range(metal).warnings.join("\n");
    expect(said("Sc^3+")).toContain("no hydroxide complex in the table: redissolving cannot be judged");
    expect(said("La^3+")).toContain("only the first hydroxide complex in the table: redissolving cannot be judged");
    expect(said("Zn^2+")).not.toContain("cannot be judged");
    for (const metal of ["Pb^2+", "Cu^2+", "Zn^2+", "Bi^3+"]) {
      const listed = /not judged here: (.*)$/m.exec(said(metal))![1]!.split(", ");
      // of hydroxide or, where it has lost water, oxide: fluorides and phosphates with chloride are no basic salts
      expect(listed.length, "rows to test").toBeGreaterThan(0);
      for (const solid of listed) expect(solid, metal).toMatch(/OH|O·|OCl/);
      for (const solid of listed) expect(solid, metal).not.toMatch(/F|PO4/);
    }
  });
});

describe("what dissolves", () => {
  it("is uncertain by its constant: the cube root of 1.4(1)e-8/4 by a third of a fourteenth", () => {
    const { concentration } = molarSolubility({ solid: "PbI2", ksp: "1.4(1)e-8" });
    expect(concentration.toNumber("mol/L")).toBeCloseTo((1.4e-8 / 4) ** (1 / 3), 9);
    expect(concentration.standardUncertainty!.toNumber() / concentration.toNumber()).toBeCloseTo(0.1 / 1.4 / 3, 6);
  });

  it("has the ionic strength of the salt that is there", () => {
    expect(molarSolubility({ solid: "BaSO4", ionicStrength: "0.1 mol/L" }).ionicStrength!.value.toNumber()).toBeCloseTo(
      0.1,
      3,
    );
  });

  it("is the same with none of a ligand as without it", () => {
    const of = (concentration: "0 mol/L" | "-1 mol/L") =>
      molarSolubility({ solid: "AgCl", freeLigands: [{ ligand: "NH3", concentration }] });
    const [none, without] = [of("0 mol/L"), molarSolubility({ solid: "AgCl" })];
    expect(none.concentration.toNumber("mol/L")).toBe(without.concentration.toNumber("mol/L"));
    expect(none.byHand!.concentration.toNumber("mol/L")).toBe(without.byHand!.concentration.toNumber("mol/L"));
    expect(attempt(() => of("-1 mol/L"))).toMatchObject({
      ok: false,
      error: { code: "solubility.not-positive" },
    });
  });

  it.each([
    // both are known with other partners
    ["BaSO4", "SCN-", "Ba^2+"],
    ["CaF2", "SCN-", "Ca^2+"],
  ])("%s with %s is refused: no complexes of %s", (solid, ligand, metal) => {
    expect(
      attempt(() => molarSolubility({ solid, freeLigands: [{ ligand, concentration: "1 mol/L" }] })),
    ).toMatchObject({
      ok: false,
      error: { code: "solubility.no-data", details: { metal, ligand } },
    });
  });

  it("follows Davies from 0 to 0.5 mol/L: 0.509 (√I/(1 + √I) − 0.3 I)", () => {
    expect(daviesExponent(0)).toBe(0);
    // √0.25 = 0.5: 0.509 × (0.333333 − 0.075) = 0.131492
    expect(daviesExponent(0.25)).toBeCloseTo(0.131492, 6);
    expect(daviesExponent(0.5)).toBeCloseTo(0.509 * (Math.SQRT1_2 / (1 + Math.SQRT1_2) - 0.15), 12);
    for (const ionicStrength of [0.51, -0.1, Number.NaN])
      expect(attempt(() => daviesExponent(ionicStrength))).toMatchObject({
        error: { code: "solubility.ionic-strength", details: { ionicStrength, limit: 0.5 } },
      });
  });

  it("is asked of solutions that hold the ions; hydroxide may be a pH", () => {
    const missing = (solid: string, ion: string) =>
      attempt(() =>
        willPrecipitate({
          solid,
          solutions: [{ volume: "1 L", ions: [{ ion, concentration: "0.1 mol/L" }] }],
        }),
      );
    expect(missing("Mg(OH)2", "Mg^2+")).toMatchObject({
      error: { code: "solubility.missing-option", details: { ion: "OH-" }, hint: "give the pH the mixture is held at" },
    });
    expect(missing("AgCl", "Ag+")).toMatchObject({
      error: { code: "solubility.missing-option", details: { ion: "Cl-" }, hint: undefined },
    });
  });
});

describe("carbonates", () => {
  const of = (metal: string, precipitant = "soda") =>
    precipitatedCarbonate({ metal, precipitant } as Parameters<typeof precipitatedCarbonate>[0]);

  it("have an index that differs between metals by their constants alone", () => {
    // B = ratio / 10^((pK(basic) − x pK(carbonate)) / pairs), x metal ions and so many pairs of hydroxide in the basic solid
    const logB = (metal: string): { readonly index: number; readonly balance: number } => {
      const { index, products } = of(metal);
      const [carbonate, basic] = products;
      const count = ({ ions }: (typeof products)[number], ion: string) =>
        ions.find(({ formula }) => formula === ion)!.count;
      const metals = count(basic!, metal) / count(carbonate!, metal);
      const pairs = count(basic!, "OH-") / 2;
      const balance = (basic!.pKsp.toNumber("") - metals * carbonate!.pKsp.toNumber("")) / pairs;
      return { index: Math.log10(index!.toNumber("")), balance };
    };
    const [copper, zinc, lead] = ["Cu^2+", "Zn^2+", "Pb^2+"].map(logB) as [
      ReturnType<typeof logB>,
      ReturnType<typeof logB>,
      ReturnType<typeof logB>,
    ];
    expect(copper.index - zinc.index).toBeCloseTo(zinc.balance - copper.balance, 4);
    expect(copper.index - lead.index).toBeCloseTo(lead.balance - copper.balance, 4);
  });

  it("say what practice knows of each, as the table has it", () => {
    let told = 0;
    for (const { metal, practice } of [...CARBONATES(), ...SETTLED()]) {
      for (const [precipitant, words] of Object.entries(practice)) {
        expect(of(metal, precipitant), `${metal} ${precipitant}`).toMatchObject({
          metal,
          precipitant,
          practice: words,
        });
        told += 1;
      }
    }
    expect(told).toBeGreaterThan(25);
  });
});

describe("what a cake keeps and how often it is washed", () => {
  // the planning values doubled for gravity: 0.5 to 1 mL/g, 1 to 2, and 3 to 6 of settled sludge
  it.each([
    ["suction", 0.75, 0.25],
    ["gravity", 1.5, 0.5],
    ["settled", 4.5, 1.5],
  ] as const)("a dense precipitate on %s: %d ± %d mL/g", (filter, middle, half) => {
    const retained = retainedLiquor("dense precipitate", filter);
    expect(retained.toNumber("mL/g")).toBe(middle);
    // a rectangle: half its width over √3
    expect(retained.standardUncertainty!.toNumber()).toBeCloseTo(half / Math.sqrt(3), 9);
  });

  it("is forty times at most", () => {
    // 50 mL of 20 g/L, 1 g, halved by 50 mL each: 2^-40 = 9.095e-13
    const washes = (targetResidue: string) =>
      washPlan({
        dryCakeMass: "25 g",
        retainedLiquorPerGram: "2 mL/g",
        saltConcentration: "20 g/L",
        washVolume: "50 mL",
        targetResidue,
      } as Parameters<typeof washPlan>[0]).washes;
    expect(washes("9.1e-13 g")).toBe(40);
    expect(attempt(() => washes("9.0e-13 g"))).toMatchObject({
      ok: false,
      error: { code: "solubility.out-of-reach", problem: expect.stringContaining("40 washes") },
    });
  });
});
