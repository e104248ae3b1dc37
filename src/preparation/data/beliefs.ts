// What the trade expects of each explanation of a dry mass before its figures are looked at, and of each thing seen under it: the
// part of a verdict that no uncertainty gives. Numbers from 0 to 1; findings are ordered by belief × likelihood.
import type { SourceKey } from "./sources";

/** One belief. */
interface BeliefRow {
  readonly value: number;
  /** What it is and why it is not another figure. */
  readonly what: string;
  readonly source: SourceKey;
}

export const BELIEFS = {
  // -- what a mass may mean
  fits: { value: 1, what: "the mass is where it should be: nothing else is asked", source: "commonPractice" },
  stillFalling: { value: 0.98, what: "a mass that is not constant says nothing else yet", source: "commonPractice" },
  nearlyDry: { value: 0.7, what: "a mass that still loses a little and is below all that losses explain: drying makes it no heavier", source: "commonPractice" },
  tooHeavy: { value: 0.95, what: "above all formulas nothing but water, salts or another solid is left", source: "commonPractice" },
  tooLight: { value: 0.85, what: "below all that losses explain, the filtrate comes before any single cause", source: "commonPractice" },
  tooLightWithLiquor: { value: 0.6, what: "the same beside a mother liquor that nobody measured and that may keep it all", source: "commonPractice" },
  coarse: { value: 0.55, what: "a balance too coarse for the mass", source: "commonPractice" },
  otherForm: { value: 0.8, what: "another solid of the same metal that fits alone", source: "commonPractice" },
  otherFormOfLight: { value: 0.45, what: "another solid that fits a mass too small, within all that filters and vessels may keep: so wide a range is hit by accident", source: "commonPractice" },
  otherFormOnBooks: { value: 0.55, what: "another solid that books write, and that forms under pressure only: more to the point than that a mass is off", source: "commonPractice" },
  changedInAir: { value: 0.7, what: "what air makes of an oxide or a hydroxide: after what the fire did not reach", source: "commonPractice" },
  otherFormDriedOut: { value: 0.9, what: "a hydrate with less water, where drying took more than damp crystals keep", source: "commonPractice" },
  otherFormTitrated: { value: 0.96, what: "another solid of the same metal where product was titrated", source: "commonPractice" },
  otherFormByFire: { value: 1, what: "another solid where a sample was ignited: what ignition says counts alone", source: "commonPractice" },
  exactHit: { value: 0.65, what: "another solid that the mass hits exactly, where the wanted one fits as well", source: "commonPractice" },
  driedTooHot: { value: 0.7, what: "what heat leaves of the product", source: "commonPractice" },
  mixture: { value: 0.5, what: "two solids together, where no single one fits by the mass alone", source: "commonPractice" },
  mixtureTested: { value: 0.93, what: "two solids together, where a test of a sample tells their shares and no single one fits", source: "commonPractice" },
  mixtureBesideOne: { value: 0.25, what: "the same where a single solid fits as well", source: "commonPractice" },
  soldHydrate: { value: 0.58, what: "a jar that contained another hydrate that is sold: after water in a cake that nobody dried to constant mass", source: "commonPractice" },
  tradedHydrate: { value: 0.55, what: "the same of a hydrate that no shop sells and inventories of traded chemicals list", source: "commonPractice" },
  weatheredHydrate: { value: 0.52, what: "a jar whose salt had lost water, or taken it from the air: more to the point than any part short", source: "commonPractice" },
  jarInFire: { value: 0.82, what: "a jar that contained another hydrate, where a crucible keeps so little that the mass would meet its theory by accident hardly ever", source: "commonPractice" },
  jarByFire: { value: 0.98, what: "the same where a sample of the product loses just what it should", source: "commonPractice" },
  inertByFire: { value: 0.97, what: "something in the pack that fire leaves as it is, where a sample of the product loses no more than it should", source: "commonPractice" },
  inertInFire: { value: 0.45, what: "the same where nothing was ignited again", source: "commonPractice" },
  inertInCake: { value: 0.62, what: "what a pack that was stirred in has besides, in a cake that weighs no more than with all of it", source: "commonPractice" },
  inertAtConstantMass: { value: 0.6, what: "the same where a second firing took nothing more", source: "commonPractice" },
  wet: { value: 0.6, what: "water of 2 to 25 % left in a cake", source: "commonPractice" },
  wetOutside: { value: 0.4, what: "less water, which is scatter, or more, which is seen", source: "commonPractice" },
  boiledFurther: { value: 0.55, what: "crystals of a liquor that was boiled down or cooled further than the sheet says: after water that is left in them", source: "commonPractice" },
  wetByFire: { value: 0.9, what: "water left, where ignition finds as much as the mass asks for", source: "commonPractice" },
  wetAtConstantMass: { value: 0.2, what: "water left in what is at constant mass or comes out of a fire", source: "commonPractice" },
  gelWater: { value: 0.75, what: "water of 20 % and less in a hydroxide gel that is at constant mass", source: "commonPractice" },
  saltsInCrop: { value: 0.6, what: "salts of the liquor in crystals that weigh more than the theory", source: "commonPractice" },
  secondSolid: { value: 0.85, what: "a solid that precipitates with the product is in every cake", source: "commonPractice" },
  leftOver: { value: 0.7, what: "starting solid that is left by the calculation stays with the product", source: "commonPractice" },
  notDone: { value: 0.8, what: "starting solid that the fire did not reach", source: "commonPractice" },
  notDoneAtConstantMass: { value: 0.45, what: "the same where a second firing changed nothing: crusts keep the air out", source: "commonPractice" },
  notDoneByFire: { value: 0.96, what: "starting solid that is still there, where ignition finds what so much of it would lose", source: "commonPractice" },
  notDoneInWater: { value: 0.35, what: "starting solid that did not react in water, although none should be left", source: "commonPractice" },
  motherLiquor: { value: 0.8, what: "a mother liquor that keeps what is missing", source: "commonPractice" },
  handling: { value: 0.7, what: "filters and vessels that keep what is missing, within what is allowed", source: "commonPractice" },
  limitingShort: { value: 0.5, what: "less in the jar of the limiting material than stated", source: "commonPractice" },
  otherShort: { value: 0.35, what: "less in the jar of another material than stated, by so much that it limits", source: "commonPractice" },
  ranShort: { value: 0.8, what: "a material that ran out by the portions really taken", source: "commonPractice" },
  unwashed: { value: 0.6, what: "salts of 2 to 25 % of the product, where nobody says how it was washed", source: "commonPractice" },
  unwashedOutside: { value: 0.45, what: "less or more salts than that", source: "commonPractice" },
  unwashedKnown: { value: 0.7, what: "salts that the run itself counts, beside a mass that has a larger fault", source: "commonPractice" },
  spilled: { value: 0.65, what: "a recorded loss that changes nothing of the mass's standing", source: "commonPractice" },
  spilledElse: { value: 0.4, what: "a recorded loss that does not explain the mass", source: "commonPractice" },
  spilledLess: { value: 0.96, what: "a recorded loss that the mass says was smaller", source: "commonPractice" },
  impure: { value: 0.5, what: "a titration below pure beside a mass that is too small", source: "commonPractice" },
  impureHeavy: { value: 0.92, what: "a titration below pure that explains a mass that is too large", source: "commonPractice" },
  impureHeavyElse: { value: 0.4, what: "a titration below pure that leaves the mass too large", source: "commonPractice" },
  overPure: { value: 0.6, what: "a titration above pure", source: "commonPractice" },
  liquorPH: { value: 0.55, what: "a liquor on the wrong side of neutral", source: "commonPractice" },
  acidLeft: { value: 0.9, what: "acid left where a solid was to take all of it, beside a mass that only a mother liquor explains: what is dissolved is less", source: "commonPractice" },
  acidGone: { value: 0.9, what: "no acid left where some was to be over, beside a mass that only a mother liquor explains: what did not dissolve is missing", source: "commonPractice" },
  // -- what was seen, under an explanation that asks for it or against it
  seen: { value: 1, what: "what was seen, in words of its own, where the mass is no surprise", source: "commonPractice" },
  besideSeen: { value: 0.7, what: "a mass that fits, where something was seen", source: "commonPractice" },
  saltsSeen: { value: 0.9, what: "salts, where the last wash shows them", source: "commonPractice" },
  saltsSeenPart: { value: 0.5, what: "the same where they explain a part only", source: "commonPractice" },
  saltsSeenDripping: { value: 0.75, what: "the same where they explain it in a cake that only dripped: before what nobody saw, after another solid that fits", source: "commonPractice" },
  saltsNotSeen: { value: 0.05, what: "salts, where the last wash shows none", source: "commonPractice" },
  neverWashed: { value: 0.85, what: "salts, where the run records no washing", source: "commonPractice" },
  cloudsFiltrate: { value: 0.95, what: "a precipitant ran short, where a drop of it clouds the filtrate or the liquor is acid", source: "commonPractice" },
  cloudsFiltrateMixUp: { value: 0.9, what: "a jar of precipitant that contained another hydrate, where a drop clouds the filtrate: one way of running short", source: "commonPractice" },
  cloudsFiltrateSold: { value: 0.96, what: "the same where shops sell that hydrate: the mass meets what it would give, and says why it ran short", source: "commonPractice" },
  cloudsFiltrateHeavy: { value: 0.5, what: "the same beside a mass that is too large", source: "commonPractice" },
  clearFiltrate: { value: 0.15, what: "a precipitant ran short, where a drop of it leaves the filtrate clear", source: "commonPractice" },
  coarseFits: { value: 0.5, what: "a mass that fits on too coarse a balance", source: "commonPractice" },
  fallingFits: { value: 0.6, what: "a mass that fits and is still falling", source: "commonPractice" },
  otherwiseByFire: { value: 0.3, what: "a mass that fits where ignition names another solid, or ignition where it names none", source: "commonPractice" },
  // -- what is left of a belief
  inPart: { value: 0.25, what: "of a belief is left where an explanation covers a part of the mass only", source: "commonPractice" },
  leastByFire: { value: 0.1, what: "is left of any solid that ignition makes unlikely: a sample may be no fair part of the batch", source: "commonPractice" },
  leastByTitration: { value: 0.2, what: "of a belief is left where a titration contradicts it: titrations go wrong", source: "commonPractice" },
} as const satisfies Readonly<Record<string, BeliefRow>>;

/** Name of a belief. */
export type BeliefName = keyof typeof BELIEFS;
