// How a console shows a value of the library: Node, Bun and Deno ask for this symbol of the global registry, so that no
// import of theirs is needed.

/** @internal */
export const INSPECT: unique symbol = /* @__PURE__ */ Symbol.for("nodejs.util.inspect.custom");

/**
 * One line for a console: `Quantity { 12.50 ± 0.20 g }`.
 *
 * @internal
 */
export const shownAs = (kind: string, text: string): string => `${kind} { ${text} }`;
