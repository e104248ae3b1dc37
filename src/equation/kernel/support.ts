// Which species take part in some non-negative solution, by the cheapest exact means: signs where there is one relation,
// the rays where they are few, linear programming otherwise, and no answer where that would take too long.
import { nullspaceInBigInts } from "./bareiss";
import { supportOfCone } from "./feasible";
import { extremeRays } from "./rays";

/** Rays that are listed before linear programming is the cheaper way. */
const RAYS_TRIED = 300;
/** Columns up to which linear programming in big integers stays quick. */
const LARGEST_PROGRAM = 40;

/** For every column whether it can be positive; undefined where the system is too large to tell. */
export function takingPart(matrix: readonly (readonly bigint[])[], columns: number): boolean[] | undefined {
  const vectors = nullspaceInBigInts(matrix, columns);
  const none = () => new Array<boolean>(columns).fill(false);
  if (vectors.length === 0) return none();
  if (vectors.length === 1) {
    const only = vectors[0]!;
    const mixed = only.some((value) => value < 0n);
    return mixed ? none() : only.map((value) => value > 0n);
  }
  const result = extremeRays(vectors, RAYS_TRIED);
  if (result.complete) {
    const found = none();
    for (const ray of result.rays) {
      ray.forEach((value, at) => {
        if (value > 0) found[at] = true;
      });
    }
    return found;
  }
  return columns <= LARGEST_PROGRAM ? supportOfCone(matrix, columns) : undefined;
}
