// The notice that is packed with the library: what each source of figures asks for. Written from the list of sources and
// data-rights.ts; after a change of either: `npx vitest run test/docs/notice.test.ts -u`.
import { fileURLToPath } from "node:url";
import { cite, sourceKeys } from "preparative";
import { describe, expect, it } from "vitest";
import { SOLUBILITY } from "../../src/solubility/data/curves";
import { countedTables, groundOf, inWords } from "../tools/table-sources";
import { KINDS, type Kind, RIGHTS, TERMS } from "./data-rights";

const file = fileURLToPath(new URL("../../docs/NOTICE.md", import.meta.url));
const tables = await countedTables();

/** Lines of at most 120 characters, from the second on indented. */
const wrapped = (text: string, indent = ""): string =>
  text.split(" ").reduce((lines, word) => {
    const last = lines.length - lines.lastIndexOf("\n") - 1;
    return lines === "" ? word : last + word.length + 1 > 120 ? `${lines}\n${indent}${word}` : `${lines} ${word}`;
  }, "");

const fromEncyclopedia = SOLUBILITY()
  .filter(({ source }) => RIGHTS[source] === "shareAlike")
  .map(({ formula }) => formula);

const ofKind = (kind: Kind): string => {
  const lines = sourceKeys()
    .filter((key) => RIGHTS[key] === kind && kind !== "own")
    .map((key) => {
      const terms = TERMS[key];
      return wrapped(`- ${cite(key)}`, "  ") + (terms === undefined ? "" : `\n  ${wrapped(terms, "  ")}`);
    });
  const list =
    kind === "shareAlike"
      ? [wrapped(`Solubilities that rest on it (${fromEncyclopedia.length}): ${fromEncyclopedia.join(", ")}`)]
      : [];
  return [KINDS[kind].title, "-".repeat(KINDS[kind].title.length), wrapped(KINDS[kind].asks), ...lines, ...list].join(
    "\n",
  );
};

const TEXT = `preparative: where its figures are from
=======================================

${wrapped("The program is under the MIT licence (LICENSE). Its tables hold figures of the sources below; figures are facts. Apart from the official hazard statements, no text, layout or file of a source was taken over. Every row names its source, and cite(key) prints it.")}

${(Object.keys(KINDS) as Kind[]).map(ofKind).join("\n\n")}
`;

/** Tables that may rest on one source, and why. */
const WHOLE: Readonly<Record<string, string>> = {
  "isotopic compositions": "evaluated once, by the body that is asked to: IUPAC",
  "atomic weights": "set by the body that is asked to: IUPAC",
  formation: "NBS tables: one network of the United States government, which must not be mixed with another",
};

describe("rights", () => {
  it("are told for every source, and for no other", () => {
    expect(Object.keys(RIGHTS).toSorted()).toEqual([...sourceKeys()].toSorted());
  });

  it("stand in the notice as the list of sources has them", async () => {
    await expect(TEXT).toMatchFileSnapshot(file);
  });

  it("leave no table resting on one printed compilation alone", () => {
    const whole = tables.flatMap(({ name, sources }) => {
      const counts = new Map<string, number>();
      for (const source of sources) counts.set(source, (counts.get(source) ?? 0) + 1);
      const [most, n] = [...counts].reduce((a, b) => (b[1] > a[1] ? b : a));
      const share = n / sources.length;
      // what is recalled or practice is no compilation; law, government and old books are free
      const isFree = ["own", "law", "government", "publicDomain", "openLicence"].includes(
        RIGHTS[most as keyof typeof RIGHTS],
      );
      const isNaming = most === "redBook2005" || most === "unGhs" || most === "ghsPrecautions";
      return share < 0.9 || isFree || isNaming || groundOf(most) === "memory" || WHOLE[inWords(name)] !== undefined
        ? []
        : [`${inWords(name)}: ${Math.round(share * 100)} % from ${most}`];
    });
    expect(whole).toEqual([]);
  });

  it("have a second source beside the largest compilation", () => {
    // 248 of some 330 rows of one handbook table of solubilities: other sources must stand beside it, row by row
    const rows = SOLUBILITY();
    const ofHandbook = rows.filter(({ source }) => source === "crcSolubility98");
    const compared = ofHandbook.filter(
      ({ competing = [], alsoFrom }) => competing.length > 0 || alsoFrom !== undefined,
    );
    expect(ofHandbook.length / rows.length).toBeLessThan(0.6);
    expect(compared.length).toBeGreaterThan(60);
    // and the share-alike encyclopedia can only become less
    expect(fromEncyclopedia.length).toBeLessThanOrEqual(77);
  });
});
