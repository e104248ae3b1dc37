// Shelves that the tests of routes share. All names and packs are invented.
import type { Route, Routes, ShelfMaterial } from "preparative";

const STRENGTHS: Readonly<Record<string, Pick<ShelfMaterial, "strength" | "density">>> = {
  CH3COOH: { strength: "5 %", density: "1.006 g/mL" },
  HCl: { strength: "30 %", density: "1.149 g/mL" },
  H2SO4: { strength: "37 %", density: "1.28 g/mL" },
  HNO3: { strength: "30 %", density: "1.18 g/mL" },
  NH3: { strength: "10 %", density: "0.957 g/mL" },
  H2O2: { strength: "3 %", density: "1.01 g/mL" },
};

/** Jars of these forms, each called by its form; acids and the like as the solutions they are sold as. */
export const jars = (...forms: readonly string[]): ShelfMaterial[] =>
  forms.map((form) => ({ name: form, form, ...STRENGTHS[form] }));

/** What reacts in the steps of a route, as written: `CuSO4·5H2O + Na2CO3 > Cu₂(OH)₂CO₃`. */
export const written = (route: Route): string =>
  route.steps
    .map(({ plan, product }) => `${plan.weighings.map(({ material }) => material).join(" + ")} > ${product}`)
    .join("; ");

export const waysOf = ({ routes }: Pick<Routes, "routes">): string[] => routes.map(written);
