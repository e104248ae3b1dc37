// Pairs that stand together on every shelf, or are mixed in a kitchen, and must stay silent in any spelling: common practice, no
// source.
import { describe, expect, it } from "vitest";
import { foundFor, pairs } from "../tools/mixes";

const HARMLESS = pairs(
  `saltTable water; saltTable sugar; soda saltTable; soda bicarbonate; chalk water; copperSulfate water; copperSulfate saltTable; citric sugar; citric saltTable; urea water; urea sugar; glycerol water; glycerol sugar; ethanol water; acetone water; ammoniumSulfate water; ammoniumSulfate saltTable; ammoniumChloride saltTable; thiosulfate soda; sulfite soda; thiosulfate saltTable; bicarbonate sugar; bicarbonate saltTable; chalk saltTable; chalk slakedLime; slakedLime sugar; charcoal saltTable; charcoal water; iron saltTable; iron chalk; zinc saltTable; zinc chalk; sulfur chalk; sulfur saltTable; acetic saltTable; acetic water; acetic ethanol; citric ethanol; citric water; phosphoric water; bisulfate saltTable; soda urea; soda thiosulfate; copperSulfate sugar; copperSulfate urea; fluoride saltTable; iodine saltTable; permanganate water; nitratePotash saltTable; nitratePotash water; bariumNitrate water; leadAcetate water; dichromate water; persulfate water; percarbonate soda; perchlorate saltTable; chlorate saltTable; ammoniumNitrate water; oxalicAcid water; formicAcid water; ferrocyanide saltTable; ferrocyanide soda; manganeseDioxide saltTable; manganeseDioxide chalk`,
);

describe("harmless mixes", () => {
  it("raise no caution, two of them at most", () => {
    expect(HARMLESS.length).toBeGreaterThanOrEqual(60);
    const cried = HARMLESS.filter((pair) => [0, 1, 2, 3, 4].some((spelling) => foundFor(pair, spelling).length > 0));
    expect(cried.map((pair) => pair.join(" ")).length, cried.join("; ")).toBeLessThanOrEqual(2);
  });
});
