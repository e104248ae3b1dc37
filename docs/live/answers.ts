// What the live page says: from a text to a piece of HTML, without a page around it, so that tests ask the same questions.
import {
  type AqueousRequest,
  anhydrousOf,
  aqueousComposition,
  attempt,
  balance,
  benchSheet,
  explain,
  halfReactions,
  identify,
  isPreparativeError,
  molarMass,
  netIonic,
  type PlanRequest,
  type PreparativeError,
  parseFormula,
  percentComposition,
  planPreparation,
  solubilityDiagram,
  solubilityOf,
} from "preparative";

const SPECIAL: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };
const escaped = (text: string): string => text.replace(/[&<>"]/g, (c) => SPECIAL[c]!);
const paragraph = (html: string): string => `<p>${html}</p>`;
const working = (text: string, title = "Working"): string =>
  `<details><summary>${title}</summary><pre>${escaped(text)}</pre></details>`;
const list = (items: readonly string[]): string => `<ul>${items.map((item) => `<li>${item}</li>`).join("")}</ul>`;

function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const cells = (row: readonly string[], tag: string): string => row.map((cell) => `<${tag}>${cell}</${tag}>`).join("");
  return `<table><thead><tr>${cells(head, "th")}</tr></thead><tbody>${rows.map((row) => `<tr>${cells(row, "td")}</tr>`).join("")}</tbody></table>`;
}

/** A refusal: what is wrong, the place under a caret, and what to try. */
export function refusal(error: PreparativeError): string {
  const { problem, input, position, hint, code, incomplete } = error;
  const place =
    input === undefined || position === undefined ? "" : `<pre>${escaped(input)}\n${" ".repeat(position)}^</pre>`;
  const help = hint === undefined ? "" : paragraph(`Try: ${escaped(hint)}`);
  return `<div class="${incomplete ? "unfinished" : "refused"}">${paragraph(escaped(problem))}${place}${help}<p><code>${code}</code></p></div>`;
}

/** The answer, or the refusal in its place. */
function answered(ask: () => string): string {
  const outcome = attempt(ask);
  return outcome.ok ? outcome.value : refusal(outcome.error);
}

/** A formula, a name or a word of the shop: what it may be, what a mole weighs, what is in it, how much dissolves. */
export const aboutFormula = (text: string): string =>
  answered(() => {
    const { formula, meanings, hint } = identify(text);
    if (meanings.length === 0) {
      // a hint that names what was meant helps more than the place; a text with digits or few letters is a formula
      const read = attempt(() => parseFormula(text));
      if (read.ok) return aboutOne(text);
      return hint?.startsWith("did you mean") || / /.test(text)
        ? paragraph(escaped(`Not read. Try: ${hint}`))
        : refusal(read.error);
    }
    const remarks = meanings.flatMap(({ name, formula: own, decides, strength, remarks: all }) => [
      `<strong>${parseFormula(own).toHTML()}</strong> ${escaped(name)}${decides === undefined ? "" : ` (${escaped(decides)})`}${
        strength === undefined ? "" : `, usually ${strength.lower} to ${strength.upper}`
      }${all.length === 0 ? "" : list(all.map(escaped))}`,
    ]);
    const open = formula === undefined && hint !== undefined ? paragraph(escaped(hint)) : "";
    return `${list(remarks)}${open}${aboutOne(formula ?? meanings[0]!.formula)}`;
  });

function aboutOne(text: string): string {
  const formula = parseFormula(text);
  const mass = molarMass(formula);
  const parts = percentComposition(formula).map(({ symbol, count, massFraction }) => [
    symbol,
    count.toFraction(),
    massFraction.format({ unit: "%", decimals: 2 }),
  ]);
  const dissolves = attempt(() => solubilityOf(formula, "20 °C").perHundredGramsWater.format());
  const curve = attempt(() => solubilityDiagram({ formulas: [formula] }));
  return [
    `<h3>${formula.toHTML()}</h3>`,
    paragraph(`<strong>${escaped(mass.format())}</strong>`),
    table(["element", "atoms", "share of the mass"], parts),
    dissolves.ok
      ? paragraph(
          `100 g of water at 20 °C dissolve ${escaped(dissolves.value)}, counted as ${anhydrousOf(formula).toHTML()}`,
        )
      : "",
    curve.ok ? curve.value : "",
    working(String(explain(mass))),
  ].join("");
}

/** An equation: balanced, with its working, its ions and its halves. */
export const aboutEquation = (text: string): string =>
  answered(() => {
    const balanced = balance(text);
    const ions = attempt(() => netIonic(balanced));
    const halves = attempt(() => halfReactions(balanced));
    return [
      `<p class="result">${balanced.toHTML()}</p>`,
      balanced.remarks.length === 0 ? "" : list(balanced.remarks.map(escaped)),
      working(String(explain(balanced)), "How the coefficients follow"),
      ions.ok && String(ions.value) !== String(balanced)
        ? paragraph(`Ions that take part: ${ions.value.toHTML()}`)
        : "",
      halves.ok ? working(String(explain(halves.value)), "Half-reactions") : "",
    ].join("");
  });

/** Lines such as "28.7 g ZnSO4·7H2O" or "0.1 mol HCl", and one of water: "200 mL water". */
export function mixtureOf(text: string): AqueousRequest {
  const lines = text
    .split("\n")
    .map((line) => line.trim())
    .filter((line) => line !== "");
  const read = lines.map((line) => /^([\d.,]+\s*[^\d\s]+)\s+(?:of\s+)?(.+)$/.exec(line) ?? [line, "", line]);
  const water = read.find(([, , what]) => what === "water");
  return {
    water: (water?.[1] ?? "1 kg") as "1 kg",
    dissolved: read
      .filter((one) => one !== water)
      .map(([, amount, what]) => ({
        formula: identify(what!).formula ?? what!,
        ...(/mol$/.test(amount!) ? { amount: amount as "1 mol" } : { mass: amount as "1 g" }),
      })),
  };
}

/** A mixture in water: pH, solids, what stays in solution. */
export const aboutMixture = (text: string): string =>
  answered(() => {
    const { pH, solids, filtrate, unknown } = aqueousComposition(mixtureOf(text));
    return [
      `<p class="result">pH ${escaped(pH.format({ decimals: 1 }))}</p>`,
      solids.length === 0
        ? paragraph("No solid stands.")
        : table(
            ["solid", "", "mass"],
            solids.map((one) => [
              parseFormula(one.formula).toHTML(),
              escaped(one.name),
              one.mass.format({ significant: 3 }),
            ]),
          ),
      table(
        ["in solution", "concentration", "share of what was put in"],
        filtrate
          .filter(({ share }) => share !== undefined)
          .map(({ formula, concentration, share }) => [
            parseFormula(formula).toHTML(),
            concentration.format({ significant: 3 }),
            share!.format({ unit: "%", significant: 3 }),
          ]),
      ),
      unknown.length === 0 ? "" : list(unknown.map(escaped)),
      working(String(explain(pH)), "Working of the pH"),
    ].join("");
  });

/** Fields of the form of a preparation. */
export interface PreparationForm {
  readonly equation: string;
  readonly product: string;
  /** A line for each material: name; formula; assay. */
  readonly materials: string;
  readonly amount: string;
}

export function requestOf({ equation, product, materials, amount }: PreparationForm): PlanRequest {
  const rows = materials
    .split("\n")
    .map((line) => line.split(";").map((cell) => cell.trim()))
    .filter(([name]) => name !== "");
  return {
    equation,
    product,
    materials: rows.map(([name, form, assay]) => ({
      name: name!,
      form: form ?? name!,
      ...(assay === undefined || assay === "" ? {} : { assay: assay as "100 %" }),
    })),
    scale: { product: amount as "10 g" },
  };
}

/** A whole preparation: the sheet as a page of its own, or the refusal. */
export function aboutPreparation(form: PreparationForm): { readonly sheet?: string; readonly refused?: string } {
  try {
    return { sheet: benchSheet(planPreparation(requestOf(form)), { format: "html" }) };
  } catch (error) {
    if (isPreparativeError(error)) return { refused: refusal(error) };
    throw error;
  }
}
