// CITATION.cff says of this release what package.json says. Fields: Citation File Format 1.2.0 (S. Druskat and others, 2021).
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, it } from "vitest";

const root = fileURLToPath(new URL("../../", import.meta.url));
const citation = readFileSync(`${root}CITATION.cff`, "utf8");
const manifest = JSON.parse(readFileSync(`${root}package.json`, "utf8")) as Record<string, string & readonly string[]>;

/** A field of one line, one of several indented ones, or a list. */
const field = (name: string): string | undefined =>
  new RegExp(`^${name}:(?: >-)?((?: .*)?(?:\\n {2}.*)*)`, "m").exec(citation)?.[1]?.replace(/\s+/g, " ").trim();

it("has the fields that the format requires", () => {
  expect(field("cff-version")).toBe("1.2.0");
  expect(field("message")).toMatch(/cite/);
  expect(field("authors")).toBe("- name: The preparative authors");
});

it("says what package.json says", () => {
  expect(field("title")).toBe(manifest["name"]);
  expect(field("version")).toBe(manifest["version"]);
  expect(field("license")).toBe(manifest["license"]);
  expect(field("abstract")).toBe(manifest["description"]);
  expect(field("keywords")).toBe(manifest["keywords"]!.map((word) => `- ${word}`).join(" "));
});
