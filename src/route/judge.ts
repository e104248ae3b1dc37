// The judgement of one reaction, made when the search comes to it and kept: the equation, the gate, the engine. A reaction
// passes with its figures, or is refused with them.

import type { BalancedEquation } from "../equation";
import { attempt } from "../foundation/error";
import { remembering } from "../foundation/memo";
import { list } from "../foundation/wording";
import { isOneOf } from "../ion/internal";
import { doesItGo, type Feasibility, type FeasibilityReason, type ShelfMaterial } from "../preparation";
import { precipitatedCarbonate, saltConversion } from "../solubility";
import type { Candidate } from "./candidates";
import { compoundOf, falls, formulaFrom, keyOf, madeOf, settlesAs, whyDissolved } from "./compound";
import type { FamilyCode } from "./data/families";
import { UNFIT, UNFIT_BY_HEAT } from "./data/unfit";
import { equationOf } from "./equation";
import { leavesLiquor } from "./liquor";
import { roomIn } from "./room";
import { refusedClass } from "./safety";

/** What a reaction comes to. */
export type Judgement =
  | {
      readonly ok: true;
      readonly equation: BalancedEquation;
      readonly product: string;
      readonly feasibility: Feasibility;
      readonly share: number;
      /** Part of the metal that forms another solid. */
      readonly beside: number;
      /** How warm it is worked, where another solid would settle in the cold. */
      readonly at?: "60 °C" | undefined;
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
const ENOUGH = { falls: 0.85, "precipitates from acid": 0.5, dissolved: 0.8 } as const;
/** Most of the metal that may stand as another solid in a product that nothing parts. */
const TRACE = 0.03;

/** Least constant of an exchange of one solid for another. */
const LEAST_EXCHANGE = 50;

/** Least powers of ten that a constant may be off where two solids exchange. */
const LEAST_ROOM = 1.5;

/** How much too much a hand puts in. */
const OVERDOSE = "20 %";

/** Warm enough for basic carbonates that do not settle in the cold. */
const HOT = "60 °C";
const settlesLater = ({ reasons }: Feasibility): boolean => reasons.some(({ code }) => code === "aged");

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

/** Kinds in which nothing comes from water. */
const DRY: ReadonlySet<FamilyCode> = /* @__PURE__ */ new Set(["heat", "drive-water-off"]);

/** The form that stands in place of the wanted one, where a product comes from water. */
const otherForm = ({ family, product }: Candidate, form: string) => {
  const row = DRY.has(family.code) ? undefined : settlesAs(product.key);
  return row === undefined || madeOf(row.settles)?.identity === madeOf(form)?.identity ? undefined : row;
};

/** What chemistry allows and a bench does not; undefined for what may be judged. */
function unfit(c: Candidate, materials: readonly ShelfMaterial[]): string | undefined {
  const { family, product, feeds } = c;
  const isDry = (i: number): boolean => madeOf(String(materials[i]!.form))?.waters === 0;
  const is = ({ formula, as, dry }: (typeof UNFIT)[number]): boolean =>
    (as !== "feed" && same(formula, product.forms[0]!)) ||
    (as !== "product" && feeds.some(({ forms }, i) => same(formula, forms[0]!) && (dry !== true || isDry(i))));
  const dissolved = DRY.has(family.code) || leavesLiquor(c) ? undefined : whyDissolved(product);
  if (dissolved !== undefined) return `${formulaFrom(product.forms[0]!).toUnicode()} is kept in solution: ${dissolved}`;
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
  const forms = materials.map(({ form }) => String(form));
  const equation = equationOf(c, product, forms);
  if (equation === undefined)
    return refuse(product, undefined, "no", `no equation balances ${forms.join(" + ")} to ${product}`);
  const no = (text: string, instead: readonly string[] = []): Judgement =>
    refuse(product, equation, "no", text, { instead });
  const why = unfit(c, materials);
  if (why !== undefined) return no(why);
  const other = otherForm(c, product);
  if (other !== undefined)
    return no(`what comes from water is ${formulaFrom(other.settles).toUnicode()}: ${other.why}`, [other.settles]);
  const danger = dangerIn(c, equation);
  if (danger !== undefined) return refuse(product, equation, "refused", danger);
  const ask = (more: { readonly temperature?: "60 °C"; readonly overdosed?: true } = {}) =>
    attempt(() =>
      doesItGo({
        equation: String(equation),
        product,
        materials: materials.map((m, i) => ({
          ...m,
          ...(more.overdosed ? i === 1 && { excess: OVERDOSE, inExcess: true } : excessOf(c, i)),
        })),
        ...(more.temperature !== undefined && { temperature: more.temperature }),
      }),
    );
  const cold = ask();
  // in the cold another solid settles first: it is worked hot
  const hot = cold.ok && settlesLater(cold.value) ? ask({ temperature: HOT }) : undefined;
  const isHot = hot?.ok === true && !settlesLater(hot.value);
  const asked = isHot ? hot : cold;
  if (!asked.ok)
    return refuse(product, equation, DANGER_CODES.has(asked.error.code) ? "refused" : "no", asked.error.problem);
  const judged = weighed(c, product, equation, asked.value);
  const judgement: Judgement = judged.ok && isHot ? { ...judged, at: HOT } : judged;
  // lye dissolves what it precipitated of some metals
  if (!judgement.ok || c.family.code !== "precipitate-hydroxide" || c.feeds[1]!.anion !== "OH-") return judgement;
  const too = ask({ overdosed: true });
  return { ...judgement, overdosed: too.ok ? too.value.share?.toNumber() : undefined };
}

/** Why no route has an equation, whatever the equilibrium says; undefined where it is no danger. */
function dangerIn({ family }: Candidate, { reactants, products }: BalancedEquation): string | undefined {
  const made = products.map(({ formula }) => formula.toString());
  const all = [...reactants.map(({ formula }) => formula.toString()), ...made];
  if (all.some(isDeadly)) return "it needs or sets free what no route makes";
  if (made.some((formula) => refusedClass(formula) !== undefined)) return "it makes what no route makes";
  if (family.code !== "heat") return undefined;
  if (all.some((formula) => refusedClass(formula) !== undefined)) return "it heats what no route makes";
  return made.some(isAcidFume) ? "it sets free what no route makes" : undefined;
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

/** Reasons of the engine that end a reaction whatever its verdict, the first found in this order. */
const STOPS: readonly string[] = ["coats", "hydrolysis", "fired-oxide"];

/** Least part of the other cation that must precipitate where the filtrate is kept. */
const FILTERED = 0.9;
const percent = (share: number): string => `${(100 * share).toFixed(0)} %`;

/** What is known against a normal carbonate: that this precipitant gives a basic one. */
function basicInstead({ family, product, feeds }: Candidate): string | undefined {
  if (!["precipitate-carbonate", "solid-to-solid"].includes(family.code) || product.anion !== "CO3^2-")
    return undefined;
  const precipitant = feeds[1]!.anion === "HCO3-" ? "bicarbonate" : "soda";
  const found = attempt(() => precipitatedCarbonate({ metal: product.cation!, precipitant }));
  if (
    !found.ok ||
    ["normal", "none"].includes(found.value.verdict) ||
    keyOf(found.value.expected[0] ?? "") === product.key
  )
    return undefined;
  return `${precipitant} gives the ${found.value.verdict === "hydroxide" ? "hydroxide" : "basic carbonate"}: expected ${list(found.value.expected, "or")}`;
}

/** Is it the solid that the other feed was put in to make? */
const isFilteredOff = ({ family, product, feeds }: Candidate, formula: string): boolean => {
  if (family.code !== "keep-filtrate") return false;
  const anion = feeds[0]!.anion;
  if (madeOf(formula)?.anions.every(({ formula: ion }) => ion === anion) !== true) return false;
  const own = product.made.cations.map(({ formula: ion }) => ion);
  return madeOf(formula)?.cations.every(({ formula: ion }) => !own.includes(ion)) ?? false;
};

/** Constant of the exchange of one solid for another, where both have one. */
function exchangeOf({ product, feeds }: Candidate): number | undefined {
  const found = attempt(() => saltConversion({ from: feeds[0]!.forms[0]!, to: product.forms[0]! }));
  return found.ok ? found.value.equilibriumRatio.toNumber() : undefined;
}

/** What the answer of the engine comes to for a route. */
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
  // what is left of a feed is nothing that forms
  const instead = others
    .map(({ formula }) => formula)
    .filter((formula) => c.feeds.every(({ key }) => key !== keyOf(formula)));
  if (verdict === "unknown") return refuse(product, equation, "unknown", text, { reasons });
  const no = (why: string, how: "no" | "unknown" = "no"): Judgement =>
    refuse(product, equation, how, why, { reasons, instead });
  if (verdict === "does not go" || verdict === "another solid forms") return no(text);
  for (const code of STOPS) {
    const reason = reasons.find((one) => one.code === code);
    if (reason !== undefined) return no(reason.text);
  }
  if (
    c.family.tests.includes("it precipitates at equilibrium") &&
    !solids.some(({ formula }) => keyOf(formula) === own)
  )
    return no(`missing: the solubility product of ${product}`, "unknown");
  const basic = basicInstead(c);
  if (basic !== undefined) return no(basic);
  if (c.family.code === "keep-filtrate") {
    const off = solids
      .filter(({ formula }) => isFilteredOff(c, formula))
      .reduce((n, one) => n + one.share.toNumber(), 0);
    if (off < FILTERED || beside > TRACE)
      return no(`${percent(off)} of what should be filtered off precipitates: the rest stays with the product`);
  }
  const solid = falls(c.product) === true;
  const enough =
    ENOUGH[!solid ? "dissolved" : c.family.code === "precipitate-by-acid" ? "precipitates from acid" : "falls"];
  if (verdict === "goes in part" && share < enough) return no(text);
  // a second solid in a cake cannot be washed out
  if (solid && beside > TRACE) return no(`${list(others.map(({ formula }) => formula))} forms beside it`);
  const mixed = c.family.code === "solid-to-solid" ? staysMixed(c, feasibility) : undefined;
  if (mixed !== undefined) return no(mixed);
  return { ok: true, equation, product, feasibility, share, beside };
}

/** A solid that turns into another one of nearly the same solubility stays mixed with it, whatever the excess. */
function staysMixed(c: Candidate, feasibility: Feasibility): string | undefined {
  const exchange = exchangeOf(c);
  if (exchange !== undefined)
    return exchange < LEAST_EXCHANGE
      ? `the exchange stops at ${exchange.toPrecision(2)}: both solids stay together`
      : undefined;
  const nearness = roomIn(feasibility)?.logarithm;
  return nearness !== undefined && nearness < LEAST_ROOM
    ? `a solubility product 10^${nearness.toFixed(1)} times greater would undo it: both solids stay together`
    : undefined;
}
