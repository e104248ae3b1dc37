// Of more than a thousand generated reactions those that are offered as routes must be right: 98 of 100 graded as working, and none
// that does not go. What is graded `solution` is right where it is handed out as one.
import { tryFindRoutes } from "preparative";
import { describe, expect, it } from "vitest";
import { BLIND } from "./blind";
import { GRADED, type Graded } from "./graded";
import { jars } from "./shelves";
import { DRAWS } from "./strict";

/** How a reaction is offered; a target of a refused class is not offered either. */
function offeredAs([target, feeds]: Graded): "solid" | "liquor" | undefined {
  const found = tryFindRoutes({ target, shelf: jars(...feeds.split(" + ")), steps: 1, limit: 1 });
  return found.ok ? found.value.routes[0]?.steps.at(-1)?.kept : undefined;
}

interface Answer {
  readonly row: Graded;
  readonly as: "solid" | "liquor" | undefined;
}

const answers = (rows: readonly Graded[]): Answer[] => rows.map((row) => ({ row, as: offeredAs(row) }));
const isOffered = ({ as }: Answer): boolean => as !== undefined;
const isGood = ({ row: [, , grade], as }: Answer): boolean =>
  as === "liquor" ? grade === "solution" : grade === "works";
const serves = ({ row: [, , grade] }: Answer): boolean => grade === "works" || grade === "solution";
const named = (all: readonly Answer[]): string[] => all.map(({ row }) => row.join(" | "));

/** Safety comes before use: azides are not heated, and a liquor of nitric acid is not made. */
const LEFT_OUT = 0.98;

describe.each([["the first list", GRADED], ["one shelf, graded by somebody else", BLIND], ...DRAWS] as const)(
  "reactions that a generator writes, %s",
  (_, rows) => {
    const all = answers(rows);
    const offered = all.filter(isOffered);
    const wrong = offered.filter((one) => !isGood(one));

    it("are offered in 98 of 100 cases only where they work", () => {
      expect(1 - wrong.length / offered.length, named(wrong).join("\n")).toBeGreaterThanOrEqual(0.98);
    });

    it("are never offered where they do not go", () => {
      expect(named(wrong.filter(({ row }) => row[2] === "no"))).toEqual([]);
    });

    it("are offered where they work", () => {
      const lost = all.filter((one) => serves(one) && !isOffered(one));
      expect(1 - lost.length / all.filter(serves).length, named(lost).join("\n")).toBeGreaterThanOrEqual(LEFT_OUT);
    });
  },
);

it("are more than a thousand, and three hundred in the first list", () => {
  expect(GRADED.length).toBeGreaterThanOrEqual(300);
  expect(DRAWS.reduce((n, [, rows]) => n + rows.length, GRADED.length + BLIND.length)).toBeGreaterThan(1000);
});
