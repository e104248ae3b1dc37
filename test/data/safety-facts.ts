// What the library must say, and must not say, of the dangers of the bench: one fact a line, written down apart from the
// tables, so that a row that is deleted or shifted there shows. Classifications and limits are those of the harmonised list
// of the European Union (Regulation (EC) No 1272/2008, Annex VI, Table 3; limits for mixtures: Annex I), recalled, not
// copied; pairs are those of the printed lists of incompatible chemicals; the rest is common practice of the bench.
import { parseFormula } from "../../src/formula";
import { tryReadNotation } from "../../src/ion/internal";
import { type PlanRequest, planPreparation } from "../../src/preparation";
import { GASES } from "../../src/preparation/data/gases";
import { dryingOf } from "../../src/preparation/procedure/drying";
import { cautions, type MaterialOfStrength } from "../../src/substance";
import { dangerOf } from "../../src/substance/internal";
import { BY_GROUP, LISTED, LISTED_2026, LISTED_LATER, OF_SHEETS, type SafetyEntry } from "./safety-entries";

/** Where a fact is from. */
type Ground =
  | "CLP, Annex VI, Table 3 (recalled)"
  | "CLP, Annex VI, Table 3, with the 23rd adaptation"
  | "CLP, Annex VI, Table 3, consolidated text of 1 May 2026"
  | "CLP, Annex I, general limits for mixtures (recalled)"
  | "ordinary safety data sheets (from memory)"
  | "printed lists of incompatible chemicals (recalled)"
  | "common practice of the bench"
  | "occupational exposure limits, 8 h (from memory)";

const CLP: Ground = "CLP, Annex VI, Table 3 (recalled)";
const MIXTURES: Ground = "CLP, Annex I, general limits for mixtures (recalled)";
/** Read in a public copy of the list: index number, oral toxicity, skin, eye, cancer, genes, reproduction. */
const LATER: Ground = "CLP, Annex VI, Table 3, with the 23rd adaptation";
/** Read in a public copy of the whole list: index number, classes and statements. */
const NEWEST: Ground = "CLP, Annex VI, Table 3, consolidated text of 1 May 2026";
const SHEETS: Ground = "ordinary safety data sheets (from memory)";
const LISTS: Ground = "printed lists of incompatible chemicals (recalled)";
const PRACTICE: Ground = "common practice of the bench";
const EXPOSURE: Ground = "occupational exposure limits, 8 h (from memory)";

export interface SafetyFact {
  readonly fact: string;
  readonly ground: Ground;
  /** What contradicts it; undefined where it holds. */
  readonly broken: () => string | undefined;
}

const said = (material: string | MaterialOfStrength): Set<string> =>
  new Set(cautions([material]).substances.flatMap((one) => one.statements.map(({ code }) => code)));

/** Statements that must be there, and signal word. */
const classified = (
  formula: string,
  signal: "Danger" | "Warning" | "none",
  codes: string,
  ground: Ground = CLP,
): SafetyFact => ({
  fact: `${formula}: ${signal}, ${codes}`,
  ground,
  broken: () => {
    const entries = cautions([formula]).substances;
    const given = said(formula);
    const missing = codes.split(" ").filter((code) => !given.has(code));
    if (missing.length > 0) return `does not say ${missing.join(", ")}`;
    return entries.some((one) => (one.signalWord ?? "none") === signal)
      ? undefined
      : `signal word ${entries[0]?.signalWord}`;
  },
});

/** Codes in order, the EUH codes last. */
const everyCode = (statements: readonly { readonly code: string }[]): string =>
  [...new Set(statements.map(({ code }) => code))]
    .sort((a, b) => Number(a.startsWith("EUH")) - Number(b.startsWith("EUH")) || (a < b ? -1 : 1))
    .join(" ");

/** Exactly these statements, of the entry with this index number, about this form; or known to have none. */
const entry =
  (ground: Ground) =>
  ([material, codes, index = "", form = "", as = ""]: SafetyEntry): SafetyFact => ({
    fact: `${material}: listed ${[index, form].filter((word) => word !== "").join(", ")} as ${codes === "" ? "harmless" : codes}`,
    ground,
    broken: () => {
      const found = cautions(materialsOf(material)).substances;
      const fits = found.some(
        (one) =>
          everyCode(one.statements) === codes &&
          one.status === (codes === "" ? "not classified" : "classified") &&
          (one.form ?? "") === form &&
          (one.classifiedAs ?? "") === as &&
          (one.citation ?? "").endsWith(index === "" ? "" : `index ${index}`),
      );
      return fits ? undefined : `says ${found.map((one) => `${one.form}: ${everyCode(one.statements)}`).join("; ")}`;
    },
  });

/** A salt that is classified with its group. */
const ofGroup = ([salt, group, codes]: (typeof BY_GROUP)[number]): SafetyFact => ({
  fact: `${salt}: classified as ${group}, ${codes}`,
  ground: CLP,
  broken: () => {
    const [one] = cautions([salt]).substances;
    return one?.classifiedAs === group && everyCode(one.statements) === codes ? undefined : `as ${one?.classifiedAs}`;
  },
});

/** Statements that must not be there: a harmless form, or a class of something else. */
const free = (formula: string, codes: string, ground: Ground = CLP): SafetyFact => ({
  fact: `${formula}: not ${codes}`,
  ground,
  broken: () => {
    const given = said(formula);
    const wrong = codes.split(" ").filter((code) => given.has(code));
    return wrong.length > 0 ? `says ${wrong.join(", ")}` : undefined;
  },
});

/** A reminder or a way of disposal, by a word of it. */
const reminds = (formula: string, word: RegExp, ground: Ground = PRACTICE): SafetyFact => ({
  fact: `${formula}: reminds of ${word.source}`,
  ground,
  broken: () => {
    const text = cautions([formula]).substances.map((one) => `${one.cautions.join("; ")} ${one.disposal}`);
    return word.test(text.join(" ")) ? undefined : `says ${text.join(" ")}`;
  },
});

/** A statement applies from a mass fraction on, and up to another; a hundredth of a percent outside it does not. */
const between = (formula: string, code: string, from: number, below?: number, ground: Ground = CLP): SafetyFact => ({
  fact: `${formula} in water: ${code} from ${from} %${below === undefined ? "" : ` to under ${below} %`}`,
  ground,
  broken: () => {
    const at = (percent: number) => said({ material: formula, strength: `${percent.toFixed(2)} %` }).has(code);
    if (!at(from)) return `silent at ${from} %`;
    if (from > 0.01 && at(from - 0.01)) return `says so under ${from} %`;
    if (below === undefined) return undefined;
    if (!at(below - 0.01)) return `silent just under ${below} %`;
    return at(below) ? `says so at ${below} %` : undefined;
  },
});

const materialsOf = (text: string): (string | MaterialOfStrength)[] =>
  text.split(" + ").map((one) => {
    const [material, strength] = one.split(" @ ");
    return strength === undefined ? material! : { material: material!, strength: `${strength} %` };
  });

/**
 * Materials that must not meet (`forbid`), or only with care (`warn`); what forms, as a formula, or the code of the rule.
 * `H2SO4 @ 96` is of 96 % by mass.
 */
const apart = (text: string, severity: "forbid" | "warn", what: string, ground: Ground = LISTS): SafetyFact => ({
  fact: `${text}: ${severity}, ${what}`,
  ground,
  broken: () => {
    const found = cautions(materialsOf(text)).incompatibilities;
    const fits = found.some((one) => one.severity === severity && (one.code === what || one.products.includes(what)));
    return fits ? undefined : `says ${found.map((one) => `${one.severity} ${one.code} ${one.products}`).join("; ")}`;
  },
});

/** Materials that may meet. */
const together = (text: string, ground: Ground = PRACTICE): SafetyFact => ({
  fact: `${text}: nothing forbidden`,
  ground,
  broken: () => {
    const found = cautions(materialsOf(text)).incompatibilities.filter((one) => one.blocking);
    return found.length === 0 ? undefined : `forbids ${found.map((one) => one.code).join(", ")}`;
  },
});

/** A circumstance in which a material is dangerous. */
const notIn = (formula: string, circumstance: "closed vessel" | "kitchen"): SafetyFact => ({
  fact: `${formula}: not in a ${circumstance}`,
  ground: PRACTICE,
  broken: () =>
    cautions(formula.split(" + "), { circumstances: [circumstance] }).incompatibilities.some(
      (one) => one.severity === "forbid",
    )
      ? undefined
      : "says nothing",
});

/** A product that is never planned, or only where it is acknowledged. */
const never = (
  formula: string,
  code: "explosive" | "deadly-gas" | "poison-gas",
  ground: Ground = SHEETS,
): SafetyFact => ({
  fact: `${formula}: ${code}`,
  ground,
  broken: () => {
    const found = dangerOf(tryReadNotation(formula)!)?.code;
    return found === code ? undefined : `is ${found ?? "made like any other"}`;
  },
});

/** Ordinary products whose composition or name is near to one that is never made. */
const ordinary = (formula: string): SafetyFact => ({
  fact: `${formula}: made like any other`,
  ground: PRACTICE,
  broken: () => dangerOf(tryReadNotation(formula)!)?.code,
});

/** Highest temperature of drying, from one that is certainly safe to one above which the salt changes. */
const dries = (formula: string, least: number, most: number): SafetyFact => ({
  fact: `${formula}: dried at no more than ${least} to ${most} °C`,
  ground: PRACTICE,
  broken: () => {
    const celsius = dryingOf(parseFormula(formula)).upTo?.in("°C").toNumber();
    return celsius !== undefined && celsius >= least && celsius <= most ? undefined : `${celsius} °C`;
  },
});

/** The limit itself, and what it is by. */
const driesBy = (formula: string, celsius: number, why: string): SafetyFact => ({
  fact: `${formula}: dried at ${celsius} °C at most: ${why}`,
  ground: PRACTICE,
  broken: () => {
    const drying = dryingOf(parseFormula(formula));
    return drying.upTo?.in("°C").toNumber() === celsius && drying.why === why ? undefined : `${drying.upTo}`;
  },
});

const deliquesces = (formula: string, does: boolean): SafetyFact => ({
  fact: `${formula}: ${does ? "deliquescent" : "keeps dry in air"}`,
  ground: PRACTICE,
  broken: () => (dryingOf(parseFormula(formula)).deliquescent === does ? undefined : "the opposite"),
});

/** A gas that needs a hood at any scale, or does not; share of the air it should stay under, in percent. */
const gas = (formula: string, hood: boolean, limit?: number): SafetyFact => ({
  fact: `${formula}: ${hood ? "under a hood" : "no hood asked for"}${limit === undefined ? "" : `, under ${limit} % of the air`}`,
  ground: limit === undefined ? PRACTICE : EXPOSURE,
  broken: () => {
    const row = GASES.find((one) => one.formula === formula);
    if (row === undefined) return "is not listed";
    if ((row.hood === true) !== hood) return `hood: ${row.hood === true}`;
    return limit === undefined || row.limit?.share === `${limit} %` ? undefined : `limit ${row.limit?.share}`;
  },
});

const request = (
  equation: string,
  product: string,
  materials: string,
  over: Partial<PlanRequest> = {},
): PlanRequest => ({
  equation,
  product,
  materials: materials.split(" + ").map((one) => {
    const [form, strength] = one.split(" @ ");
    const [bare, excess] = form!.split(" x ");
    return {
      name: bare!,
      form: bare!,
      ...(strength === undefined ? {} : { strength: `${strength} %` }),
      ...(excess === undefined ? {} : { excess: `${excess} %` }),
    } as PlanRequest["materials"][number];
  }),
  scale: { product: "10 g" },
  ...over,
});

/** What a step of a plan must say, or must not. */
const step = (name: string, plan: PlanRequest, says: RegExp, not?: RegExp): SafetyFact => ({
  fact: `${plan.product} from ${plan.materials.map((m) => m.form).join(" and ")}, ${name}: ${says.source}${not ? `, not ${not.source}` : ""}`,
  ground: PRACTICE,
  broken: () => {
    const text = planPreparation(plan)
      .stepCautions.filter((one) => one.step === name)
      .flatMap((one) => one.cautions.map((caution) => caution.text))
      .join("; ");
    if (!says.test(text)) return `says ${text}`;
    return not?.test(text) ? `says ${not.exec(text)?.[0]}` : undefined;
  },
});

/** A metal in the waste that has to be precipitated, and the pH at which it does, or the salt that does it. */
const wasteMetal = (plan: PlanRequest, symbol: string, how: RegExp, reagent: string): SafetyFact => ({
  fact: `${symbol} in the waste of ${plan.product}: ${how.source}, with ${reagent}`,
  ground: PRACTICE,
  broken: () => {
    const { metals, treatment } = planPreparation(plan).waste;
    const metal = metals.find((one) => one.symbol === symbol);
    if (metal?.precipitate !== true) return "left in the liquor";
    if (!how.test(metal.pH ?? "")) return `pH ${metal.pH}`;
    return treatment.some((one) => one.reagent === reagent) ? undefined : `with ${treatment.map((one) => one.reagent)}`;
  },
});

const carbonate = (salt: string, metal: string, other: string, product = `${metal}CO3`): PlanRequest =>
  request(`${salt.split("·")[0]} + Na2CO3 -> ${product} + ${other}`, product, `${salt} x 20 + Na2CO3`, {
    acknowledge: ["lead-acid", "mercury-cadmium", "cadmium-acid"],
  });

const CHALK = request("CaCl2 + Na2CO3 -> CaCO3 + NaCl", "CaCO3", "CaCl2·2H2O + Na2CO3 x 5");
const VITRIOL = request("Fe + H2SO4 + 7 H2O -> FeSO4·7H2O + H2", "FeSO4·7H2O", "Fe x 5 + H2SO4 @ 37");
const ZINC = request("Zn + H2SO4 + 7 H2O -> ZnSO4·7H2O + H2", "ZnSO4·7H2O", "Zn x 5 + H2SO4 @ 96");
const THIN = request("Zn + H2SO4 + 7 H2O -> ZnSO4·7H2O + H2", "ZnSO4·7H2O", "Zn x 5 + H2SO4 @ 5");
const SOUR = request("ZnO + H2SO4 + 6 H2O -> ZnSO4·7H2O", "ZnSO4·7H2O", "ZnO + H2SO4 x 20 @ 20");
const BLUE = request("NaOH + CuSO4 -> Cu(OH)2 + Na2SO4", "Cu(OH)2", "NaOH x 2 + CuSO4·5H2O");
const AMMINE = request("CuSO4·5H2O + 4 NH3 -> [Cu(NH3)4]SO4·H2O + 4 H2O", "[Cu(NH3)4]SO4·H2O", "CuSO4·5H2O + NH3 @ 25");
const LIME = request("CaCO3 -> CaO + CO2", "CaO", "CaCO3");
const BURNT = request("Cu(NO3)2·3H2O -> CuO + NO2 + O2 + H2O", "CuO", "Cu(NO3)2·3H2O", { acknowledge: ["poison-gas"] });
const MALACHITE = request(
  "2 CuSO4 + 2 Na2CO3 + H2O -> Cu2(OH)2CO3 + 2 Na2SO4 + CO2",
  "Cu2(OH)2CO3",
  "CuSO4·5H2O + Na2CO3 x 5",
);

const WARM = request(
  "MnO2 + H2C2O4·2H2O + H2SO4 -> MnSO4·H2O + 2 CO2 + 3 H2O",
  "MnSO4·H2O",
  "MnO2 + H2C2O4·2H2O + H2SO4 @ 50",
);
const BROWN = request("Cu + HNO3 + H2O -> Cu(NO3)2·3H2O + NO2", "Cu(NO3)2·3H2O", "Cu + HNO3 @ 65");
const BUBBLES = request(
  "2 KMnO4 + 5 H2O2 + 3 H2SO4 -> 2 MnSO4·H2O + K2SO4 + 5 O2 + 6 H2O",
  "MnSO4·H2O",
  "KMnO4 + H2O2 @ 3 + H2SO4 @ 5",
);
const OXALATE = request("CaC2O4·H2O -> CaCO3 + CO + H2O", "CaCO3", "CaC2O4·H2O", { acknowledge: ["poison-gas"] });
const VANADATE = request("2 NH4VO3 -> V2O5 + 2 NH3 + H2O", "V2O5", "NH4VO3");
const SALTPETRE = request("NH3 + HNO3 -> NH4NO3", "NH4NO3", "NH3 @ 10 + HNO3 @ 20");

// biome-ignore format: a table, one fact a line
export const SAFETY_FACTS: readonly SafetyFact[] = [
  ...LISTED.map(entry(CLP)), ...LISTED_LATER.map(entry(LATER)), ...LISTED_2026.map(entry(NEWEST)), ...OF_SHEETS.map(entry(SHEETS)), ...BY_GROUP.map(ofGroup),
  // -- acids
  classified("HCl", "Danger", "H314 H335"), classified("H2SO4", "Danger", "H314"), classified("HNO3", "Danger", "H272 H314 H331 EUH071"), classified("H3PO4", "Danger", "H314"),
  classified("CH3COOH", "Danger", "H226 H314"), classified("HCOOH", "Danger", "H226 H290 H302 H314 H331", NEWEST), classified("H2C2O4·2H2O", "Danger", "H302 H312 H318"), classified("Na2C2O4", "Warning", "H302 H312"),
  classified("C6H8O7", "Warning", "H319 H335"), classified("C4H6O6", "Danger", "H318", SHEETS), classified("H3NSO3", "Warning", "H315 H319 H412"), classified("NaHSO4", "Danger", "H318"),
  classified("KHSO4", "Danger", "H314 H335"), classified("HBr", "Danger", "H314 H335"), classified("HI", "Danger", "H314"), classified("HF", "Danger", "H300 H310 H314 H330"), classified("HClO4", "Danger", "H271 H314"), classified("P4O10", "Danger", "H314"),
  // -- bases
  classified("NaOH", "Danger", "H314"), classified("KOH", "Danger", "H302 H314"), classified("LiOH", "Danger", "H302 H314", SHEETS), classified("NH3", "Danger", "H314 H400"), classified("Ca(OH)2", "Danger", "H315 H318", SHEETS),
  classified("CaO", "Danger", "H315 H318 H335", SHEETS), classified("Na2CO3", "Warning", "H319"), classified("K2CO3", "Danger", "H318 H335", SHEETS), classified("Na2SiO3", "Danger", "H314 H335"), classified("Na3PO4", "Danger", "H314", SHEETS),
  classified("Ba(OH)2·8H2O", "Danger", "H302 H314", SHEETS), classified("Sr(OH)2·8H2O", "Danger", "H314", SHEETS),
  // -- oxidisers
  classified("H2O2", "Danger", "H271 H302 H314 H332"), classified("NaClO", "Danger", "H314 H410 EUH031"), classified("Ca(ClO)2", "Danger", "H272 H302 H314 H400 EUH031"), classified("C3N3O3Cl3", "Danger", "H272 H302 H319 H335 H410 EUH031"),
  classified("KMnO4", "Danger", "H272 H302 H410"), classified("NaNO3", "Warning", "H272 H319", SHEETS), classified("KNO3", "Warning", "H272", SHEETS), classified("NH4NO3", "Warning", "H272 H319", SHEETS), classified("Ca(NO3)2·4H2O", "Danger", "H272 H302 H318", SHEETS),
  classified("Sr(NO3)2", "Danger", "H272 H318", SHEETS), classified("Ba(NO3)2", "Danger", "H272 H301 H332", SHEETS), classified("Mg(NO3)2·6H2O", "Warning", "H272 H319", SHEETS), classified("NaNO2", "Danger", "H272 H301 H400"), classified("KNO2", "Danger", "H272 H301 H400"),
  classified("KClO3", "Danger", "H271 H301", NEWEST), classified("NaClO3", "Danger", "H271 H301", NEWEST), classified("KClO4", "Danger", "H271 H302"), classified("NaClO2", "Danger", "H271 H301 H310 H314", SHEETS), classified("NH4ClO4", "Danger", "H201 H271"),
  classified("K2S2O8", "Danger", "H272 H302 H315 H317 H319 H334 H335"), classified("Na2S2O8", "Danger", "H272 H302 H317 H334", SHEETS), classified("(NH4)2S2O8", "Danger", "H272 H302 H315 H317 H319 H334 H335"), classified("KIO3", "Warning", "H272 H302", SHEETS),
  classified("KBrO3", "Danger", "H271 H301 H350"), classified("Na2O2", "Danger", "H271 H314"), classified("BaO2", "Danger", "H272 H302 H332"), classified("2Na2CO3·3H2O2", "Danger", "H272 H302 H318", SHEETS), classified("NaBO3·4H2O", "Danger", "H318 H335 H360Df"),
  // -- chromium, copper, zinc, iron, manganese
  classified("CrO3", "Danger", "H271 H301 H311 H314 H317 H330 H334 H340 H350 H372 H410"), classified("K2Cr2O7", "Danger", "H272 H301 H312 H314 H317 H330 H334 H340 H350 H360FD H372 H410"), classified("Na2Cr2O7·2H2O", "Danger", "H272 H301 H330 H340 H350 H360FD H410"),
  classified("K2CrO4", "Danger", "H315 H317 H319 H335 H340 H350i H410"), classified("Na2CrO4", "Danger", "H301 H330 H340 H350 H360FD H410"), classified("(NH4)2Cr2O7", "Danger", "H272 H330 H340 H350 H360FD"), classified("PbCrO4", "Danger", "H350 H360Df H373 H410"),
  classified("CuSO4·5H2O", "Danger", "H302 H318 H410"), classified("CuSO4", "Warning", "H302 H315 H319 H410"), classified("CuCl2·2H2O", "Danger", "H318 H410", SHEETS), classified("CuCl", "Warning", "H302 H410"), classified("CuO", "Warning", "H410"), classified("Cu2O", "Danger", "H302 H318 H332 H410"),
  classified("Cu(OH)2", "Danger", "H302 H318 H330 H410"), classified("Cu2(OH)2CO3", "Warning", "H302 H319 H332 H410"), classified("Cu(NO3)2·3H2O", "Danger", "H272 H302 H314 H410", SHEETS), classified("Cu(CH3COO)2·H2O", "Danger", "H302 H314 H410", SHEETS), classified("CuSCN", "Warning", "H410 EUH032"),
  classified("Cu2(OH)3Cl", "Danger", "H301 H332 H410"), classified("Cu4(OH)6SO4", "Warning", "H302 H410"), classified("[Cu(NH3)4]SO4·H2O", "Warning", "H302 H315 H319 H410", SHEETS), classified("ZnSO4·7H2O", "Danger", "H302 H318 H410"),
  classified("ZnCl2", "Danger", "H302 H314 H410"), classified("ZnO", "Warning", "H410"), classified("Zn3(PO4)2", "Warning", "H410"), classified("Zn(NO3)2·6H2O", "Danger", "H272 H302 H318", SHEETS), classified("Zn(CH3COO)2·2H2O", "Danger", "H302 H318 H411", SHEETS),
  classified("FeSO4·7H2O", "Warning", "H302 H315 H319"), classified("FeSO4", "Warning", "H302 H315 H319"), classified("FeCl3", "Danger", "H290 H302 H318", SHEETS), classified("FeCl2", "Danger", "H302 H318", SHEETS), classified("Fe2(SO4)3", "Danger", "H302 H315 H318", SHEETS), classified("Fe(NO3)3·9H2O", "Warning", "H272 H315 H319", SHEETS),
  classified("MnO2", "Warning", "H302 H332"), classified("MnSO4·H2O", "Warning", "H373 H411"), classified("MnCl2·4H2O", "Danger", "H301 H318 H373 H411", SHEETS),
  // -- cobalt, nickel, silver, barium, lead, cadmium, mercury, arsenic
  classified("CoSO4·7H2O", "Danger", "H302 H317 H334 H341 H350i H360F H410"), classified("CoCl2·6H2O", "Danger", "H302 H317 H334 H341 H350i H360F H410"), classified("Co(NO3)2·6H2O", "Danger", "H317 H334 H341 H350i H360F H410"), classified("CoCO3", "Danger", "H317 H334 H341 H350i H360F H410"),
  classified("Co(CH3COO)2·4H2O", "Danger", "H317 H334 H341 H350i H360F H410"), classified("CoO", "Warning", "H302 H317 H410"), classified("NiSO4·6H2O", "Danger", "H302 H315 H317 H332 H334 H341 H350i H360D H372 H410"), classified("NiCl2·6H2O", "Danger", "H301 H315 H317 H331 H334 H341 H350i H360D H372 H410"),
  classified("Ni(NO3)2·6H2O", "Danger", "H272 H302 H317 H318 H334 H350i H360D H410"), classified("NiCO3", "Danger", "H302 H317 H332 H334 H350i H360D H372 H410"), classified("NiO", "Danger", "H317 H350i H372 H413"), classified("Ni(OH)2", "Danger", "H302 H317 H332 H334 H350i H360D H372 H410"), classified("Ni", "Danger", "H317 H351 H372"),
  classified("AgNO3", "Danger", "H272 H314 H410"), classified("Ag2O", "Danger", "H271 H318 H410", SHEETS), classified("BaCl2·2H2O", "Danger", "H301 H332"), classified("BaCO3", "Warning", "H302"), classified("BaS", "Warning", "H302 H332 H400 EUH031"),
  classified("Pb(NO3)2", "Danger", "H302 H332 H360Df H373 H410"), classified("Pb(CH3COO)2·3H2O", "Danger", "H360Df H373 H410"), classified("PbI2", "Danger", "H360Df H410", SHEETS), classified("Pb3O4", "Danger", "H302 H332 H360Df H373 H410"), classified("PbO", "Danger", "H302 H332 H360Df H373 H410"), classified("PbO2", "Danger", "H302 H332 H360Df H410"), classified("PbCO3", "Danger", "H302 H332 H360Df H373 H410"), classified("Pb", "Danger", "H360FD H362"),
  classified("CdS", "Danger", "H302 H341 H350 H361fd H372"), classified("CdSO4", "Danger", "H301 H330 H340 H350 H360FD H372 H410"), classified("Cd", "Danger", "H330 H341 H350 H361fd H372 H410"), classified("CdCO3", "Danger", "H302 H340 H350", NEWEST), classified("Cd(NO3)2", "Danger", "H302 H340 H350", LATER), classified("CdCl2", "Danger", "H301 H340 H350", NEWEST), classified("NH4Br", "Danger", "H319 H336 H360FD H362 H372", NEWEST), classified("Ag", "Warning", "H361f H373", NEWEST), classified("Na2SeO3", "Danger", "H300", NEWEST), classified("CaS", "Warning", "H315 H319", NEWEST), classified("K2PtCl4", "Danger", "H301 H315 H318", NEWEST), classified("Na2PtCl6", "Danger", "H301 H318", NEWEST), classified("Se", "Danger", "H301", NEWEST), classified("NaClO4", "Danger", "H302", NEWEST), classified("SbF3", "Danger", "H301 H311 H331 H411"), classified("NH3", "Danger", "H221 H314 H331 H400"), classified("BaCrO4", "Danger", "H350 H302 H410", SHEETS), classified("C3H8O", "Danger", "H225 H319 H336"), classified("Ca(HCOO)2", "Danger", "H318", SHEETS), classified("Na2SO3", "Danger", "H302 H318", SHEETS), classified("NiS", "Danger", "H350i H317 H341 H410"), classified("ZnSO4·H2O", "Danger", "H302 H318 H410"), classified("Se", "Danger", "H331 H301"), classified("NH4F", "Danger", "H301", NEWEST), classified("HIO3", "Danger", "H272 H314", SHEETS), classified("AgF", "Danger", "H301", SHEETS), classified("SnF2", "Danger", "H301", SHEETS), classified("Mg(NO2)2", "Danger", "H272 H301", SHEETS), classified("NaIO4", "Danger", "H272", SHEETS), classified("Sr(ClO2)2", "Danger", "H272", SHEETS), classified("Cd(OH)2", "Danger", "H302 H340 H350", LATER), classified("CdO", "Danger", "H330 H341 H350 H361fd H372 H410", NEWEST), classified("CdI2", "Danger", "H301 H351", NEWEST), classified("K2PtCl6", "Danger", "H301 H318", NEWEST), classified("H2PtCl6", "Danger", "H301 H314", NEWEST), classified("CaS5", "Warning", "H315 H319", NEWEST), classified("CaS4", "Warning", "H315 H319", NEWEST), classified("KC6H7O2", "Warning", "H319", NEWEST), classified("N2H4·H2SO4", "Danger", "H301 H350", NEWEST), classified("N2H6SO4", "Danger", "H301 H350", NEWEST), classified("N2O", "Danger", "H360", LATER), classified("V2O5", "Danger", "H350", NEWEST),
  classified("Ca", "Danger", "H261", CLP), classified("H3PO3", "Danger", "H302 H314", CLP), classified("CaCN2", "Danger", "H302 H318 H335", CLP), classified("C10H8", "Warning", "H302 H351 H410", CLP), classified("C6H6O2", "Danger", "H302 H317 H318 H341 H350 H301 H311", CLP), classified("C6H6O3", "Warning", "H302 H312 H332 H341", CLP), classified("(C7H10NO)2SO4", "Warning", "H302 H317 H373 H410", CLP), classified("C9H10N2O", "Warning", "H302 H411", CLP), classified("NH3OHCl", "Warning", "H302 H312 H317 H351 H373", CLP), classified("C8H16O4", "Danger", "H228 H301", CLP), classified("C20H14O4", "Danger", "H341 H350 H361f", NEWEST), classified("C6H5COOH", "Danger", "H315 H318 H372", CLP), classified("C7H6O3", "Danger", "H302 H318 H361d", CLP), classified("C6H7NO3S", "Warning", "H315 H317 H319", CLP), classified("C10H16", "Danger", "H226 H304 H317 H411", CLP), classified("Na2PtCl4", "Danger", "H301 H318 H317 H334", CLP), classified("LiF", "Danger", "H301 EUH032", SHEETS), classified("LiBr", "Warning", "H302 H315 H317 H319", SHEETS), classified("LiNO3", "Danger", "H272 H302 H319", SHEETS), classified("Li2SO4", "Warning", "H302", SHEETS), classified("Li2O", "Danger", "H314", SHEETS), classified("Na2O", "Danger", "H314 EUH014", SHEETS), classified("K2O", "Danger", "H314 EUH014", SHEETS), classified("SrO", "Danger", "H314", SHEETS), classified("NaAlO2", "Danger", "H290 H314", SHEETS), classified("K3PO4", "Danger", "H318 H335", SHEETS), classified("Na4P2O7", "Danger", "H302 H318", SHEETS), classified("Na2H2P2O7", "Warning", "H319", SHEETS),
  classified("Ca(H2PO4)2·H2O", "Danger", "H318", SHEETS), classified("NH4HSO4", "Danger", "H314", SHEETS), classified("Na2S2O7", "Danger", "H314", SHEETS), classified("K2S2O7", "Danger", "H314", SHEETS), classified("2KHSO5·KHSO4·K2SO4", "Danger", "H272 H302 H314", SHEETS), classified("KHSO5", "Danger", "H272 H302 H314", SHEETS), classified("SO3", "Danger", "H314 H335 EUH014", SHEETS), classified("NH2COONH4", "Danger", "H302 H318", SHEETS), classified("(NH4)2CO3", "Warning", "H302 H319", SHEETS), classified("Na2[Fe(CN)5NO]·2H2O", "Danger", "H301", SHEETS), classified("Cr(NO3)3·9H2O", "Danger", "H272 H317 H319", SHEETS), classified("(NH4)2Ce(NO3)6", "Danger", "H272 H302 H314 H317", SHEETS), classified("Ce(SO4)2", "Warning", "H315 H319", SHEETS), classified("Bi(NO3)3·5H2O", "Danger", "H272 H315 H319", SHEETS), classified("5Ca(NO3)2·NH4NO3·10H2O", "Danger", "H302 H318", SHEETS), classified("TiCl3", "Danger", "H250 H314", SHEETS), classified("ZnBr2", "Danger", "H302 H314 H411", SHEETS), classified("ZnI2", "Warning", "H315 H319 H410", SHEETS), classified("CuBr2", "Danger", "H302 H314 H410", SHEETS), classified("CuBr", "Warning", "H302 H315 H319 H410", SHEETS), classified("SnI4", "Danger", "H302 H314", SHEETS), classified("SnSO4", "Danger", "H302 H317 H318", SHEETS), classified("Mn(CH3COO)2·4H2O", "Warning", "H373 H412", SHEETS), classified("Ag2SO4", "Danger", "H318 H410", SHEETS), classified("AgCH3COO", "Danger", "H315 H318 H410", SHEETS), classified("Ag3PO4", "Danger", "H314 H410", SHEETS), classified("C16H18ClN3S", "Warning", "H302", SHEETS), classified("C14H14N3NaO3S", "Danger", "H301", SHEETS), classified("C12H8N2", "Danger", "H301 H410", SHEETS), classified("C4H8N2O2", "Danger", "H228 H301", SHEETS), classified("C6H5N3", "Warning", "H302 H319", SHEETS), classified("HAuCl4·3H2O", "Danger", "H290 H302 H314 H317", SHEETS), classified("PdCl2", "Danger", "H290 H302 H317 H318", SHEETS), classified("CaCl2O", "Danger", "H272 H302 H314 EUH031", SHEETS),
  classified("Hg", "Danger", "H330 H360D H372 H410"), classified("HgCl2", "Danger", "H300 H314 H341 H372 H410"), classified("HgO", "Danger", "H300 H310 H330 H373 H410"), classified("As2O3", "Danger", "H300 H314 H350 H410"), classified("As2S3", "Danger", "H301 H331 H410"), classified("V2O5", "Danger", "H301 H335 H341 H350 H372 H411", NEWEST), classified("NH4VO3", "Danger", "H301", SHEETS), classified("MoO3", "Warning", "H319 H335 H351"),
  classified("SbCl3", "Danger", "H314 H411"), classified("Sb2O3", "Warning", "H351"), classified("SeO2", "Danger", "H301 H331 H373 H410"), classified("Tl2SO4", "Danger", "H300 H373 H411"), classified("UO3", "Danger", "H300 H330 H373 H411"), classified("BeSO4", "Danger", "H301 H330 H350i"),
  // -- others: boron, halides, sulfites, sulfides, cyanides, azide, fluorides
  classified("H3BO3", "Danger", "H360FD"), classified("Na2B4O7·10H2O", "Danger", "H360FD"), classified("Na2B4O7·5H2O", "Danger", "H360FD"), classified("B2O3", "Danger", "H360FD"), classified("NH4Cl", "Warning", "H302 H319"), classified("NH4SCN", "Warning", "H302 H312 H332 H412 EUH032"), classified("KSCN", "Warning", "H302 H312 H332 H412 EUH032"),
  classified("LiCl", "Danger", "H302 H319 H372", SHEETS), classified("Li2CO3", "Warning", "H302 H319", SHEETS), classified("CaCl2", "Warning", "H319"), classified("SnCl4", "Danger", "H314 H412"), classified("AlCl3", "Danger", "H314"), classified("TiCl4", "Danger", "H314 EUH014"), classified("Al2(SO4)3·18H2O", "Danger", "H318", SHEETS), classified("Al(NO3)3·9H2O", "Danger", "H272 H318", SHEETS),
  classified("Na2S2O5", "Danger", "H302 H318 EUH031"), classified("NaHSO3", "Warning", "H302 EUH031"), classified("Na2S2O4", "Danger", "H251 H302 EUH031"), classified("Na2S", "Danger", "H302 H311 H314 H400"), classified("K2S", "Danger", "H314 H400 EUH031"), classified("FeS", "Warning", "H400", SHEETS),
  classified("NaCN", "Danger", "H300 H310 H330 H410 EUH032"), classified("KCN", "Danger", "H300 H310 H330 H410 EUH032"), classified("Zn(CN)2", "Danger", "H300 H310 H330 H410 EUH032"), classified("HCN", "Danger", "H224 H330 H410"), classified("NaN3", "Danger", "H300 H410 EUH032"), classified("K4[Fe(CN)6]·3H2O", "none", "H412", SHEETS),
  classified("NaF", "Danger", "H301 H315 H319 EUH032"), classified("KF", "Danger", "H301 H311 H331"), classified("NH4HF2", "Danger", "H301 H314"), classified("Na2SiF6", "Danger", "H301 H311 H331"), classified("H2SiF6", "Danger", "H314"), classified("Na3AlF6", "Danger", "H332 H372 H411"),
  // -- elements, gases, solvents
  classified("P", "Danger", "H228 H412"), classified("S", "Warning", "H315"), classified("Na", "Danger", "H260 H314 EUH014"), classified("K", "Danger", "H260 H314 EUH014"), classified("Al", "Danger", "H228 H261"), classified("Mg", "Danger", "H228 H252 H261"), classified("Zn", "Warning", "H410"), classified("CaC2", "Danger", "H260"), classified("I2", "Warning", "H312 H332 H400"), classified("Br2", "Danger", "H314 H330 H400"),
  classified("H2S", "Danger", "H220 H330 H400"), classified("SO2", "Danger", "H314 H331 H370", NEWEST), classified("Cl2", "Danger", "H270 H315 H319 H331 H335 H400"), classified("NO2", "Danger", "H270 H314 H330"), classified("NO", "Danger", "H270 H314 H330", SHEETS), classified("CO", "Danger", "H220 H331 H360D H372"), classified("H2", "Danger", "H220"), classified("O2", "Danger", "H270"), classified("C2H2", "Danger", "H220"), classified("PH3", "Danger", "H220 H314 H330 H400"), classified("AsH3", "Danger", "H220 H330 H373 H410"), classified("ClO2", "Danger", "H270 H314 H330 H400"),
  classified("CH3COCH3", "Danger", "H225 H319 H336 EUH066"), classified("C2H5OH", "Danger", "H225"), classified("CH3OH", "Danger", "H225 H301 H311 H331 H370"), classified("C6H5CH3", "Danger", "H225 H304 H315 H336 H361d H373"), classified("CH2Cl2", "Warning", "H351"), classified("CH2O", "Danger", "H302 H314 H317 H330 H341 H350", NEWEST), classified("C6H5OH", "Danger", "H301 H311 H314 H331 H341 H373"), classified("CS(NH2)2", "Warning", "H302 H351 H361d H411"), classified("C6H12N4", "Warning", "H228 H317"),
  // -- what is not said: a form, an isomer or a salt that is harmless where its neighbour is not
  free("BaSO4", "H301 H302 H332"), free("NaHCO3", "H314 H318 H319", SHEETS), free("MgSO4·7H2O", "H302 H318", SHEETS), free("KAl(SO4)2·12H2O", "H314 H302", SHEETS), free("Fe2O3", "H302 H318", SHEETS), free("Cr2O3", "H350 H340", SHEETS), free("KCr(SO4)2·12H2O", "H350 H340", SHEETS), free("CaF2", "H301 EUH032", SHEETS),
  free("K3[Fe(CN)6]", "H300 H310 H330"), free("Fe4[Fe(CN)6]3", "H300 H310 H330"), free("SrCO3", "H302", SHEETS), free("CO(NH2)2", "H302", SHEETS), free("NaCl", "H302 H319", SHEETS), free("CaCO3", "H318 H319", SHEETS), free("CuO", "H302 H318"), free("AgCl", "H272 H314", SHEETS), free("CuSO4", "H318"),
  // -- reminders and waste
  reminds("H2SO4", /acid into water/), reminds("HCl", /acid into water/), reminds("HNO3", /nitrogen dioxide with metals/), reminds("NaOH", /aluminium/), reminds("CaO", /hot with water/), reminds("NaClO", /never with acid, ammonia/), reminds("H2O2", /vented cap/), reminds("KMnO4", /glycerol/), reminds("Na2S", /H2S with acid/), reminds("FeS", /H2S/), reminds("Na2S2O5", /SO2/), reminds("Na2SO3", /SO2/), reminds("Na2S2O3·5H2O", /SO2/), reminds("NaF", /HF with acid/), reminds("CaF2", /HF/),
  reminds("NaCN", /HCN with acid/), reminds("K3[Fe(CN)6]", /HCN with hot strong acid/), reminds("Fe4[Fe(CN)6]3", /HCN/), reminds("K4[Fe(CN)6]·3H2O", /[Nn]ever acidify/), reminds("AgNO3", /never store with ammonia/), reminds("Ag2O", /explosive/), reminds("I2", /never with ammonia/), reminds("Mg", /never water or CO2 on the fire/), reminds("ZnO", /fume/), reminds("CO", /no smell/), reminds("H2S", /smell fades/), reminds("CO2", /lungs/), reminds("CaC2", /acetylene/), reminds("CaSO4·0.5H2O", /skin/), reminds("Fe", /hydrogen/), reminds("NaHCO3", /CO2/), reminds("NH4Cl", /lime/), reminds("(NH4)2SO4", /bleach/), reminds("CO(NH2)2", /hypochlorite/), reminds("Cr2O3", /Cr\(VI\)/), reminds("MgCl2·6H2O", /HCl/), reminds("HgS", /mercury vapour/), reminds("C", /oxidiser/), reminds("NH4HCO3", /ammonia/), reminds("SiO2", /lungs/),
  reminds("BaCl2·2H2O", /barium sulfate/), reminds("AgNO3", /chloride/), reminds("CuSO4·5H2O", /[Nn]othing down the drain/), reminds("ZnSO4·7H2O", /[Nn]othing down the drain/), reminds("CoCl2·6H2O", /hazardous-waste collection/), reminds("NiSO4·6H2O", /hazardous-waste collection/), reminds("Pb(NO3)2", /hazardous-waste collection/), reminds("K2Cr2O7", /hazardous-waste collection/), reminds("HgCl2", /hazardous-waste collection/), reminds("CH3COCH3", /solvent collection/), reminds("NaF", /calcium salt/), reminds("H3BO3", /plants/), reminds("FeSO4·7H2O", /iron hydroxide/),
  // -- limits in water
  between("HCl", "H314", 25), between("HCl", "H315", 10, 25), between("HCl", "H319", 10, 25), between("HCl", "H335", 10), between("H2SO4", "H314", 15), between("H2SO4", "H315", 5, 15), between("H2SO4", "H319", 5, 15), between("HNO3", "H272", 65), between("HNO3", "H314", 5), between("HNO3", "H330", 70), between("HNO3", "H331", 26.5, 70), between("HNO3", "H332", 13.25, 26.5), between("HNO3", "EUH071", 26.5), between("HNO3", "H318", 3, 5, MIXTURES), between("HNO3", "H315", 1, 5, MIXTURES), between("HNO3", "H319", 1, 3, MIXTURES), between("KOH", "H302", 25, undefined, MIXTURES), between("NH3", "H315", 1, 5, MIXTURES), between("H2O2", "H302", 25, undefined, MIXTURES), between("H2O2", "H332", 55, undefined, MIXTURES), between("NaClO", "H315", 1, 5, MIXTURES), between("HClO4", "H272", 0.01, 50), between("LiOH", "H315", 1, 5, MIXTURES), between("NH4VO3", "H370", 10, undefined, MIXTURES), between("NH4VO3", "H371", 1, 10, MIXTURES), between("KIO3", "H371", 10, undefined, MIXTURES),
  reminds("LiF", /hydrofluoric acid with acid/), between("H3PO4", "H314", 25), between("H3PO4", "H315", 10, 25), between("H3PO4", "H319", 10, 25),
  between("CH3COOH", "H226", 80, undefined, SHEETS), between("CH3COOH", "H314", 25), between("CH3COOH", "H315", 10, 25), between("CH3COOH", "H319", 10, 25), between("HCOOH", "H314", 10), between("HCOOH", "H315", 2, 10), between("HCOOH", "H319", 2, 10),
  between("NaOH", "H314", 2), between("NaOH", "H315", 0.5, 2), between("NaOH", "H319", 0.5, 2), between("KOH", "H314", 2), between("KOH", "H315", 0.5, 2), between("KOH", "H319", 0.5, 2), between("NH3", "H335", 5), between("NH3", "H314", 5, undefined, MIXTURES), between("NH3", "H318", 3, 5, MIXTURES), between("NH3", "H319", 1, 3, MIXTURES), between("NH3", "H400", 25, undefined, MIXTURES),
  between("H2O2", "H271", 70), between("H2O2", "H272", 50, 70), between("H2O2", "H314", 50), between("H2O2", "H315", 35, 50), between("H2O2", "H318", 8, 50), between("H2O2", "H319", 5, 8), between("H2O2", "H335", 35), between("NaClO", "EUH031", 5), between("NaClO", "H314", 5, undefined, MIXTURES), between("NaClO", "H318", 3, 5, MIXTURES), between("NaClO", "H319", 1, 3, MIXTURES), between("NaClO", "H410", 25, undefined, MIXTURES), between("NaClO", "H400", 2.5, 25, MIXTURES), between("NaClO", "H411", 2.5, 25, MIXTURES), between("NaClO", "H412", 0.25, 2.5, MIXTURES), between("HClO4", "H271", 50), between("HClO4", "H314", 10), between("HClO4", "H315", 1, 10), between("HClO4", "H319", 1, 10),
  between("LiOH", "H314", 5, undefined, MIXTURES), between("LiOH", "H318", 3, 5, MIXTURES), between("LiOH", "H319", 1, 3, MIXTURES), between("CuSO4·5H2O", "H318", 3, undefined, MIXTURES), between("CuSO4·5H2O", "H319", 1, 3, MIXTURES), between("FeSO4", "H315", 10, undefined, MIXTURES), between("FeSO4", "H319", 10, undefined, MIXTURES), between("K2CO3", "H335", 20, undefined, MIXTURES), between("NH4VO3", "H340", 0.1, undefined, MIXTURES), between("K2S2O8", "H317", 1, undefined, MIXTURES), between("K2S2O8", "H334", 1, undefined, MIXTURES), between("V2O5", "H341", 1, undefined, MIXTURES), between("KBrO3", "H350", 0.1, undefined, MIXTURES), between("CS(NH2)2", "H351", 1, undefined, MIXTURES), between("CS(NH2)2", "H361d", 3, undefined, MIXTURES), between("H3BO3", "H360FD", 0.3, undefined, MIXTURES), between("CH3COCH3", "H336", 20, undefined, MIXTURES), between("MnSO4·H2O", "H373", 10, undefined, MIXTURES), between("KI", "H372", 10, undefined, MIXTURES), between("KI", "H373", 1, 10, MIXTURES),
  // -- what must not meet: bleach and its kin
  apart("NaClO + HCl", "forbid", "Cl2"), apart("NaClO + CH3COOH", "forbid", "Cl2"), apart("NaClO + NH3", "forbid", "NH2Cl"), apart("NaClO + NH4Cl", "forbid", "NH2Cl"), apart("NaClO + CO(NH2)2", "forbid", "NCl3"), apart("NaClO + CH3COCH3", "forbid", "CHCl3"), apart("NaClO + H2O2", "warn", "O2"), apart("NaClO + CuSO4·5H2O", "warn", "hypochlorite-catalyst"), apart("NaClO + Na2S2O3", "warn", "hypochlorite-reducer"), apart("Ca(ClO)2 + HCl", "forbid", "calcium-hypochlorite-acid"), apart("Ca(ClO)2 + C6H8O7", "forbid", "calcium-hypochlorite-acid"), apart("Ca(ClO)2 + C3N3O3Cl3", "forbid", "calcium-hypochlorite-isocyanurate"), apart("Ca(ClO)2 + S", "forbid", "calcium-hypochlorite-carbon"), apart("Ca(ClO)2 + NH4Cl", "forbid", "calcium-hypochlorite-ammonium"), apart("Ca(ClO)2 + C3H8O3", "forbid", "calcium-hypochlorite-nitromethane"), apart("Ca(ClO)2 + CH3NO2", "forbid", "calcium-hypochlorite-nitromethane"),
  apart("C3N3O3Cl3 + NH3", "forbid", "isocyanurate-ammonia"), apart("C3N3O3Cl3 + HCl", "forbid", "isocyanurate-acid"), apart("C3N3O3Cl3 + C2H5OH", "forbid", "isocyanurate-organic"), apart("NaClO + KCN", "forbid", "CNCl"), apart("Ca(ClO)2 + C12H22O11", "forbid", "calcium-hypochlorite-organic"), apart("Ca(ClO)2 + C3N3O3Cl3", "forbid", "pool-products"), apart("KClO3 + H2SO4", "forbid", "chlorate-acid"), apart("HNO3 + HCl + C2H5OH", "forbid", "nitric-hydrochloric-organic"), apart("NaClO + NaN3", "forbid", "ClN3"), apart("NaClO + NaH2PO4", "forbid", "hypochlorite-acid-salt"), apart("NaClO + AlCl3", "forbid", "acid-former-hypochlorite"), apart("NaClO + FeCl3", "forbid", "Cl2"), apart("NaClO + (NH4)2C2O4", "forbid", "ammonium-oxalate-hypochlorite"), apart("NaClO2 + HCl", "forbid", "ClO2"), apart("NaClO2 + S", "forbid", "chlorite-fuel"), apart("NaClO2 + C12H22O11", "forbid", "chlorite-fuel"),
  // -- oxidisers and fuels
  apart("KClO3 + S", "forbid", "chlorate-fuel"), apart("KClO3 + C12H22O11", "forbid", "chlorate-fuel"), apart("KClO3 + P", "forbid", "phosphorus-oxidiser"), apart("KClO3 + H2SO4", "forbid", "ClO2"), apart("KClO3 + NH4Cl", "forbid", "chlorate-ammonium"), apart("KClO3 + Na2SO3", "forbid", "sulfite-chlorate"), apart("KClO4 + Al", "forbid", "perchlorate-fuel"), apart("K2S2O8 + S", "warn", "persulfate-fuel"), apart("KNO3 + C", "forbid", "nitrate-fuel"), apart("KNO3 + S", "forbid", "nitrate-fuel"), apart("KNO3 + Mg", "forbid", "magnesium-oxidiser"), apart("KNO3 + Zn", "forbid", "nitrate-metal"), apart("KNO3 + Na2S2O3", "warn", "nitrate-reducer"), apart("NH4NO3 + Zn", "forbid", "zinc-ammonium-nitrate"), apart("NH4NO3 + S", "forbid", "ammonium-nitrate-fuel"), apart("NaNO2 + NH4Cl", "forbid", "nitrite-ammonium"), apart("NaNO2 + HCl", "warn", "NO2"), apart("NaNO2 + C6H7N", "warn", "nitrite-amine"), apart("NaNO2 + Na2S2O3", "forbid", "nitrite-reducer"),
  apart("KMnO4 + HCl", "forbid", "permanganate-hydrochloric"), apart("KMnO4 + H2SO4 @ 96", "forbid", "Mn2O7"), apart("KMnO4 + C3H8O3", "forbid", "permanganate-organic"), apart("KMnO4 + H2O2 @ 30", "warn", "permanganate-peroxide"), apart("KMnO4 + S", "forbid", "permanganate-fuel"), apart("KMnO4 + Na2SO3", "warn", "permanganate-reducer"), apart("KMnO4 + H2C2O4·2H2O", "warn", "oxalic-permanganate"), apart("KClO3 + H2SO4 @ 96", "forbid", "sulfuric-oxidiser"), apart("H2O2 + CH3COCH3", "forbid", "peroxide-ketone"), apart("H2O2 + MnO2", "warn", "peroxide-catalyst"), apart("H2O2 @ 30 + CH3COOH", "forbid", "peroxide-organic"), apart("H2O2 + NaOH", "warn", "peroxide-base"), apart("H2O2 @ 30 + H2SO4 @ 96", "forbid", "H2SO5"), apart("H2O2 + C6H12N4", "forbid", "peroxide-hexamine"), apart("2Na2CO3·3H2O2 + CH3COOH", "warn", "percarbonate-fuel"),
  apart("KBrO3 + S", "forbid", "halogenate-fuel"), apart("KIO3 + C", "forbid", "halogenate-fuel"), apart("KBrO3 + H2SO4", "forbid", "Br2"), apart("KIO3 + HCl", "forbid", "halogenate-hydrohalic"), apart("Na2O2 + S", "forbid", "peroxide-salt-fuel"), apart("Na2O2 + H2O", "warn", "alkali-peroxide-water"), apart("P + KMnO4", "forbid", "phosphorus-oxidiser"), apart("P + NaOH", "forbid", "PH3"), apart("K2Cr2O7 + C2H5OH", "forbid", "chromate-organic"), apart("K2Cr2O7 + CH3COOH", "forbid", "chromate-acetic"), apart("K2Cr2O7 + NaCl + H2SO4", "forbid", "CrO2Cl2"), apart("K2Cr2O7 + HCl @ 36", "forbid", "chromate-hydrochloric"), apart("K2Cr2O7 + S", "forbid", "chromate-fuel"), apart("CrCl3 + NaClO", "warn", "chromium-oxidiser"), apart("Cr2O3 + KNO3", "warn", "chromium-fired"), apart("PbO2 + S", "forbid", "higher-oxide-fuel"), apart("MnO2 + HCl", "forbid", "hydrochloric-higher-oxide"), apart("K2S2O8 + HCl", "forbid", "hydrochloric-persulfate"), apart("NaH + KMnO4", "forbid", "oxidiser-hydride"), apart("Fe2O3 + Al", "forbid", "thermite"), apart("Zn + S", "warn", "metal-sulfur"),
  // -- acids
  apart("HCl + NaCN", "forbid", "HCN"), apart("CH3COOH + NaCN", "forbid", "HCN"), apart("CO2 + KCN", "forbid", "acid-former-cyanide"), apart("H2SO4 + K4[Fe(CN)6]", "forbid", "acid-cyanido-complex"), apart("HCl + K2[Zn(CN)4]", "forbid", "acid-cyanide"), apart("HCl + Na2S", "forbid", "H2S"), apart("HCl + FeS", "forbid", "H2S"), apart("HCl + K2S5", "forbid", "acid-polysulfide"), apart("NaH2PO4 + Na2S", "warn", "acid-salt-sulfide"), apart("AlCl3 + Na2S", "forbid", "acid-former-sulfide"), apart("HCl + Na2SO3", "warn", "SO2"), apart("HCl + Na2S2O5", "warn", "SO2"), apart("HCl + Na2S2O3", "warn", "acid-thiosulfate"), apart("HCl + NaN3", "forbid", "HN3"), apart("NaH2PO4 + NaN3", "forbid", "acid-former-azide"), apart("HCl @ 36 + KSCN", "warn", "acid-thiocyanate"), apart("HCl + CaCO3", "warn", "CO2"), apart("H2SO4 + NaF", "forbid", "HF"), apart("H2SO4 + CaF2", "forbid", "HF"), apart("HCl + Zn + As2O3", "forbid", "AsH3"), apart("HCl + Ca3P2", "forbid", "acid-phosphide"), apart("H2O + Ca3P2", "forbid", "water-phosphide"), apart("HCl + Na2Se", "forbid", "H2Se"), apart("HCl + Zn3As2", "forbid", "acid-arsenide"), apart("HCl + Mg2Si", "forbid", "SiH4"), apart("HCl + Zn", "warn", "H2"), apart("H2SO4 @ 96 + NaOH", "warn", "acid-base"), apart("H2SO4 + H2O", "forbid", "water-sulfuric"), apart("HCl + Pb(NO3)2", "forbid", "lead-acid"), apart("HCl + CdS", "forbid", "cadmium-acid"), apart("Cd", "forbid", "mercury-cadmium"),
  apart("HNO3 + C2H5OH", "forbid", "nitric-organic"), apart("HNO3 + Cu", "warn", "NO2"), apart("HNO3 + Na2S", "forbid", "nitric-sulfide"), apart("HNO3 + HCl", "forbid", "nitric-hydrochloric"), apart("HNO3 + HCl + C2H5OH", "forbid", "nitric-organic"), apart("HNO3 @ 68 + CO(NH2)2", "forbid", "nitric-urea"), apart("HNO3 @ 68 + C", "forbid", "nitric-fuel"), apart("KNO3 + H2SO4 @ 96 + C6H5CH3", "forbid", "nitration"), apart("H2SO4 @ 96 + NaCl", "warn", "HCl"), apart("H2SO4 @ 96 + KNO3", "warn", "HNO3"), apart("H2SO4 @ 96 + Na2C2O4", "warn", "CO"), apart("H2SO4 @ 96 + C12H22O11", "warn", "sulfuric-sugar"), apart("HCl + CH2O", "forbid", "hydrochloric-formaldehyde"), apart("HF + SiO2", "warn", "SiF4"),
  // -- water, bases, metals, ammonia, others
  apart("NaOH + H2O", "warn", "water-lye"), apart("CaO + H2O", "warn", "water-quicklime"), apart("CaC2 + H2O", "warn", "C2H2"), apart("Na + H2O", "forbid", "water-alkali-metal"), apart("TiCl4 + H2O", "warn", "water-hydrolysing"), apart("Mg + H2O", "forbid", "fire-magnesium"), apart("Mg + CO2", "forbid", "fire-magnesium"), apart("NaH + H2O", "forbid", "water-hydride"), apart("NaOH + Al", "warn", "base-aluminium"), apart("NaOH + Zn", "warn", "base-zinc-tin"), apart("NaOH + NH4Cl", "warn", "base-ammonium"), apart("Ca(OH)2 + NH4Cl", "warn", "lime-ammonium"), apart("NaOH + CHCl3", "warn", "lye-chloroform"), apart("NaOH + CHCl3 + CH3COCH3", "forbid", "lye-chloroform-acetone"), apart("AgNO3 + NH3", "forbid", "Ag3N"), apart("Ag2O + NH3", "forbid", "silver-oxide-ammonia"), apart("AgNO3 + C2H5OH + HNO3", "forbid", "silver-ethanol-nitric"), apart("AgNO3 + Na2C2O4", "forbid", "silver-oxalate"), apart("AgNO3 + C2H2", "forbid", "Ag2C2"), apart("CuCl + C2H2", "forbid", "Cu2C2"), apart("HgCl2 + NH3", "forbid", "mercury-acetylene-ammonia"), apart("AgNO3 + H2C2O4·2H2O", "forbid", "oxalic-silver-mercury"), apart("I2 + NH3", "forbid", "NI3"), apart("I2 + Al", "warn", "iodine-metal"), apart("Cl2 + NH3", "forbid", "NCl3"), apart("Cl2 + H2", "forbid", "chlorine-fuel"), apart("Br2 + Al", "forbid", "halogen-metal"), apart("H2 + O2", "forbid", "hydrogen-oxygen"), apart("SO2 + H2O2", "warn", "sulfur-dioxide-oxidiser"), apart("NaN3 + Pb(NO3)2", "forbid", "azide-metal"), apart("NaN3 + CuSO4·5H2O", "forbid", "azide-metal"), apart("NaN3 + CH2Cl2", "forbid", "azide-chlorinated"), apart("AuCl3 + NH3", "forbid", "gold-ammonia"), apart("Na + C2H5OH", "forbid", "alkali-metal-alcohol"), apart("Na + HCl", "forbid", "alkali-metal-acid"), apart("Na + CH2Cl2", "forbid", "alkali-metal-chlorinated"), apart("Al + CHCl3", "forbid", "metal-chlorinated"), apart("Al + CuCl2·2H2O", "warn", "aluminium-chloride-salt"), apart("KCN + KNO3", "forbid", "cyanide-oxidiser"),
  // -- what may meet
  together("NaHCO3 + CH3COOH"), together("CaCl2 + Na2CO3"), together("NaOH @ 5 + HCl @ 5"), together("CuSO4·5H2O + Na2CO3"), together("NaCl + AgNO3"), together("NH3 + CuSO4·5H2O"), together("K4[Fe(CN)6] + FeCl3"), together("KI + Pb(NO3)2"), together("Fe + H2SO4 @ 20"), together("KMnO4 + H2SO4 @ 5"), together("H2O2 @ 3 + CH3COOH @ 5"),
  notIn("NaHCO3 + C6H8O7", "closed vessel"), notIn("Pb(NO3)2", "kitchen"), notIn("K2Cr2O7", "kitchen"),
  // -- never made
  ...["C9H18O6", "C6H12O4", "C6H7N3O11", "C6H8N2O9", "C12H14N6O22", "CH6N2O3", "N3H5O3", "N2H4O4", "Cl2O6", "CH3CO3H", "HCO3H", "C6H12N2O6", "C8H18O6", "C3H5N3O9", "C2H4N2O6", "C5H8N4O12", "C4H6N4O12", "C6H8N6O18", "CH3NO3", "C2H5NO3", "C7H5N3O6", "C6H3N3O7", "C6H3N3O8", "C7H5N5O8", "C3H6N6O6", "C4H8N8O8", "CH5N3O4", "CH6N4O3", "C6H14N6O6", "HN3", "ClN3", "S4N4", "Mn2O7", "Cl2O", "ClO2", "Cl2O7", "XeO3", "CH3COOOH", "HCOOOH", "NCl3", "NI3", "AgN3", "Pb(N3)2", "Ag2C2", "Cu2C2", "AgCNO", "Hg(CNO)2", "NH4ClO3", "Ag3N"].map((formula) => never(formula, "explosive")),
  ...["HCN", "C2N2", "CNCl", "CNBr", "COCl2", "CSCl2", "PH3", "AsH3", "SbH3", "H2Se", "H2Te", "B2H6", "SiH4", "Ni(CO)4", "Fe(CO)5", "F2", "OF2", "ClF3", "NH2Cl", "NHCl2", "C4H8Cl2S", "C4H10FO2P", "C2H4OCl2", "CrO2Cl2"].map((formula) => never(formula, "deadly-gas")),
  ...["Cl2", "Br2", "H2S", "HF", "O3", "NO", "NO2", "N2O4", "CO", "SO2"].map((formula) => never(formula, "poison-gas")),
  ...["H2", "O2", "CO2", "N2", "NH3", "HCl", "AgCl", "CuSO4·5H2O", "NH4Cl", "CH3COOH", "K3[Fe(CN)6]", "CuO", "Ag2O", "NaN3"].map(ordinary),
  // -- gases of a pot: hood, and the air of the room
  ...["NO", "NO2", "Cl2", "SO2", "SO3", "H2S", "CO", "HCN", "HCl", "HBr", "HI", "HF", "PH3"].map((hill) => gas(hill, true)), ...["O2", "N2"].map((hill) => gas(hill, false)), gas("CO2", false, 0.5), gas("H2", false, 0.4), gas("CH4", false), gas("C2H2", false), gas("NH3", false), gas("N2O", false),
  // -- drying
  dries("(NH4)2Fe(SO4)2·6H2O", 15, 40), dries("[Cu(NH3)4]SO4·H2O", 15, 40), dries("KCr(SO4)2·12H2O", 15, 40), dries("NH4NO3", 15, 40), dries("Na2CO3·10H2O", 15, 30), dries("Na2SO4·10H2O", 15, 30), dries("Na2S2O3·5H2O", 15, 40), dries("CuSO4·5H2O", 20, 45), dries("FeSO4·7H2O", 20, 45), dries("ZnSO4·7H2O", 20, 38), dries("MgSO4·7H2O", 20, 45), dries("NiSO4·6H2O", 20, 50), dries("Ni3(OH)4CO3·4H2O", 20, 60), dries("NaHCO3", 20, 60), dries("KAl(SO4)2·12H2O", 20, 60), dries("NH4Al(SO4)2·12H2O", 20, 60), dries("Na2B4O7·10H2O", 20, 58), dries("K3[Fe(C2O4)3]·3H2O", 20, 60), dries("H3BO3", 20, 80), dries("Cu(CH3COO)2·H2O", 20, 80), dries("Cu2(OH)2CO3", 60, 130), dries("Zn5(OH)6(CO3)2", 60, 130), dries("Mg5(CO3)4(OH)2·4H2O", 60, 130), dries("Mg4(CO3)3(OH)2·3H2O", 60, 130), dries("FeC2O4·2H2O", 60, 120), dries("CaCO3", 100, 200), dries("KNO3", 100, 200), dries("KCl", 100, 300), dries("NaCl", 100, 300), dries("CaC2O4·H2O", 30, 115), dries("BaCO3", 100, 300), dries("SrCO3", 100, 300), dries("Na2CO3", 100, 300), dries("BaSO4", 100, 300), dries("NH4HCO3", 10, 35),
  driesBy("(NH4)2Fe(SO4)2·6H2O", 25, "warm air oxidises it and takes its water"), driesBy("[Cu(NH3)4]SO4·H2O", 25, "it changes near room temperature: dry in air"), driesBy("KCr(SO4)2·12H2O", 25, "it effloresces"), driesBy("NH4NO3", 25, "heat may set it off: dry in the air of a room"), driesBy("Na2CO3·10H2O", 25, "it changes near room temperature: dry in air"), driesBy("Na2SO4·10H2O", 25, "it changes near room temperature: dry in air"), driesBy("Na2S2O3·5H2O", 25, "it melts in its water at 48 °C"), driesBy("CuSO4·5H2O", 35, "usual limit of the bench"), driesBy("FeSO4·7H2O", 25, "warm or dry air takes its water"), driesBy("ZnSO4·7H2O", 25, "it changes near room temperature: dry in air"), driesBy("MgSO4·7H2O", 25, "it contains water that warm air may remove: dry in air"), driesBy("NiSO4·6H2O", 35, "usual limit of the bench"), driesBy("Ni3(OH)4CO3·4H2O", 40, "usual limit of the bench"), driesBy("NaHCO3", 30, "heat changes it from 50 °C on"), driesBy("KAl(SO4)2·12H2O", 40, "heat changes it from 60 °C on"), driesBy("NH4Al(SO4)2·12H2O", 50, "usual limit of the bench"), driesBy("Na2B4O7·10H2O", 25, "it contains water that warm air may remove: dry in air"), driesBy("K3[Fe(C2O4)3]·3H2O", 50, "usual limit of the bench"), driesBy("H3BO3", 60, "usual limit of the bench"), driesBy("Cu(CH3COO)2·H2O", 60, "usual limit of the bench"), driesBy("Cu2(OH)2CO3", 100, "usual limit of the bench"), driesBy("Zn5(OH)6(CO3)2", 100, "usual limit of the bench"), driesBy("Mg5(CO3)4(OH)2·4H2O", 100, "usual limit of the bench"), driesBy("Mg4(CO3)3(OH)2·3H2O", 100, "usual limit of the bench"), driesBy("FeC2O4·2H2O", 100, "usual limit of the bench"), driesBy("CaC2O4·H2O", 80, "heat changes it from 100 °C on"), driesBy("CaCO3", 110, "usual limit of the bench"), driesBy("KNO3", 110, "usual limit of the bench"), driesBy("KCl", 110, "usual limit of the bench"), driesBy("NaCl", 110, "usual limit of the bench"), driesBy("BaCO3", 110, "usual limit of the bench"), driesBy("SrCO3", 110, "usual limit of the bench"), driesBy("Na2CO3", 110, "usual limit of the bench"), driesBy("BaSO4", 110, "usual limit of the bench"), driesBy("NH4HCO3", 25, "it changes near room temperature: dry in air"),
  ...["ZnCl2", "CaCl2", "CuCl2", "FeCl3", "MnCl2", "MgCl2", "K2CO3", "NaOH", "KOH", "CaCl2·2H2O", "FeCl3·6H2O", "MgCl2·6H2O"].map((formula) => deliquesces(formula, true)), ...["NaCl", "CuSO4·5H2O", "Na2CO3", "KNO3", "BaCl2·2H2O"].map((formula) => deliquesces(formula, false)),
  // -- steps of the work
  step("weighing", ZINC, /goggles and gloves.*tray/), step("weighing", BLUE, /weigh it quickly/), step("weighing", AMMINE, /open it cold/), step("weighing", CHALK, /./, /goggles and gloves on before the bottle/), step("dissolving", ZINC, /acid goes into the water.*never water into the acid/), step("mixing", ZINC, /let it cool before anything goes in/), step("mixing", THIN, /no flame/, /let it cool before/), step("dissolving", BLUE, /never water onto it/), step("dissolving", BLUE, /the water warms as it dissolves/), step("mixing", ZINC, /mixing gives heat/),
  step("mixing", VITRIOL, /open vessel, never stoppered/), step("mixing", VITRIOL, /the gas burns: no flame/), step("mixing", VITRIOL, /never the acid onto the solid/, /poisonous/), step("mixing", CHALK, /^/, /gas is given off|no flame/), step("mixing", AMMINE, /smells of ammonia/), step("isolating", AMMINE, /filter it cold/), step("isolating", AMMINE, /very flammable/), step("drying", AMMINE, /not in an oven/), step("isolating", ZINC, /never boil it dry/), step("drying", VITRIOL, /below the drying limit/), step("drying", LIME, /without raising dust/),
  step("heating", LIME, /tongs/, /poisonous|the gas burns/), step("heating", LIME, /never in a closed vessel/), step("heating", BURNT, /poisonous: under a hood/), step("heating", BURNT, /nothing that burns near/), step("waste", SOUR, /soda foams/), step("waste", carbonate("CoCl2·6H2O", "Co", "2 NaCl"), /metals are dissolved/), step("mixing", MALACHITE, /never stoppered/),
  step("ignition test", request("K4[Fe(CN)6] + 3 H2O -> K4[Fe(CN)6]·3H2O", "K4[Fe(CN)6]·3H2O", "K4[Fe(CN)6]"), /cyanides must not be ignited/), step("ignition test", request("NiCO3 + 2 HNO3 + 5 H2O -> Ni(NO3)2·6H2O + CO2", "Ni(NO3)2·6H2O", "NiCO3 + HNO3 @ 30"), /brown nitrogen oxides/), step("ignition test", request("4 CuSO4 + 6 NaOH -> Cu4(OH)6SO4 + 3 Na2SO4", "Cu4(OH)6SO4", "CuSO4·5H2O + NaOH"), /sulfur oxides are given off/), step("ignition test", AMMINE, /ammonia is given off/), step("ignition test", MALACHITE, /grains are thrown out/, /cyanide|ammonia/), step("ignition test", request("FeSO4 + Na2C2O4 + 2 H2O -> FeC2O4·2H2O + Na2SO4", "FeC2O4·2H2O", "FeSO4·7H2O + Na2C2O4"), /carbon monoxide/),
  step("mixing", WARM, /boil over: small portions/), step("mixing", BROWN, /try a spoonful first/), step("mixing", BROWN, /only way out is the tube to the trap, which is never closed/), step("mixing", BROWN, /poisonous: under a hood that works/), step("mixing", BUBBLES, /start late and then run fast/), step("mixing", BUBBLES, /oxygen is given off: nothing that burns/), step("heating", OXALATE, /the gas burns: no open flame/), step("heating", VANADATE, /ammonia is given off: under a hood/), step("isolating", SALTPETRE, /decomposes violently when it is heated dry/), step("drying", SALTPETRE, /never in an oven/), step("ignition test", MALACHITE, /open crucible, tongs/),
  // -- metals in the waste
  wasteMetal(carbonate("CoCl2·6H2O", "Co", "2 NaCl"), "Co", /^9\.5 to 10$/, "Na2CO3"), wasteMetal(carbonate("NiCl2·6H2O", "Ni", "2 NaCl"), "Ni", /^10 to 10\.5$/, "Na2CO3"), wasteMetal(carbonate("MnCl2·4H2O", "Mn", "2 NaCl"), "Mn", /^10/, "Na2CO3"), wasteMetal(carbonate("ZnCl2", "Zn", "2 NaCl"), "Zn", /^9 to 9\.5$/, "Na2CO3"), wasteMetal(carbonate("Pb(NO3)2", "Pb", "2 NaNO3"), "Pb", /^9 to 9\.5/, "Na2CO3"), wasteMetal(carbonate("CdCl2", "Cd", "2 NaCl"), "Cd", /^9\.5 to 10$/, "Na2CO3"), wasteMetal(carbonate("BaCl2·2H2O", "Ba", "2 NaCl"), "Ba", /sulfate/, "Na2SO4"), wasteMetal(request("2 CuSO4 + 2 Na2CO3 + H2O -> Cu2(OH)2CO3 + 2 Na2SO4 + CO2", "Cu2(OH)2CO3", "CuSO4·5H2O x 20 + Na2CO3"), "Cu", /^8 to 9\.5$/, "Na2CO3"), wasteMetal(request("FeSO4 + Na2C2O4 + 2 H2O -> FeC2O4·2H2O + Na2SO4", "FeC2O4·2H2O", "FeSO4·7H2O x 20 + Na2C2O4"), "Fe", /^4 to 7 as Fe\(III\)/, "Na2CO3"), wasteMetal(request("AlCl3 + 3 NaOH -> Al(OH)3 + 3 NaCl", "Al(OH)3", "AlCl3·6H2O x 20 + NaOH"), "Al", /^6 to 7$/, "Na2CO3"), wasteMetal(request("CrCl3 + 3 NaOH -> Cr(OH)3 + 3 NaCl", "Cr(OH)3", "CrCl3·6H2O x 20 + NaOH"), "Cr", /^8 to 9 as Cr\(III\)/, "Na2CO3"), wasteMetal(request("Bi(NO3)3 + 3 NaOH -> Bi(OH)3 + 3 NaNO3", "Bi(OH)3", "Bi(NO3)3·5H2O x 20 + NaOH"), "Bi", /^4 to 8$/, "Na2CO3"), wasteMetal(request("SnCl2 + 2 NaOH -> Sn(OH)2 + 2 NaCl", "Sn(OH)2", "SnCl2·2H2O x 20 + NaOH"), "Sn", /^4 to 8$/, "Na2CO3"), wasteMetal(request("AgNO3 + NaI -> AgI + NaNO3", "AgI", "AgNO3 x 20 + NaI"), "Ag", /chloride/, "NaCl"),
];
