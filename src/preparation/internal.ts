// What the layers above use of this one and callers do not see.
export { cite, type SourceKey } from "./data/sources";
export { SETTLES, type SettlesRow, SYRUPS } from "./data/stands";
export { leadOf } from "./feasibility/does-it-go";
export { notInWater } from "./feasibility/judge-compound";
export { type Room, roomOf } from "./feasibility/room";
export { ignitionDecides } from "./identity/by-ignition";
export { leftOnIgnition } from "./identity/tests";
export { asRun, keptOf, TEACHES, wayOf } from "./learning/lesson";
export { type DryProduct, dryProductOf } from "./planning/dry-product";
export { type Gain, gainOf } from "./planning/gain";
export { goneByItselfIn, mayLeaveCrucible, staysInCrucible } from "./planning/in-the-crucible";
export { ALCOHOL } from "./procedure/alcohol";
export { dryingIn } from "./procedure/drying";
export { isGel, kindOfCake } from "./procedure/isolation";
export { dropsFor, isInDistilledWater, isKeptDark } from "./procedure/protection";
export { isSecondCrop } from "./procedure/step";
export { type Hand, handOf, type Instruments, list } from "./procedure/words";
export { fateInRoom } from "./reaction/fate";
export { isAntisolvent, isGas, staysInWater } from "./reaction/fluids";
export { heldWaterOf, withGelWater } from "./reaction/held-water";
export { inItsFacts, MATERIAL as SHELF_MATERIAL, plain, taken } from "./request/door";
export { revived } from "./request/revived";
export { gasesThatMayCome } from "./safety/gases-that-may-come";

export { firstCropOf, massInCrop } from "./verdict/crops";
export { type InPlace, standsInPlace } from "./verdict/in-place";
export { theoryLeft } from "./verdict/losses";
export { isRun } from "./verdict/working";
