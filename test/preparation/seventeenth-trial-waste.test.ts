// What independent readers of the seventeenth trial objected to in displacements, washes, gases beside acid salts and wastes; the
// preparations are theirs. Facts of the bench are common practice, no source.
import { type PlanRequest, planPreparation } from "preparative";
import { benchSheet } from "preparative/sheet";
import { describe, expect, it } from "vitest";

const texts = (request: PlanRequest): string =>
  planPreparation(request)
    .steps.map(({ text }) => text)
    .join("\n");
const sheet = (request: PlanRequest): string => benchSheet(planPreparation(request)).replace(/\s+/g, " ");

const tin = (excess?: `${number} %`): PlanRequest => ({
  equation: "SnCl2·2H2O + Zn -> Sn + ZnCl2 + 2 H2O",
  product: "Sn",
  materials: [
    { name: "tin salt", form: "SnCl2·2H2O", assay: "98 %", ...(excess === undefined ? {} : { excess }) },
    { name: "zinc granules", form: "Zn", assay: "99 %" },
  ],
  scale: { material: "zinc granules", portion: "5.00 g" },
});

describe("a displacement with the salt in excess", () => {
  it("is done when the metal is gone and a bit of the product gives no gas with acid, not when a piece stays bright", () => {
    const text = texts(tin("10 %"));
    expect(text).toMatch(
      /until none of the zinc granules is left, some hours to overnight: lumps broken up with the rod show none .*and a bit of the Sn, washed, gives no gas in a little fresh dilute acid.*add no more of the zinc granules/,
    );
    expect(text).not.toContain("stays bright");
    const printed = sheet(tin("10 %"));
    expect(printed).not.toContain("a bright piece of the same metal");
    expect(printed).toContain("hydrochloric or sulfuric acid, fresh (for the test)");
    expect(printed).toMatch(/It is done when lumps broken up with the rod show none of the zinc granules inside/);
  });

  it("keeps the test by a bright piece where nothing is over on purpose", () => {
    expect(texts(tin())).toContain("bright piece of the same metal");
  });

  it("is not tested with acid where the product dissolves in it as well", () => {
    const text = texts({
      equation: "Pb(CH3COO)2·3H2O + Zn -> Pb + Zn(CH3COO)2 + 3 H2O",
      product: "Pb",
      materials: [
        { name: "lead acetate", form: "Pb(CH3COO)2·3H2O", excess: "10 %" },
        { name: "zinc powder", form: "Zn" },
      ],
      scale: { material: "zinc powder", portion: "5 g" },
    });
    expect(text).toMatch(
      /none of the zinc powder is left, half an hour or more: lumps .* show none of the zinc powder inside\. /,
    );
  });
});
