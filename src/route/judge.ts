// The judgement of one reaction, made when the search comes to it and kept: the equation, the gate, the engine. A reaction
// passes with its figures, or is refused with them.

import type { BalancedEquation } from "../equation";
import { attempt } from "../foundation/error";
import { remembering } from "../foundation/memo";
import { isOneOf } from "../ion/internal";
import { doesItGo, type Feasibility, type FeasibilityReason, type ShelfMaterial } from "../preparation";
import { precipitatedCarbonate } from "../solubility";
import type { Candidate } from "./candidates";
import { compoundOf, falls, formulaFrom, keyOf, madeOf } from "./compound";
import { UNFIT, UNFIT_BY_HEAT } from "./data/unfit";
import { equationOf } from "./equation";
import { refusedClass } from "./safety";

/** What a reaction comes to. */
export type Judgement =
  | {
      readonly ok: true;
      readonly equation: BalancedEquation;
      readonly product: string;
      readonly feasibility: Feasibility;
      readonly share: number;
      /** Part of the metal that stands as another solid. */
      readonly beside: number;
      /** Part of the theory that still stands where a fifth too much of the precipitant was put in; undefined where nobody asks. */
      readonly overdosed?: number | undefined;
    }
  | {
      readonly ok: false;
      readonly equation: BalancedEquation | undefined;
      readonly product: string;
      readonly why: "refused" | "unknown" | "no";
      readonly text: string;
      readonly reasons: readonly FeasibilityReason[];
      /** Formulas that stand in place of the product. */
      readonly instead: readonly string[];
    };

/** Least part of the theory that must form. */
const ENOUGH = { falls: 0.85, "falls from acid": 0.5, dissolved: 0.8 } as const;
/** Most of the metal that may stand as another solid in a product that nothing parts. */
const TRACE = 0.03;

/** Least constant of an exchange of one solid for another. */
const LEAST_EXCHANGE = 10;

/** How much too much a hand puts in. */
const OVERDOSE = "20 %";

/** Codes by which the gate of a plan stops. */
const DANGER_CODES: ReadonlySet<string> = /* @__PURE__ */ new Set([
  "plan.forbidden-combination",
  "plan.dangerous-product",
]);

const judged = /* @__PURE__ */ remembering<Judgement>(20_000);

/** Is it something a route may use? Gases that kill are neither made nor used. */
const isDeadly = (formula: string): boolean => {
  const name = refusedClass(formula);
  return name === "deadly-gas" || name === "poison-gas" || name === "explosive";
};

/** Fumes of a furnace that are acid with water: those of sulfates, nitrates and chlorides. */
const isAcidFume = (formula: string): boolean => isOneOf(formulaFrom(formula), "SO3", "SO2", "NO2", "HCl", "N2O5");

/** Judge a reaction with the feeds as they stand on the shelf, or as they were made. */
export function judge(c: Candidate, product: string, materials: readonly ShelfMaterial[]): Judgement {
  const key = `${c.id} > ${product} : ${materials.map((m) => `${m.form} ${m.strength ?? ""} ${m.density ?? ""}`).join(" | ")}`;
  return judged(key, () => judgeNow(c, product, materials));
}

function refuse(
  product: string,
  equation: BalancedEquation | undefined,
  why: "refused" | "unknown" | "no",
  text: string,
  rest: Partial<{ reasons: readonly FeasibilityReason[]; instead: readonly string[] }> = {},
): Judgement {
  return { ok: false, equation, product, why, text, reasons: rest.reasons ?? [], instead: rest.instead ?? [] };
}

const same = (a: string, b: string): boolean => keyOf(a) === keyOf(b);

/** What chemistry allows and a bench does not; undefined for what may be judged. */
function unfit({ family, product, feeds }: Candidate): string | undefined {
  const is = ({ formula, as }: (typeof UNFIT)[number]): boolean =>
    (as !== "feed" && same(formula, product.forms[0]!)) ||
    (as !== "product" && feeds.some(({ forms }) => same(formula, forms[0]!)));
  const row = family.code === "heat" ? undefined : UNFIT.find(is);
  if (row !== undefined) return `${formulaFrom(row.formula).toUnicode()}: ${row.why}`;
  if (family.code === "heat")
    return UNFIT_BY_HEAT.find(
      ({ from, to }) => same(to, product.forms[0]!) && feeds.some(({ forms }) => same(from, forms[0]!)),
    )?.why;
  // what is neither filtered off nor wanted stays with the product
  if (family.code !== "keep-filtrate") return undefined;
  const [salt, carrier] = feeds;
  const off = new Set(carrier!.made.cations.map(({ formula }) => formula));
  const own = new Set(product.made.cations.map(({ formula }) => formula));
  const stays = salt!.made.cations.find(({ formula }) => !off.has(formula) && !own.has(formula));
  return stays === undefined ? undefined : `${stays.formula} stays in the filtrate with the product`;
}

function judgeNow(c: Candidate, product: string, materials: readonly ShelfMaterial[]): Judgement {
  const equation = equationOf(
    c,
    product,
    materials.map(({ form }) => String(form)),
  );
  if (equation === undefined)
    return refuse(
      product,
      undefined,
      "no",
      `no equation balances ${materials.map(({ form }) => form).join(" + ")} to ${product}`,
    );
  const why = unfit(c);
  if (why !== undefined) return refuse(product, equation, "no", why);
  const all = [...equation.reactants, ...equation.products].map(({ formula }) => formula.toString());
  if (all.some(isDeadly)) return refuse(product, equation, "refused", "it needs or sets free what no route makes");
  const made = equation.products.map(({ formula }) => formula.toString());
  if (made.some((formula) => refusedClass(formula) !== undefined && refusedClass(formula) !== "explosive"))
    return refuse(product, equation, "refused", "it makes what no route makes");
  if (c.family.code === "heat" && made.some(isAcidFume))
    return refuse(product, equation, "refused", "it sets free what no route makes");
  const asked = attempt(() =>
    doesItGo({
      equation: String(equation),
      product,
      materials: materials.map((m, i) => ({ ...m, ...excessOf(c, i) })),
    }),
  );
  if (!asked.ok)
    return refuse(
      product,
      equation,
      DANGER_CODES.has(asked.error.code) ? "refused" : "no",
      asked.error.message.split("\n")[0]!,
    );
  const judgement = weighed(c, product, equation, asked.value);
  // lye dissolves what it precipitated of some metals
  if (!judgement.ok || c.family.code !== "precipitate-hydroxide" || c.feeds[1]!.anion !== "OH-") return judgement;
  const too = attempt(() =>
    doesItGo({
      equation: String(equation),
      product,
      materials: materials.map((m, i) => (i === 1 ? { ...m, excess: OVERDOSE, inExcess: true } : m)),
    }),
  );
  return { ...judgement, overdosed: too.ok ? too.value.share?.toNumber() : undefined };
}

/** What the family takes of a feed over the need. */
export function excessOf(
  { family: { excess } }: Candidate,
  i: number,
): { readonly excess?: `${number} %`; readonly inExcess?: true } {
  return excess === undefined || excess.of !== i ? {} : { excess: `${excess.percent} %`, inExcess: true };
}

const isSparing = (formula: string): boolean => {
  const [key, made] = [keyOf(formula), madeOf(formula)];
  return key !== undefined && made !== undefined && falls(compoundOf(key, [formula], made)) !== false;
};

/** Least part of the other cation that must precipitate where the filtrate is kept. */
const FILTERED = 0.9;
const percent = (share: number): string => `${(100 * share).toFixed(0)} %`;

/** What the index of carbonates says against a normal carbonate: that this precipitant gives a basic one. */
function basicInstead({ family, product, feeds }: Candidate): string | undefined {
  if (family.code !== "precipitate-carbonate" || product.anion !== "CO3^2-") return undefined;
  const precipitant = feeds[1]!.anion === "HCO3-" ? "bicarbonate" : "soda";
  const found = attempt(() => precipitatedCarbonate({ metal: product.cation!, precipitant }));
  if (!found.ok || found.value.verdict === "normal" || keyOf(found.value.expected[0] ?? "") === product.key)
    return undefined;
  return `${precipitant} gives the ${found.value.verdict === "hydroxide" ? "hydroxide" : "basic carbonate"}: expected ${found.value.expected.join(" or ")}`;
}

/** Is it the solid that the other feed was put in to make? */
const isFilteredOff = ({ family, product, feeds }: Candidate, formula: string): boolean => {
  if (family.code !== "keep-filtrate") return false;
  const anion = feeds[0]!.anion;
  if (madeOf(formula)?.anions.every(({ formula: ion }) => ion === anion) !== true) return false;
  const own = product.made.cations.map(({ formula: ion }) => ion);
  return madeOf(formula)?.cations.every(({ formula: ion }) => !own.includes(ion)) ?? false;
};

function weighed(c: Candidate, product: string, equation: BalancedEquation, feasibility: Feasibility): Judgement {
  const { verdict, solids, reasons } = feasibility;
  const share = feasibility.share?.toNumber() ?? (verdict === "goes" ? 1 : 0);
  const text = reasons[0]?.text ?? verdict;
  const own = keyOf(product);
  // a soluble salt that stands for want of water is washed out, and what is filtered off on purpose is no impurity
  const others = solids.filter(
    ({ formula }) => keyOf(formula) !== own && isSparing(formula) && !isFilteredOff(c, formula),
  );
  const beside = others.reduce((n, { share: part }) => n + part.toNumber(), 0);
  const instead = others.map(({ formula }) => formula);
  if (verdict === "unknown") return refuse(product, equation, "unknown", text, { reasons });
  if (verdict === "does not go" || verdict === "another solid forms")
    return refuse(product, equation, "no", text, { reasons, instead });
  if (reasons.some(({ code }) => code === "coats"))
    return refuse(product, equation, "no", reasons.find(({ code }) => code === "coats")!.text, { reasons, instead });
  if (reasons.some(({ code }) => code === "hydrolysis"))
    return refuse(product, equation, "no", reasons.find(({ code }) => code === "hydrolysis")!.text, {
      reasons,
      instead,
    });
  if (reasons.some(({ code }) => code === "fired-oxide"))
    return refuse(product, equation, "no", reasons.find(({ code }) => code === "fired-oxide")!.text, {
      reasons,
      instead,
    });
  if (c.family.tests.includes("the engine lets it fall") && !solids.some(({ formula }) => keyOf(formula) === own))
    return refuse(product, equation, "unknown", `missing: the solubility product of ${product}`, { reasons, instead });
  const basic = basicInstead(c);
  if (basic !== undefined) return refuse(product, equation, "no", basic, { reasons, instead });
  if (c.family.code === "keep-filtrate") {
    const off = solids
      .filter(({ formula }) => isFilteredOff(c, formula))
      .reduce((n, one) => n + one.share.toNumber(), 0);
    if (off < FILTERED || beside > TRACE)
      return refuse(
        product,
        equation,
        "no",
        `${percent(off)} of what should be filtered off precipitates: the rest stays with the product`,
        { reasons, instead },
      );
  }
  const solid = falls(c.product) === true;
  const enough = ENOUGH[!solid ? "dissolved" : c.family.code === "precipitate-by-acid" ? "falls from acid" : "falls"];
  if (verdict === "goes in part" && share < enough) return refuse(product, equation, "no", text, { reasons, instead });
  // a second solid in a cake cannot be washed out
  if (solid && beside > TRACE)
    return refuse(product, equation, "no", `${instead.join(" and ")} stands beside it`, { reasons, instead });
  // a solid that turns into another one of nearly the same solubility stays mixed with it, whatever the excess
  const exchange = reasons.find(({ code }) => code === "solid-to-solid")?.numbers[0]?.toNumber();
  if (exchange !== undefined && exchange < LEAST_EXCHANGE)
    return refuse(
      product,
      equation,
      "no",
      `the exchange stops at ${exchange.toPrecision(2)}: both solids stay together`,
      {
        reasons,
        instead,
      },
    );
  return { ok: true, equation, product, feasibility, share, beside };
}
