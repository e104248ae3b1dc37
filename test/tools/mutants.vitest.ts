// The tests which mutants meet: all but those which read the sources as text, build or start something.
import { defineConfig } from "vitest/config";
import project from "../../vitest.config";

export default defineConfig({
  ...project,
  test: {
    ...project.test,
    exclude: [
      "**/*.slow.test.ts",
      "test/consumers/**",
      "test/docs/**",
      "test/layers.test.ts",
      "test/rows.test.ts",
      "test/sources.test.ts",
      "test/tables-as-text.test.ts",
    ],
  },
});
