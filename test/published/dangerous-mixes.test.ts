// Dangerous mixes in whatever spelling: each pair is asked five times - as formulas, systematic names, old or shop names,
// other formulas - and must raise a caution each time. Pairs from printed lists of incompatible chemicals (recalled, not
// copied: Prudent Practices in the Laboratory, National Academies Press 2011, table 5.1 and text; Bretherick's Handbook of
// Reactive Chemical Hazards, 2006); the reactions of vinegar, soda, lime, lye and water are of any textbook of general
// chemistry, such as Chemistry 2e (OpenStax, 2019), chapter 4.
import { describe, expect, it } from "vitest";
import { foundFor, pairs } from "../tools/mixes";

const DANGEROUS = pairs(
  // bleach with what frees chlorine, forms chloramines or organic chlorides
  `hypochlorite hydrochloric; hypochlorite acetic; hypochlorite sulfuric; hypochlorite nitric; hypochlorite citric; hypochlorite bisulfate; hypochlorite phosphoric; hypochlorite oxalicAcid; hypochlorite formicAcid; hypochlorite ammonia; hypochlorite urea; hypochlorite ammoniumChloride; hypochlorite ammoniumSulfate; hypochlorite acetone; hypochlorite ethanol; hypochlorite peroxide`,
  // pool chlorine, hypochlorite of lime
  `calciumHypochlorite hydrochloric; calciumHypochlorite acetic; calciumHypochlorite ammonia; calciumHypochlorite sugar; calciumHypochlorite glycerol; calciumHypochlorite charcoal; calciumHypochlorite isocyanurate; calciumHypochlorite ammoniumSulfate; calciumHypochlorite sulfur; calciumHypochlorite acetone; calciumHypochlorite ethanol`,
  // pool tablets and chlorite
  `isocyanurate ammonia; isocyanurate hydrochloric; isocyanurate hypochlorite; isocyanurate urea; chlorite hydrochloric; chlorite citric; chlorite sulfuric; chlorite sulfur`,
  // chlorates and perchlorates with fuels and acids
  `chlorate sulfur; chlorate sugar; chlorate charcoal; chlorate aluminium; chlorate magnesium; chlorate sulfuric; chlorate hydrochloric; chlorate ammoniumChloride; chlorate ammoniumSulfate; chlorate redPhosphorus; chlorate zinc; sodiumChlorate sulfur; sodiumChlorate sugar; sodiumChlorate sulfuric; sodiumChlorate ammoniumSulfate; perchlorate aluminium; perchlorate sulfur; perchlorate sugar; perchlorate magnesium; perchlorate charcoal`,
  // nitrates with fuels
  `nitratePotash sulfur; nitratePotash charcoal; nitratePotash sugar; nitratePotash aluminium; nitratePotash magnesium; ammoniumNitrate zinc; ammoniumNitrate charcoal; ammoniumNitrate aluminium; ammoniumNitrate sulfur; ammoniumNitrate sugar; ammoniumNitrate nitrite; bariumNitrate aluminium; bariumNitrate sulfur; silverNitrate magnesium`,
  // nitrites
  `nitrite hydrochloric; nitrite sulfuric; nitrite ammoniumChloride; nitrite urea; nitrite acetic; nitrite cyanide`,
  // permanganates and dichromates
  `permanganate hydrochloric; permanganate sulfuric; permanganate glycerol; permanganate ethanol; permanganate peroxide; permanganate sulfur; permanganate sugar; permanganate aluminium; permanganate acetone; permanganate formaldehyde; permanganate oxalicAcid; permanganate charcoal; dichromate hydrochloric; dichromate ethanol; dichromate glycerol; dichromate sulfur; dichromate magnesium`,
  // peroxides
  `peroxide acetone; peroxide manganeseDioxide; peroxide ethanol; peroxide lye; peroxide sulfuric; peroxide formicAcid; peroxide acetic; peroxide copperSulfate; peroxide zinc; persulfate sulfite; persulfate sugar; persulfate aluminium; percarbonate citric; percarbonate sugar; percarbonate acetic`,
  // salts whose acid is a poisonous gas
  `cyanide acetic; cyanide hydrochloric; cyanide sulfuric; cyanide citric; cyanide bicarbonate; ferrocyanide sulfuric; ferrocyanide hydrochloric; sulfide hydrochloric; sulfide sulfuric; sodiumSulfide acetic; sodiumSulfide hydrochloric; sodiumSulfide bisulfate; metabisulfite hydrochloric; metabisulfite citric; metabisulfite acetic; sulfite hydrochloric; sulfite sulfuric; thiosulfate hydrochloric; thiosulfate acetic; azide hydrochloric; azide acetic; azide silverNitrate; azide copperSulfate; thiocyanate sulfuric; fluoride hydrochloric; fluoride sulfuric; fluoride acetic`,
  // what foams, burns as hydrogen, or boils over
  `bicarbonate acetic; bicarbonate hydrochloric; bicarbonate citric; soda hydrochloric; soda sulfuric; soda citric; chalk hydrochloric; chalk nitric; zinc hydrochloric; zinc sulfuric; magnesium hydrochloric; magnesium acetic; aluminium hydrochloric; iron sulfuric; aluminium lye; zinc lye; aluminium potassiumHydroxide; sulfuric lye; hydrochloric lye; nitric potassiumHydroxide; acetic lye; sulfuric water; lye water; potassiumHydroxide water; quicklime water; carbide water; sodium water; calciumHydride water; carbide hydrochloric; sodium hydrochloric`,
  // strong acids, ammonium with lye, silver and mercury with ammonia, hydrides
  `nitric ethanol; nitric acetone; nitric glycerol; nitric zinc; nitric sugar; nitric charcoal; nitric sulfide; nitric urea; nitric hydrochloric; sulfuric sugar; sulfuric saltTable; manganeseDioxide hydrochloric; ammoniumChloride lye; ammoniumSulfate slakedLime; ammoniumNitrate lye; ammoniumChloride quicklime; silverNitrate ammonia; silverNitrate ethanol; mercury nitric; mercury ammonia; iodine ammonia; iodine aluminium; iodine zinc; sodiumBorohydride acetic; sodiumBorohydride water; hydrofluoric lye; redPhosphorus permanganate; formaldehyde hydrochloric; formaldehyde peroxide`,
);

describe("dangerous mixes", () => {
  it("are at least 150", () => expect(DANGEROUS.length).toBeGreaterThanOrEqual(150));

  it.each(DANGEROUS)("%s and %s raise a caution in any spelling", (...pair) => {
    for (let spelling = 0; spelling < 5; spelling++)
      expect(foundFor(pair, spelling).length, `${spelling}`).toBeGreaterThan(0);
  });

  it("are the same whichever stands first", () => {
    let tested = 0;
    for (const [a, b] of DANGEROUS) {
      expect([...foundFor([b, a], 0)].sort()).toEqual([...foundFor([a, b], 0)].sort());
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(190);
  });
});
