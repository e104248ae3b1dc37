// What the layers above use of this one and callers do not see.
export { solvedFigure } from "./value/functions";
export { expectDimension } from "./value/quantity";
