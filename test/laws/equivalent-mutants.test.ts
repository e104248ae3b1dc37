// Faults that mutation testing leaves out of its count: each has to be one of a line that still stands as it stood when somebody
// looked at it.
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { EQUIVALENT_MUTANTS } from "../tools/equivalent-mutants";

const linesOf = (file: string): string[] =>
  readFileSync(fileURLToPath(new URL(`../../src/${file}`, import.meta.url)), "utf8")
    .split("\n")
    .map((line) => line.trim());

describe("a fault that is known to change nothing", () => {
  it.each(EQUIVALENT_MUTANTS.map(({ file, line, to, why }) => [file, line, to, why] as const))(
    "%s: %s",
    (file, line, to, why) => {
      expect(linesOf(file)).toContain(line);
      expect(to.length).toBeGreaterThan(0);
      expect(why).not.toBe("");
    },
  );

  it("is listed once", () => {
    const keys = EQUIVALENT_MUTANTS.map(({ file, line }) => `${file} ${line}`);
    expect(new Set(keys).size).toBe(keys.length);
  });
});
