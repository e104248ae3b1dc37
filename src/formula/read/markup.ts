// Our own HTML and LaTeX (and the usual ways of writing them) turned into plain formula text, with the way back for
// positions in errors. One pass.

interface Plain {
  readonly text: string;
  /** Position in the original of each character of `text`, and of its end. */
  readonly positions: readonly number[];
}

const ENTITIES: Readonly<Record<string, string>> = {
  "&middot;": "·",
  "&sdot;": "·",
  "&bull;": "•",
  "&minus;": "-",
  "&nbsp;": " ",
  "&frac12;": "½",
  "&frac14;": "¼",
  "&frac34;": "¾",
  "&thinsp;": " ",
  "&ensp;": " ",
  "&gt;": ">",
  "&lt;": "<",
  "&amp;": "&",
  "&rarr;": "→",
  "&harr;": "↔",
  "&rArr;": "⇒",
  "&hArr;": "⇔",
  "&uarr;": "↑",
  "&darr;": "↓",
};
const TAGS: Readonly<Record<string, string>> = { "<sub>": "_{", "</sub>": "}", "<sup>": "^{", "</sup>": "}" };
const COMMANDS: Readonly<Record<string, string>> = {
  "\\cdot": "·",
  "\\bullet": "•",
  "\\times": "×",
  "\\ast": "*",
  "\\rm": "",
  "\\left": "",
  "\\right": "",
  "\\quad": " ",
  "\\uparrow": "↑",
  "\\downarrow": "↓",
  "\\to": "→",
  "\\rightarrow": "→",
  "\\longrightarrow": "→",
  "\\Rightarrow": "→",
  "\\rightleftharpoons": "⇌",
  "\\leftrightarrow": "↔",
  "\\leftrightharpoons": "⇌",
  "\\rightleftarrows": "⇄",
  "\\:": "",
  "\\>": "",
  "\\(": "",
  "\\)": "",
  "\\[": "",
  "\\]": "",
  "\\,": "",
  "\\;": "",
  "\\!": "",
  "\\ ": " ",
  "\\{": "{",
  "\\}": "}",
};

/** Does the text need turning? */
export function hasMarkup(text: string): boolean {
  return text.includes("\\") || text.includes("<") || text.includes("&") || text.includes("$");
}

/** `&#183;`, `&#xb7;`. */
function numbered(entity: string): string | undefined {
  if (entity[1] !== "#") return undefined;
  const code = entity[2] === "x" ? Number.parseInt(entity.slice(3, -1), 16) : Number(entity.slice(2, -1));
  return code > 31 && code < 0x10000 && (code < 0xd800 || code > 0xdfff) ? String.fromCharCode(code) : undefined;
}

/** Behind the brace that closes the one just opened; the end if it is never closed. */
function closing(source: string, from: number): number {
  let depth = 1;
  let at = from;
  for (; at < source.length && depth > 0; at += 1) depth += source[at] === "{" ? 1 : source[at] === "}" ? -1 : 0;
  return at;
}

export function plainText(source: string): Plain {
  let text = "";
  const positions: number[] = [];
  const put = (piece: string, at: number): void => {
    text += piece;
    for (let k = 0; k < piece.length; k += 1) positions.push(at);
  };
  const latex = source.includes("\\") || source.includes("$");
  const braces: boolean[] = []; // is this brace kept?
  let i = 0;
  while (i < source.length) {
    const character = source[i]!;
    if (character === "<") {
      const tag = /^<\/?su[bp]>/i.exec(source.slice(i, i + 6))?.[0];
      put(tag === undefined ? character : TAGS[tag.toLowerCase()]!, i);
      i += tag?.length ?? 1;
    } else if (character === "&") {
      const entity = /^&(?:[A-Za-z]{2,6}\d{0,2}|#\d{1,6}|#x[\da-fA-F]{1,5});/.exec(source.slice(i, i + 10))?.[0];
      put(entity === undefined ? character : (ENTITIES[entity] ?? numbered(entity) ?? entity), i);
      i += entity?.length ?? 1;
    } else if (character === "$") i += 1;
    else if (character === "\\") {
      const ahead = source.slice(i, i + 48);
      const wrapper = /^\\(?:mathrm|mathsf|mathbf|text|textrm|mbox|rm|ce|cf|ensuremath)\s*\{/.exec(ahead)?.[0];
      const raised = /^\\text(sub|super)script\s*\{/.exec(ahead);
      const labelled = /^\\xrightarrow\s*(?:\[[^\]{}]{0,40}\])?\{/.exec(source.slice(i, i + 64))?.[0];
      const ratio = /^\\[td]?frac\{(\d{1,12})\}\{(\d{1,12})\}/.exec(ahead);
      const command = /^\\(?:[a-zA-Z]+|.)/.exec(ahead)?.[0] ?? character;
      if (wrapper !== undefined) {
        braces.push(false);
        i += wrapper.length;
      } else if (raised !== null) {
        put(raised[1] === "sub" ? "_{" : "^{", i);
        braces.push(true);
        i += raised[0].length;
      } else if (labelled !== undefined) {
        // what stands above the arrow is not a species
        put("→", i);
        i = closing(source, i + labelled.length);
      } else if (ratio !== null && !/\d$/.test(text)) {
        put(`${ratio[1]}/${ratio[2]}`, i);
        i += ratio[0].length;
      } else {
        put(COMMANDS[command] ?? command, i);
        i += command.length;
        if (/[a-z]$/.test(command)) while (source[i] === " ") i += 1;
      }
    } else if (latex && character === "{") {
      const kept = text.endsWith("^") || text.endsWith("_");
      braces.push(kept);
      if (kept) put(character, i);
      i += 1;
    } else if (latex && character === "}") {
      if (braces.pop() ?? true) put(character, i);
      i += 1;
    } else {
      put(character, i);
      i += 1;
    }
  }
  positions.push(source.length);
  return { text, positions };
}
