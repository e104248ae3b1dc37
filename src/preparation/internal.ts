// What the layers above use of this one and callers do not see.
export { leadOf } from "./feasibility/does-it-go";
export { waterByTheJug } from "./procedure/words";
