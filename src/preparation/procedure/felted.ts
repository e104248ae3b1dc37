// Salts that crystallise as a felt of fine needles.
import type { Formula } from "../../formula";
import { constitutionOf } from "../../ion";
import { FELTED } from "../data/products";

/** What is done otherwise with such crystals; undefined for all others. */
export const feltOf = (formula: Formula): typeof FELTED | undefined =>
  constitutionOf(formula).groups.some((group) => FELTED.groups.some((one) => one === group)) ? FELTED : undefined;
