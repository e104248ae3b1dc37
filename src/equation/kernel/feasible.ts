// Which species can take part at all: exact answers about { x >= 0, A x = 0 } where listing every ray would be too much.
// Phase one of the simplex method on a big-integer tableau with Bland's rule, so it always ends.

/**
 * A non-negative solution of A x = 0 with x[chosen] > 0, as positive multiples, or undefined when there is none.
 *
 * @param matrix - rows of integers
 * @param chosen - column that has to take part
 */
function solutionWith(matrix: readonly (readonly bigint[])[], columns: number, chosen: number): bigint[] | undefined {
  // x[chosen] = 1 moves its column to the right-hand side: A' y = -a[chosen], y >= 0
  const rows = matrix.length;
  const others = [...Array(columns).keys()].filter((column) => column !== chosen);
  const width = others.length;
  // one common denominator for the whole tableau keeps every entry an integer (Edmonds' pivoting)
  const tableau = matrix.map((row) => {
    const right = -row[chosen]!;
    const sign = right < 0n ? -1n : 1n;
    return [...others.map((column) => sign * row[column]!), sign * right];
  });
  /** What is basic in each row: an index into `others`, or -1 for an artificial variable. */
  const basic = new Array<number>(rows).fill(-1);
  const cost = new Array<bigint>(width + 1).fill(0n);
  for (const row of tableau) for (let at = 0; at <= width; at++) cost[at]! += row[at]!;
  let denominator = 1n;
  while (cost[width]! > 0n) {
    const entering = cost.findIndex((value, at) => at < width && value > 0n);
    if (entering < 0) return undefined;
    let leaving = -1;
    for (let row = 0; row < rows; row++) {
      const entry = tableau[row]![entering]!;
      if (entry <= 0n) continue;
      if (leaving < 0) {
        leaving = row;
        continue;
      }
      const own = tableau[row]![width]! * tableau[leaving]![entering]!;
      const best = tableau[leaving]![width]! * entry;
      if (own < best || (own === best && basic[row]! < basic[leaving]!)) leaving = row;
    }
    // there is one: a positive cost is the sum of entries of rows, one of which is positive
    const pivotRow = tableau[leaving]!;
    const pivot = pivotRow[entering]!;
    for (const row of [...tableau, cost]) {
      if (row === pivotRow) continue;
      const value = row[entering]!;
      for (let at = 0; at <= width; at++) row[at] = (row[at]! * pivot - value * pivotRow[at]!) / denominator;
    }
    basic[leaving] = entering;
    denominator = pivot;
  }
  const solution = new Array<bigint>(columns).fill(0n);
  solution[chosen] = denominator;
  for (let row = 0; row < rows; row++) {
    if (basic[row]! >= 0) solution[others[basic[row]!]!] = tableau[row]![width]!;
  }
  return solution;
}

/** For every species, whether some non-negative solution has it take part. */
export function supportOfCone(matrix: readonly (readonly bigint[])[], columns: number): boolean[] {
  const takesPart = new Array<boolean>(columns).fill(false);
  for (let column = 0; column < columns; column++) {
    if (takesPart[column]) continue;
    const solution = solutionWith(matrix, columns, column);
    solution?.forEach((value, at) => {
      if (value > 0n) takesPart[at] = true;
    });
  }
  return takesPart;
}
