// Second opinion on the dimension of the reaction space: the rank of the element-and-charge matrix by singular values, from
// ml-matrix, a general-purpose linear algebra library. In doubles, so only matrices of moderate entries are asked.
import { Matrix, SingularValueDecomposition } from "ml-matrix";
import { reactionSpace } from "preparative";
import { describe, expect, it } from "vitest";
import { CORPUS } from "../data/equation-corpus";
import { matrixOf } from "../equation/composition";

const MODERATE = 1000n;

describe("dimension of the reaction space", () => {
  it("is what a linear algebra library finds, for the corpus", () => {
    let asked = 0;
    for (const equation of CORPUS) {
      const rows = matrixOf(equation);
      if (rows.some((row) => row.some((entry) => entry > MODERATE || entry < -MODERATE))) continue;
      asked += 1;
      const matrix = new Matrix(rows.map((row) => row.map(Number)));
      const { rank } = new SingularValueDecomposition(matrix, { autoTranspose: true });
      expect(reactionSpace(equation).dimension, equation).toBe(matrix.columns - rank);
    }
    expect(asked).toBeGreaterThan(770);
  });
});
