// The judges in their order: what cannot exist, what heat does, what solids do not do, what potentials forbid, then the
// equilibrium of the whole mixture; and what shakes a verdict, partners that react first and constants that are missing.
import { keyOf, network, redoxPartners, uncovered } from "../../aqueous/internal";
import type { Poured } from "../contents/equilibrium";
import { isRecrystallised } from "../procedure/kind";
import { isUnnamedDoubleSalt } from "../reaction/double-salt";
import { fateOf } from "../reaction/fate";
import { keptInSolution } from "../reaction/only-in-solution";
import { componentsOf } from "./beaker";
import type { Case } from "./case";
import type { Reason, Ruling } from "./feasibility";
import { hydrolysisOf, judgeCompound } from "./judge-compound";
import { judgeDissolved } from "./judge-dissolved";
import { judgeHeat } from "./judge-heat";
import { judgeMetal } from "./judge-metal";
import { judgePrecipitate } from "./judge-precipitate";
import { judgeFiredOxide } from "./judge-solid";
import { beakerOf, percent, potOf } from "./pot";
import { conditions, GOES, NOTHING, solidsIn } from "./standing";

const unknown = (text: string): Ruling => ({
  verdict: "unknown",
  solids: [],
  reasons: [{ code: "missing", text, source: "commonPractice" }],
});

/** As much of a dissolved gas as this by itself, and not as ions: it leaves, and the ions follow. */
const MOSTLY = 0.5;

/** A gas that should leave: what of it neither solution nor solid keeps. */
function judgeGas(c: Case): Ruling | undefined {
  const of = componentsOf(c.product.species.formula);
  const pot = potOf(c);
  // with the gas back in: what of it stays?
  const back: Poured | undefined =
    pot === undefined
      ? undefined
      : { ...pot, pours: [...pot.pours, ...pot.gas], gas: [], fizzed: { keeping: "leaves", left: 0 } };
  const beaker = of === undefined || back === undefined ? undefined : beakerOf(c, back);
  const key = of === undefined ? undefined : [...of.keys()].find((one) => one !== "H+");
  if (beaker === undefined || of === undefined || key === undefined) return undefined;
  const kept =
    beaker.dissolved(key) + beaker.solids.reduce((n, { phase, moles }) => n + moles * (phase.of.get(key) ?? 0), 0);
  const share = Math.max(0, Math.min(1, (beaker.total(key) - kept) / of.get(key)!));
  // Dissolved it stands by as the gas itself, or as ions that follow it as it leaves.
  const hydrons = of.get("H+") ?? 0;
  const dissolved = beaker.dissolved(key);
  const asGas = hydrons > 0 && dissolved > 0 ? 1 - beaker.barely(key, hydrons - 1) / dissolved : 0;
  if (share < GOES && asGas >= MOSTLY)
    return {
      verdict: "goes",
      share: 1,
      solids: solidsIn(beaker),
      reasons: [
        {
          code: "equilibrium",
          text: `${percent(asGas)} of the ${c.product.species.name} that is dissolved at pH ${beaker.pH.toFixed(1)} is the gas itself: warming and a stream of air drive it out, and the rest follows`,
          figures: [{ value: asGas, unit: "", label: "share that is the gas itself" }, ...conditions(beaker)],
          source: "constants",
        },
      ],
    };
  return {
    verdict: share >= GOES ? "goes" : share < NOTHING ? "does not go" : "goes in part",
    share,
    solids: solidsIn(beaker),
    reasons: [
      {
        code: "equilibrium",
        text: `${percent(share)} of the ${c.product.species.name} leaves at pH ${beaker.pH.toFixed(1)}`,
        figures: [{ value: share, unit: "", label: "share that leaves" }, ...conditions(beaker)],
        source: "constants",
      },
    ],
  };
}

/** A complex that the tables do not form, or that comes together and apart too slowly for an equilibrium to speak of. */
function inertComplex({ product: { made, species } }: Case): Ruling | undefined {
  const { complex } = made;
  if (complex === undefined || network().isFormed(keyOf(complex.formula))) return undefined;
  if (species.formula.count("C").equals(species.formula.count("N")) && species.formula.count("C").n > 5n)
    return undefined;
  return unknown(
    `missing: the stability constant of ${complex.formula}, or it exchanges its ligands too slowly for one`,
  );
}

/** What the equilibrium says of the product. */
function judgeEquilibrium(c: Case): Ruling | undefined {
  const { formula } = c.product.species;
  if (c.product.made.kind === "element") return undefined;
  const inert = inertComplex(c);
  if (inert !== undefined) return inert;
  // whether a gas of a redox reaction forms is for the potentials to say
  if (c.product.gas) return c.redox === undefined ? judgeGas(c) : undefined;
  // what is only dissolved and crystallised again is not to precipitate, however little the cold keeps of it
  const isToPrecipitate =
    fateOf(formula, c.setting.temperature).precipitated === true &&
    !isRecrystallised(c.setting.reactants, c.setting.products);
  return isToPrecipitate ? judgePrecipitate(c) : judgeDissolved(c);
}

/** Pairs that would exchange electrons first, though the equation has them leave each other alone. */
function partners(c: Case): Reason[] {
  if (c.redox !== undefined || !c.setting.wet) return [];
  const keys = c.put.flatMap(({ species, moles }) =>
    moles > 0 ? [...(componentsOf(species.formula)?.keys() ?? [])] : [],
  );
  return redoxPartners(network(), [...new Set(keys)]).map((text) => ({
    code: "redox-partners",
    text: text.replace(/: computed.*$/, ": the equation leaves that out"),
    source: "memory",
  }));
}

/** Ions of the mixture that should form a solid the tables have no constant for, the product's metal among them. */
function gaps(c: Case): Reason[] {
  if (!c.setting.wet) return [];
  const keys = [...new Set(c.put.flatMap(({ species }) => [...(componentsOf(species.formula)?.keys() ?? [])]))];
  const metals = c.product.made.cations.map(({ formula }) => formula);
  return uncovered(network(), keys)
    .filter((text) => metals.some((metal) => text.startsWith(metal)))
    .map((text) => ({ code: "missing", text: `missing: ${text}`, source: "commonPractice" }));
}

/** A soluble salt of two metals that nobody has named: whether there is such a thing is not known. */
function unnamed({ product: { species }, setting }: Case): Reason[] {
  const { precipitated, perHundredGramsWater } = fateOf(species.formula, setting.temperature);
  if (precipitated === true || perHundredGramsWater !== undefined || !isUnnamedDoubleSalt(species.formula)) return [];
  const text = `missing: whether there is a ${species.name}: no table of double salts here has it, and its liquor may give the salts it is made of`;
  return [{ code: "missing", text, source: "commonPractice" }];
}

/** A product that no bench gets as a solid. */
function keptDissolved({ product: { species } }: Case): Reason[] {
  const only = keptInSolution(species.formula);
  return only === undefined
    ? []
    : [{ code: "only-in-solution", text: `${species.name} is kept in its solution: ${only.why}`, source: only.source }];
}

/** What the judges say of a case. */
export function rule(c: Case): Ruling {
  const stopped = judgeCompound(c);
  if (stopped !== undefined) return stopped;
  if (!c.setting.wet) return judgeHeat(c);
  const fired = judgeFiredOxide(c);
  if (fired !== undefined && fired.verdict !== "goes") return fired;
  const electrons = judgeMetal(c);
  if (electrons !== undefined && electrons.verdict !== "goes") return electrons;
  const before = [...(electrons?.reasons ?? []), ...(fired?.reasons ?? [])];
  const judged = judgeEquilibrium(c);
  const apart = hydrolysisOf(c);
  const found =
    judged === undefined || apart === undefined
      ? judged
      : {
          ...judged,
          verdict: judged.verdict === "goes" ? ("goes in part" as const) : judged.verdict,
          reasons: [...judged.reasons, apart],
        };
  if (found === undefined) {
    if (electrons !== undefined) return electrons;
    return unknown(
      c.redox === undefined
        ? `missing: what ${c.put.map(({ species }) => species.name).join(", ")} become in water`
        : "missing: the potentials of this reaction",
    );
  }
  const [met, missing, nowhere] = [partners(c), gaps(c), unnamed(c)];
  const reasons = [...before, ...found.reasons, ...keptDissolved(c), ...met, ...missing, ...nowhere];
  const shaken =
    (met.length > 0 && found.verdict === "goes") ||
    (missing.length > 0 && found.verdict !== "goes") ||
    (nowhere.length > 0 && found.verdict !== "does not go");
  return { ...found, verdict: shaken ? "unknown" : found.verdict, share: shaken ? undefined : found.share, reasons };
}
