// What is in a vessel, as the operations book it: liquid water, what is dissolved in formula units without crystal water,
// solids with theirs. Immutable; every operation makes a new one.

import { densityOfWater } from "../../amount";
import { type Quantity, sum } from "../../quantity";
import { exact } from "../planning/exact";
import type { Books } from "./books";
import { type Contents, viewOf } from "./contents";
import { type Entry, massOf, type Origin, type SolidEntry } from "./entry";
import type { Asked } from "./equilibrium";
import { type LiquorSize, sizeOfLiquor } from "./liquor-size";
import { type Matter, massOfWater } from "./matter";

const NOTHING = "0 g";

/** Less than this share of what there was is the rounding of the sums, and nothing. */
const TRACE = 1e-12;

/** An amount less another; undefined when nothing is left. */
export function less(amount: Quantity, taken: Quantity): Quantity | undefined {
  if (taken === amount) return undefined;
  const left = amount.minus(taken);
  return left.toNumber() > Math.abs(amount.toNumber()) * TRACE ? left : undefined;
}

const joined = (one: readonly string[], other: readonly string[]): readonly string[] =>
  other.length === 0 ? one : [...new Set([...one, ...other])];

/** The list with an amount more of a substance. */
function plus<E extends Entry>(list: readonly E[], entry: E, same: (one: E) => boolean): readonly E[] {
  const at = list.findIndex(same);
  if (at < 0) return [...list, entry];
  return list.map((one, i) => (i === at ? { ...one, amount: one.amount.plus(entry.amount) } : one));
}

const plusOne = (list: readonly Entry[], entry: Entry): readonly Entry[] =>
  plus(list, entry, ({ matter }) => matter.key === entry.matter.key);

const plusOneSolid = (list: readonly SolidEntry[], entry: SolidEntry): readonly SolidEntry[] =>
  plus(list, entry, ({ matter, origin }) => matter.key === entry.matter.key && origin === entry.origin);

export class Pot {
  #view: Contents | undefined;
  #volume: Quantity | undefined;
  #liquor: LiquorSize | undefined;
  readonly asked: Asked;

  constructor(
    readonly books: Books,
    whenever: Asked["whenever"] = {},
  ) {
    this.asked = { whenever };
  }

  /** An empty vessel in the room. */
  static empty(temperature: Quantity<"temperature">, pressure: Quantity<"pressure">): Pot {
    const nothing = exact(NOTHING);
    const none = { solids: [], dissolved: [], gas: [], waterMissing: [], unknown: [] };
    return new Pot({ water: nothing, temperature, pressure, other: nothing, ...none });
  }

  /** The contents as they are handed out. */
  get contents(): Contents {
    this.#view ??= viewOf(this);
    return this.#view;
  }

  /** Everything in it. */
  get mass(): Quantity {
    const { water, other, solids, dissolved } = this.books;
    this.asked.whenever.mass ??= sum([water, other, ...solids.map(massOf), ...dissolved.map(massOf)]);
    return this.asked.whenever.mass;
  }

  /** What is liquid in it: the solids, and what has left as gas, take no part of it. */
  get liquor(): LiquorSize {
    this.#liquor ??= sizeOfLiquor(this.books);
    return this.#liquor;
  }

  /** Of everything, no more than this: what is dissolved and what is solid is denser than water. */
  get volume(): Quantity {
    this.#volume ??= this.mass.dividedBy(densityOfWater(this.books.temperature)).to("mL");
    return this.#volume;
  }

  get isEmpty(): boolean {
    const { water, other, solids, dissolved } = this.books;
    return water.isZero() && other.isZero() && solids.length === 0 && dissolved.length === 0;
  }

  with(books: Partial<Books>): Pot {
    return new Pot({ ...this.books, ...books });
  }

  /** The same contents at another temperature: what they weigh and what is poured together stays as it is. */
  at(temperature: Quantity<"temperature">): Pot {
    return new Pot({ ...this.books, temperature }, this.asked.whenever);
  }

  plusWater(water: Quantity): Pot {
    return this.with({ water: this.books.water.plus(water).to("g") });
  }

  plusSolid(matter: Matter, amount: Quantity, origin: Origin): Pot {
    return this.with({ solids: plusOneSolid(this.books.solids, { matter, amount, origin }) });
  }

  /** How much of a substance is there, dissolved and as a solid, crystal water aside. */
  amountOf({ core }: Matter): Quantity {
    return [...this.books.dissolved, ...this.books.solids]
      .filter(({ matter }) => matter.core.key === core.key)
      .reduce((all, { amount }) => all.plus(amount), exact("0 mol"));
  }

  /** An amount dissolved: its crystal water is water then. */
  plusDissolved(matter: Matter, amount: Quantity): Pot {
    if (matter.isWater) return this.plusWater(massOfWater(amount));
    const { core, waters } = matter;
    const dissolved = plusOne(this.books.dissolved, { matter: core, amount });
    const pot = this.with({ dissolved });
    return waters.isZero() ? pot : pot.plusWater(massOfWater(amount.times(waters)));
  }

  plusGas(matter: Matter, amount: Quantity): Pot {
    return this.with({ gas: plusOne(this.books.gas, { matter, amount }) });
  }

  /** Everything of another vessel poured in; the gas that one gave off stays in its own books. */
  plusAll({ books }: Pot): Pot {
    const own = this.books;
    return this.with({
      // what is dissolved is booked without crystal water
      solids: books.solids.reduce(plusOneSolid, own.solids),
      dissolved: books.dissolved.reduce(plusOne, own.dissolved),
      water: own.water.plus(books.water).to("g"),
      other: own.other.plus(books.other),
      waterMissing: joined(own.waterMissing, books.waterMissing),
      unknown: joined(own.unknown, books.unknown),
    });
  }

  /** An amount of a substance less, with its crystal water, wherever it is: from the solution first, then from the solids. */
  minus(matter: Matter, amount: Quantity): Pot {
    if (matter.isWater) return this.with({ water: this.books.water.minus(massOfWater(amount)) });
    const { core } = matter;
    let open: Quantity | undefined = amount;
    let { water } = this.books;
    const take = <E extends Entry>(list: readonly E[]): E[] =>
      list.flatMap((one) => {
        if (open === undefined || one.matter.core.key !== core.key) return [one];
        const most = one.amount.compare(open) < 0 ? one.amount : open;
        // What comes from a solid brings the crystal water of that solid.
        const extra = one.matter.waters.minus(matter.waters);
        if (!extra.isZero()) water = water.plus(massOfWater(most.times(extra))).to("g");
        open = less(open, most);
        const left = less(one.amount, most);
        return left === undefined ? [] : [{ ...one, amount: left }];
      });
    const dissolved = take(this.books.dissolved);
    const solids = take(this.books.solids);
    return this.with({ dissolved, solids, water });
  }

  /** Solids and a share of everything that is liquid stay; the rest of the liquid goes. */
  split(share: Quantity): { readonly kept: Pot; readonly rest: Pot } {
    const { books } = this;
    const isAll = share.compare(exact("1")) >= 0;
    const part = (q: Quantity): Quantity => (isAll ? q : q.times(share));
    const isThere = ({ amount }: Entry): boolean => amount.isPositive();
    const kept = this.with({
      water: part(books.water),
      dissolved: books.dissolved.map((one) => ({ ...one, amount: part(one.amount) })).filter(isThere),
      other: part(books.other),
    });
    const nothing = exact(NOTHING);
    const minus = (q: Quantity): Quantity => (isAll ? nothing : q.minus(part(q)));
    const rest = this.with({
      solids: [],
      gas: [],
      water: minus(books.water),
      dissolved: isAll ? [] : books.dissolved.map((one) => ({ ...one, amount: minus(one.amount) })).filter(isThere),
      other: minus(books.other),
    });
    return { kept, rest };
  }
}
