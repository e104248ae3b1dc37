// How a console shows a value of the library: Node, Bun and Deno ask for this symbol of the global registry, so that no
// import of theirs is needed.

/** What a console asks an object for. */
export const INSPECT: unique symbol = /* @__PURE__ */ Symbol.for("nodejs.util.inspect.custom");

/**
 * One line for a console: `Quantity { 12.50 ± 0.20 g }`. A console also asks the prototype, which has nothing to say.
 *
 * @internal
 */
export function shownAs(kind: string, value: object): string {
  try {
    return `${kind} { ${String(value)} }`;
  } catch {
    return `${kind} {}`;
  }
}
