// What the answer cannot know: pairs of ions that should form a solid but have no constant, and pairs of which one would
// oxidise the other.
import { OXIDANTS, REDUCTANTS, SLOW } from "../data/potentials";
import type { Network } from "./network";
import { type Key, keyOf } from "./notation";

/** Cations that precipitate with almost nothing. */
const EARTHS = ["Mg^2+", "Ca^2+", "Sr^2+", "Ba^2+"];
const HEAVY =
  /* @__PURE__ */ "Mn^2+ Fe^2+ Fe^3+ Co^2+ Ni^2+ Cu^2+ Zn^2+ Cd^2+ Hg^2+ Hg2^2+ Ag+ Pb^2+ Sn^2+ Bi^3+ Al^3+ Cr^3+ La^3+ Ce^3+ Nd^3+ Pr^3+ Y^3+ Tl+ Be^2+ Sc^3+ Eu^3+ Ga^3+".split(
    " ",
  );
const LANTHANIDES = /* @__PURE__ */ "La^3+ Ce^3+ Nd^3+ Pr^3+ Y^3+ Sc^3+ Eu^3+".split(" ");

/** Cations too acid for a carbonate: their hydroxide precipitates in its place. */
const NO_CARBONATE = ["Al^3+", "Cr^3+", "Fe^3+", "Sn^2+", "Be^2+", "Sc^3+", "Ga^3+"];

/** Anions and the cations with which the rules of the trade call them insoluble or slightly soluble. */
export const INSOLUBLE: readonly (readonly [anions: readonly string[], cations: readonly string[]])[] = [
  [["CO3^2-"], [...EARTHS, ...HEAVY.filter((ion) => !NO_CARBONATE.includes(ion))]],
  [
    ["PO4^3-", "AsO4^3-"],
    [...EARTHS, ...HEAVY],
  ],
  [["SO3^2-"], [...EARTHS, "Pb^2+", "Ag+", "Zn^2+", "Mn^2+", "Cd^2+"]],
  [
    ["C2O4^2-"],
    [
      ...EARTHS,
      "Mn^2+",
      "Fe^2+",
      "Co^2+",
      "Ni^2+",
      "Cu^2+",
      "Zn^2+",
      "Cd^2+",
      "Pb^2+",
      "Ag+",
      "Hg2^2+",
      "Sn^2+",
      "Bi^3+",
      ...LANTHANIDES,
    ],
  ],
  [["S^2-"], HEAVY.filter((ion) => !["Al^3+", "Cr^3+", ...LANTHANIDES].includes(ion))],
  [["CrO4^2-"], ["Sr^2+", "Ba^2+", "Pb^2+", "Ag+", "Hg2^2+", "Hg^2+", "Bi^3+", "Cu^2+", "Tl+"]],
  [["H2SiO4^2-"], [...EARTHS, ...HEAVY]],
  [["B(OH)4-"], ["Ca^2+", "Mg^2+", "Ba^2+", "Zn^2+", "Pb^2+", "Ag+", "Mn^2+", "Co^2+", "Ni^2+", "Cu^2+"]],
  [["F-"], [...EARTHS, "Pb^2+", ...LANTHANIDES]],
  [["C6H5O7^3-"], ["Ca^2+", "Ba^2+", "Sr^2+", "Pb^2+", "Ag+", "Zn^2+"]],
  [["C4H4O6^2-"], ["Ca^2+", "Ba^2+", "Sr^2+", "Pb^2+", "Ag+"]],
  [["Fe(CN)6^4-"], HEAVY.filter((ion) => !LANTHANIDES.includes(ion))],
  [["SO4^2-"], ["Ca^2+", "Sr^2+", "Ba^2+", "Pb^2+", "Hg2^2+", "Ra^2+"]],
  [
    ["Cl-", "Br-"],
    ["Ag+", "Pb^2+", "Hg2^2+", "Cu+", "Tl+"],
  ],
  [["I-"], ["Ag+", "Pb^2+", "Hg2^2+", "Hg^2+", "Cu+", "Tl+", "Bi^3+"]],
  [["IO3-"], [...EARTHS.slice(1), ...HEAVY.filter((ion) => !["Al^3+", "Cr^3+", "Fe^2+"].includes(ion))]],
  [
    ["MoO4^2-", "WO4^2-"],
    [...EARTHS.slice(1), ...HEAVY],
  ],
];

/** Metal ions whose hydroxides, or oxides, must be in the table before anything can be said above their pH. */
const HYDROLYSING = [...HEAVY, "Mg^2+", "Ti^4+", "Zr^4+", "Th^4+", "Ce^4+", "V^3+", "Mn^3+", "Sn^4+", "Sb^3+"].filter(
  (ion) => ion !== "Tl+",
);

const missing = new WeakMap<Network, Map<string, string[]>>();

/** Pairs of what is there that should form a solid for which there is no constant. */
export function uncovered(network: Network, components: readonly Key[]): readonly string[] {
  const known = missing.get(network) ?? new Map<string, string[]>();
  missing.set(network, known);
  const id = components.join(" ");
  const before = known.get(id);
  if (before !== undefined) return before;
  const there = new Set(components);
  const formula = (ion: string): string => network.formulaOf(keyOf(ion));
  const found: string[] = [];
  // what only rocks and kilns know does not occur in for the solid of the beaker
  const hasSolid = (cation: Key, anion: Key): boolean =>
    network
      .phasesWith(cation, anion)
      .some(
        ({ kind, of, row }) =>
          kind === "solid" &&
          row?.bench !== "never here" &&
          (of.get(cation) ?? 0) > 0 &&
          (of.get(anion) ?? 0) > 0 &&
          of.size <= 3,
      );
  for (const [anions, cations] of INSOLUBLE) {
    for (const anion of anions) {
      if (!there.has(keyOf(anion))) continue;
      for (const cation of cations) {
        if (!there.has(keyOf(cation)) || hasSolid(keyOf(cation), keyOf(anion))) continue;
        found.push(
          `${formula(cation)} with ${formula(anion)}: a solid is expected, its solubility product is not known`,
        );
      }
    }
  }
  for (const ion of HYDROLYSING) {
    const key = keyOf(ion);
    if (!there.has(key)) continue;
    const hydroxide = network
      .phasesWith(key)
      .some(({ kind, of }) => kind === "solid" && of.size === 2 && (of.get(key) ?? 0) > 0 && (of.get("H+") ?? 0) < 0);
    if (!hydroxide) found.push(`${ion}: the solubility product of its hydroxide or oxide is not known`);
  }
  known.set(id, found);
  return found;
}

/** Pairs of which one oxidises the other, by standard potentials. */
export function redoxPartners(network: Network, components: readonly Key[]): readonly string[] {
  const there = new Set(components);
  const found: string[] = [];
  for (const [oxidant, up] of OXIDANTS) {
    if (!there.has(keyOf(oxidant))) continue;
    for (const [reductant, down] of REDUCTANTS) {
      if (oxidant === reductant || !there.has(keyOf(reductant)) || up - down < 0.1) continue;
      if (SLOW.has(`${oxidant} ${reductant}`)) continue;
      if (oxidant === "Cu^2+" && !["I-", "CN-"].includes(reductant)) continue;
      found.push(
        `${network.formulaOf(keyOf(oxidant))} oxidises ${network.formulaOf(keyOf(reductant))}: computed as if they did not react`,
      );
    }
  }
  return found;
}
