// Our own HTML and LaTeX (and the usual ways of writing them) turned into plain formula text, with the way back for
// positions in errors. One pass.

export interface Plain {
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
};
const TAGS: Readonly<Record<string, string>> = { "<sub>": "_{", "</sub>": "}", "<sup>": "^{", "</sup>": "}" };
const COMMANDS: Readonly<Record<string, string>> = {
  "\\cdot": "·",
  "\\bullet": "•",
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
      const entity = /^&[a-z]{3,6}\d{0,2};/.exec(source.slice(i, i + 10))?.[0];
      put(entity === undefined ? character : (ENTITIES[entity] ?? entity), i);
      i += entity?.length ?? 1;
    } else if (character === "$") i += 1;
    else if (character === "\\") {
      const ahead = source.slice(i, i + 48);
      const wrapper = /^\\(?:mathrm|text|rm|ensuremath)\s*\{/.exec(ahead)?.[0];
      const ratio = /^\\[td]?frac\{(\d{1,12})\}\{(\d{1,12})\}/.exec(ahead);
      const command = /^\\(?:[a-zA-Z]+|.)/.exec(ahead)?.[0] ?? character;
      if (wrapper !== undefined) {
        braces.push(false);
        i += wrapper.length;
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
