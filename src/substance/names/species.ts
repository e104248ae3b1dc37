// One species that a name tells of.

import type { ElementWord, Ion } from "../../ion/internal";

/** One species of a name: an ion, or a metal whose charge the name may leave open. */
export interface Species {
  /** Formula text of one, without charge. */
  readonly text: string;
  /** Set in brackets when more than one stands in a formula. */
  readonly group: boolean;
  /** Signed charge of one; `undefined` where the name does not tell. */
  readonly charge: number | undefined;
  /** How many, if a prefix says so. */
  readonly count: number | undefined;
  readonly element?: ElementWord;
  /** Two charges of a mixed-valence metal. */
  readonly mixed?: readonly [number, number];
  readonly ion?: Ion;
  /** Named without an oxidation number although its metal has several: what a clear name would say. */
  readonly open?: string;
}
