// Hill order: carbon, then hydrogen, then the rest by symbol; by symbol alone where there is no carbon.
// (E. A. Hill, J. Am. Chem. Soc. 22 (1900) 478.) A labelled nuclide follows its own element.
import { elementOf, symbolAt } from "../../element/internal";

const HYDROGEN = 0;
const CARBON = 5;

/** Positions of `elementIndices` in Hill order. */
export function hillOrder(elementIndices: readonly number[]): number[] {
  const carbon = elementIndices.some((index) => elementOf(index) === CARBON);
  // no symbol sorts before "A"
  const keys = elementIndices.map((index) => {
    const element = elementOf(index);
    return carbon && element === CARBON ? "0" : carbon && element === HYDROGEN ? "1" : symbolAt(element);
  });
  return [...keys.keys()].sort((a, b) =>
    keys[a] === keys[b] ? elementIndices[a]! - elementIndices[b]! : keys[a]! < keys[b]! ? -1 : 1,
  );
}
