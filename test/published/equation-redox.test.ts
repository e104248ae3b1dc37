import { describe, expect, it } from "vitest";
import { oxidationStates } from "../../src/equation";
import { OXIDATION } from "../data/equations";

describe("oxidation states of the worked examples (sources on the rows)", () => {
  it.each(OXIDATION)("$formula", ({ formula, states }) => {
    expect(oxidationStates(formula).toJSON()).toEqual(states);
  });
});
