// Figures of the README, the guides and the printed sheets, worked out again by plain arithmetic, step by step, without the
// library. Atomic weights: CIAAW, abridged to five figures (2021, from memory of the table on the wall). Molar volume of a
// gas at 20 °C and 101.325 kPa: 8.314462618 × 293.15 / 101.325 = 24.055 L/mol (SI constants). Densities and solubility
// products: CRC Handbook of Chemistry and Physics (from memory).
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";

const H = 1.008;
const C = 12.011;
const O = 15.999;
const Na = 22.99;
const Mg = 24.305;
const Al = 26.982;
const S = 32.06;
const Cl = 35.45;
const K = 39.098;
const Ca = 40.078;
const Fe = 55.845;
const Cu = 63.546;
const Zn = 65.38;

const H2O = 2 * H + O;
const OH = O + H;
const CO3 = C + 3 * O;
const SO4 = S + 4 * O;
const acetate = 2 * C + 3 * H + 2 * O;

const ZnSO4 = Zn + SO4;
const soda = 2 * Na + CO3;
const sodaCrystals = soda + 10 * H2O;
const basicCarbonate = 5 * Zn + 2 * CO3 + 6 * OH;
const CuSO4 = Cu + SO4;
const blueVitriol = CuSO4 + 5 * H2O;
const alum = K + Al + 2 * SO4 + 12 * H2O;
const aluminiumSulfate = 2 * Al + 3 * SO4 + 18 * H2O;
const ethanol = 2 * C + 6 * H + O;
const peroxide = 2 * H + 2 * O;
const aceticAcid = 2 * C + 4 * H + 2 * O;
const sulfuricAcid = 2 * H + SO4;

/** What is not limiting is weighed to the next 0.1 g above, so that its excess is kept. */
const up = (grams: number): number => Math.ceil(grams * 10) / 10;

/** Litres of a mole of gas at 20 °C and one atmosphere. */
const GAS = (8.314462618 * 293.15) / 101.325;

const texts = new Map<string, string>();

function textOf(file: string): string {
  let text = texts.get(file);
  if (text === undefined) {
    text = readFileSync(new URL(`../../${file}`, import.meta.url), "utf8").replace(/\s+/g, " ");
    texts.set(file, text);
  }
  return text;
}

/** A printed figure: the file, what stands around it with `#` in its place, and what it should be. */
type Figure = readonly [file: string, around: string, value: number];

const readme = "README.md";
const sheet = (name: string): string => `docs/examples/sheets/${name}.txt`;
const guide = (name: string): string => `docs/guide/${name}.md`;

// README: 250.0 g of heptahydrate of 98 %, 5 % excess of soda
const n1 = (250 * 0.98) / (ZnSO4 + 7 * H2O);

// sheet of the basic carbonate: 250.0 g of monohydrate of 98 %, crystals of 99 %, 5 % excess
const n2 = (250 * 0.98) / (ZnSO4 + H2O);
const soda2 = (n2 * 1.05 * sodaCrystals) / 0.99;

// copper from 10.0 g of iron; the sheet rounds the vitriol up to 47.0 g
const n3 = 10 / Fe;

// alum: 70.2 g of aluminium sulfate make twice as many moles of alum
const n4 = 70.2 / aluminiumSulfate;

// green vitriol from 20.0 g of iron and acid of 37 %, 5 % excess
const n5 = 20 / Fe;
const acid5 = (n5 * 1.05 * sulfuricAcid) / 0.37;

// zinc acetate from 40.0 g of basic carbonate of 97 % and vinegar of 5.0 %, 870 mL of 1.006 g/mL
const n6 = (40 * 0.97) / basicCarbonate;

// quicklime from 100.0 g of marble of 97 %
const n7 = 97 / (Ca + CO3);

const FIGURES: readonly Figure[] = [
  [readme, "and # g Na₂CO₃·10H₂O", up(n1 * 1.05 * sodaCrystals)],
  [readme, "expect # g and", (n1 / 5) * basicCarbonate],
  [readme, "g and # L of CO₂", n1 * (3 / 5) * GAS],
  // 220 g of soda limit: five moles for one of product
  [readme, "limits; yield # ±", 78.2 / ((220 / sodaCrystals / 5) * basicCarbonate) / 0.01],
  [readme, "/ # g/mol", ZnSO4 + 7 * H2O],

  [sheet("precipitation"), "(100 % = # g)", (n2 / 5) * basicCarbonate],
  [sheet("precipitation"), "Na₂CO₃·10H₂O # g", up(soda2)],
  [sheet("precipitation"), "Gas # L CO₂", n2 * (3 / 5) * GAS],
  [sheet("precipitation"), "portions (about # g", soda2 / 7],
  [sheet("precipitation"), "in all, # L from one portion", (n2 * (3 / 5) * GAS) / 7],
  // one mole in a kilogram of water, less the water that 250 g of monohydrate bring
  [sheet("precipitation"), "water for step 2 H₂O # L", n2 - (n2 * H2O) / 1000],
  // the cake keeps 410 mL of each wash of 2.1 L: three times
  [sheet("precipitation"), "go from 50.2 g to # g", 50.2 * (0.41 / (0.41 + 2.1)) ** 3],
  [sheet("precipitation"), "about # g ZnCO₃", n2 * (Zn + CO3)],
  [sheet("precipitation"), "about # g Zn(OH)₂", n2 * (Zn + 2 * OH)],

  [sheet("displacement"), "(100 % = # g)", n3 * Cu],
  [sheet("displacement"), "______ g # % excess", (47.0 / blueVitriol / n3 - 1) * 100],
  [sheet("displacement"), "water for step 2 H₂O # mL", (47.0 / blueVitriol) * (1000 - 5 * H2O)],

  [sheet("double-salt"), "Al₂(SO₄)₃·18H₂O # g", (100 / alum / 2) * aluminiumSulfate],
  [sheet("double-salt"), "(100 % = # g)", n4 * 2 * alum],
  // 103 g of water keep 5.90 g of KAl(SO4)2 in each 100 g that the crystals leave; 258.2 and 216.2 of 474.4 g are salt and water
  [
    sheet("double-salt"),
    "cooled to 20 °C, # g of KAl(SO₄)₂·12H₂O",
    (n4 * 2 * 258.2 - 0.059 * 103) / (258.2 / 474.4 - 0.059 * (216.2 / 474.4)),
  ],

  [sheet("metal-and-acid"), "H₂SO₄ # g ______ g 5.0 % excess", acid5],
  [sheet("metal-and-acid"), "into acid): it is then # %", (acid5 * 0.37 * 100) / (acid5 + 48)],
  [sheet("metal-and-acid"), "Gas # L H₂", n5 * GAS],
  [sheet("metal-and-acid"), "H₂ in all, # mL from one", (n5 * GAS * 1000) / 20],
  [sheet("metal-and-acid"), "portions (about # g", 20 / 20],
  [sheet("metal-and-acid"), "(100 % = # g)", n5 * (Fe + SO4 + 7 * H2O)],
  // 157 g of contents less the dry salt and the acid that is left: 17.9 g in 100 g of that water at 5 °C (15.6 g at 0 °C, 20.5 g at 10 °C, CRC Handbook), and each
  // gram of crystals takes its own water along
  [
    sheet("metal-and-acid"),
    "FeSO₄·7H₂O crystallises, # % of it",
    (100 * (n5 * (Fe + SO4) - 0.1794 * (157 - n5 * (Fe + SO4) - (0.37 * acid5 - n5 * sulfuricAcid)))) /
      (n5 * (Fe + SO4 - 0.1794 * 7 * H2O)),
  ],

  [sheet("neutralisation"), "(100 % = # g)", n6 * 5 * (Zn + 2 * acetate + 2 * H2O)],
  [sheet("neutralisation"), "______ mL # % excess", ((870 * 1.006 * 0.05) / aceticAcid / (10 * n6) - 1) * 100],
  [sheet("neutralisation"), "Gas # L CO₂", n6 * 2 * GAS],
  [sheet("neutralisation"), "in all, # mL from one portion", (n6 * 2 * GAS * 1000) / 5],
  [sheet("neutralisation"), "portions (about # g each)", 40 / 5],

  [sheet("firing"), "(100 % = # g)", n7 * (Ca + O)],
  [sheet("firing"), "Gas # L CO₂", n7 * GAS],

  [guide("formulas"), 'M.toString() // => "# ±', blueVitriol],
  [guide("formulas"), '"ZnCO3", "ZnO").format({ decimals: 2 }) // => "# g"', (100 / (Zn + CO3)) * (Zn + O)],
  [
    guide("percent-of-what"),
    '"40 % w/w", { of: "C2H5OH", to: "mol/L" }).format({ decimals: 2, uncertainty: "none" }) // => "# mol/L"',
    (0.4 * 935.2) / ethanol,
  ],
  [
    guide("percent-of-what"),
    '"40 % w/v", { of: "C2H5OH", to: "mol/L" }).format({ decimals: 2, uncertainty: "none" }) // => "# mol/L"',
    400 / ethanol,
  ],
  [
    guide("percent-of-what"),
    '"40 % v/v", { of: "C2H5OH", to: "mol/L" }).format({ decimals: 2, uncertainty: "none" }) // => "# mol/L"',
    (0.4 * 789.3) / ethanol,
  ],
  [
    guide("percent-of-what"),
    'basis: "w/v" }).format({ decimals: 2, uncertainty: "none" }) // => "# mol/L"',
    30 / peroxide,
  ],
  [
    guide("percent-of-what"),
    '"10 % w/w", { of: "CuSO4", to: "mol/L" }).format({ decimals: 3, uncertainty: "none" }) // => "# mol/L"',
    (0.1 * 1107) / CuSO4,
  ],
  [
    guide("percent-of-what"),
    'moisture: "2 %" }).format({ decimals: 3, uncertainty: "none" }) // => "# mol"',
    (100 * 0.98 * 0.98) / soda,
  ],
  [
    guide("percent-of-what"),
    '{ assay: "98 %" }).format({ decimals: 2, uncertainty: "none" }) // => "# g"',
    (0.1 * (Mg + SO4 + 7 * H2O)) / 0.98,
  ],
  [
    guide("preparations"),
    '250.0 g moss killer", "# g washing soda"',
    up((250 / (ZnSO4 + 7 * H2O)) * 1.05 * sodaCrystals),
  ],
  [
    guide("preparations"),
    'theoreticalYield.format({ decimals: 1 }) // => "# g"',
    (250 / (ZnSO4 + 7 * H2O) / 5) * basicCarbonate,
  ],
  // 20 g of chalk need 29.4 g of CaCl2·2H2O, rounded up on the balance; the soda follows with 5 % excess
  [guide("preparations"), '[1] // => "soda: portion # ±', up((20 / (Ca + CO3)) * 1.05 * soda)],
  [
    guide("solubility"),
    'chalk.byHand?.concentration.format({ significant: 2, uncertainty: "none" }) // => "# mol/L"',
    Math.sqrt(3.36e-9),
  ],
  [guide("quantities"), 'density.toString() // => "# ±', 10 / 8],
  // relative: 1 % and 0.5 %, as the root of the sum of squares
  [guide("quantities"), 'density.toString() // => "1.250 ± # g/mL"', 1.25 * Math.hypot(0.01, 0.005)],
  [guide("quantities"), '"[1.0, 1.2] g").toString() // => "1.100 ± # g"', 0.1 / Math.sqrt(3)],
  [guide("quantities"), 'readability: 0.1 }).toString() // => "12.500 ± # g"', 0.05 / Math.sqrt(3)],
  [guide("why-is-my-yield-156-percent"), "| # | CuSO₄·5H₂O and CuSO₄ |", blueVitriol / CuSO4],
  [guide("why-is-my-yield-156-percent"), "| # | ZnSO₄·7H₂O and ZnSO₄·H₂O |", (ZnSO4 + 7 * H2O) / (ZnSO4 + H2O)],
  [guide("why-is-my-yield-156-percent"), "| # | Na₂CO₃·10H₂O and Na₂CO₃ |", sodaCrystals / soda],
  [
    guide("why-is-my-yield-156-percent"),
    '"ZnSO4", { ZnO: "8.14 g" }).format({ decimals: 1, uncertainty: "none" }) // => "# g"',
    (8.14 / (Zn + O)) * ZnSO4,
  ],
  [
    guide("why-is-my-yield-156-percent"),
    '"ZnSO4·7H2O", { ZnO: "8.14 g" }).format({ decimals: 1, uncertainty: "none" }) // => "# g"',
    (8.14 / (Zn + O)) * (ZnSO4 + 7 * H2O),
  ],
  [
    guide("why-is-my-yield-156-percent"),
    'percentYield("48.2 g", theory).format({ decimals: 0, uncertainty: "none" }) // => "# %"',
    (48.2 / 44.28) * 100,
  ],
  [
    guide("why-is-my-yield-156-percent"),
    'moisture: "12 %" }).format({ decimals: 0, uncertainty: "none" }) // => "# %"',
    ((48.2 * 0.88) / 44.28) * 100,
  ],
  [
    guide("why-does-the-heptahydrate-need-more-grams"),
    'to: "ZnSO4·7H2O" }).format({ decimals: 1, uncertainty: "none" }) // => "# g"',
    (18.0 / (ZnSO4 + H2O)) * (ZnSO4 + 7 * H2O),
  ],
  [
    guide("why-does-the-heptahydrate-need-more-grams"),
    'waterContent("ZnSO4·7H2O").format({ decimals: 1, uncertainty: "none" }) // => "# % w/w"',
    ((7 * H2O) / (ZnSO4 + 7 * H2O)) * 100,
  ],
  [
    guide("why-does-the-heptahydrate-need-more-grams"),
    'to: "ZnO" }).format({ decimals: 1, uncertainty: "none" }) // => "# g"',
    ((100 * 5) / basicCarbonate) * (Zn + O),
  ],
  [
    guide("why-does-the-heptahydrate-need-more-grams"),
    'per: "Na" }).format({ decimals: 1, uncertainty: "none" }) // => "# g"',
    (10 / soda) * 2 * (Na + H + CO3),
  ],
  [
    guide("why-is-5-percent-vinegar-not-0-05-mol-per-litre"),
    'c.format({ decimals: 2, uncertainty: "none" }) // => "# mol/L"',
    (0.05 * 1006) / aceticAcid,
  ],
  [
    guide("why-is-5-percent-vinegar-not-0-05-mol-per-litre"),
    '"96 % w/w", { of: "H2SO4", to: "mol/L" }).format({ decimals: 1, uncertainty: "none" }) // => "# mol/L"',
    (0.96 * 1836) / sulfuricAcid,
  ],
  [
    guide("why-is-5-percent-vinegar-not-0-05-mol-per-litre"),
    'density: "1.19 g/mL" }).format({ decimals: 1, uncertainty: "none" }) // => "# mol/L"',
    (0.37 * 1190) / (H + Cl),
  ],
];

describe("figures of the pages, worked out by hand", () => {
  it("are at least sixty", () => expect(FIGURES.length).toBeGreaterThanOrEqual(60));

  it.each(FIGURES)("%s: %s", (file, around, value) => {
    const [before, after] = around.split("#") as [string, string];
    const text = textOf(file);
    const at = text.indexOf(before);
    expect(at, `"${before}" stands in ${file}`).toBeGreaterThanOrEqual(0);
    // several places may start alike: the one that goes on with a figure and then as said
    const escaped = [before, after].map((part) => part.replace(/[.*+?^${}()|[\]\\]/g, "\\$&"));
    const found = new RegExp(`${escaped[0]}([\\d.]+)${escaped[1]}`).exec(text);
    expect(found, `a figure in "${around}" of ${file}`).not.toBeNull();
    const printed = found![1]!;
    const step = 10 ** -(printed.split(".")[1]?.length ?? 0);
    // half a unit of the last printed figure, and five figures of the atomic weights
    expect(Math.abs(Number(printed) - value)).toBeLessThanOrEqual(0.5 * step + 2e-5 * value);
  });
});
