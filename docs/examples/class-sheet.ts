// One preparation for a class: a page for whoever prepares it, and the sheet that each group gets. Groups, packs and title are
// invented. Try it: npx tsx --tsconfig test/tsconfig.json docs/examples/class-sheet.ts
import { benchSheet, planPreparation } from "preparative";

const plan = planPreparation({
  title: "Green pigment for the tile frieze",
  equation: "CuSO4 + Na2CO3 + H2O -> Cu2(OH)2CO3 + Na2SO4 + CO2",
  product: "Cu2(OH)2CO3",
  productName: "basic copper carbonate",
  materials: [
    { name: "blue vitriol", form: "CuSO4·5H2O", pack: { size: "1 kg", price: "9.90 EUR" } },
    { name: "washing soda", form: "Na2CO3·10H2O", excess: "5 %", pack: { size: "1 kg", price: "2.40 EUR" } },
  ],
  scale: { material: "blue vitriol", portion: "25 g" },
  readability: { mass: "0.1 g", volume: "1 mL" },
});

export const classSheets = (groups: readonly string[]) => ({
  /** The page for the class, and after it the sheet of one group. */
  whole: benchSheet(plan, { groups: groups.length }),
  /** What goes to each table, with the name of the group on it. */
  tables: groups.map((name) => `Table ${name}\n\n${benchSheet(plan)}`),
});

if (process.argv[1]?.endsWith("class-sheet.ts")) console.log(classSheets(["oak", "ash", "elm"]).whole);
