// Six kinds of preparation on paper, and the other papers of a preparation: `npm run sheets` writes each into
// docs/examples/sheets, where they can be read as they print. INVENTED: packs, prices, assays and observations. Computed: all
// chemistry.
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { benchSheet, bottleLabel, evaluateRun, type PlanRequest, planPreparation, planSequence } from "preparative";

const INVENTED = "pack, price and assay invented";

/** The requests, by the name of their files. */
export const SHEETS: Readonly<Record<string, PlanRequest>> = {
  precipitation: {
    title: "Basic zinc carbonate for the glaze shelf",
    equation: "ZnSO4 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + Na2SO4 + CO2",
    product: "Zn5(CO3)2(OH)6",
    productName: "basic zinc carbonate",
    materials: [
      { name: "moss killer", form: "ZnSO4·H2O", assay: "98.0(5) %", note: INVENTED },
      { name: "washing soda", form: "Na2CO3·10H2O", assay: "99 %", excess: "5 %", note: INVENTED },
    ],
    scale: { material: "moss killer", portion: "250.0 g" },
    readability: { mass: "0.1 g", volume: "10 mL" },
  },
  neutralisation: {
    title: "Zinc acetate dihydrate from basic zinc carbonate and vinegar",
    equation: "Zn5(CO3)2(OH)6 + CH3COOH + H2O -> Zn(CH3COO)2·2H2O + CO2",
    product: "Zn(CH3COO)2·2H2O",
    productName: "zinc acetate dihydrate",
    materials: [
      { name: "basic zinc carbonate", form: "Zn5(CO3)2(OH)6", assay: "97 %", note: INVENTED },
      { name: "vinegar", form: "CH3COOH", strength: "5.0 % w/w", density: "1.006 g/mL", excess: "2 %", note: INVENTED },
    ],
    scale: { material: "basic zinc carbonate", portion: "40.0 g" },
    readability: { mass: "0.1 g", volume: "10 mL" },
  },
  "metal-and-acid": {
    title: "Iron(II) sulfate heptahydrate from steel wool",
    equation: "Fe + H2SO4 + H2O -> FeSO4·7H2O + H2",
    product: "FeSO4·7H2O",
    productName: "iron(II) sulfate heptahydrate",
    materials: [
      { name: "steel wool", form: "Fe", note: INVENTED },
      { name: "battery acid", form: "H2SO4", strength: "37 % w/w", excess: "5 %", note: INVENTED },
    ],
    scale: { material: "steel wool", portion: "20.0 g" },
  },
  "double-salt": {
    title: "Potash alum from its two sulfates",
    equation: "K2SO4 + Al2(SO4)3 + H2O -> KAl(SO4)2·12H2O",
    product: "KAl(SO4)2·12H2O",
    productName: "potash alum",
    materials: [
      { name: "potassium sulfate", form: "K2SO4", note: INVENTED },
      { name: "aluminium sulfate", form: "Al2(SO4)3·18H2O", note: INVENTED },
    ],
    scale: { product: "100 g" },
  },
  displacement: {
    title: "Copper powder from blue vitriol and iron",
    equation: "CuSO4 + Fe -> Cu + FeSO4",
    product: "Cu",
    productName: "copper powder",
    materials: [
      { name: "blue vitriol", form: "CuSO4·5H2O", excess: "5 %", note: INVENTED },
      { name: "iron filings", form: "Fe", note: INVENTED },
    ],
    scale: { material: "iron filings", portion: "10.0 g" },
  },
  firing: {
    title: "Quicklime from marble",
    equation: "CaCO3 -> CaO + CO2",
    product: "CaO",
    productName: "quicklime",
    materials: [{ name: "marble chips", form: "CaCO3", assay: "97 %", note: INVENTED }],
    scale: { material: "marble chips", portion: "100.0 g" },
  },
};

/** A batch that was weighed otherwise than planned, spilled, dried in a dish, and ignited. */
const observed = () =>
  evaluateRun(planPreparation(SHEETS["precipitation"]!), {
    weighed: { "washing soda": "421.0 g" },
    measured: { "moss killer": "800 mL" },
    assays: { "moss killer": "97.2 %" },
    temperature: "19 °C",
    lost: [{ at: "wash", mass: "4 g", of: "cake" }],
    tests: { filtrate: "clear", lastWash: "clear" },
    pH: 8.2,
    filtrateVolume: "2.1 L",
    washes: 2,
    wetCake: "420 g",
    dried: [
      { gross: "378.7 g", tare: "240.0 g" },
      { gross: "378.6 g", tare: "240.0 g" },
    ],
    ignition: { before: "2.00 g", after: "1.48 g" },
    note: "the tap water was hard",
  });

const chain = () =>
  planSequence({
    steps: [
      {
        equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
        product: "CaCO3",
        productName: "chalk",
        materials: [
          { name: "de-icer", form: "CaCl2·2H2O", pack: { size: "1 kg", price: "3 EUR" } },
          { name: "soda ash", form: "Na2CO3", excess: "5 %", pack: { size: "1 kg", price: "2 EUR" } },
        ],
      },
      { equation: "CaCO3 -> CaO + CO2", product: "CaO", materials: [{ name: "chalk", form: "CaCO3" }] },
    ],
    wanted: "10 g",
  });

/** Each paper as its file holds it, by file name. */
export function sheetFiles(): ReadonlyMap<string, string> {
  const files = new Map<string, string>();
  for (const [name, request] of Object.entries(SHEETS)) {
    const plan = planPreparation(request);
    files.set(`${name}.txt`, benchSheet(plan));
    files.set(`${name}.html`, benchSheet(plan, { format: "html" }));
  }
  const run = observed();
  files.set("run.txt", benchSheet(run));
  files.set("run.html", benchSheet(run, { format: "html" }));
  files.set("class.txt", benchSheet(run.plan, { groups: ["red", "blue", "green"], parts: ["bench"] }));
  files.set("chain.txt", benchSheet(chain()));
  files.set("label.txt", bottleLabel(run, { date: "1 May", batch: "7", owner: "A. B." }));
  files.set("label.html", bottleLabel(run, { format: "html", date: "1 May", batch: "7", owner: "A. B." }));
  files.set(
    "label-of-a-jar.html",
    bottleLabel("blue vitriol", { format: "html", size: "60 x 30 mm", content: "250 g" }),
  );
  return files;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const folder = process.argv[2] ?? join(fileURLToPath(new URL(".", import.meta.url)), "sheets");
  mkdirSync(folder, { recursive: true });
  for (const [name, text] of sheetFiles()) writeFileSync(join(folder, name), text);
  console.log(`sheets written to ${folder}`);
}
