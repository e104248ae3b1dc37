// How many slips of the pen part two words, and which of some words was most likely meant.

/** Restricted Damerau-Levenshtein distance, given up past `limit`. */
export function slips(a: string, b: string, limit: number): number {
  if (Math.abs(a.length - b.length) > limit) return limit + 1;
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i];
    let least = i;
    for (let j = 1; j <= b.length; j += 1) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let cost = Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) cost = Math.min(cost, before[j - 2]! + 1);
      row.push(cost);
      if (cost < least) least = cost;
    }
    if (least > limit) return limit + 1;
    before = last;
    last = row;
  }
  return last[b.length]!;
}

/** Longest word that is compared with others; nobody misspells more. */
const LONGEST = 60;

/** The word of the list that a misspelt one was most likely meant for: few slips, capitals left aside. */
export function nearestWord(misspelt: string, words: readonly string[]): string | undefined {
  if (misspelt.length > LONGEST) return undefined;
  const asked = misspelt.toLowerCase();
  let nearest: string | undefined;
  let limit = Math.max(2, Math.floor(misspelt.length / 2));
  for (const word of words) {
    const distance = slips(asked, word.toLowerCase(), limit);
    if (distance > limit) continue;
    nearest = word;
    limit = distance - 1;
  }
  return nearest;
}
