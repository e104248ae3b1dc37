// Hill order: carbon, then hydrogen, then the rest by symbol; by symbol alone where there is no carbon.
// (E. A. Hill, J. Am. Chem. Soc. 22 (1900) 478.) A labelled nuclide follows its own element.
import { elementOf, symbolAt } from "../../element/internal";

const HYDROGEN = 0;
const CARBON = 5;

/** Positions of `elementIndices` in Hill order. */
export function hillOrder(elementIndices: readonly number[]): number[] {
  const carbon = elementIndices.some((index) => elementOf(index) === CARBON);
  const rank = (element: number): number => (!carbon ? 2 : element === CARBON ? 0 : element === HYDROGEN ? 1 : 2);
  const compare = (a: number, b: number): number => {
    const [one, other] = [elementOf(a), elementOf(b)];
    if (one === other) return a - b;
    const byRank = rank(one) - rank(other);
    return byRank !== 0 ? byRank : symbolAt(one) < symbolAt(other) ? -1 : 1;
  };
  return elementIndices.map((_, position) => position).sort((a, b) => compare(elementIndices[a]!, elementIndices[b]!));
}
