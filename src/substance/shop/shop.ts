// A word on a pack to the substances it may mean: what shops sell under that name, in every form.

import type { Fields } from "../../foundation/argument";
import { attempt, type Result } from "../../foundation/error";
import { LOOKUP, type LookupOptions, lookingIn } from "../../foundation/facts";
import { frozen } from "../../foundation/frozen";
import { readable } from "../../foundation/readable";
import { readNotation } from "../../ion/internal";
import { guard } from "../argument";
import { SHOP_FACTS, SHOP_NAMES, type SoldRow, type StatedAssay } from "../data/shop-materials";
import type { SourceKey } from "../data/sources";
import { readableText, SubstanceError, type SubstanceRefusal } from "../error";
import { rowOf } from "../registry/registry-index";
import { formsOf, goodsNamed, nearestShopNames, type SoldForm, type TextRange } from "./sold-goods";

const RANGE = { lower: true, upper: true } as const satisfies Fields<TextRange>;

const STATED = { ...RANGE, of: true, note: true } as const satisfies Fields<ShopCandidate["stated"][number]>;

export const CANDIDATE = {
  formula: true,
  name: true,
  soldAs: true,
  usual: true,
  form: true,
  assay: RANGE,
  stated: [STATED],
  density: RANGE,
  impurities: true,
  otherGoods: true,
  formTrap: true,
  source: true,
} as const satisfies Fields<ShopCandidate>;

/** One thing the pack may hold. */
export interface ShopCandidate {
  /** Formula of the main constituent as sold, crystal water included. */
  readonly formula: string;
  /** Name of the substance. */
  readonly name: string;
  /** The good, as the table lists it. */
  readonly soldAs: string;
  /** Is this the usual form of that good (`true`), or another form sold under the same name? */
  readonly usual: boolean;
  /** `solid`, or the way a solution's strength is stated. */
  readonly form: "solid" | "mass fraction" | "mass concentration";
  /** Usual strength: mass fraction of `formula` in %, or grams of `formula` per litre for a mass concentration. */
  readonly assay?: TextRange;
  /** Strength as packs state it, with the basis it counts (`of`). */
  readonly stated: readonly StatedAssay[];
  /** Density of the liquid. */
  readonly density?: TextRange;
  /** What a pack may contain beside it, in words. */
  readonly impurities: readonly string[];
  /** Other goods under the same name that no formula describes. */
  readonly otherGoods: readonly string[];
  /** How the name misleads about the form, in words. */
  readonly formTrap?: string;
  /** Key of the source; `cite` prints it. */
  readonly source: SourceKey;
}

/** What a shop name can mean. */
export interface ShopMaterial {
  /** The text that was asked for, trimmed. */
  readonly name: string;
  /** All that is sold under the name. */
  readonly candidates: readonly ShopCandidate[];
  /** `true` when more than one formula is sold under the name. */
  readonly ambiguous: boolean;
  /** What the ranges are worth. */
  readonly note: string;
}

const NOTE = "usual ranges of the trade: the figure on your own pack, or a titration, takes their place";

function candidate({ row, formula, usual, form, assay, density }: SoldForm): ShopCandidate {
  // a good of the caller's own has its facts itself
  const facts = SHOP_FACTS()[SHOP_NAMES().indexOf(row)] ?? (row as SoldRow & ReturnType<typeof SHOP_FACTS>[number]);
  return {
    formula,
    name: rowOf(readNotation(formula))?.name ?? formula,
    soldAs: row.name,
    usual,
    form,
    ...(assay === undefined ? {} : { assay }),
    stated: usual ? row.assays : [],
    ...(density === undefined ? {} : { density }),
    impurities: facts.impurities ?? [],
    otherGoods: facts.otherGoods ?? [],
    ...(facts.trap === undefined ? {} : { formTrap: facts.trap }),
    source: facts.source,
  };
}

/**
 * What a shop name can mean: every form sold under it, with usual strength, impurities and the trap in the name.
 *
 * @param name - generic name on the pack, such as "washing soda" or "root killer"; no brands are known
 * @param options - `facts`: facts of the caller's own, whose goods are looked up first
 * @returns the candidates, usual forms first; strengths are usual ranges in % by mass or g/L
 * @throws {SubstanceError} `substance.unknown-name` with the nearest names as a hint, `substance.bad-input`, `substance.too-long`
 * @source labels, safety data sheets and purity rules as each candidate's `source` says; most rest on memory
 * @category Shelf
 * @example
 * shopMaterial("washing soda").candidates.map((c) => c.formula) // => ["Na2CO3·10H2O", "Na2CO3·H2O", "Na2CO3"]
 * shopMaterial("vinegar").candidates[0]?.assay?.upper // => "60 g/L"
 */
export function shopMaterial(name: string, options?: LookupOptions): ShopMaterial {
  guard.options(options, LOOKUP);
  return lookingIn(options?.facts, guard, () => sold(name));
}

function sold(name: string): ShopMaterial {
  const text = readableText(name, "a shop name");
  const rows = goodsNamed(text);
  if (rows.length === 0) {
    const near = nearestShopNames(text);
    throw new SubstanceError("substance.unknown-name", `no shop material is listed as "${text}"`, {
      input: text,
      hint:
        near.length > 0
          ? `nearest names: ${near.join("; ")}`
          : "try the generic name of the good, or the substance on its label",
      details: { nearest: near },
    });
  }
  const candidates = formsOf(rows).map(candidate);
  return frozen(
    readable({
      name: text,
      candidates,
      ambiguous: new Set(candidates.map((one) => one.formula)).size > 1,
      note: NOTE,
    }),
  );
}

/**
 * As {@link shopMaterial}, with the error returned instead of thrown.
 *
 * @category Shelf
 * @example
 * tryShopMaterial("moon dust").ok // => false
 */
export function tryShopMaterial(name: string, options?: LookupOptions): Result<ShopMaterial, SubstanceRefusal> {
  return attempt(() => shopMaterial(name, options));
}
