// Every refusal: its code, where it points, what it advises; and that no input takes long.
import { describe, expect, it } from "vitest";
import { FormulaError, formulaFromJSON, parseFormula, tryParseFormula } from "../../src/formula";
import { MAX_DEPTH, MAX_LENGTH } from "../../src/formula/read/limits";

function refusal(text: string): FormulaError {
  try {
    parseFormula(text);
  } catch (error) {
    if (error instanceof FormulaError) return error;
    throw error;
  }
  throw new Error(`${text} was read`);
}

describe("refused formulas", () => {
  it.each([
    ["", "formula.empty", 0],
    ["   ", "formula.empty", 3],
    ["(aq)", "formula.empty", 0],
    ["Qa2O", "formula.unknown-symbol", 0],
    ["NaJo", "formula.unknown-symbol", 2],
    ["Na#Cl", "formula.unexpected-character", 2],
    ["Na Cl", "formula.unexpected-space", 2],
    ["(NaCl", "formula.unclosed-bracket", 0],
    ["Fe(", "formula.unclosed-bracket", 2],
    ["NaCl)", "formula.unmatched-bracket", 4],
    ["[Fe(CN)6)", "formula.mismatched-bracket", 8],
    ["Fe()2", "formula.empty-group", 2],
    ["CuSO4·", "formula.empty-part", 5],
    ["·H2O", "formula.empty-part", 0],
    ["CuSO4··H2O", "formula.empty-part", 5],
    ["CuSO4·5", "formula.misplaced-number", 6],
    ["_2", "formula.misplaced-number", 0],
    ["H0", "formula.zero-count", 1],
    ["H2O·0H2O", "formula.zero-count", 4],
    ["H02", "formula.leading-zero", 1],
    ["C1234567890123", "formula.count-too-large", 1],
    ["Na^12345+", "formula.count-too-large", 2],
    ["Fe0,95O", "formula.decimal-comma", 3],
    ["Na+Cl-", "formula.misplaced-charge", 2],
    ["+", "formula.misplaced-charge", 0],
    ["SO4^2", "formula.misplaced-charge", 3],
    ["SO4^", "formula.misplaced-charge", 3],
    ["CuSO4·nH2O", "formula.unknown-number", 6],
    ["CuxS", "formula.unknown-number", 2],
    ["NaCl(foo)", "formula.unknown-phase", 4],
    ["[99H]", "formula.impossible-mass-number", 1],
    ["[13CH4]", "formula.ambiguous-label", 1],
    ["½SO4^-", "formula.fractional-charge", 0],
    ["SO42-", "formula.ambiguous-charge", 4],
    ["PO43-", "formula.ambiguous-charge", 4],
    ["Fe(CN)64-", "formula.ambiguous-charge", 8],
    ["Fe(III)", "formula.roman-numeral", 2],
    ["CH2=CH2", "formula.unexpected-character", 3],
    ["(Mg,Fe)2SiO4", "formula.unexpected-character", 3],
    ["<b>H</b>", "formula.unexpected-character", 0],
  ])("%j is %s at %i", (text, code, position) => {
    const error = refusal(text);
    expect(error.code).toBe(code);
    expect(error.position).toBe(position);
    expect(error.input).toBe(text);
  });

  it.each([
    ["NACL", "did you mean NaCl?"],
    ["Cuso4", "did you mean CuSO4?"],
    ["na2co3", "did you mean Na2CO3?"],
    ["cuso4·5h2o", "did you mean CuSO4·5H2O?"],
    ["ZNSO4", "did you mean ZnSO4?"],
    ["KMNO4", "did you mean KMnO4?"],
    ["CACO3(S)", undefined],
    ["CuS04", "a zero for the letter O? CuSO4"],
    ["Na0H", "a zero for the letter O? NaOH"],
    ["SO42-", "write SO4^2-, or SO42^-"],
    ["Fe(II)SO4", "write Fe^{II} for the oxidation number; for the atoms leave the brackets out"],
    ["EtOH", "abbreviations of groups are not read; write Et as C2H5"],
    ["(NaCl", 'close it with ")"'],
    ["Fe0,95O", "write a decimal point"],
  ])("%s is advised: %s", (text, hint) => {
    expect(refusal(text).hint).toBe(hint ?? refusal(text).hint);
    if (hint !== undefined) expect(refusal(text).message).toContain(hint);
  });

  it.each([
    ["СuSO4", "U+0421", "Cyrillic", "C", 0],
    ["H2О", "U+041E", "Cyrillic", "O", 2],
    ["Нg", "U+041D", "Cyrillic", "H", 0],
    ["ΗCl", "U+0397", "Greek", "H", 0],
    ["H２O", "U+FF12", "full-width", "2", 1],
    ["ＮaCl", "U+FF2E", "full-width", "N", 0],
  ])("%s holds a look-alike and is told which", (text, codePoint, script, ascii, position) => {
    const error = refusal(text);
    expect(error.code).toBe("formula.look-alike");
    expect(error.position).toBe(position);
    expect(error.details).toEqual({ codePoint, ascii });
    expect(error.message).toContain(script);
  });

  it("names a look-alike that hides as second letter", () => {
    expect(refusal("Nа").message).toContain("U+0430");
    expect(refusal("Nа").hint).toContain('"a"');
    // where the first letter alone is no element either
    expect(refusal("Lа2O3").hint).toBe('U+0430 is Cyrillic; type "a"');
  });

  it("names for every letter that passes for a Latin one a letter of the same case", () => {
    // Unicode blocks Greek and Cyrillic, U+0370 to U+04FF; the dot U+0387 is no letter
    const letters = Array.from({ length: 0x190 }, (_, i) => String.fromCodePoint(0x370 + i)).filter((one) =>
      /\p{L}/u.test(one),
    );
    const told = letters.flatMap((letter) => {
      const { ascii } = refusal(`${letter}2`).details as { ascii?: string };
      return ascii === undefined ? [] : [{ letter, ascii }];
    });
    for (const { letter, ascii } of told)
      expect(ascii, letter).toMatch(letter === letter.toUpperCase() ? /^[A-Z]$/ : /^[a-z]$/);
    // the capitals that print alike (confusables of Unicode Technical Standard 39, from memory)
    const pairs = told.map(({ letter, ascii }) => letter + ascii).join(" ");
    expect(pairs).toContain("ΑA ΒB ΕE ΖZ ΗH ΙI ΚK ΜM ΝN ΟO ΡP ΤT ΥY ΧX");
    for (const pair of ["АA", "ВB", "ЕE", "КK", "МM", "НH", "ОO", "РP", "СC", "ТT", "ХX"])
      expect(pairs).toContain(pair);
  });

  it("shows the place with a caret", () => {
    expect(refusal("Na2(SO4]").message.split("\n").slice(1, 3)).toEqual(["  Na2(SO4]", "         ^"]);
  });

  it("points into HTML and LaTeX as they were given", () => {
    const error = refusal("H<sub>2</sub>Qq");
    expect(error.input).toBe("H<sub>2</sub>Qq");
    expect(error.position).toBe(13);
  });

  it("refuses what is not text", () => {
    for (const value of [undefined, null, 7, {}, []]) {
      const outcome = tryParseFormula(value as unknown as string);
      expect(outcome.ok || outcome.error.code).toBe("formula.not-text");
    }
    expect(() => formulaFromJSON({} as never)).toThrow(FormulaError);
    expect(() => formulaFromJSON(null as never)).toThrow(FormulaError);
  });

  it.each([
    [() => parseFormula("H2O").minus(parseFormula("H2O2")), "formula.negative-count"],
    [() => parseFormula("H2O").minus(parseFormula("H2O")), "formula.nothing-left"],
    [() => parseFormula("5H2O").without("H2O"), "formula.nothing-left"],
    [() => parseFormula("H2O").times(0), "formula.bad-factor"],
    [() => parseFormula("H2O").times(-1), "formula.bad-factor"],
    [() => parseFormula("H2O").times("1e3"), "formula.bad-factor"],
    [() => parseFormula("Na+").times("0.5"), "formula.fractional-charge"],
    [() => parseFormula("CuSO4·nH2O", { n: 0 }), "formula.unknown-number"],
    [() => parseFormula("CuSO4·nH2O", { n: Number.NaN }), "formula.unknown-number"],
    [() => parseFormula("C999999999999").times(999999999), "formula.count-too-large"],
  ])("refuses impossible algebra: %s", (run, code) => {
    expect(run).toThrow(expect.objectContaining({ code }));
  });
});

describe("limits", () => {
  it("reads up to the longest text and refuses the next", () => {
    expect(parseFormula("C".repeat(MAX_LENGTH)).count("C").toFraction()).toBe(String(MAX_LENGTH));
    expect(outcomeOf("C".repeat(MAX_LENGTH + 1))).toBe("formula.too-long");
  });

  it("reads up to the deepest nesting and refuses the next", () => {
    const nested = (depth: number): string => "(".repeat(depth) + "C" + ")".repeat(depth);
    expect(parseFormula(nested(MAX_DEPTH)).count("C").toFraction()).toBe("1");
    expect(outcomeOf(nested(MAX_DEPTH + 1))).toBe("formula.too-deep");
    expect(outcomeOf(nested(50_000))).toBe("formula.too-deep");
  });

  it("keeps counts exact and refuses what would not be", () => {
    expect(outcomeOf("(C999999999999)999999999999")).toBe("formula.count-too-large");
    expect(outcomeOf(`${"(".repeat(60)}C9${")9".repeat(60)}`)).toBe("formula.count-too-large");
    expect(outcomeOf("Fe0.123456789O0.1234567891")).toBe("read");
    expect(outcomeOf("(((Fe0.123456789)0.123456789)0.123456789)")).toBe("formula.count-too-large");
  });

  // A quadratic reader would need minutes for these; the test's time limit is what fails then.
  it.each([
    ["letters", "Na".repeat(500_000)],
    ["open brackets", "(".repeat(1_000_000)],
    ["dots", "H2O.".repeat(250_000)],
    ["digits", `C${"9".repeat(1_000_000)}`],
    ["unknown letters", "q".repeat(1_000_000)],
    ["superscripts", "⁺".repeat(1_000_000)],
    ["markup", "<sub>".repeat(200_000)],
    ["spaces", " ".repeat(1_000_000)],
  ])("refuses a megabyte of %s at once", { timeout: 5000 }, (_, text) => {
    expect(outcomeOf(text)).toBe("formula.too-long");
  });

  it.each([
    ["letters", "Na".repeat(90_000)],
    ["adducts", "H2O.5H2O.".repeat(20_000) + "H2O"],
    ["doubtful dots", "O2.5SiO3".repeat(22_000)],
    ["decimals", "Fe0.5".repeat(36_000)],
    ["groups", "(OH)2".repeat(36_000)],
    ["charges", "Na⁺".repeat(60_000)],
    ["LaTeX", "H_{2}".repeat(36_000)],
    ["HTML", "H<sub>2</sub>".repeat(13_000)],
    ["backslashes", "\\".repeat(190_000)],
    ["labels", "[13C]".repeat(36_000)],
    ["oxidation numbers", "Fe^{II}".repeat(25_000)],
    ["unknown letters", "q".repeat(190_000)],
    ["lower case", "na".repeat(90_000)],
  ])("settles a long text of %s, whatever the answer", { timeout: 5000 }, (_, text) => {
    expect(outcomeOf(text)).toMatch(/^(?:read|formula\.[a-z-]+)$/);
  });
});

function outcomeOf(text: string): string {
  const outcome = tryParseFormula(text);
  return outcome.ok ? "read" : outcome.error.code;
}
