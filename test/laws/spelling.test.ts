// One way of writing formulas and ions in all tables, and answers that do not depend on how a formula is written.
import { describe, expect, it } from "vitest";
import { parseFormula, tryParseFormula } from "../../src/formula";
import { attempt } from "../../src/foundation/error";
import { constitutionOf } from "../../src/ion";
import { type PlanRequest, planPreparation } from "../../src/preparation";
import { solubilityRule, trySolubilityOf } from "../../src/solubility";
import { cautions, nameOf } from "../../src/substance";
import { REGISTRY } from "../../src/substance/data/registry";
import { BENCH_PREPARATIONS, requestOf } from "../data/bench-preparations";
import { tablesOf } from "../tools/tables";

/** Every string in every table of every layer, with where it stands. */
async function tableStrings(): Promise<[where: string, text: string][]> {
  const found: [string, string][] = [];
  const walk = (where: string, value: unknown): void => {
    if (typeof value === "string") found.push([where, value]);
    else if (typeof value === "object" && value !== null)
      for (const [key, inner] of Object.entries(value)) walk(`${where}.${key}`, inner);
  };
  for (const { layer, file, name, rows } of await tablesOf()) walk(`${layer}/data/${file} ${name}`, rows);
  return found;
}

const strings = await tableStrings();

/** A registry formula in other spellings that show the same parts. */
function spellingsOf(formula: string): string[] {
  const { parts } = parseFormula(formula);
  const hill = parts.map(({ multiplier, formula: part }) => {
    const bare = constitutionOf(part.toHill());
    const text = bare.readings.length > 1 ? part.toString() : part.toHill();
    return `${multiplier.equals(1) ? "" : multiplier.toFraction()}${text}`;
  });
  const all = [
    hill.join("·"),
    formula.replaceAll("CH3COO", "C2H3O2"),
    formula.replaceAll("C2O4", "(COO)2"),
    formula.replaceAll("HCOO", "CHO2"),
    formula.replaceAll("·", "."),
    formula.replaceAll("·", "*"),
  ];
  return [...new Set(all)].filter((spelling) => spelling !== formula);
}

describe("an answer does not depend on the spelling, over the registry", () => {
  const differing = (answer: (formula: string) => unknown, except: readonly string[] = []): string[] =>
    REGISTRY()
      .filter(({ formula }) => !except.includes(formula))
      .flatMap(({ formula }) => {
        const usual = JSON.stringify(answer(formula));
        return spellingsOf(formula)
          .filter((spelling) => JSON.stringify(answer(spelling)) !== usual)
          .map((spelling) => `${formula} as ${spelling}`);
      });

  it("names", () => {
    expect(differing((formula) => nameOf(formula))).toEqual([]);
  });

  it("cautions", () => {
    const answer = (formula: string) => {
      const { substances, incompatibilities } = cautions([formula]);
      return [substances.map(({ material, ...rest }) => rest), incompatibilities.map(({ code }) => code)];
    };
    expect(differing(answer)).toEqual([]);
  });

  it("solubility", () => {
    const answer = (formula: string) => {
      const figure = trySolubilityOf(formula, "20 °C");
      return figure.ok ? figure.value.perHundredGramsWater.value.toString() : figure.error.code;
    };
    expect(differing(answer)).toEqual([]);
  });

  it("solubility rules", () => {
    // kaolinite as its oxide formula, Al2Si2O7·2H2O
    expect(differing((formula) => attempt(() => solubilityRule(formula)), ["Al2Si2O5(OH)4"])).toEqual([]);
  });
});

describe("tables", () => {
  it("write the charge of an ion as in Pb^2+", () => {
    expect(strings.length).toBeGreaterThan(10_000);
    // a formula and a trailing sign with a digit
    const trailing = /(?<![\w^.)\]])(?:[A-Z][a-z]?\d*|[()[\]]\d*)+[+-][2-9](?![\w.^+*-])/;
    expect(strings.filter(([, text]) => trailing.test(text) && !/N-P2O5|IR-\d/.test(text))).toEqual([]);
  });

  it("write a substance as the registry does, and otherwise in one way", () => {
    // parts of formulas, spellings that are the point of the row
    const apart =
      /thermochemistry\/data\/dilution|aqueous\/data\/complexes|equation\/data\/ions|ion\/data\/(ions|isomers)|amount\/data\/volatility|substance\/data\/(ligands|molecules|never-made|incompatibilities)/;
    const registered = new Map(REGISTRY().map(({ formula }) => [constitutionOf(formula).identity, formula]));
    const written = new Map<string, Set<string>>();
    for (const [where, text] of strings) {
      if (
        apart.test(where) ||
        !/\.(formula|solid|salt|solute|basicSolid|carbonate|basic|acid|form|to|residue)$/.test(where)
      )
        continue;
      const read = tryParseFormula(text);
      if (!read.ok || read.value.charge !== 0 || /^[A-Z][a-z]*$/.test(text)) continue;
      // Al2Cl6 is written for the gas, Ca10(PO4)6F2 for its unit of account: only the same composition is the same writing
      const key = `${constitutionOf(read.value).identity} as ${read.value.toHill()}`;
      written.set(key, (written.get(key) ?? new Set()).add(text));
    }
    const several = [...written].filter(([key, texts]) => {
      const usual = registered.get(key.slice(0, key.lastIndexOf(" as ")));
      const same = usual !== undefined && parseFormula(usual).toHill() === key.slice(key.lastIndexOf(" as ") + 4);
      return texts.size > 1 || (same && !texts.has(usual));
    });
    expect(several.map(([, texts]) => [...texts].join(" | "))).toEqual([]);
    expect(written.size).toBeGreaterThan(1000);
  });

  it("write dissolutions with an arrow", () => {
    const dissolutions = strings.filter(([where]) => where.endsWith(".dissolution"));
    expect(dissolutions.length).toBeGreaterThan(100);
    expect(dissolutions.filter(([, text]) => text.includes(" = "))).toEqual([]);
    // the table of soluble salts names the ions only
    const whole = dissolutions.filter(([where]) => where.startsWith("aqueous/data/products"));
    expect(whole.filter(([, text]) => !text.includes("-> "))).toEqual([]);
  });
});

describe("a plan does not depend on the spelling", () => {
  /** A formula with each part in Hill order, where that leaves no isomers open. */
  const respelled = (text: string): string => {
    const read = tryParseFormula(text);
    if (!read.ok || read.value.charge !== 0) return text;
    return read.value.parts
      .map(({ multiplier, formula: part }) => {
        const bare = constitutionOf(part.toHill()).readings.length > 1 ? part.toString() : part.toHill();
        return `${multiplier.equals(1) ? "" : multiplier.toFraction()}${bare}`;
      })
      .join("·");
  };
  const equationRespelled = (equation: string): string =>
    equation
      .split(/( \+ | -> )/)
      .map((term) => {
        const [, coefficient = "", formula] = /^(\d+ )?(\S+)$/.exec(term) ?? [];
        return formula === undefined ? term : coefficient + respelled(formula);
      })
      .join("");

  it("for the preparations of the bench table: kind, checks, cautions of the steps, drying", () => {
    const answer = (request: PlanRequest) => {
      const plan = planPreparation(request);
      return {
        kind: plan.procedure.kind,
        checks: plan.checks.length,
        cautions: plan.stepCautions.map(({ step, cautions: said }) => [step, said.length]),
        parts: Object.keys(plan).sort(),
      };
    };
    let tested = 0;
    for (const preparation of BENCH_PREPARATIONS) {
      const request = requestOf(preparation);
      const scale = request.scale as { material: string; portion: string };
      const other = {
        ...request,
        equation: equationRespelled(String(request.equation)),
        product: respelled(String(request.product)),
        materials: request.materials.map((material) => ({
          ...material,
          name: respelled(String(material.form)),
          form: respelled(String(material.form)),
        })),
        scale: { ...scale, material: respelled(scale.material) },
      };
      expect(answer(other as PlanRequest), other.equation).toEqual(answer(request));
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(72);
  });

  it("nor does an oxalate written (COO)2 become a redox reaction, or a hexacyanidoferrate a double salt", () => {
    const kind = (equation: string, product: string, material: string) =>
      planPreparation({
        equation,
        product,
        materials: [{ name: material, form: material }],
        scale: { material, portion: "10 g" },
      }).procedure.kind;
    expect(kind("FeSO4 + Na2C2O4 -> Fe(COO)2 + Na2SO4", "Fe(COO)2", "FeSO4·7H2O")).toBe("precipitation");
    expect(kind("2 CuSO4 + K4[Fe(CN)6] -> Cu2Fe(CN)6 + 2 K2SO4", "Cu2Fe(CN)6", "CuSO4·5H2O")).toBe("precipitation");
  });
});
