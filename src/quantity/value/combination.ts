// Exact coefficients times quantities, summed: a molar mass from atomic weights. Value, name and terms are made only when
// somebody looks, which keeps a million molar masses free of graphs.
import type { Dimension } from "./dimension";
import { combination, type Naming, type Node, type Operation } from "./graph";
import { make } from "./quantity";
import { multiply, type Rational } from "./rational";
import { BRAND, type Quantity } from "./types";
import { readUnit, type Unit } from "./unit";

/** An exact count and what it counts. */
interface Term {
  readonly coefficient: Rational;
  readonly quantity: Quantity;
}

/** What a combination answers when it is asked; each method is called at most once. */
interface Combined {
  /** The sum in the unit of the combination. */
  sum(): Rational;
  named(): Naming;
  terms(): readonly Term[];
}

/** What has been asked for so far. */
interface Kept {
  value?: Rational;
  naming?: Naming;
  terms?: readonly Term[];
  operation?: Operation;
}

/** A node of the graph that is worked out when somebody looks. */
export abstract class Combination implements Node, Combined {
  // `declare`: without it every field is first defined as undefined, which doubles the cost of the node.
  declare readonly unit: Unit;
  declare private kept: Kept | undefined;

  constructor(unit: Unit) {
    this.unit = unit;
    this.kept = undefined;
  }

  abstract sum(): Rational;
  abstract named(): Naming;
  abstract terms(): readonly Term[];

  private get memory(): Kept {
    this.kept ??= {};
    return this.kept;
  }
  private get keptTerms(): readonly Term[] {
    this.memory.terms ??= this.terms();
    return this.memory.terms;
  }

  get dimension(): Dimension {
    return this.unit.dimension;
  }
  get leaf(): undefined {
    return undefined;
  }
  get decimals(): undefined {
    return undefined;
  }
  get value(): Rational {
    this.memory.value ??= multiply(this.sum(), this.unit.factor);
    return this.memory.value;
  }
  get naming(): Naming {
    this.memory.naming ??= this.named();
    return this.memory.naming;
  }
  get operation(): Operation {
    const coefficients = (): Rational[] => this.keptTerms.map((term) => term.coefficient);
    this.memory.operation ??= {
      partials: (node, operands) => combination(coefficients()).partials(node, operands),
      write: (operands) => combination(coefficients()).write(operands),
    };
    return this.memory.operation;
  }
  get operands(): () => readonly Node[] {
    return () => this.keptTerms.map((term) => term.quantity[BRAND]);
  }
}

/** A combination of a few functions, for the rare ones; what they look up, they have looked up before. */
class Answering extends Combination {
  declare private readonly answers: Combined;

  constructor(answers: Combined, unit: Unit) {
    super(unit);
    this.answers = answers;
  }
  sum(): Rational {
    return this.answers.sum();
  }
  named(): Naming {
    return this.answers.named();
  }
  terms(): readonly Term[] {
    return this.answers.terms();
  }
}

/**
 * The quantity of a sum that is worked out when somebody looks.
 *
 * @internal
 */
export const combinationOf = (answers: Combined, unit: string): Quantity =>
  make(new Answering(answers, readUnit(unit)));
