// Valid requests with one field at a time replaced by a hostile value, at every depth: each answer is a value or one of
// the library's own errors. The drawer of whole hostile arguments is in hostile.test.ts.
import * as preparative from "preparative";
import { describe, expect, it } from "vitest";
import { doorsOf } from "./tools/doors";
import { HOSTILE } from "./tools/hostile";
import { REQUESTS } from "./tools/requests";

/** A value with each of its parts, at every depth, replaced by each hostile one. */
function* mutants(value: unknown): Generator<unknown> {
  yield* HOSTILE;
  if (Array.isArray(value)) {
    for (const [i, part] of value.entries()) for (const mutant of mutants(part)) yield value.with(i, mutant);
  } else if (typeof value === "object" && value !== null) {
    for (const [key, part] of Object.entries(value))
      for (const mutant of mutants(part)) yield { ...value, [key]: mutant };
  }
}

const doors = new Map(doorsOf(preparative));

describe("requests with a hostile field", () => {
  it.each(REQUESTS.map(([name, args], i) => [`${i}: ${name}`, name, args] as const))(
    "%s answers every one of them",
    (_, name, args) => {
      const door = doors.get(name)!;
      expect(door(...args).ok, "the request itself is a good one").toBe(true);
      const leaks = new Set<string>();
      args.forEach((arg, i) => {
        for (const mutant of mutants(arg)) {
          const start = performance.now();
          try {
            door(...args.with(i, mutant));
          } catch (error) {
            leaks.add(
              String((error as Error).stack)
                .split("\n")
                .slice(0, 4)
                .join(" < "),
            );
          }
          if (performance.now() - start > 5000) leaks.add(`${name} took ${performance.now() - start} ms`);
        }
      });
      expect([...leaks].slice(0, 4)).toEqual([]);
    },
  );
});
