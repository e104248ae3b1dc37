// The network reads the rows of the elements that are asked for. That nothing is missed rests on every reaction of the tables
// keeping its atoms: what is made of some components has their elements and no others, water's apart.
import { describe, expect, it } from "vitest";
import { COMPLEXES } from "../../src/aqueous/data/complexes";
import { keyOf } from "../../src/aqueous/mixture/notation";
import { network, wholeNetwork } from "../../src/aqueous/mixture/tabulated";
import { elements } from "../../src/element";
import { elementsIn } from "../../src/formula/by-elements";

const everything = elements().map(({ symbol }) => symbol);
const elementsOf = (keys: Iterable<string>): string => elementsIn([...keys].join("."));

describe("the network of the tables", () => {
  const species = network().speciesWithin(everything);
  const phases = network().phasesWithin(everything);

  it("has the species, solids and gases of the tables", () => {
    expect(species.length).toBeGreaterThan(700);
    expect(phases.length).toBeGreaterThan(400);
    expect(new Set(species.map(({ key }) => key)).size).toBe(species.length);
  });

  it("makes each of components with its elements", () => {
    for (const { formula, of } of [...species, ...phases])
      expect(elementsOf(of.keys()), formula).toBe(elementsIn(formula));
  });

  it("finds the solids and gases of some components among those that have all their elements", () => {
    for (const components of [["Zn^2+", "CO3^2-"], ["Ca^2+"], ["Ag+", "Cl-"]]) {
      const found = network().phasesWith(...components.map(keyOf));
      const wanted = elementsOf(components.map(keyOf)).split(" ");
      expect(found.length, components.join()).toBeGreaterThan(1);
      for (const { formula } of found)
        expect(elementsIn(formula).split(" "), formula).toEqual(expect.arrayContaining(wanted));
    }
  });

  it("gives the same whether it is asked for a part or for all, in the same order", () => {
    for (const components of [
      ["Zn^2+", "CO3^2-", "SO4^2-", "Na+"],
      ["Fe(CN)6^4-", "K+", "Cu^2+"],
      ["C2H3O2-", "Pb^2+"],
    ]) {
      const keys = components.map(keyOf);
      const fresh = wholeNetwork();
      const only = new Set(["H+", ...keys]);
      const made = ({ of }: { readonly of: ReadonlyMap<string, number> }) =>
        [...of.keys()].every((key) => only.has(key));
      const names = (list: readonly { readonly formula: string }[]) => list.map(({ formula }) => formula);
      const expected = species.filter(made);
      expect(expected.length, components.join()).toBeGreaterThan(4);
      expect(names(fresh.speciesWithin(keys).filter(made))).toEqual(names(expected));
      expect(names(fresh.phasesWithin(keys).filter(made))).toEqual(names(phases.filter(made)));
      for (const key of keys) {
        const uses = [...species, ...phases].some(({ of }) => of.has(key));
        expect(fresh.serves(key), key).toBe(uses);
        expect(names(fresh.phasesWith(key).filter(({ of }) => of.has(key)))).toEqual(
          names(phases.filter(({ of }) => of.has(key))),
        );
      }
    }
  });

  it("finds a complex by the elements of its metal and its ligand", () => {
    for (const { metal, ligand, steps } of COMPLEXES())
      for (const { complex } of steps) expect(elementsIn(complex), complex).toBe(elementsIn(metal + ligand));
  });

  it("has a later row in the place of an earlier one", () => {
    const fresh = wholeNetwork();
    const before = fresh.speciesWithin(["Zn^2+"]).map(({ key }) => key);
    fresh.form("ZnOH+", () => [
      [
        [1, "Zn^2+"],
        [-1, "H+"],
      ],
      [],
    ]);
    const after = fresh.speciesWithin(["Zn^2+"]);
    expect(after.map(({ key }) => key)).toEqual(before);
    expect(after.find(({ key }) => key === keyOf("ZnOH+"))?.shares).toEqual([]);
  });
});
