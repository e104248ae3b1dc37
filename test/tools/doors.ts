// Every public function as one that answers with data: a value or the library's own error.
import { attempt, type Result } from "preparative";

/** A function whose refusals are data; whatever else it throws passes through. */
export type Door = (...args: unknown[]) => Result<unknown>;

/** Not asked: what only tells a type apart, and what calls the caller's own function or is called by its twin. */
const NO_DOOR = /^(?:is[A-Z]|try[A-Z]|attempt$)/;

/** The functions of a module by name; classes are no functions to call. */
export function doorsOf(module: object): readonly (readonly [name: string, door: Door])[] {
  return Object.entries(module).flatMap(([name, value]) => {
    if (typeof value !== "function" || NO_DOOR.test(name) || /^[A-Z]/.test(name)) return [];
    return [[name, (...args: unknown[]) => attempt(() => (value as (...all: unknown[]) => unknown)(...args))] as const];
  });
}
