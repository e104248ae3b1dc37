// How strong a product is in the liquor of its batch: what its hazards depend on.
import type { Quantity } from "../../quantity";
import { massOf } from "../contents/entry";
import { matterOf } from "../contents/matter";
import { isAcid } from "../reaction/acids";
import type { Species } from "../reaction/species";
import type { Setting } from "../request/setting";
import { type Batch, reactedPot } from "./batch";

/** Mass fraction of an acid that is set free, or of a product that is kept in its liquor; undefined for all else. */
export const strengthIn =
  ({ product }: Setting, batch: Batch) =>
  (species: Species): Quantity | undefined => {
    if (species === product) return batch.keptLiquor?.strength;
    const pot = isAcid(species.formula) ? reactedPot(batch) : undefined;
    if (pot === undefined || pot.books.waterMissing.length > 0) return undefined;
    const { key } = matterOf(species.formula).core;
    const own = pot.books.dissolved.find(({ matter }) => matter.key === key);
    return own === undefined
      ? undefined
      : massOf(own)
          .dividedBy(pot.with({ solids: [] }).mass)
          .to("%");
  };
