// Which tests tell that a salt is washed out, and which ions nothing tells beside what the product gives off itself.
import { type Formula, parseFormula } from "../../formula";
import { constitutionOf } from "../../ion";
import type { Figure } from "../curves/figure";
import { anhydrousMolarMass, type Solute, soluteOf } from "../curves/solute";
import { BASIC, NITRATE, NO_BROWN_RING, OWN_BASE, OWN_HAZE, RESIDUE, WASH_TESTS } from "../data/wash-tests";
import { saltIons } from "../precipitating/ions";

/** A test on the last wash. */
interface EndTest {
  readonly ion: string;
  readonly test: string;
  readonly takes: readonly string[];
  readonly harm: string | undefined;
  readonly boxes: readonly [done: string, shows: string] | undefined;
  readonly showsFrom: string | undefined;
}

/** What tells the end of a washing. */
interface EndTests {
  readonly endTests: readonly EndTest[];
  /** Ions that no test tells: the washes are counted. */
  readonly untested: readonly string[];
}

/** The hydrogen ion of any acid. */
const ACID = "H+";

/** Their salts are found by the anion. */
const ALKALI = ["Na+", "K+", "NH4+", "Li+"];

/** Formula units in a litre of water above which paper shows a basic product: pH 9. */
const SHOWS_BASE = 1e-5;

/** Product in 100 g of water below which its own ions give no cloud. */
const SILENT = "0.001 g";

/** Formula units in a litre of water above which its own ions give a haze: half a milligram of chloride and more in a litre. */
const HAZY = 1e-5;

/** Product in 100 g of water below which 10 mL of it leave less than 1 mg. */
const LEAVES_NOTHING = "0.01 g";

const rowFor = (ion: string) => WASH_TESTS.find(({ ions }) => ions.includes(ion));

const testFor = (ion: string): string | undefined => rowFor(ion)?.test;

/** Phosphate is one in all its forms: an acid liquor has the one, the solid the other. */
const familyOf = (ion: string): string => testFor(ion) ?? ion;

/** Ions of a salt, the anion first and without alkalis; of an acid the hydrogen ion, and its anion where a drop shows it. */
function ionsOf(salt: string | Formula): string[] {
  const { anhydrous } = soluteOf(salt);
  const { acid } = constitutionOf(anhydrous);
  if (acid !== undefined)
    return acid.veryWeak ? [] : [ACID, ...(testFor(acid.anion) !== undefined ? [acid.anion] : [])];
  const found = [...(saltIons(anhydrous) ?? [])];
  return found
    .sort((one, other) => Math.sign(one.charge) - Math.sign(other.charge))
    .map(({ formula }) => formula)
    .filter((ion) => !ALKALI.includes(ion));
}

/** What a test takes that stands in no row: paper beside a basic product, the brown ring, or nothing. */
const reagentsOf = (test: string): { readonly takes: readonly string[]; readonly harm: string | undefined } =>
  test === OWN_BASE
    ? { takes: ["indicator paper"], harm: undefined }
    : test.startsWith(NITRATE.test)
      ? NITRATE
      : { takes: [], harm: undefined };

/** What of the salts a test tells, on the last wash of a product. */
export function endTestsFor(
  product: Solute,
  figure: Figure | undefined,
  rule: string | undefined,
  washedOut: readonly (string | Formula)[],
): EndTests {
  const ownIons = (saltIons(product.anhydrous) ?? []).map(({ formula }) => formula);
  const kept = new Set(ownIons.map(familyOf));
  const isHidden = (ion: string): boolean => rowFor(ion)?.hiddenBy?.some((one) => ownIons.includes(one)) === true;
  const isBelow = (limit: string): boolean =>
    figure === undefined ? rule === "insoluble" : figure.perHundredGramsWater.compare(limit) < 0;
  const silent = isBelow(SILENT);
  const molar =
    figure === undefined
      ? undefined
      : (figure.perHundredGramsWater.toNumber("g") * 10) / anhydrousMolarMass(product).toNumber("g/mol");
  const salts = washedOut.map(ionsOf);
  const disturbed = salts.flat().some((ion) => NO_BROWN_RING.includes(ion));
  const isAcid = constitutionOf(product.anhydrous).acid !== undefined;
  const dropFor = (ion: string): string | undefined => {
    // an acid is sour itself
    if (ion === ACID && isAcid) return undefined;
    if (isHidden(ion)) return undefined;
    const own = kept.has(familyOf(ion));
    if (own && BASIC.includes(ion)) return molar !== undefined && molar < SHOWS_BASE ? testFor(ion) : OWN_BASE;
    if (own && !silent) return undefined;
    const test = testFor(ion);
    return own && test !== undefined && (molar ?? 0) > HAZY ? `${test}; ${OWN_HAZE}` : test;
  };
  const tests = new Map<string, string>();
  const untested = new Set<string>();
  for (const ions of salts) {
    const [first] = ions;
    const told = ions.flatMap((ion) => {
      const test = dropFor(ion);
      return test === undefined ? [] : [{ ion, test }];
    });
    for (const { ion, test } of told) tests.set(ion, test);
    if (told.length > 0 || first === undefined) continue;
    if (isBelow(LEAVES_NOTHING) && !isHidden(first))
      tests.set(first, first === "NO3-" && !disturbed ? `${NITRATE.test}; or ${RESIDUE}` : RESIDUE);
    else untested.add(first);
  }
  const name = (ion: string): string => parseFormula(ion).toString();
  return {
    endTests: [...tests].map(([ion, test]) => {
      const row = WASH_TESTS.find((one) => one.ions.includes(ion) && test.startsWith(one.test));
      const { takes, harm } = row ?? reagentsOf(test);
      return {
        ion: name(ion),
        test,
        takes: [...takes],
        harm,
        boxes: row && [row.boxes[0], row.boxes[1]],
        showsFrom: row?.showsFrom,
      };
    }),
    untested: [...untested].filter((ion) => !tests.has(ion)).map(name),
  };
}
