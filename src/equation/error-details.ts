// What the errors of balancing know besides their sentence.

/** One way to mend an equation: what to add, and the equation that balances then. */
export interface Mending {
  /** Formulas of what to add. */
  readonly add: readonly string[];
  /** The balanced equation with them, as text. */
  readonly equation: string;
}

/** The details of `equation.impossible`. */
export interface ImpossibleDetails {
  /** The equation that was asked for, as text. */
  readonly equation: string;
  /** Dimension of the solutions when signs are free. */
  readonly dimension: number;
  /** Elements found among the reactants only or the products only. */
  readonly elementsOnOneSideOnly: readonly string[];
  /** Elements, or `charge`, whose balance alone keeps all species from taking part together. */
  readonly balancesThatBlock: readonly string[];
  /** Species that every non-negative solution leaves out, where there is such a solution. */
  readonly forcedZero: readonly string[];
  /** Species that would have to stand on the other side. */
  readonly onTheWrongSide: readonly string[];
  /** The balanced equation after moving them. */
  readonly moved?: string;
  /** The balanced equation that is left without the species forced to zero. */
  readonly withoutForcedZero?: string;
  /** What could be added so that it balances. */
  readonly mending: readonly Mending[];
}

/** The details of `equation.underdetermined`. */
export interface UnderdeterminedDetails {
  /** The equation that was asked for, as text. */
  readonly equation: string;
  /** How many independent reactions it mixes. */
  readonly dimension: number;
  /** The elementary reactions in it, balanced; empty where there are more than can be listed. */
  readonly elementary: readonly string[];
  /** Formulas that stand on both sides. */
  readonly spectators?: readonly string[];
}

/** The details of `equation.wrong-coefficients`. */
export interface WrongCoefficientsDetails {
  /** The equation that was asked for, as text. */
  readonly equation: string;
  /** Products minus reactants, by element and `charge`, as whole numbers or fractions. */
  readonly imbalance: Readonly<Record<string, string>>;
  /** The same species with coefficients that balance, where there are such. */
  readonly balanced?: string;
}
