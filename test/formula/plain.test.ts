// The reader of the tables' plain notation against the formula reader, over every formula of the tables it is used for: it may leave
// one to the other, but never say something else.
import { describe, expect, it } from "vitest";
import { COMPLEXES } from "../../src/aqueous/data/complexes";
import { SOLUBILITY_PRODUCTS } from "../../src/aqueous/data/products";
import { parseFormula } from "../../src/formula";
import { plainAtoms } from "../../src/formula/read/plain";
import { ACID_STEPS } from "../../src/ion/data/acid-steps";
import { ACIDS } from "../../src/ion/data/acids";
import { ISOMERS } from "../../src/ion/data/isomers";
import { allIons } from "../../src/ion/ion-index";

const byReader = (text: string): Map<string, number> => {
  const formula = parseFormula(text);
  const atoms = new Map(formula.composition.map(({ symbol, count }) => [symbol, Number(count.n) / Number(count.d)]));
  if (formula.charge !== 0) atoms.set("e", formula.charge);
  return atoms;
};

describe("the plain reader", () => {
  const { anions, cations } = allIons();
  const texts = [
    ...SOLUBILITY_PRODUCTS().map(({ solid }) => solid),
    ...COMPLEXES().flatMap(({ metal, ligand, steps }) => [metal, ligand, ...steps.map(({ complex }) => complex)]),
    ...ACID_STEPS().flatMap(({ acid, base }) => [acid, base]),
    ...ACIDS().map(({ formula }) => formula),
    ...ISOMERS().flatMap(({ readings }) => readings.map(({ formula }) => formula)),
    ...[...anions, ...cations].map(({ row }) => row.formula),
  ];

  it("says what the formula reader says of every formula of the tables", () => {
    let read = 0;
    for (const text of texts) {
      const plain = plainAtoms(text);
      if (plain === undefined) continue;
      read += 1;
      const sorted = (atoms: Map<string, number>) =>
        [...atoms].map(([symbol, n]) => `${symbol} ${Number(n.toFixed(9))}`).sort();
      expect(sorted(plain), text).toEqual(sorted(byReader(text)));
    }
    expect(texts.length).toBeGreaterThan(1500);
    expect(read / texts.length).toBeGreaterThan(0.98);
  });

  it.each(["CO3.10H2O", "[13C]O2", "Fe₂O₃", "CaSO4·½H2O", "(NH4)2SO4)", "2", ""])(
    "leaves %s to the formula reader",
    (text) => {
      expect(plainAtoms(text)).toBeUndefined();
    },
  );
});
