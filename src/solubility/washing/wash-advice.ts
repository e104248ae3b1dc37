// What to wash a product with, and the drop test that tells when the salt is gone. Common practice, no source; the choice
// of liquid rests on the product's own solubility where it is known.

import type { TemperatureLike } from "../../amount";
import { type Formula, parseFormula } from "../../formula";
import type { Fields } from "../../foundation/argument";
import { attempt } from "../../foundation/error";
import { bringsFacts, type LookupOptions, withItsFacts } from "../../foundation/facts";
import { readable } from "../../foundation/readable";
import { constitutionOf } from "../../ion";
import { guard } from "../argument";
import { type Figure, figureOrProduct } from "../curves/figure";
import { anhydrousMolarMass, soluteOf } from "../curves/solute";
import { saltIons } from "../precipitating/ions";
import type { Solubility } from "../record";
import { ruleFor } from "../rules";

const WASH_ADVICE = { product: true, washedOut: true, temperature: true, facts: true } as const satisfies Fields<
  Parameters<typeof washAdvice>[0]
>;

/** A way to wash, and how to know that it is done. */
export interface WashAdvice {
  /** Liquid to wash with, in words. */
  readonly liquid: string;
  /** Why this one. */
  readonly because: string;
  /** Tests on the last wash, one for each kind of ion washed out. */
  readonly endTests: readonly { readonly ion: string; readonly test: string }[];
  /** Of the product in water; undefined where nothing is known. */
  readonly solubility: Solubility | undefined;
  /** Practice of the trade, without a table. */
  readonly source: "commonPractice";
}

/** The hydrogen ion of any acid. */
const ACID = "H+";

/** Ions that paper shows; a product that gives them makes water alkaline long before a cloud would show it. */
const BASIC: readonly string[] = ["CO3^2-", "HCO3-", "OH-"];

/** Ions a wash removes and the test that shows them. */
const TESTS: readonly { readonly ions: readonly string[]; readonly test: string }[] = [
  { ions: ["SO4^2-"], test: "barium chloride with dilute hydrochloric acid: no cloud within two minutes" },
  { ions: ["Cl-", "Br-", "I-", "SCN-"], test: "silver nitrate with dilute nitric acid: no cloud" },
  { ions: BASIC, test: "indicator paper neutral; acidify before testing for chloride or sulfate" },
  {
    ions: ["NO3-", "NO2-", "CH3COO-", "HCOO-", "ClO3-", "ClO4-"],
    test: "no drop test: conductivity as the wash water, or 10 mL leave less than 1 mg",
  },
  { ions: [ACID], test: "blue litmus stays blue, or indicator paper shows no more acid than the wash water" },
  { ions: ["Fe^3+"], test: "thiocyanate: no red" },
  { ions: ["Cu^2+"], test: "ammonia: no blue" },
  { ions: ["Pb^2+", "Ba^2+"], test: "a drop of dilute sulfuric acid: no cloud" },
];

/** Products with a wash of their own. */
const OWN_WASH: Readonly<Record<string, readonly [liquid: string, because: string]>> = {
  "Cu+ Cl-": [
    "dilute hydrochloric acid, then alcohol, without sucking air through",
    "copper(I) chloride turns green in water and air",
  ],
  "Pb^2+ Cl-": ["a little ice water", "hot water dissolves lead chloride"],
  "Fe^2+ C2O4^2-": ["hot water", "iron(II) oxalate hardly dissolves even hot, and hot water removes the salts"],
};

const OWN_BASE =
  "the product gives this ion too: indicator paper as in pure water that some of the product was stirred with; acidify before testing for chloride or sulfate";

/** Formula units in a litre of water above which paper shows a basic product: pH 9. */
const SHOWS_BASE = 1e-5;

/** Paper tells an acid; its anion is looked for only where a drop shows it. */
const hasDropTest = (ion: string): boolean => ["SO4^2-", "Cl-", "Br-", "I-", "SCN-"].includes(ion);

/** Product in 100 g of water below which its own ions do not show. */
const SILENT = "0.001 g";
const OWN_ION = "the product gives this ion too: conductivity as that of its own saturated solution";

function endTestFor(ion: string): string {
  return (
    TESTS.find(({ ions }) => ions.includes(ion))?.test ??
    "conductivity near that of the wash water, or 10 mL leave less than 1 mg"
  );
}

/** Liquid by how much of the product water dissolves, g per 100 g. */
function liquidBy(grams: number): readonly [liquid: string, because: string] {
  if (grams < 0.1) return ["water", "the product hardly dissolves"];
  if (grams < 1) return ["a little cold water", "the product dissolves slightly"];
  if (grams < 10) return ["ice water in small portions, or its own saturated solution", "the product dissolves"];
  return ["50 % alcohol, or its own saturated solution", "the product dissolves well; plain water would carry it off"];
}

/**
 * What to wash a product with, and the end test for what is washed out.
 *
 * @param request - the product, the salts to be washed out, and the temperature of the wash (default 20 °C)
 * @returns liquid and reason, and a test for each ion that the wash takes away; one that the product gives off as well is recognised by
 *   conductivity
 * @throws {SolubilityError} `solubility.missing-option`, `solubility.bad-option`, `solubility.not-a-salt` when the
 *   product is an ion or water
 * @source common practice, no source
 * @category Washing
 * @example
 * washAdvice({ product: "CaCO3", washedOut: ["Na2SO4"] }).liquid // => "water"
 */
export function washAdvice(
  request: LookupOptions & {
    readonly product: string | Formula;
    readonly washedOut: readonly (string | Formula)[];
    readonly temperature?: TemperatureLike;
  },
): WashAdvice {
  if (bringsFacts(request)) return withItsFacts(request, guard, washAdvice);
  guard.fields(request, WASH_ADVICE, "request");
  guard.list(request.washedOut, "washedOut");
  const solute = soluteOf(request.product);
  const ions = saltIons(solute.anhydrous);
  const pair = ions?.length === 2 ? `${ions[0]!.formula} ${ions[1]!.formula}` : undefined;
  const known = attempt(() => figureOrProduct(solute.formula, request.temperature ?? "20 °C", undefined));
  const figure = known.ok ? known.value : undefined;
  const [liquid, because] = (pair === undefined ? undefined : OWN_WASH[pair]) ?? choose(figure, ruleFor(solute)?.class);
  const kept = new Set((ions ?? []).map(({ formula }) => formula));
  const gone = request.washedOut.flatMap((salt) => {
    const { anhydrous } = soluteOf(salt);
    const { acid } = constitutionOf(anhydrous);
    if (acid !== undefined) return acid.veryWeak ? [] : [ACID, ...(hasDropTest(acid.anion) ? [acid.anion] : [])];
    const found = [...(saltIons(anhydrous) ?? [])];
    // the anion is tested first
    return found.sort((one, other) => Math.sign(one.charge) - Math.sign(other.charge)).map(({ formula }) => formula);
  });
  // A product this sparing gives no cloud of its own, so that the test for an ion it shares still tells the salt.
  const silent = figure !== undefined && figure.perHundredGramsWater.compare(SILENT) < 0;
  const tested = [...new Set(gone)].filter((ion) => !ALKALI.includes(ion));
  const molar =
    figure === undefined
      ? undefined
      : (figure.perHundredGramsWater.toNumber("g") * 10) / anhydrousMolarMass(solute).toNumber("g/mol");
  const isMute = (ion: string): boolean =>
    !kept.has(ion) || (BASIC.includes(ion) ? molar !== undefined && molar < SHOWS_BASE : silent);
  const own = (ion: string): string => (BASIC.includes(ion) ? OWN_BASE : OWN_ION);
  return readable({
    liquid,
    because,
    endTests: tested.map((ion) => ({
      ion: parseFormula(ion).toString(),
      test: isMute(ion) ? endTestFor(ion) : own(ion),
    })),
    solubility: figure?.solubility,
    source: "commonPractice",
  });
}

/** Their salts are found by the anion. */
const ALKALI = ["Na+", "K+", "NH4+", "Li+"];

function choose(figure: Figure | undefined, rule: string | undefined): readonly [string, string] {
  if (figure !== undefined) return liquidBy(figure.perHundredGramsWater.toNumber("g"));
  if (rule === "insoluble") return ["water", "the rules call the product insoluble"];
  if (rule === "soluble") return ["50 % alcohol, or its own saturated solution", "the rules call the product soluble"];
  return ["a little cold water", "the solubility of the product is not known: keep the portions small"];
}
