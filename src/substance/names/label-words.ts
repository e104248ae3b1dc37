// What stands on a label beside the name: how strong, and that it is a solution. Left out only where nothing reads the whole.

/** A text without the words of its label. */
interface WithoutLabelWords {
  readonly text: string;
  /** What was left out, as it stood. */
  readonly leftOut: string;
  /** The percentage that was among it. */
  readonly percent?: string;
}

const PERCENT = /(?<![\d.])(\d{1,3}(?:\.\d{1,4})?)\s?%(?:\s?w\/[wv])?/;
const BEFORE = /^(?:diluted?|dil\.|concentrated|conc\.?|saturated|sat\.|aqueous|aq\.|a solution of|solution of)\s+/i;
const AFTER = /,?\s+(?:solution|soln\.?|in water|diluted?|concentrated|conc\.?)$/i;

/**
 * `dilute hydrochloric acid`, `ammonia solution`, `HCl 30 %`, `5% vinegar`: the name alone. Not `fuming`, which is another
 * substance, and not `powder` or `flakes`, which are other goods. Source: wording of labels, common practice.
 */
export function withoutLabelWords(text: string): WithoutLabelWords | undefined {
  const leftOut: string[] = [];
  let name = text;
  const take = (pattern: RegExp): void => {
    const found = pattern.exec(name);
    if (found === null) return;
    leftOut.push(found[0].replace(/^,/, "").trim());
    name = `${name.slice(0, found.index)} ${name.slice(found.index + found[0].length)}`
      .replace(/\(\s*\)/, "")
      .replace(/^[\s,]+|[\s,]+$/g, "");
  };
  const percent = PERCENT.exec(name)?.[1];
  take(PERCENT);
  take(BEFORE);
  take(AFTER);
  if (leftOut.length === 0 || name === "") return undefined;
  return {
    text: name,
    leftOut: leftOut.join(" "),
    ...(percent === undefined || Number(percent) > 100 || Number(percent) === 0 ? {} : { percent: `${percent} %` }),
  };
}
