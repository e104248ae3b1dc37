// The tests which mutants of one layer meet: those of the layer itself, the laws, and the published and own checks. A mutant
// which only the tests of another layer would find counts as a survivor.
import { defineConfig } from "vitest/config";
import project from "../../vitest.config";

const layer = process.env["MUTANTS_OF"] ?? "formula";

export default defineConfig({
  ...project,
  test: {
    ...project.test,
    include: [`test/{${layer},laws,published,own}/**/*.test.ts`],
    exclude: ["**/*.slow.test.ts"],
    testTimeout: 120_000,
  },
});
