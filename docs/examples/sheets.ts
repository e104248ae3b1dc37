// Six kinds of preparation on paper: `npm run sheets` writes each as text and as HTML into docs/examples/sheets, where they
// can be read as they print. INVENTED: packs, prices and assays. Computed: all chemistry.
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { benchSheet, type PlanRequest, planPreparation } from "preparative";

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

/** Each sheet as its files hold it, by file name. */
export function sheetFiles(): ReadonlyMap<string, string> {
  const files = new Map<string, string>();
  for (const [name, request] of Object.entries(SHEETS)) {
    const plan = planPreparation(request);
    files.set(`${name}.txt`, benchSheet(plan));
    files.set(`${name}.html`, benchSheet(plan, { format: "html" }));
  }
  return files;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const folder = process.argv[2] ?? join(fileURLToPath(new URL(".", import.meta.url)), "sheets");
  mkdirSync(folder, { recursive: true });
  for (const [name, text] of sheetFiles()) writeFileSync(join(folder, name), text);
  console.log(`sheets written to ${folder}`);
}
