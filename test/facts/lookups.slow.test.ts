// Every public function that looks something up takes `facts`, and an own row changes its answer; what is read off an answer
// later rests on the facts of its call, and nothing of them is left for the next.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import * as preparative from "preparative";
import { attempt, facts } from "preparative";
import ts from "typescript";
import { beforeAll, describe, expect, it, vi } from "vitest";
import { type Facts, factsInForce, OWN_TABLES, under } from "../../src/foundation/facts";
import { doorsOf } from "../tools/doors";
import { LOOKUPS, type Lookup, PLAIN } from "../tools/lookups";
import { told } from "../tools/told";

const functions = preparative as unknown as Readonly<Record<string, (...args: unknown[]) => unknown>>;

/** The arguments with facts where they go. */
const withFacts = ({ args, at }: Lookup, given: unknown): readonly unknown[] => {
  const all = [...args, ...Array<undefined>(Math.max(0, at + 1 - args.length)).fill(undefined)];
  return all.map((arg, i) => (i === at ? { ...(arg as object | undefined), facts: given } : arg));
};

/** The answer, or the refusal as a text. */
const call = ({ name }: Lookup, args: readonly unknown[]): unknown => {
  const result = attempt(() => functions[name]!(...args));
  return result.ok ? result.value : String(result.error);
};

const other: Facts = facts({
  source: "another studio (invented)",
  weights: ["H", "O", "Na", "Cl", "Ca", "C", "Cu", "Zn", "K", "N"].map((element) => ({ element, weight: "50 g/mol" })),
});

describe("facts change an answer", () => {
  it.each(LOOKUPS.map((one, i) => [`${i} ${one.name}`, one] as const))("%s", (_, one) => {
    const own = facts(one.rows);
    const before = told(call(one, one.args));
    const late = call(one, withFacts(one, own));
    // read while another set is in force, as inside of a call that was given one
    const read = under(other, () => told(late));
    expect(told(under(own, () => call(one, one.args)))).toBe(read);
    expect(read).not.toBe(before);
    expect(told(call(one, one.args))).toBe(before);
    expect(under(other, () => told(under(undefined, () => call(one, one.args))))).toBe(before);
  });
});

/** A set which notes the tables that are asked, and has none. */
function watching(): { readonly set: Facts; readonly asked: Set<string> } {
  const asked = new Set<string>();
  const tables = new Proxy({}, { get: (_, table) => void asked.add(String(table)) });
  return { set: { kind: "facts", size: 0, [OWN_TABLES]: () => tables } as unknown as Facts, asked };
}

/** Tables that a call asks, however late; units are read by `quantity`, which takes facts, and passed on. */
function tablesAsked(compute: () => unknown): readonly string[] {
  const { set, asked } = watching();
  under(set, () => told(compute()));
  return [...asked].filter((table) => table !== "units");
}

describe("every public function", () => {
  const taking = new Set(LOOKUPS.map(({ name }) => name));

  it("is known to look something up or not to", () => {
    const all = doorsOf(preparative).map(([name]) => name);
    expect(all.filter((name) => taking.has(name) === Object.hasOwn(PLAIN, name))).toEqual([]);
    expect([...taking, ...Object.keys(PLAIN)].filter((name) => !all.includes(name))).toEqual([]);
  });

  it.each(Object.entries(PLAIN))("%s: asks no table of the caller's own", (name, args) => {
    expect(tablesAsked(() => functions[name]!(...args))).toEqual([]);
  });

  it.each(LOOKUPS.map((one, i) => [`${i} ${one.name}`, one] as const))("%s: refuses facts that are none", (_, one) => {
    expect(call(one, withFacts(one, {}))).toContain("facts must be what facts() gave");
  });
});

it("nothing in the library waits: what a call computes, it has computed when it returns, or computes under its own facts", () => {
  const src = fileURLToPath(new URL("../../src", import.meta.url));
  const waiting = readdirSync(src, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts"))
    .filter((file) => {
      const scanner = ts.createScanner(ts.ScriptTarget.Latest, true, undefined, readFileSync(join(src, file), "utf8"));
      for (let token = scanner.scan(); token !== ts.SyntaxKind.EndOfFileToken; token = scanner.scan())
        if (token === ts.SyntaxKind.AsyncKeyword || token === ts.SyntaxKind.AwaitKeyword) return true;
      return false;
    });
  expect(waiting).toEqual([]);
});

it("a set goes out of force however the call ends", () => {
  const own = facts(LOOKUPS[0]!.rows);
  expect(() =>
    under(own, () =>
      under(undefined, () => {
        throw new Error("in the middle");
      }),
    ),
  ).toThrow("in the middle");
  expect(factsInForce()).toBe(undefined);
});

describe("a copy of the library that is asked with facts before it is asked without", () => {
  let fresh: typeof functions;

  beforeAll(async () => {
    vi.resetModules();
    fresh = (await import("preparative")) as unknown as typeof functions;
    for (const one of LOOKUPS) attempt(() => told(fresh[one.name]!(...withFacts(one, facts(one.rows)))));
  }, 60_000);

  it.each(LOOKUPS.map((one, i) => [`${i} ${one.name}`, one] as const))("%s: has kept nothing of them", (_, one) => {
    const answer = attempt(() => fresh[one.name]!(...one.args));
    expect(told(answer.ok ? answer.value : String(answer.error))).toBe(told(call(one, one.args)));
  });
});
