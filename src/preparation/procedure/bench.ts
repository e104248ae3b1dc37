// The bench while a procedure is worked: vessels by their names, and the steps done on them. A procedure is a list of calls
// on it; what each does to the contents is an operation of its own.

import { list } from "../../foundation/wording";
import type { Quantity } from "../../quantity";
import { massOf } from "../contents/entry";
import type { Matter } from "../contents/matter";
import { Pot } from "../contents/pot";
import type { Reaction } from "../operation/add";
import type { Done } from "../operation/operation";
import type { BatchFigures } from "../planning/batch-figures";
import type { Account } from "../reaction/account";
import { boilingPoint } from "../reaction/fluids";
import type { Setting } from "../request/setting";
import type { Material } from "../shelf/material";
import type { AcidDiluted } from "./acid-diluted";
import type { AtHand } from "./at-hand";
import type { Kept } from "./completeness";
import type { Crystallising } from "./crystallising";
import type { Feed } from "./feed";
import type { Isolation, WashSchedule } from "./isolation";
import type { ProcedureKind } from "./kinds";
import type { MoreOf } from "./more-of";
import type { Role } from "./roles";
import { catalystOf } from "./slow-complex";
import { type Use, useOf } from "./use";
import { asSolution, celsius, type Hand, handOf } from "./words";

/** Apparatus of a single step, beside vessel, filter and oven. */
export type Apparatus = "dropping funnel" | "desiccator" | "fume hood" | "wide dish";

/** What a procedure is worked from. */
export interface Frame {
  readonly setting: Setting;
  readonly kind: ProcedureKind;
  readonly portions: readonly Quantity[];
  readonly account: Account;
  readonly theory: Quantity<"mass">;
  readonly feeds: readonly Feed[];
  readonly roles: readonly Role[];
  readonly ranks: readonly number[];
  readonly isolation: Isolation;
  readonly crystallising: Crystallising | undefined;
}

/** Figures of the batch that a sentence may name; asked when the sentence is read. */
export type Look = Omit<BatchFigures, "materialBalance" | "waste">;

/** Cautions of which part of the work a step carries. */
export type Care = "weighing" | "dissolving" | "mixing" | "heating" | "isolating" | "drying" | undefined;

/** What a test is done with, and what of that does harm, in words. */
interface TestReagents {
  readonly takes: readonly string[];
  readonly harm: string | undefined;
}

/** How a step is worded. */
export interface Telling {
  readonly say: (look: Look) => string;
  readonly materials?: readonly string[];
  readonly amounts?: readonly Quantity[];
  readonly from?: string;
  readonly target?: Quantity;
  readonly limit?: (look: Look) => Quantity | undefined;
  readonly blank?: string;
  /** Alcohol that it takes, or may take, and that no pack of the plan brings. */
  readonly alcohol?: Quantity<"volume">;
  /** Strong acid that is diluted for it, and that no pack of the plan brings. */
  readonly acidDiluted?: AcidDiluted | undefined;
  readonly apparatus?: Apparatus;
  readonly atHand?: readonly AtHand[] | ((look: Look) => readonly AtHand[]);
  /** What a test is done with, and what of that does harm. */
  readonly tests?: readonly TestReagents[] | undefined;
  /** What its blank is answered with, where it is a test with words of its own: done, and not yet. */
  readonly choices?: readonly [done: string, shows: string] | undefined;
  /** Product of another batch that it leaves with this one. */
  readonly ofAnotherBatch?: Quantity<"mass">;
  /** Crystals that may come at most beside those of its contents, by ions that other salts share with the product. */
  readonly mayBring?: Quantity<"mass">;
  /** Dry crystals, below which the liquor that is kept gives a second crop. */
  readonly onceMoreBelow?: Quantity<"mass">;
  /** Of a pack of the plan, more than is weighed of it. */
  readonly more?: MoreOf | undefined;
  readonly care?: Care;
  /** The smallest vessel for it, where that of the batch is too small. */
  readonly largerVessel?: (look: Look) => Quantity<"volume"> | undefined;
  /** Something is added to what is in the vessel. */
  readonly adds?: "solid" | "liquid";
  /** Gas of this step is stated in it: vessel and pace are for the adding. */
  readonly later?: true;
}

/** A step done and worded. */
export interface Draft extends Done, Telling {
  readonly vessel: string;
}

/** How warm a vessel is kept, so that what forms in it stays dissolved. */
export interface KeptDissolved {
  readonly at: Quantity<"temperature">;
  /** The heat of the reaction does it. */
  readonly byItself: boolean;
  /** What else would become of it, in words. */
  readonly why: string;
  /** A metal that cold acid hardly takes; warm for that from the first portion. */
  readonly isSlow?: true;
}

/** Name of the vessel the work is done in. */
export const POT = "pot";

/** Wash bottle for gas that must not go into the room. */
export const TRAP = "gas trap";

/** Vessel of the liquor that crystals came from. */
export const MOTHER = "mother liquor";

/** What a procedure comes to. */
export interface Work {
  readonly drafts: readonly Draft[];
  /** The vessel once everything has reacted, and nothing has been taken out of it. */
  readonly reacted: Pot | undefined;
  /** The vessel before anything is parted. */
  readonly liquor: Pot | undefined;
  /** Mass of everything that comes together, before gas leaves it. */
  readonly mixed: Quantity | undefined;
  /** Free acid on the metal that is over, beside the equation. */
  readonly onMetal: readonly Reaction[];
  /** What the liquor keeps of a product that precipitates; undefined where nothing is known. */
  readonly kept: Kept | undefined;
  /** Product that does not form because another solid takes its metal, or a material stays what it was; undefined for none. */
  readonly elsewhere: Quantity | undefined;
  /** What passes the first filter. */
  readonly filtrate: Pot | undefined;
  readonly washing: WashSchedule | undefined;
}

/** What leaves beside steam, in a sentence of its own. */
function vapoursOf({ operation, left }: Done, { grams }: Hand): string {
  if (operation === "dry") return "";
  const gone = left.flatMap(({ what, pot }) => (what === "vapour" ? pot.books.dissolved : []));
  return gone
    .map((one) => {
      const boils = boilingPoint(one.matter.formula);
      const flame = boils === undefined ? "" : ", no flame near";
      const at = boils === undefined ? "" : ` (it boils at ${celsius(boils)})`;
      return ` ${grams(massOf(one))} of ${one.matter.name} leaves as vapour${at}: under a hood${flame}.`;
    })
    .join("");
}

export class Bench {
  readonly drafts: Draft[] = [];
  readonly #vessels = new Map<string, Pot>();
  reacted: Pot | undefined;
  liquor: Pot | undefined;
  mixed: Quantity | undefined;
  onMetal: readonly Reaction[] = [];
  kept: Work["kept"];
  elsewhere: Work["elsewhere"];
  filtrate: Pot | undefined;
  washing: WashSchedule | undefined;

  /** What the liquor is kept from, so that it does not turn basic, stands in a step. */
  isKeepingSaid = false;
  /** So does what metal in it keeps from it. */
  isGuardSaid = false;

  /** Iron was taken out with a base, and the liquor is not acid again yet. */
  isIronOut = false;

  /** Gas that nothing gives off before a base comes in at the end. */
  readonly laterGas = new Set<string>();

  /** How warm what forms is kept as it does, so that it stays dissolved. */
  keptDissolved: KeptDissolved | undefined;

  /** Figures as its instruments show them. */
  readonly hand: Hand;

  constructor(readonly frame: Frame) {
    this.hand = handOf(frame.setting.steps, !frame.setting.wet);
  }

  /** What is in a vessel now. */
  in(vessel: string): Pot {
    const { temperature, pressure } = this.frame.setting;
    return this.#vessels.get(vessel) ?? Pot.empty(temperature, pressure);
  }

  get pot(): Pot {
    return this.in(POT);
  }

  /** Where a pack waits until it is put in: under its name, unless a vessel of the work is called so. */
  pack(name: string): string {
    const { materials } = this.frame.setting;
    const isVessel =
      name === POT ||
      name === MOTHER ||
      name.startsWith(TRAP) ||
      materials.some((m) => asSolution(m.shelf.name) === name);
    return isVessel ? `pack of ${name}` : name;
  }

  material(i: number): Material {
    return this.frame.setting.materials[i]!;
  }

  name(i: number): string {
    return this.material(i).shelf.name;
  }

  /** Is a material of the equation in the pot? */
  get hasFeed(): boolean {
    const { materials } = this.frame.setting;
    return this.drafts.some(
      ({ vessel, from }) => vessel === POT && materials.some(({ shelf }) => this.pack(shelf.name) === from),
    );
  }

  /** An operation done on a vessel; the vessel it was filled from is empty after. */
  did(vessel: string, done: Done, telling: Telling): Pot {
    const vapours = vapoursOf(done, this.hand);
    const say = (look: Look): string => `${telling.say(look)}${vapours}`;
    const apparatus = telling.apparatus ?? (vapours === "" ? undefined : "fume hood");
    this.drafts.push({ ...done, ...telling, ...(apparatus === undefined ? {} : { apparatus }), say, vessel });
    this.#vessels.set(vessel, done.after);
    if (telling.from !== undefined) this.#vessels.delete(telling.from);
    return done.after;
  }

  /** Solids that by the equilibrium form beside the product or in its place, by their keys. */
  readonly others = new Set<string>();

  /** What stands in the pot of the product's metal: the product, or what precipitated in its place. */
  get cake(): string {
    const { name, formula } = this.frame.setting.product;
    const { solids } = this.pot.books;
    const beside = solids.filter(({ matter }) => this.others.has(matter.key)).map(({ matter }) => matter.name);
    const isThere = beside.length === 0 || solids.some(({ matter }) => matter.key === formula.compositionText);
    return list([...(isThere ? [name] : []), ...beside]);
  }

  /** A substance in the words of the shelf, where it takes no part; a catalyst by its name; else its formula. */
  called(matter: Matter): string {
    const { asides, product } = this.frame.setting;
    const own = asides.find(({ form }) => form.compositionText === matter.key);
    const catalyst = catalystOf(product.formula);
    return own?.shelf.name ?? (catalyst?.formula === matter.key ? catalyst.called : matter.name);
  }

  /** What the last step comes to, otherwise: something happens in it. */
  amend(after: Pot): void {
    const last = this.drafts.pop()!;
    this.drafts.push({ ...last, after });
    this.#vessels.set(last.vessel, after);
  }

  readonly #used = new Set<Material>();

  /** Asides of a use that are not in yet; whoever asks uses them. */
  asidesFor(use: Use): readonly Material[] {
    const { setting } = this.frame;
    const found = setting.asides.filter((one) => !this.#used.has(one) && useOf(one, setting) === use);
    for (const one of found) this.#used.add(one);
    return found;
  }

  /** Is an aside not in yet? Whoever asks uses it. */
  takesAside(one: Material): boolean {
    const isNew = !this.#used.has(one);
    this.#used.add(one);
    return isNew;
  }

  /** A vessel that is filled with what left another. */
  caught(vessel: string, pot: Pot): void {
    this.#vessels.set(vessel, pot);
  }
}
