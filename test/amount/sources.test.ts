// What was recalled and not read is said wherever it is cited, by the bibliography, and once.
import {
  cite,
  convertStrength,
  densityOfWater,
  explain,
  measuredVolume,
  type Quantity,
  secondVirialCoefficient,
  sourceKeys,
} from "preparative";
import { describe, expect, it } from "vitest";

const answers: readonly (readonly [string, Quantity])[] = [
  ["a flask", measuredVolume("250 mL", { with: "volumetric flask", class: "A" })],
  ["a pipette", measuredVolume("25 mL", { with: "pipette" })],
  ["a burette", measuredVolume("20 mL", { with: "burette" })],
  ["a cylinder", measuredVolume("50 mL", { with: "measuring cylinder" })],
  ["a virial coefficient", secondVirialCoefficient("CO2", "25 °C")],
  ["the density of water", densityOfWater("20 °C")],
  ["degrees Baumé", convertStrength("20 °Bé", { of: "HCl", to: "% w/w" })],
];

describe("sources in a working", () => {
  it.each(answers)("%s says once that its figures are from memory", (_, answer) => {
    const recalled = explain(answer).sources.filter((text) => /memory/.test(text));
    expect(recalled.length).toBeGreaterThan(0);
    for (const text of recalled) expect(text.match(/from memory/g), text).toHaveLength(1);
  });

  it("say it once in every citation", () => {
    let tested = 0;
    for (const key of sourceKeys()) {
      expect(cite(key).match(/from memory/g)?.length ?? 0, key).toBeLessThanOrEqual(1);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(160);
  });
});
