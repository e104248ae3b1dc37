// Runs tests with one fault of the library switched on: the bundle of library and tests is evaluated anew for each fault, so
// that nothing kept under one is met under the next. Stands in for the few functions of the test runner that the tests call.

import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import vm from "node:vm";
import {
  ASYMMETRIC_MATCHERS_OBJECT,
  GLOBAL_EXPECT,
  JestAsymmetricMatchers,
  JestChaiExpect,
  JestExtend,
  setState,
} from "@vitest/expect";
import * as chai from "chai";

const [root, bundle] = process.argv.slice(2);
const require = createRequire(join(root, "package.json"));

for (const plugin of [JestExtend, JestChaiExpect, JestAsymmetricMatchers]) chai.use(plugin);
const expect = Object.assign((value, message) => chai.expect(value, message), chai.expect);
// the first failure is enough here
Object.assign(expect, globalThis[ASYMMETRIC_MATCHERS_OBJECT] ?? {}, { soft: expect });
globalThis[GLOBAL_EXPECT] = expect;
setState({ assertionCalls: 0, isExpectingAssertions: false, environment: "node", testPath: "" }, expect);

/** What the instrumented code reads and writes. */
const faults = {};
globalThis.__stryker__ = faults;

let tests = [];
let suites = [];

/** `describe` or `it`, with `each` and its like. */
function declaring(declare) {
  const add = (name, a, b) => declare(String(name), typeof a === "function" ? a : b);
  const each = (spread) => (table) => (name, a, b) => {
    const body = typeof a === "function" ? a : b;
    for (const row of table) add(name, () => body(...(spread && Array.isArray(row) ? row : [row])));
  };
  // the stand-in of the runner has its names: what a test file itself leaves out is left out here as well
  const never = () => {};
  return Object.assign(add, {
    each: each(true),
    for: each(false),
    skip: never,
    skipIf: (is) => (is ? never : add),
    runIf: (is) => (is ? add : never),
  });
}
const describe = declaring((name, body) => {
  suites.push({ name, before: [], beforeEach: [], started: false });
  body();
  suites.pop();
});
const it = declaring((name, body) => {
  tests.push({
    name: [...suites.map((suite) => suite.name), name].join(" "),
    body,
    suites: [...suites],
    at: tests.length,
  });
});
const anything = new Proxy(() => {}, { get: (_, __, whole) => whole, apply: () => undefined });
globalThis.__tests__ = {
  describe,
  it,
  test: it,
  expect,
  beforeAll: (body) => suites.at(-1).before.push(body),
  beforeEach: (body) => suites.at(-1).beforeEach.push(body),
  afterAll: () => {},
  afterEach: () => {},
  expectTypeOf: () => anything,
};

const script = new vm.Script(`(function (exports, require, module) {${readFileSync(bundle, "utf8")}\n})`, {
  importModuleDynamically: vm.constants.USE_MAIN_CONTEXT_DEFAULT_LOADER,
});

/** Library and tests as if just started; the tests of a file are read when it is asked for. */
function loaded() {
  Object.assign(faults, { activeMutant: undefined, currentTestId: undefined, mutantCoverage: undefined });
  const module = { exports: {} };
  script.runInThisContext()(module.exports, require, module);
  return module.exports.files;
}

function read(files, file) {
  tests = [];
  suites = [{ name: file, before: [], beforeEach: [], started: false }];
  files[file]();
  return tests;
}

async function run({ body, suites: around }) {
  for (const suite of around) {
    if (!suite.started) for (const before of suite.before) await before();
    suite.started = true;
    for (const before of suite.beforeEach) await before();
  }
  await body({});
}

/** Which faults each test meets, and how long a file takes; what is met before any test is read is of none. */
async function dry(names) {
  const fixed = new Set();
  const files = {};
  const failing = [];
  const kept = new Set();
  globalThis.__answers__ = kept;
  for (const file of names) {
    kept.clear();
    const all = loaded();
    for (const id of Object.keys(faults.mutantCoverage?.static ?? {})) fixed.add(id);
    faults.currentTestId = "reading";
    const start = performance.now();
    const bad = [];
    const each = [];
    for (const test of read(all, file)) {
      faults.currentTestId = String(test.at);
      for (const answers of kept) answers.clear();
      const from = performance.now();
      await run(test).catch((error) => {
        bad.push(test.at);
        failing.push(`${test.name}: ${error.message}`);
      });
      each.push(performance.now() - from);
    }
    const met = Object.entries(faults.mutantCoverage?.perTest ?? {}).map(([test, ids]) => [test, Object.keys(ids)]);
    files[file] = { met: Object.fromEntries(met), bad, each, milliseconds: performance.now() - start };
  }
  globalThis.__answers__ = undefined;
  return { fixed: [...fixed], files, failing };
}

/** The test that a fault makes fail. Those that meet it come first; then the others of their files, which may meet it by what is kept. */
async function found(id, plan) {
  const all = loaded();
  faults.activeMutant = id;
  for (const { file, first, rest, bad } of plan) {
    try {
      const list = read(all, file);
      const order = [...first.map((at) => list[at]), ...list.filter(({ at }) => rest && !first.includes(at))];
      for (const test of order) if (test !== undefined && !bad.includes(test.at)) await run(test);
    } catch (error) {
      return `${file}: ${error?.message}`;
    }
  }
  return undefined;
}

process.on("message", async ({ names, id, plan }) => {
  process.send(names === undefined ? { by: await found(id, plan) } : await dry(names));
});
