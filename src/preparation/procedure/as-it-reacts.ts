// A ligand that cold water hardly dissolves, of a complex that it dissolves well: stirred into little water as a solid, which goes as
// the complex takes it. Dissolved first it would ask for a litre that is boiled off again.

import { type Quantity, quantity, sum } from "../../quantity";
import { matterOf } from "../contents/matter";
import { exact, planned } from "../planning/exact";
import { fateOf } from "../reaction/fate";
import { isGas } from "../reaction/fluids";
import { waterOfReaction } from "../reaction/water-of-reaction";
import { boiledTo } from "./boiled-to";
import { timesTheWater } from "./common-ion";
import { type Feed, type Feeding, isWithoutWater, waterToAdd } from "./feed";
import { leastWater } from "./feed-dissolved";
import { withMore } from "./feed-more";
import { inTheWay } from "./mixed-hot";
import { inOrder, ranksOf } from "./ranks";
import { isByLye } from "./roles";
import { warmAsReducer } from "./slow-complex";

/** Why such a feed is no solution. */
const WHY = "it dissolves as the complex takes it: water of its own would be boiled off again";

/** Is it such a solid? */
export const dissolvesAsItReacts = (feed: Feed): boolean => feed.how === "solid" && feed.why === WHY;

const most = (one: Quantity, other: Quantity): Quantity => (one.compare(other) > 0 ? one : other);

/** Would a solid come of metal salt and ligand before the complex, and enclose what is not dissolved? Not where the metal comes as a solid itself. */
const isEnclosed = ({ setting, roles }: Feeding, feeds: readonly Feed[]): boolean =>
  inTheWay(setting, roles) !== undefined && feeds[roles.indexOf("metal salt")]?.how !== "solid";

/** Water that is put to a feed, beside what a solution brings itself. */
function putTo(feed: Feed): Quantity {
  const water =
    feed.how === "dissolve" ? feed.dissolving.water : feed.how === "solution" ? feed.dilution?.water : feed.water;
  return water ?? exact("0 g");
}

/** Water still to be put to the ligands for the liquor of the end: what it crystallises from, or what it is boiled down to where nothing is known of its crystals. */
function wantedAtEnd(
  feeds: readonly Feed[],
  { setting, account, portions, target }: Feeding,
  others: Quantity,
): Quantity | undefined {
  const { materials, reactants, products, product } = setting;
  if (target !== undefined) {
    const own = feeds.flatMap((feed) => (feed.how === "solution" && feed.water !== undefined ? [feed.water] : []));
    return target.minus(sum([others, ...own, waterOfReaction(materials, account, reactants, products)])).to("g");
  }
  const masses = materials.map((material, i) => material.massOf(portions[i]!));
  if (masses.some((one) => one === undefined)) return undefined;
  const { mass } = account.formed[products.indexOf(product)]!;
  return boiledTo(setting, mass)
    .minus(sum([others, ...(masses as Quantity[])]))
    .to("g");
}

/** Water that keeps what is over of the ligands dissolved, cold, beside the salts that form with the complex; undefined where no figure tells. */
function keepsTheExcess({ setting, account }: Feeding, ligands: readonly number[]): Quantity | undefined {
  const { materials, products, product, temperature } = setting;
  const over = ligands.flatMap((i) => {
    const { form } = materials[i]!;
    const { left } = account.supplied[i]!;
    return left.isPositive()
      ? [{ matter: matterOf(form).core, mass: left.times(matterOf(form).core.molarMass).to("g") }]
      : [];
  });
  const formed = products.flatMap((one, i) =>
    one === product || one.isWater || isGas(one.formula, true)
      ? []
      : [
          {
            matter: matterOf(one.formula).core,
            mass: account.formed[i]!.amount.times(matterOf(one.formula).core.molarMass).to("g"),
          },
        ],
  );
  const salts = [...over, ...formed].map(({ matter, mass }) => ({ matter, dry: mass.toNumber("g") }));
  const waters = over.map(({ matter, mass }, i) => {
    const alone = leastWater(matter.formula, mass, temperature)?.totalWater;
    return alone?.times(quantity(timesTheWater(salts, i).toPrecision(6))).to("g");
  });
  return waters.includes(undefined) ? undefined : (waters as Quantity[]).reduce(most, exact("0 g"));
}

/** Does cold water dissolve little of it? */
function isSparing({ setting: { materials, temperature } }: Feeding, i: number): boolean {
  const { perHundredGramsWater } = fateOf(materials[i]!.form, temperature);
  return perHundredGramsWater !== undefined && perHundredGramsWater.compare(planned("sparingCold")) < 0;
}

/** The feeds, with the ligands of a complex as solids where their own water would be more than the liquor is to have. */
export function asItReacts(feeds: readonly Feed[], feeding: Feeding): readonly Feed[] {
  const { setting, roles, portions, precipitates, cold } = feeding;
  const { materials, request } = setting;
  if (precipitates || cold || request.waterFactor !== undefined) return feeds;
  // after a lye its liquor is filtered, and the acid dissolved hot meanwhile
  if (isEnclosed(feeding, feeds) || isByLye(setting, roles)) return feeds;
  const isLigand = (i: number): boolean =>
    roles[i] === "ligand" && feeds[i]!.how === "dissolve" && materials[i]!.shelf.dissolve === undefined;
  const all = feeds.map((_, i) => i);
  const ligands = all.filter(isLigand);
  if (ligands.some((i) => warmAsReducer(setting, materials[i]!.form) !== undefined)) return feeds;
  const others = sum([exact("0 g"), ...all.filter((i) => !isLigand(i)).map((i) => putTo(feeds[i]!))]);
  const wanted = ligands.length === 0 ? undefined : wantedAtEnd(feeds, feeding, others);
  if (wanted === undefined) return feeds;
  const stirs = (ones: readonly number[]): Quantity =>
    sum([exact("0 g"), ...ones.map((i) => materials[i]!.massOf(portions[i]!) ?? exact("0 g"))])
      .times(planned("stirredSolids"))
      .minus(others)
      .to("g");
  const excess = keepsTheExcess(feeding, ligands);
  if (excess === undefined) return feeds;
  // the one that needs most water first: what dissolves in the water of those before it needs none of its own
  const bySparing = [...ligands].sort((i, j) => putTo(feeds[j]!).compare(putTo(feeds[i]!)));
  const stirred = all.filter((i) => feeds[i]!.how === "solid");
  let water = most(most(wanted, stirs(stirred)), excess.minus(others).to("g"));
  for (const i of bySparing) {
    if (!isSparing(feeding, i) || putTo(feeds[i]!).compare(most(water, stirs([...stirred, i]))) <= 0) break;
    stirred.push(i);
    water = most(water, stirs(stirred));
  }
  if (!ligands.some((i) => stirred.includes(i))) return feeds;
  const solids = feeds.map(
    (feed, i): Feed =>
      ligands.includes(i) ? { material: feed.material, how: "solid", why: WHY, dissolves: true } : feed,
  );
  if (!water.isPositive()) return solids;
  // it goes to what is in the vessel first: a solution, or the first of the solids
  const order = inOrder(setting, ranksOf(setting, roles), (i) => !ligands.includes(i) && isWithoutWater(feeds[i]!));
  const at = putTo(feeds[order[0]!]!).isPositive() ? order[0]! : order.find((i) => ligands.includes(i))!;
  const rule =
    "water to add = what the liquor needs at the end, or what keeps its solids stirred, less all other water";
  return solids.map((feed, i) =>
    i !== at
      ? feed
      : feed.how === "solid"
        ? { ...feed, water: waterToAdd(water, rule) }
        : withMore(feed, i, water, feeding),
  );
}
