// Labels for the jars of a stockroom: what is written on the old jar goes in, a page with hazards comes out, ready to print;
// what leaves the content open is listed for a person to decide. Jars invented. Try it:
// npx tsx --tsconfig test/tsconfig.json docs/examples/stockroom-labels.ts FOLDER
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { attempt, bottleLabel, identify } from "preparative";

export interface Jar {
  /** What stands on it. */
  readonly says: string;
  /** Strength, where it is a solution. */
  readonly strength?: string;
}

export const JARS: readonly Jar[] = [
  { says: "blue vitriol" },
  { says: "Na2CO3 10H2O" },
  { says: "washing soda" },
  { says: "battery acid", strength: "37 %" },
  { says: "table salt" },
  { says: "blue stuff, Tom's" },
];

export interface Labels {
  /** One page for each jar. */
  readonly pages: readonly { readonly formula: string; readonly html: string }[];
  /** Jars without a label, and why. */
  readonly open: readonly string[];
}

export function labelsFor(jars: readonly Jar[]): Labels {
  const pages: { formula: string; html: string }[] = [];
  const open: string[] = [];
  for (const { says, strength } of jars) {
    const { formula, meanings, hint } = identify(says);
    if (formula === undefined) {
      const choices = meanings.map((one) => one.formula).join(" or ");
      open.push(`${says}: ${choices === "" ? (hint ?? "not known") : choices}`);
      continue;
    }
    const made = attempt(() => bottleLabel(formula, { format: "html", strength: strength as "37 %" | undefined }));
    if (made.ok) pages.push({ formula, html: made.value });
    else open.push(`${says}: ${made.error.problem}`);
  }
  return { pages, open };
}

const [, script, folder = "labels"] = process.argv;
if (script?.endsWith("stockroom-labels.ts")) {
  const { pages, open } = labelsFor(JARS);
  mkdirSync(folder, { recursive: true });
  for (const { formula, html } of pages) writeFileSync(join(folder, `${formula.replace(/\W/g, "_")}.html`), html);
  console.log(`${pages.length} labels written to ${folder}`);
  for (const line of open) console.log(`no label: ${line}`);
}
