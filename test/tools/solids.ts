// The rows of the table of solubilities with the formula of every solid, where the table gives its waters.
import { solidOf } from "../../src/solubility/curves/solid-of";
import { SOLUBILITY } from "../../src/solubility/data/curves";

export const curvesWithSolids = () =>
  SOLUBILITY().map((row) => ({
    ...row,
    solids: row.solids.map((range) => ({ solid: solidOf(row, range), upTo: range.upTo })),
  }));
