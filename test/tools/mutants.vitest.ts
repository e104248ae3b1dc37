// The tests which mutants of one layer meet: those of the layer itself, the laws, and the published and own checks. A mutant
// which only the tests of another layer would find counts as a survivor. MUTANTS_TESTS="sheet/golden,own/hand" names fewer, for a
// look in minutes: what they find, all of them find.
import { defineConfig } from "vitest/config";
import project from "../../vitest.config";

const { MUTANTS_OF: layer = "formula", MUTANTS_TESTS: named } = process.env;

export default defineConfig({
  ...project,
  test: {
    ...project.test,
    include:
      named === undefined
        ? [`test/{${layer},laws,published,own}/**/*.test.ts`]
        : named.split(",").map((name) => `test/${name}.test.ts`),
    // the counters of the tool itself take memory
    exclude: ["**/*.slow.test.ts", "test/aqueous/heap.test.ts"],
    setupFiles: ["test/tools/mutants.setup.ts"],
    runner: "test/tools/mutants.runner.ts",
    // what one file keeps must not hide a fault from the next
    isolate: true,
    testTimeout: 120_000,
  },
});
