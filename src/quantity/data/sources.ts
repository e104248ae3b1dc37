// What units and uncertainties rest on.
import type { Sources } from "../../foundation/source";

export const quantitySources = {
  jcgm100: { title: "JCGM 100:2008, Evaluation of measurement data - Guide to the expression of uncertainty in measurement", year: 2008 },
  siBrochure9: { title: "The International System of Units (SI), BIPM", edition: "9th", year: 2019 },
} as const satisfies Sources;
