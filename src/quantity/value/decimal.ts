// The one import of decimal.js. The build gives this file a chunk of its own: decimal.js is not marked as free of side
// effects, so that a bundler keeps the import wherever it keeps anything of the same chunk.
export { Decimal } from "decimal.js";
