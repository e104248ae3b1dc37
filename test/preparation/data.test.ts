// Laws over every table of the layer: sources resolve, values can be read, nothing stands twice.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { parseFormula, quantity, sourceKeys } from "preparative";
import { describe, expect, it } from "vitest";
import { constitutionOf } from "../../src/ion";
import { ABSORBENTS } from "../../src/preparation/data/absorbents";
import { AGENTS, SPLIT_BY_BASE, THROUGH_HALOGEN } from "../../src/preparation/data/agents";
import { CHANGED_IN_AIR } from "../../src/preparation/data/air";
import { ANTISOLVENT, STANDS_WITH_ALCOHOL } from "../../src/preparation/data/antisolvent";
import { BASE_SEARCH, BASES_FOR_ACID } from "../../src/preparation/data/base-for-acid";
import { BELIEFS } from "../../src/preparation/data/beliefs";
import {
  APART_IN_ACID,
  COUPLES,
  DEADLY_FROM_WATER,
  FAR_UPHILL,
  FIRE_ONLY,
  HOT_SULFURIC,
  IN_LYE,
  IN_WATER,
  LYE_COMPLEXES,
  MELT_ONLY,
  OXIDISING_ACIDS,
  PASSIVE,
  SLUGGISH,
} from "../../src/preparation/data/couples";
import { ACID_SALTS, ASH_TEST, CRYSTAL_TEST } from "../../src/preparation/data/crystal-test";
import { DEADLY_AIR } from "../../src/preparation/data/deadly-air";
import {
  BEARS_OVEN,
  DELIQUESCENT,
  DRIED_CLOSED,
  DRYING,
  EFFLORESCENT,
  SLAKES,
} from "../../src/preparation/data/drying";
import {
  BARE_METAL,
  BASE_LEFT,
  CLEARED,
  ENDS,
  IRON_OUT,
  IRON_OXIDISED,
  LESS_OXIDISED,
  MADE_NEUTRAL,
  MAGNETIC,
  METAL_GONE,
  MONODENTATE,
  OVER_HYDROXIDE,
  SALT_GONE,
  SLOW_COMPLEXES,
  SPLIT_BY_ACID,
  STAYS_IN_NITRIC_ACID,
  UNDER_GAS,
  VITRIOLS,
} from "../../src/preparation/data/ends";
import { EXTREME_PH } from "../../src/preparation/data/extreme-ph";
import {
  ACID_LEAVES,
  ACID_TAKES,
  ACIDS_ON_METAL,
  BURNS_IN_AIR,
  CRUCIBLES,
  DRIED_FIRST,
  FIRED_IN_AIR,
  FIRING,
  FUMING_METALS,
  FUSES_OXIDES,
  GAS_FROM_LIGHT_POWDER,
  GIVES_OFF_GAS,
  IRRITATES_HOT,
  KEPT_DISSOLVED,
  KILN_OPENED,
  LIT_BY_FLAME,
  LONG_PIECES,
  MIXED_HOT,
  NOT_WETTED,
  POURED_COLD,
  PUFFS_UP,
  QUICK_METALS,
  REDUCED_IN_FIRE,
  REST_IS_NO_WATER,
  RUNS_BY_ITSELF,
  SLOW_IN_ACID,
  SLOW_IN_THE_COLD,
  SPREAD_IN_AIR,
  WARM_FOR_AMMINE,
  WARM_FOR_METAL,
  WARM_IN_ACID,
  WET_GRINDING,
} from "../../src/preparation/data/firing";
import { CYLINDERS, GASES, GASES_IN_WATER } from "../../src/preparation/data/gases";
import {
  AGAINST_COLLOID,
  GELS,
  SALT_OF_A_WASH,
  SLIME_SETTLES,
  SOAPS,
  WARM_WASH,
} from "../../src/preparation/data/gels";
import { IF_MIXED, INSTEAD_OF } from "../../src/preparation/data/if-mixed";
import {
  BASIC_BEFORE_HYDROXIDE,
  BASIC_SALTS,
  CONDENSES,
  IGNITION,
  LOSES_ITS_ACID,
  NEVER_IGNITED,
  OXIDES,
  POISON_VAPOUR,
  PRECIPITATES,
  WATER_ALONE,
} from "../../src/preparation/data/ignition";
import {
  INSOLUBLE_NONMETALS,
  OILY,
  RING_CLOSING,
  SOLUBLE_CYANIDOFERRATES,
  SOLUBLE_OXIDES,
  TAKES_BACK,
} from "../../src/preparation/data/insoluble";
import {
  CHROMATE_FROM_FIRE,
  FIRED_PHOSPHATE,
  FLUX_OUT,
  FREE_BASE,
  GLASS,
  GROUND_ALIKE,
  MELT,
} from "../../src/preparation/data/kiln";
import { LATE_START, SPARING_ACID, STARTED } from "../../src/preparation/data/late-start";
import { LIQUIDS, NOT_MIXING } from "../../src/preparation/data/liquids";
import { LOOSE } from "../../src/preparation/data/loose";
import { DECIDING, MEASURING } from "../../src/preparation/data/measuring";
import { PLANNING } from "../../src/preparation/data/planning";
import { FLAMES, POWDER_TESTS, PRECIPITATION_TESTS, SEEN_IN_GLASSES } from "../../src/preparation/data/powder-tests";
import {
  COMES_SLOWLY,
  DIGESTED,
  FELTED,
  GOES_IN_AIR,
  LEAVES_FINE_METAL,
  NOT_BOILED_DOWN,
  NOT_WARM,
  OXIDES_FROM_WATER,
  VARIABLE_WATER,
} from "../../src/preparation/data/products";
import { DROPS, FIRST_WASH, IN_THE_DARK, KEPT_SOUR, PROTECTION, SOURED } from "../../src/preparation/data/protection";
import { SETTLES, SYRUPS } from "../../src/preparation/data/stands";
import { POUNDS, TWO_SIZED } from "../../src/preparation/data/units";
import { ANHYDRIDES, COATING, DRY_ALUMINATES, FIRED_OXIDES } from "../../src/preparation/data/unwilling-solids";
import { EATS_METAL, VESSELS } from "../../src/preparation/data/vessels";
import {
  ACID_ANIONS,
  AMMINE_LEFT,
  CHELATE_LEFT,
  CYANIDOFERRATE_LEFT,
  FREE_HALOGENS,
  FREED_FROM_EXCESS,
  HALATES,
  HELD_BY_AMMONIA,
  HELD_BY_CYANIDE,
  HOLDING_LIGANDS,
  LEFT_IN_WASTE,
  NEVER_KEPT,
  OXALATE_OUT,
  SLOW_METALS,
  WASTE_METALS,
  WORTH_TREATING,
} from "../../src/preparation/data/waste";
import { ACID_INTO_LYE, HAZE_HOT, WITH_LYE } from "../../src/preparation/data/with-lye";
import { FEEDS_FIRE, IGNITION_FUMES, SMELLS_IN_ACID, WORK_CAUTIONS } from "../../src/preparation/data/work-cautions";
import { tablesOf } from "../tools/tables";

const TABLES: Readonly<Record<string, readonly { readonly source: string }[]>> = {
  ABSORBENTS,
  ACID_LEAVES: [ACID_LEAVES],
  ACID_TAKES,
  ACIDS_ON_METAL: [ACIDS_ON_METAL],
  AGAINST_COLLOID,
  SALT_OF_A_WASH: [SALT_OF_A_WASH],
  AGENTS,
  ANTISOLVENT,
  BASE_SEARCH: [BASE_SEARCH],
  BASES_FOR_ACID,
  STANDS_WITH_ALCOHOL: [STANDS_WITH_ALCOHOL],
  BASIC_SALTS,
  BEARS_OVEN: [BEARS_OVEN],
  GOES_IN_AIR: [GOES_IN_AIR],
  REDUCED_IN_FIRE: [REDUCED_IN_FIRE],
  IRON_OUT: [IRON_OUT],
  VITRIOLS: [VITRIOLS],
  FLUX_OUT: [FLUX_OUT],
  IRRITATES_HOT: [IRRITATES_HOT],
  KEPT_DISSOLVED: [KEPT_DISSOLVED],
  LIT_BY_FLAME: [LIT_BY_FLAME],
  PUFFS_UP: [PUFFS_UP],
  NEVER_IGNITED: [NEVER_IGNITED],
  NEVER_KEPT: [NEVER_KEPT],
  ANHYDRIDES: [ANHYDRIDES],
  APART_IN_ACID,
  BURNS_IN_AIR: [BURNS_IN_AIR],
  BELIEFS: Object.values(BELIEFS),
  CHANGED_IN_AIR,
  COMES_SLOWLY,
  COATING: [COATING],
  COUPLES: COUPLES(),
  CRYSTAL_TEST: [CRYSTAL_TEST],
  ACID_SALTS,
  ASH_TEST: [ASH_TEST],
  IRON_OXIDISED: [IRON_OXIDISED],
  CYLINDERS: [CYLINDERS],
  DECIDING,
  DELIQUESCENT,
  EATS_METAL: [EATS_METAL],
  EFFLORESCENT,
  DROPS,
  DIGESTED,
  DRIED_FIRST: [DRIED_FIRST],
  CLEARED: [CLEARED],
  HALATES: [HALATES],
  EXTREME_PH: [EXTREME_PH],
  WORTH_TREATING: [WORTH_TREATING],
  WARM_WASH: [WARM_WASH],
  ACID_ANIONS: [ACID_ANIONS],
  AMMINE_LEFT: [AMMINE_LEFT],
  CHELATE_LEFT: [CHELATE_LEFT],
  OXALATE_OUT: [OXALATE_OUT],
  CYANIDOFERRATE_LEFT: [CYANIDOFERRATE_LEFT],
  FREED_FROM_EXCESS,
  HELD_BY_CYANIDE: [HELD_BY_CYANIDE],
  FIRST_WASH: [FIRST_WASH],
  BARE_METAL: [BARE_METAL],
  UNDER_GAS: [UNDER_GAS],
  SPLIT_BY_ACID,
  MAGNETIC: [MAGNETIC],
  METAL_GONE: [METAL_GONE],
  SALT_GONE: [SALT_GONE],
  DEADLY_FROM_WATER,
  LOSES_ITS_ACID,
  MADE_NEUTRAL: [MADE_NEUTRAL],
  FREE_HALOGENS: [FREE_HALOGENS],
  DRIED_CLOSED: [DRIED_CLOSED],
  DRYING: DRYING(),
  FIRED_IN_AIR,
  CRUCIBLES,
  GAS_FROM_LIGHT_POWDER: [GAS_FROM_LIGHT_POWDER],
  KILN_OPENED: [KILN_OPENED],
  REST_IS_NO_WATER: [REST_IS_NO_WATER],
  WET_GRINDING: [WET_GRINDING],
  ENDS,
  LESS_OXIDISED,
  BASE_LEFT,
  STAYS_IN_NITRIC_ACID,
  FEEDS_FIRE: [FEEDS_FIRE],
  SMELLS_IN_ACID: [SMELLS_IN_ACID],
  FIRED_OXIDES,
  FLAMES,
  FIRING,
  FUMING_METALS: [FUMING_METALS],
  GASES,
  GASES_IN_WATER,
  GELS,
  GIVES_OFF_GAS: [GIVES_OFF_GAS],
  CHROMATE_FROM_FIRE: [CHROMATE_FROM_FIRE],
  GROUND_ALIKE: [GROUND_ALIKE],
  FIRED_PHOSPHATE: [FIRED_PHOSPHATE],
  INSTEAD_OF,
  SLIME_SETTLES: [SLIME_SETTLES],
  FELTED: [FELTED],
  DRY_ALUMINATES,
  FREE_BASE: [FREE_BASE],
  GLASS: [GLASS],
  LONG_PIECES: [LONG_PIECES],
  HOLDING_LIGANDS,
  BASIC_BEFORE_HYDROXIDE: [BASIC_BEFORE_HYDROXIDE],
  HELD_BY_AMMONIA: [HELD_BY_AMMONIA],
  FIRE_ONLY: [FIRE_ONLY],
  HOT_SULFURIC: [HOT_SULFURIC],
  CONDENSES: [CONDENSES],
  IGNITION,
  DEADLY_AIR,
  IF_MIXED,
  IGNITION_FUMES,
  INSOLUBLE_NONMETALS,
  IN_LYE: [IN_LYE],
  LYE_COMPLEXES,
  MELT: [MELT],
  MELT_ONLY: [MELT_ONLY],
  IN_WATER: [IN_WATER],
  IN_THE_DARK,
  KEPT_SOUR,
  LEFT_IN_WASTE,
  MEASURING: Object.values(MEASURING),
  LIQUIDS,
  NOT_BOILED_DOWN,
  NOT_MIXING,
  NOT_WARM,
  OILY: [OILY],
  OXIDES,
  OXIDES_FROM_WATER,
  OXIDISING_ACIDS: [OXIDISING_ACIDS],
  PASSIVE,
  SLUGGISH,
  POISON_VAPOUR,
  POUNDS,
  PLANNING: Object.values(PLANNING),
  POWDER_TESTS: Object.values(POWDER_TESTS),
  PRECIPITATES,
  PRECIPITATION_TESTS,
  PROTECTION,
  SETTLES,
  SYRUPS,
  LATE_START,
  SPARING_ACID: [SPARING_ACID],
  STARTED,
  SOURED: [SOURED],
  FAR_UPHILL: [FAR_UPHILL],
  LEAVES_FINE_METAL: [LEAVES_FINE_METAL],
  WATER_ALONE: [WATER_ALONE],
  SLAKES: [SLAKES],
  SLOW_METALS,
  SLOW_IN_THE_COLD,
  RING_CLOSING,
  SOLUBLE_CYANIDOFERRATES,
  SOLUBLE_OXIDES,
  TAKES_BACK,
  SPLIT_BY_BASE,
  SPREAD_IN_AIR: [SPREAD_IN_AIR],
  THROUGH_HALOGEN,
  TWO_SIZED,
  VARIABLE_WATER,
  VESSELS,
  FUSES_OXIDES: [FUSES_OXIDES],
  NOT_WETTED: [NOT_WETTED],
  SOAPS: [SOAPS],
  RUNS_BY_ITSELF: [RUNS_BY_ITSELF],
  MONODENTATE,
  OVER_HYDROXIDE,
  SLOW_COMPLEXES,
  SEEN_IN_GLASSES,
  WARM_FOR_AMMINE: [WARM_FOR_AMMINE],
  WARM_FOR_METAL: [WARM_FOR_METAL],
  WARM_IN_ACID,
  SLOW_IN_ACID: [SLOW_IN_ACID],
  LOOSE,
  MIXED_HOT: [MIXED_HOT],
  QUICK_METALS: [QUICK_METALS],
  POURED_COLD: [POURED_COLD],
  WASTE_METALS,
  WITH_LYE,
  ACID_INTO_LYE: [ACID_INTO_LYE],
  HAZE_HOT: [HAZE_HOT],
  WORK_CAUTIONS: WORK_CAUTIONS(),
};

const known = new Set<string>(sourceKeys());

describe.each(Object.entries(TABLES))("%s", (_, rows) => {
  it("names a source of the bibliography on every row", () => {
    expect(rows.length).toBeGreaterThan(0);
    for (const row of rows) expect(known).toContain(row.source);
  });
});

describe("the tables of the preparation room", () => {
  it("are all in this test", async () => {
    const exported = (await tablesOf("preparation")).flatMap(({ name, rows }) =>
      typeof rows === "string" ? [] : [name],
    );
    expect(exported.sort()).toEqual(Object.keys(TABLES).sort());
  });

  it("hold values that can be read", () => {
    for (const { value } of Object.values(PLANNING)) expect(quantity(value as "1 g").isPositive(), value).toBe(true);
    for (const { limit } of GASES)
      if (limit !== undefined) expect(quantity(limit.share as "1 %").isPositive()).toBe(true);
    for (const { upTo } of DRYING()) expect(Number(upTo)).toBeGreaterThanOrEqual(20);
    let tested = 0;
    for (const { sizes } of VESSELS) {
      expect([...sizes].sort((a, b) => a - b)).toEqual(sizes);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(2);
    for (const { volts, high, low } of COUPLES()) {
      expect(Math.abs(Number(volts))).toBeLessThan(3.1);
      expect(high).toBeGreaterThan(low);
    }
    for (const { formula } of FIRED_OXIDES) expect(parseFormula(formula).symbols).toContain("O");
    for (const { from, to } of VARIABLE_WATER) expect(from).toBeLessThan(to);
  });

  it("name each compound once", () => {
    const once = (list: readonly string[]): void => expect(new Set(list).size).toBe(list.length);
    once(COUPLES().map((row) => `${row.element} ${row.high} ${row.low}`));
    for (const rows of [GASES, GASES_IN_WATER, LIQUIDS, FIRED_OXIDES, GELS])
      once(rows.map((row) => constitutionOf(row.formula).identity));
    once(DRYING().map((row) => row.formula));
    once(IGNITION.map((row) => row.formula));
    once(OXIDES.map((row) => row.metal));
    once(PRECIPITATES.map((row) => row.metal));
    once(WASTE_METALS.map((row) => row.metal));
  });

  it("have no planning value that nothing asks for", () => {
    const src = fileURLToPath(new URL("../../src", import.meta.url));
    const code = readdirSync(src, { recursive: true, encoding: "utf8" })
      .filter((file) => file.endsWith(".ts") && !file.endsWith("data/planning.ts"))
      .map((file) => readFileSync(join(src, file), "utf8"))
      .join("\n");
    expect(
      Object.keys(PLANNING).filter((name) => !code.includes(`PLANNING.${name}`) && !code.includes(`"${name}"`)),
    ).toEqual([]);
  });

  it("leave residues that hold what the solid held of the metal's kind, and lose weight", () => {
    let tested = 0;
    for (const { formula, residue } of IGNITION) {
      const [before, after] = [parseFormula(formula), parseFormula(residue)];
      for (const symbol of after.symbols) expect(before.symbols, formula).toContain(symbol);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(9);
    let rowsTested = 0;
    for (const { metal, oxide } of OXIDES) {
      expect(parseFormula(oxide).symbols.sort()).toEqual([metal, "O"].sort());
      rowsTested += 1;
    }
    expect(rowsTested).toBeGreaterThanOrEqual(14);
    for (const { metal, solids } of PRECIPITATES)
      for (const solid of solids) expect(parseFormula(solid).symbols, solid).toContain(metal);
  });
});
