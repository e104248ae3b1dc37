import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

const src = (path: string) => fileURLToPath(new URL(`./src/${path}`, import.meta.url));

export default defineConfig({
  resolve: {
    alias: [
      { find: /^preparative$/, replacement: src("index.ts") },
      { find: /^preparative\/(.+)$/, replacement: src("$1/index.ts") },
    ],
  },
  test: {
    include: ["test/**/*.test.ts"],
    // the files share one copy of the library in each thread: no test depends on what another left (also in shuffled order)
    pool: "threads",
    isolate: false,
    // all cores: the thread that only waits needs none
    maxWorkers: "100%",
    testTimeout: 60_000,
  },
});
