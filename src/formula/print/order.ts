// Hill order: carbon, then hydrogen, then the rest by symbol; by symbol alone where there is no carbon.
// (E. A. Hill, J. Am. Chem. Soc. 22 (1900) 478.) A labelled nuclide follows its own element.
import { elementOf, symbolAt } from "../../element/internal";

const HYDROGEN = 0;
const CARBON = 5;

/** Positions of `elementIndices` in Hill order. */
export function hillOrder(elementIndices: readonly number[]): number[] {
  const carbon = elementIndices.some((index) => elementOf(index) === CARBON);
  const key = (index: number): string => {
    const element = elementOf(index);
    const rank = carbon && element === CARBON ? 0 : carbon && element === HYDROGEN ? 1 : 2;
    return rank + symbolAt(element).padEnd(2) + String(index).padStart(6, "0");
  };
  return elementIndices
    .map((index, position) => ({ key: key(index), position }))
    .sort((a, b) => (a.key < b.key ? -1 : 1))
    .map(({ position }) => position);
}
