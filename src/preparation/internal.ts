// What the layers above use of this one and callers do not see.
export { isPoisonInWaste } from "./contents/poisons";
export { IRRITATES_HOT, LIT_BY_FLAME } from "./data/firing";
export { cite, type SourceKey } from "./data/sources";
export { SETTLES, type SettlesRow, SYRUPS } from "./data/stands";
export { leadOf } from "./feasibility/does-it-go";
export { notInWater } from "./feasibility/judge-compound";
export { type Room, roomOf } from "./feasibility/room";
export { ignitionDecides } from "./identity/by-ignition";
export {
  lossOfDoubleSalt,
  STEPS_OF_SAMPLE,
  usualByAlcohol,
  usualFirstCrop,
  withoutAmmonia,
} from "./identity/double-salts";
export { lessOxidised } from "./identity/less-oxidised";
export { splitByAcid } from "./identity/split-by-acid";
export { leftOnIgnition } from "./identity/tests";
export { asRun, keptOf, TEACHES, wayOf } from "./learning/lesson";
export { type DryProduct, dryProductOf } from "./planning/dry-product";
export { isFromRounding } from "./planning/exact";
export { type Gain, gainOf } from "./planning/gain";
export { hydrateInPlace, type InPlace, standsInPlace } from "./planning/in-place";
export { keepsSaltOfLiquor, mayStayInCake } from "./planning/in-the-cake";
export {
  goneByItselfIn,
  mayLeaveCrucible,
  restInCrucible,
  standsBesideInCrucible,
  staysInCrucible,
  usuallyWater,
} from "./planning/in-the-crucible";
export { ALCOHOL } from "./procedure/alcohol";
export { changedByAir } from "./procedure/bottling";
export { isWashedOfChromate } from "./procedure/chromate-wash";
export { dryingIn } from "./procedure/drying";
export { isInRoom } from "./procedure/finish";
export { glassOf } from "./procedure/fired-beside";
export { grindingOf } from "./procedure/grinding";
export { isGel, kindOfCake } from "./procedure/isolation";
export { dropsFor, isAirless, isInDistilledWater, isKeptDark } from "./procedure/protection";
export { isSecondCrop } from "./procedure/step";
export { type Hand, handOf, type Instruments } from "./procedure/words";
export { absorbentOf } from "./reaction/absorbing";
export { isAcid, isLye, isMetal } from "./reaction/acids";
export { fateInRoom } from "./reaction/fate";
export { burns, isAntisolvent, isGas, staysInWater } from "./reaction/fluids";
export { heldWaterOf, withGelWater } from "./reaction/held-water";
export { inItsFacts, MATERIAL as SHELF_MATERIAL, plain, taken } from "./request/door";
export { revived } from "./request/revived";
export { gasesThatMayCome } from "./safety/gases-that-may-come";
export { isFreeHalogen } from "./safety/waste";
export { isWorthTreating } from "./safety/waste-note";

export { firstCropOf, massInCrop, ofOtherBatches, yieldOfSteps } from "./verdict/crops";
export { theoryLeft } from "./verdict/losses";
export { isRun } from "./verdict/working";
