// A pottery studio stocks its glaze shelf: basic zinc carbonate from moss killer and washing soda, and zinc acetate from
// part of it with vinegar. `npm run demo` prints the page that stands beside the vessel, and what came of it; `npm run demo --
// FOLDER` writes the whole sheets (hazards, drying record, waste, what every figure rests on) and the label as HTML there.
//
// INVENTED: the studio, the packs, the prices, the assays and every weighing. Computed: all chemistry.
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import {
  benchSheet,
  bottleLabel,
  evaluateRun,
  explain,
  type Plan,
  parseFormula,
  planPreparation,
  type ShelfMaterial,
} from "preparative";

// The pack says "zinc sulfate" and no more. Change one line to change what is in it:
const mossKiller: ShelfMaterial = {
  name: "moss killer",
  form: "ZnSO4·H2O", // the monohydrate; write "ZnSO4·7H2O" for the heptahydrate
  assay: "98.0(5) %",
  pack: { size: "2.5 kg", price: "19.90 EUR" },
  note: "pack, price and assay invented",
};

const washingSoda: ShelfMaterial = {
  name: "washing soda",
  form: "Na2CO3·10H2O", // crystals; write "Na2CO3·H2O" for the powder in the box
  assay: "99 %",
  excess: "5 %",
  pack: { size: "1 kg", price: "2.40 EUR" },
  note: "pack, price and assay invented",
};

const carbonate = planPreparation({
  title: "Basic zinc carbonate for the glaze shelf",
  equation: "ZnSO4 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + Na2SO4 + CO2",
  product: "Zn5(CO3)2(OH)6",
  productName: "basic zinc carbonate",
  materials: [mossKiller, washingSoda],
  scale: { material: "moss killer", portion: "250.0 g" },
  temperature: "20 °C",
  pressure: "101.325 kPa",
  readability: { mass: "0.1 g", volume: "10 mL" },
});

/** The parts of a sheet that somebody follows while working. */
const BESIDE_THE_VESSEL = ["Weigh and measure", "Procedure", "What the mass says"];

function onePage(plan: Plan): string {
  const [head, ...parts] = benchSheet(plan, { parts: ["bench"] }).split(/\n\n(?=.+\n-+\n)/);
  const warned = plan.cautions.substances
    .filter(({ signalWord }) => signalWord !== undefined)
    .map(({ material, signalWord }) => `${parseFormula(material).toUnicode()}: ${signalWord}`);
  const shown = parts.filter((part) => BESIDE_THE_VESSEL.some((title) => part.startsWith(title)));
  const care = `Goggles on; read the safety data sheets first (${warned.join(", ")}).`;
  return [`${head}\n${care}`, ...shown].join("\n\n");
}

console.log(onePage(carbonate));

// What really happened on the day (invented).
const run = evaluateRun(carbonate, {
  weighed: { "moss killer": "248.6 g", "washing soda": "430.2 g" },
  dried: ["149.8 g", "143.1 g", "143.0 g"],
  note: "Weighings invented.",
});
const onTheDay = `\nOn the day ${run.dryMass?.format({ decimals: 1, uncertainty: "none" })} came out, a yield of ${run.percentYield?.format({ decimals: 1 })}: ${run.verdict[0]?.text}.`;

const vinegar: ShelfMaterial = {
  name: "vinegar",
  form: "CH3COOH",
  strength: "5.0 % w/w",
  density: "1.006 g/mL",
  excess: "2 %",
  pack: { size: "5 L", price: "4.50 EUR" },
  note: "pack and price invented; 5 % taken as 5 g of acetic acid in 100 g",
};

const acetate = planPreparation({
  title: "Zinc acetate dihydrate from part of it",
  equation: "Zn5(CO3)2(OH)6 + CH3COOH + H2O -> Zn(CH3COO)2·2H2O + CO2",
  product: "Zn(CH3COO)2·2H2O",
  productName: "zinc acetate dihydrate",
  materials: [run.asMaterial({ name: "basic zinc carbonate", assay: "97 %" }), vinegar],
  scale: { material: "basic zinc carbonate", portion: "40.0 g" },
  readability: { mass: "0.1 g", volume: "10 mL" },
});
console.log(
  `${onTheDay} Next, ${acetate.product.theoreticalYield.format({ decimals: 0, uncertainty: "none" })} of zinc acetate from ${acetate.weighings.map(({ portion, material }) => `${portion.format({ uncertainty: "none" })} of ${material}`).join(" and ")}.`,
);

const folder = process.argv[2];
if (folder !== undefined) {
  mkdirSync(folder, { recursive: true });
  const pages = {
    "basic-zinc-carbonate": benchSheet(carbonate, { format: "html" }),
    "basic-zinc-carbonate-run": benchSheet(run, { format: "html" }),
    "basic-zinc-carbonate-label": bottleLabel(run, { format: "html" }),
    "zinc-acetate": benchSheet(acetate, { format: "html" }),
  };
  for (const [name, page] of Object.entries(pages)) writeFileSync(join(folder, `${name}.html`), page);
  writeFileSync(join(folder, "theoretical-yield.txt"), `${explain(carbonate.product.theoreticalYield)}\n`);
  console.log(`HTML sheets written to ${folder}`);
} else console.log("The whole sheets as HTML: npm run demo -- FOLDER");
