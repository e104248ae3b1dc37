// Every procedure of the bench list as it is written today, so that a change of one rule shows in review wherever it reaches.
// `npm run procedures` writes the file anew; whether the words are right is asked in the other tests.
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { PROCEDURES, proceduresByName, sectionsOf } from "../tools/procedures";

describe("the procedures of the bench list", () => {
  const written = sectionsOf(readFileSync(PROCEDURES, "utf8"));

  it("are all in the file", () => {
    expect(Object.keys(written)).toEqual(Object.keys(proceduresByName));
  });

  it.each(Object.keys(proceduresByName))("%s is what is written today", (name) => {
    expect(proceduresByName[name]!()).toBe(written[name]);
  });
});
