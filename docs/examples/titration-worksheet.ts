// A titration worksheet: the acid is standardised against soda, then the vinegar of the studio is titrated with lye that the
// acid has measured. All figures invented. Try it: npx tsx --tsconfig test/tsconfig.json docs/examples/titration-worksheet.ts
import { explain, standardise, titrate, uncertaintyBudget } from "preparative";

const acid = standardise({
  of: "HCl",
  standard: "Na2CO3",
  purity: "99.9(1) %",
  equation: "Na2CO3 + HCl -> NaCl + H2O + CO2",
  portions: [
    { mass: "0.1325(2) g", titre: { initial: "0.05 mL", final: "25.02 mL" } },
    { mass: "0.1341(2) g", titre: { initial: "0.10 mL", final: "25.41 mL" } },
    { mass: "0.1318(2) g", titre: { initial: "0.00 mL", final: "24.86 mL" } },
  ],
});

const lye = titrate({
  titrant: acid.titrant,
  equation: "NaOH + HCl -> NaCl + H2O",
  analyte: "NaOH",
  sample: "25.00(3) mL",
  titre: ["24.40 mL", "24.45 mL", "25.90 mL"],
  leftOut: [{ titre: 3, because: "run past the colour change" }],
});

const vinegar = titrate({
  titrant: { strength: lye.concentration!, of: "NaOH" },
  equation: "CH3COOH + NaOH -> CH3COONa + H2O",
  analyte: "CH3COOH",
  sample: "2.000(5) g",
  titre: ["17.30 mL", "17.35 mL", "17.25 mL"],
});

export function worksheet(): string[] {
  const strength = vinegar.massFraction!;
  return [
    `acid      ${acid.concentration.format({ decimals: 4, uncertainty: "plus-minus" })}`,
    `lye       ${lye.concentration!.format({ decimals: 4, uncertainty: "plus-minus" })}`,
    `vinegar   ${strength.format({ decimals: 2, uncertainty: "plus-minus" })} acetic acid`,
    ...[...acid.warnings, ...lye.warnings, ...vinegar.warnings].map((line) => `note      ${line}`),
    "what the doubt of the vinegar is made of",
    ...uncertaintyBudget(strength)
      .slice(0, 4)
      .map(({ input, share }) => `  ${(100 * share).toFixed(0).padStart(3)} %  ${input}`),
    `worked out last: ${explain(strength).steps.at(-1)!.formula} = ${explain(strength).steps.at(-1)!.substituted}`,
  ];
}

const [, script] = process.argv;
if (script?.endsWith("titration-worksheet.ts")) console.log(worksheet().join("\n"));
