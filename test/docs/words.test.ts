// Plain international English, as a chemist, a teacher and an engineer write it, in every message, sheet, docstring, comment
// and page. Each line names a phrase, the word to use in its place, and the uses of it that are ordinary English.
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import ts from "typescript";
import { describe, expect, it } from "vitest";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** Phrase, word in its place, and what may stand. */
const EVERYWHERE: readonly (readonly [phrase: RegExp, instead: string, allowed?: RegExp])[] = [
  [/\breckon(s|ed|ing)?\b/i, "calculate"],
  [/\b(un)?told\b/i, "given, known, stated", /\btold apart\b/i],
  [/\b(falls?|fell|falling) out\b/i, "precipitate"],
  [/\b(comes?|coming) down (as|with|at pH)\b/i, "precipitate"],
  [/\b(throws?|thrown|threw|brings?|brought) (it |them |the metals? |[a-z]+ )?down\b/i, "precipitate"],
  [/\b(comes?|came|coming) off\b/i, "is given off"],
  [/\bruns in (moist|damp) air\b/i, "is deliquescent"],
  [/\bmoist air\b/i, "humid air"],
  [/\bhand(s|ed|ing)? (it |them |the [a-z]+ )?in\b/i, "dispose of, take to collection", /come into hand in/],
  [/\bis no reactant\b/i, "is not a reactant"],
  [/\b(list|strength|text) that is none\b/i, "is not a list"],
  [/\bfroth/i, "foam"],
  [/\bajar\b/i, "slightly open"],
  [/\btaken for granted\b/i, "assumed"],
  [/\btrue form\b/i, "formula as sold"],
  [/\blimits the yield\b/i, "limiting reagent"],
  [/\bthinned\b/i, "diluted"],
  [/\ba tenth over\b/i, "10 % excess"],
  [
    /\b(this|the [a-z]+) room (above|below|layer)|\b(amount|element|equation|formula|quantity|sheet|solubility|aqueous) room\b/i,
    "layer",
  ],
  [/[A-Z][a-z]?[+-]\d(?![\d.:+A-Za-z-])/, "ions as Pb^2+", /H-1|[A-Z][a-z]?-\d+[a-z]?\b|e-\d|Fe\+3 \+ 3 OH-/],
];

/** In what a person reads: literals of the source, and the pages. */
const IN_TEXTS: readonly (readonly [phrase: RegExp, instead: string, allowed?: RegExp])[] = [
  [
    /\b(contents|liquor|cake|salt|formula|solution|water|sample|pack|crystals|gel|grade|bags|kinds|tablets) holds?\b/i,
    "contain",
    /would hold/,
  ],
  [/\bit holds (a|water|ammonia)\b/i, "it contains"],
  [/(%|\}) over( of|$|[.,;])/, "% excess"],
  [/\b(takes?|taken|took|taking) up\b/i, "absorb, neutralise, bind", /take up what they first precipitated/],
  [
    /\bbehind\b/i,
    "after",
    /\b(facts|machinery|figure|constants|record|data|working|sentence) behind\b|^["'`]behind["'`]$/i,
  ],
  [
    /\b(is|are) no (element|species|unit|ratio|coefficient|list|phase|text|object|number|gas|product|substance|solid|formula|code|symbol|yield|preparation|part|count|run|name|alkali|good)\b/i,
    "is not a",
  ],
  [/\btakes? (it|the [a-z]+|them) apart\b/i, "decomposes, hydrolyses"],
  [
    /\b(takes it back|lets? it fall|falls cold|hydroxide falls|leaves? each other alone|washing parts)\b/i,
    "redissolves, precipitates, react, separates",
  ],
  [/\bwithin the doubt of\b|\bby the doubt of\b/i, "uncertainty"],
  [/\bmust be (greater|more) than (zero|nothing)\b/i, "must be above zero"],
  [
    /\b(sour (enough|waste|liquor)|thirstiest|eats glass|goes off (above|by)|in the air of a room it runs|crystals run in)\b/i,
    "acid, needs most water, attacks, explodes, is deliquescent",
  ],
  [/\bit tells the (share|assay|yield)\b|\bloss tells the\b/i, "gives, identifies"],
];

/** Ends of code fields and other names that stand in quotes. */
const NAME = /^["'`][\w.:/#@-]*["'`]$/;

function filesIn(folder: string, ending: RegExp): string[] {
  return readdirSync(`${root}${folder}`, { withFileTypes: true }).flatMap((entry) => {
    const path = `${folder}/${entry.name}`;
    return entry.isDirectory() ? filesIn(path, ending) : ending.test(entry.name) ? [path] : [];
  });
}

interface Piece {
  readonly text: string;
  readonly line: number;
}

/** Literals and comments of a module; names in quotes left out. */
function piecesOf(path: string): { texts: Piece[]; comments: Piece[] } {
  const text = readFileSync(`${root}${path}`, "utf8");
  const file = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
  const [texts, comments]: [Piece[], Piece[]] = [[], []];
  const seen = new Set<number>();
  const piece = (from: number, to: number): Piece => ({
    text: text.slice(from, to),
    line: file.getLineAndCharacterOfPosition(from).line + 1,
  });
  const visit = (node: ts.Node): void => {
    const literal =
      ts.isStringLiteralLike(node) || ts.isTemplateHead(node) || ts.isTemplateMiddle(node) || ts.isTemplateTail(node);
    if (literal && !NAME.test(node.getText(file)) && !ts.isImportDeclaration(node.parent))
      texts.push(piece(node.getStart(file), node.end));
    const around = [
      ...(ts.getLeadingCommentRanges(text, node.pos) ?? []),
      ...(ts.getTrailingCommentRanges(text, node.end) ?? []),
    ];
    for (const { pos, end } of around) {
      if (seen.has(pos)) continue;
      seen.add(pos);
      comments.push(piece(pos, end));
    }
    for (const child of node.getChildren(file)) visit(child);
  };
  visit(file);
  return { texts, comments };
}

/** Lines of a piece in which a phrase stands outside its allowed uses. */
function foundIn(path: string, pieces: readonly Piece[], rules: typeof EVERYWHERE): string[] {
  return pieces.flatMap(({ text, line }) =>
    text.split("\n").flatMap((one, i) =>
      rules.flatMap(([phrase, instead, allowed]) => {
        const rest = allowed === undefined ? one : one.replace(new RegExp(allowed.source, `g${allowed.flags}`), "");
        const [found] = phrase.exec(rest) ?? [];
        return found === undefined ? [] : [`${path}:${line + i}: "${found}", better: ${instead}`];
      }),
    ),
  );
}

const modules = filesIn("src", /\.ts$/).map((path) => ({ path, ...piecesOf(path) }));
const pages = [...filesIn("docs", /\.md$/), "README.md", "DEVELOPERS.md"].map((path) => ({
  path,
  pieces: [{ text: readFileSync(`${root}${path}`, "utf8"), line: 1 }],
}));

describe("plain words", () => {
  it("finds what it forbids, and leaves its ordinary uses", () => {
    const found = (text: string) => foundIn("x", [{ text, line: 1 }], [...EVERYWHERE, ...IN_TEXTS]).length;
    for (const text of [
      "reckoned as 5 g",
      "5 % over of soda",
      "ammonia comes off",
      "hand it in",
      "X is no element",
      "heat takes it apart",
    ])
      expect(found(text), text).toBe(1);
    for (const text of ["two hydrates cannot be told apart", "the facts behind the code", "dry over a drying agent"])
      expect(found(text), text).toBe(0);
  });

  it("stand in every literal of the source", () => {
    expect(modules.flatMap(({ path, texts }) => foundIn(path, texts, [...EVERYWHERE, ...IN_TEXTS]))).toEqual([]);
  });

  it("stand in every comment and docstring", () => {
    expect(modules.flatMap(({ path, comments }) => foundIn(path, comments, EVERYWHERE))).toEqual([]);
  });

  it("stand on every page", () => {
    expect(pages.flatMap(({ path, pieces }) => foundIn(path, pieces, [...EVERYWHERE, ...IN_TEXTS]))).toEqual([]);
  });
});
