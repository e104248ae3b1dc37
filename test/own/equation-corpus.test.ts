import { describe, expect, it } from "vitest";
import { reactionSpace, tryBalance } from "../../src/equation";
import { CORPUS } from "../data/equation-corpus";
import { gcd, matrixOf, residue } from "../equation/composition";
import { rankModulo } from "../equation/kernel/matrices";

// Every equation of the corpus: the answer is checked by exact arithmetic of the tests' own, from the text on; the
// dimension by a rank modulo 2^61 - 1, also of the tests' own. Those with no or several answers are listed here in full.

const SEVERAL = new Set(
  CORPUS.filter((equation) => matrixOf(equation)[0]!.length - rankModulo(matrixOf(equation), (1n << 61n) - 1n) > 1),
);

describe("corpus of 778 equations", () => {
  it("balances, or refuses with the right reason, every one of them", () => {
    expect(CORPUS.length).toBe(778);
    const tally = { unique: 0, several: 0, impossible: 0 };
    for (const equation of CORPUS) {
      const matrix = matrixOf(equation);
      const dimension = matrix[0]!.length - rankModulo(matrix, (1n << 61n) - 1n);
      const space = reactionSpace(equation);
      expect(space.dimension, equation).toBe(dimension);
      for (const vector of [...space.basis, ...space.vectors]) {
        expect(
          [...residue(equation, vector).values()].filter((value) => value !== 0n),
          equation,
        ).toEqual([]);
      }
      const outcome = tryBalance(equation);
      if (outcome.ok) {
        tally.unique++;
        const { coefficients } = outcome.value;
        expect(dimension, equation).toBe(1);
        expect(
          [...residue(equation, coefficients).values()].filter((value) => value !== 0n),
          equation,
        ).toEqual([]);
        expect(
          coefficients.every((value) => value > 0n),
          equation,
        ).toBe(true);
        expect(gcd(coefficients), equation).toBe(1n);
      } else if (outcome.error.code === "equation.underdetermined") {
        tally.several++;
        expect(SEVERAL.has(equation), equation).toBe(true);
        // every species takes part in some elementary reaction, so all together they make a positive solution
        expect(
          matrix[0]!.every((_, at) => space.vectors.some((vector) => vector[at]! > 0n)),
          equation,
        ).toBe(true);
      } else {
        tally.impossible++;
        expect(outcome.error.code, equation).toBe("equation.impossible");
        // no sum of elementary reactions lets every species take part
        expect(
          matrix[0]!.every((_, at) => space.vectors.some((vector) => vector[at]! > 0n)),
          equation,
        ).toBe(false);
      }
    }
    expect(tally).toEqual({ unique: 740, several: 17, impossible: 21 });
  });
});
