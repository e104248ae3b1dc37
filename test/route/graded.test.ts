// Of several hundred generated reactions those that are offered as routes must be right: 98 of 100 graded as working, and none
// that does not go.
import { findRoutes } from "preparative";
import { describe, expect, it } from "vitest";
import { BLIND } from "./blind";
import { GRADED, type Graded } from "./graded";
import { jars } from "./shelves";

const isOffered = ([target, feeds]: Graded): boolean =>
  findRoutes({ target, shelf: jars(...feeds.split(" + ")), steps: 1, most: 1 }).routes.length > 0;

describe("reactions that a generator writes", () => {
  const offered = GRADED.filter(isOffered);
  const graded = (grade: Graded[2], rows: readonly Graded[] = GRADED) => rows.filter((row) => row[2] === grade);

  it("are three hundred and more", () => expect(GRADED.length).toBeGreaterThanOrEqual(300));

  it("are offered in 98 of 100 cases only where they work", () => {
    expect(graded("works", offered).length / offered.length).toBeGreaterThanOrEqual(0.98);
  });

  it("are never offered where they do not go", () => expect(graded("no", offered)).toEqual([]));

  it("are offered in 95 of 100 cases where they work", () => {
    expect(graded("works", offered).length / graded("works").length).toBeGreaterThanOrEqual(0.95);
  });
});

describe("reactions that were offered, graded by somebody else", () => {
  const offered = BLIND.filter(isOffered);
  const graded = (grade: Graded[2], rows: readonly Graded[]): readonly string[] =>
    rows.filter((row) => row[2] === grade).map(([product]) => product);

  it("are still offered where they work, and nowhere where they do not go", () => {
    expect(graded("works", BLIND)).toHaveLength(65);
    expect(graded("works", offered)).toHaveLength(65);
    expect(graded("no", offered)).toEqual([]);
  });

  it("are poor only where another hydrate than the asked one stands, or a syrup", () => {
    expect(graded("poor", offered)).toEqual([
      "Ca(CH3COO)2·2H2O",
      "KCH3COO·1½H2O",
      "Fe2(SO4)3",
      "Mn(NO3)2·6H2O",
      "NaHCOO·2H2O",
    ]);
  });
});
