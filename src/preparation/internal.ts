// What the layers above use of this one and callers do not see.
export { cite, type SourceKey } from "./data/sources";
export { MATERIAL as SHELF_MATERIAL } from "./door";
export { fateInRoom } from "./fate";
export { leadOf } from "./feasibility/does-it-go";
export { type Hand, handOf, type Instruments } from "./procedure/words";
