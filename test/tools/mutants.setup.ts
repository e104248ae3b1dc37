// Before each test file of a run with mutants. Much of a test is worked out while its file is read, to make a table of cases:
// the mutant is on by then, and what the file meets while it is read counts for each of its tests.
import { afterAll, beforeAll, inject, type RunnerTask } from "vitest";
// what the library does when it is read is of no test
import "preparative";

type Hits = Record<string, number>;
interface Shared {
  activeMutant?: string | undefined;
  currentTestId?: string | undefined;
  readonly mutantCoverage?: { readonly static: Hits; readonly perTest: Record<string, Hits> };
}
const given = inject as (key: string) => string;
const globals = globalThis as unknown as Record<string, Shared>;
const shared: Shared = globals[given("globalNamespace")]!;

/** Tests by file and full name, as the tool calls them. */
const namesIn = (tasks: readonly RunnerTask[], before: string): string[] =>
  tasks.flatMap((task) => {
    const name = `${before} ${task.name}`.trim();
    return task.type === "suite" ? namesIn(task.tasks, name) : [name];
  });

if (given("mode") === "mutant") {
  shared.activeMutant = given("activeMutant");
} else {
  const READING = "while it is read";
  shared.currentTestId = READING;
  // biome-ignore lint/correctness/noEmptyPattern: the first argument is asked for by its shape
  beforeAll(({}, suite) => {
    shared.currentTestId = undefined;
    const perTest = shared.mutantCoverage?.perTest ?? {};
    const met = perTest[READING] ?? {};
    delete perTest[READING];
    const { file } = suite;
    for (const name of namesIn(file.tasks, "")) {
      perTest[`${file.filepath}#${name}`] = { ...met };
    }
  });
  // An answer that the library keeps is worked out in the first test that asks for it: what one test of a file meets, all may find.
  // biome-ignore lint/correctness/noEmptyPattern: the first argument is asked for by its shape
  afterAll(({}, suite) => {
    const perTest = shared.mutantCoverage?.perTest ?? {};
    const { file } = suite;
    const ids = namesIn(file.tasks, "").map((name) => `${file.filepath}#${name}`);
    const met: Hits = Object.assign({}, ...ids.map((id) => perTest[id] ?? {}));
    for (const id of ids) perTest[id] = met;
  });
}
