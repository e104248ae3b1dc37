// Cumulative stability constants: log beta of M + n L = ML(n) (with H+ where a step says so), at 25 °C and zero ionic
// strength unless the step states otherwise. Ethylenediamine is written C2H8N2, EDTA(4-) C10H12N2O8-4.
import { once } from "../../foundation/memo";
import type { SourceKey } from "./sources";

/** One complex of the pair. */
export interface ComplexStep {
  /** Ligands bound to one metal ion. */
  readonly n: number;
  readonly complex: string;
  readonly logBeta: string;
  readonly source: SourceKey;
  /** mol/L; absent means zero; "unknown" means the source does not say. */
  readonly ionicStrength?: string;
  /** Absent means 25 °C. */
  readonly celsius?: number;
  readonly range?: readonly [low: string, high: string];
  /** Sources spread over one unit, or memory. */
  readonly doubtful?: true;
  /** Protons bound with the ligand. */
  readonly protons?: number;
}

/** One metal ion with one ligand. */
export interface ComplexRow {
  readonly metal: string;
  readonly ligand: string;
  readonly name: string;
  readonly steps: readonly ComplexStep[];
}

export const COMPLEXES = /* @__PURE__ */ once((): readonly ComplexRow[] => [
  { metal: "Mg^2+", ligand: "NH3", name: "ammonia", steps: [
    { n: 1, complex: "Mg(NH3)^2+", logBeta: "0.10", source: "andraEquilibria" },
    { n: 2, complex: "Mg(NH3)2^2+", logBeta: "0.00", source: "andraEquilibria" },
    { n: 3, complex: "Mg(NH3)3^2+", logBeta: "-0.30", source: "andraEquilibria" },
    { n: 4, complex: "Mg(NH3)4^2+", logBeta: "-1.00", source: "andraEquilibria" },
  ] },
  { metal: "Ca^2+", ligand: "NH3", name: "ammonia", steps: [
    { n: 1, complex: "Ca(NH3)^2+", logBeta: "0.10", source: "epaEquilibria", ionicStrength: "0.5", range: ["-0.10", "0.10"] },
    { n: 2, complex: "Ca(NH3)2^2+", logBeta: "-0.30", source: "epaEquilibria", ionicStrength: "0.5", range: ["-0.70", "-0.30"] },
    { n: 3, complex: "Ca(NH3)3^2+", logBeta: "-1.50", source: "andraEquilibria" },
    { n: 4, complex: "Ca(NH3)4^2+", logBeta: "-2.60", source: "andraEquilibria" },
  ] },
  { metal: "Sr^2+", ligand: "NH3", name: "ammonia", steps: [{ n: 1, complex: "Sr(NH3)^2+", logBeta: "-0.10", source: "epaEquilibria", ionicStrength: "0.5", range: ["-0.55", "-0.10"] }] },
  { metal: "Ba^2+", ligand: "NH3", name: "ammonia", steps: [{ n: 1, complex: "Ba(NH3)^2+", logBeta: "-0.20", source: "epaEquilibria", ionicStrength: "0.5" }] },
  { metal: "Mn^2+", ligand: "NH3", name: "ammonia", steps: [{ n: 1, complex: "Mn(NH3)^2+", logBeta: "0.70", source: "andraEquilibria" }, { n: 2, complex: "Mn(NH3)2^2+", logBeta: "1.20", source: "andraEquilibria" }] },
  { metal: "Fe^2+", ligand: "NH3", name: "ammonia", steps: [
    { n: 1, complex: "Fe(NH3)^2+", logBeta: "1.30", source: "andraEquilibria" },
    { n: 2, complex: "Fe(NH3)2^2+", logBeta: "2.10", source: "andraEquilibria" },
    { n: 4, complex: "Fe(NH3)4^2+", logBeta: "3.60", source: "andraEquilibria" },
  ] },
  { metal: "Co^2+", ligand: "NH3", name: "ammonia", steps: [
    { n: 1, complex: "Co(NH3)^2+", logBeta: "2.08", source: "epaEquilibria", ionicStrength: "0.1", range: ["2.01", "2.08"] },
    { n: 2, complex: "Co(NH3)2^2+", logBeta: "3.71", source: "epaEquilibria", ionicStrength: "2", range: ["3.52", "3.71"] },
    { n: 3, complex: "Co(NH3)3^2+", logBeta: "4.81", source: "epaEquilibria", ionicStrength: "2", range: ["4.43", "4.81"] },
    { n: 4, complex: "Co(NH3)4^2+", logBeta: "5.53", source: "epaEquilibria", ionicStrength: "2", celsius: 30, range: ["5.06", "5.53"] },
    { n: 5, complex: "Co(NH3)5^2+", logBeta: "5.75", source: "epaEquilibria", ionicStrength: "2", celsius: 30 },
    { n: 6, complex: "Co(NH3)6^2+", logBeta: "5.11", source: "openStax2e", ionicStrength: "unknown" },
  ] },
  { metal: "Co^3+", ligand: "NH3", name: "ammonia", steps: [{ n: 6, complex: "Co(NH3)6^3+", logBeta: "33.36", source: "openStax2e", ionicStrength: "unknown", range: ["23.13", "33.36"], doubtful: true }] },
  { metal: "Ni^2+", ligand: "NH3", name: "ammonia", steps: [
    { n: 1, complex: "Ni(NH3)^2+", logBeta: "2.73", source: "epaEquilibria", ionicStrength: "0.1", range: ["2.61", "2.73"] },
    { n: 2, complex: "Ni(NH3)2^2+", logBeta: "4.89", source: "epaEquilibria", ionicStrength: "0.1", range: ["4.76", "5.13"] },
    { n: 3, complex: "Ni(NH3)3^2+", logBeta: "6.79", source: "andraEquilibria" },
    { n: 4, complex: "Ni(NH3)4^2+", logBeta: "8.34", source: "andraEquilibria" },
    { n: 6, complex: "Ni(NH3)6^2+", logBeta: "8.95", source: "nbs1982", range: ["8.30", "8.95"] },
  ] },
  { metal: "Cu^2+", ligand: "NH3", name: "ammonia", steps: [
    { n: 1, complex: "Cu(NH3)^2+", logBeta: "4.01", source: "epaEquilibria", range: ["4.01", "4.10"] },
    { n: 2, complex: "Cu(NH3)2^2+", logBeta: "7.51", source: "nbs1982", range: ["7.45", "7.51"] },
    { n: 3, complex: "Cu(NH3)3^2+", logBeta: "10.33", source: "nbs1982", range: ["10.27", "10.33"] },
    { n: 4, complex: "Cu(NH3)4^2+", logBeta: "12.36", source: "nbs1982", range: ["12.35", "13.23"] },
    { n: 5, complex: "Cu(NH3)5^2+", logBeta: "11.76", source: "nbs1982" },
  ] },
  { metal: "Zn^2+", ligand: "NH3", name: "ammonia", steps: [
    { n: 1, complex: "Zn(NH3)^2+", logBeta: "2.13", source: "nbs1982", range: ["2.05", "2.13"] },
    { n: 2, complex: "Zn(NH3)2^2+", logBeta: "4.37", source: "nbs1982", range: ["4.26", "4.37"] },
    { n: 3, complex: "Zn(NH3)3^2+", logBeta: "6.61", source: "nbs1982", range: ["6.47", "6.61"] },
    { n: 4, complex: "Zn(NH3)4^2+", logBeta: "8.56", source: "nbs1982", range: ["8.37", "9.46"], doubtful: true },
  ] },
  { metal: "Ag+", ligand: "NH3", name: "ammonia", steps: [
    { n: 1, complex: "Ag(NH3)+", logBeta: "3.31", source: "epaEquilibria", range: ["3.31", "3.32"] },
    { n: 2, complex: "Ag(NH3)2+", logBeta: "7.22", source: "epaEquilibria", range: ["7.22", "7.23"] },
  ] },
  { metal: "Cd^2+", ligand: "NH3", name: "ammonia", steps: [
    { n: 1, complex: "Cd(NH3)^2+", logBeta: "2.52", source: "andraEquilibria", range: ["2.52", "2.57"] },
    { n: 2, complex: "Cd(NH3)2^2+", logBeta: "4.87", source: "andraEquilibria", range: ["4.87", "4.96"] },
    { n: 3, complex: "Cd(NH3)3^2+", logBeta: "5.93", source: "andraEquilibria" },
    { n: 4, complex: "Cd(NH3)4^2+", logBeta: "7.30", source: "andraEquilibria", range: ["7.11", "7.44"] },
  ] },
  { metal: "Hg^2+", ligand: "NH3", name: "ammonia", steps: [
    { n: 1, complex: "Hg(NH3)^2+", logBeta: "8.80", source: "epaEquilibria", ionicStrength: "2", celsius: 22 },
    { n: 2, complex: "Hg(NH3)2^2+", logBeta: "17.80", source: "epaEquilibria", ionicStrength: "1", range: ["17.66", "17.80"] },
    { n: 3, complex: "Hg(NH3)3^2+", logBeta: "18.40", source: "epaEquilibria", ionicStrength: "2", range: ["18.40", "18.66"] },
    { n: 4, complex: "Hg(NH3)4^2+", logBeta: "19.30", source: "epaEquilibria", ionicStrength: "0.1", range: ["19.29", "19.30"] },
  ] },
  { metal: "Cr^3+", ligand: "NH3", name: "ammonia", steps: [{ n: 6, complex: "Cr(NH3)6^3+", logBeta: "13.00", source: "epaEquilibria", ionicStrength: "4.5" }] },
  { metal: "Mg^2+", ligand: "OH-", name: "hydroxide", steps: [{ n: 1, complex: "MgOH+", logBeta: "2.60", source: "epaEquilibria", range: ["2.32", "2.60"] }] },
  { metal: "Ca^2+", ligand: "OH-", name: "hydroxide", steps: [{ n: 1, complex: "CaOH+", logBeta: "1.30", source: "epaEquilibria", range: ["1.15", "1.33"] }] },
  { metal: "Sr^2+", ligand: "OH-", name: "hydroxide", steps: [{ n: 1, complex: "SrOH+", logBeta: "0.82", source: "epaEquilibria", range: ["0.71", "0.82"] }] },
  { metal: "Ba^2+", ligand: "OH-", name: "hydroxide", steps: [{ n: 1, complex: "BaOH+", logBeta: "0.64", source: "epaEquilibria", range: ["0.51", "2.19"], doubtful: true }] },
  { metal: "Mn^2+", ligand: "OH-", name: "hydroxide", steps: [
    { n: 1, complex: "MnOH+", logBeta: "3.40", source: "epaEquilibria", range: ["3.39", "3.44"] },
    { n: 2, complex: "Mn(OH)2", logBeta: "5.80", source: "andraEquilibria", range: ["5.79", "5.81"] },
    { n: 3, complex: "Mn(OH)3-", logBeta: "7.19", source: "epaEquilibria", range: ["7.19", "7.77"] },
    { n: 4, complex: "Mn(OH)4^2-", logBeta: "7.70", source: "epaEquilibria", range: ["7.68", "7.73"] },
  ] },
  { metal: "Fe^2+", ligand: "OH-", name: "hydroxide", steps: [
    { n: 1, complex: "FeOH+", logBeta: "4.60", source: "epaEquilibria", range: ["4.50", "7.23"], doubtful: true },
    { n: 2, complex: "Fe(OH)2", logBeta: "7.50", source: "epaEquilibria", range: ["7.16", "7.50"] },
    { n: 3, complex: "Fe(OH)3-", logBeta: "10.99", source: "livermoreEquilibria", range: ["8.16", "13.00"], doubtful: true },
    { n: 4, complex: "Fe(OH)4^2-", logBeta: "9.68", source: "andraEquilibria", range: ["9.68", "10.83"], doubtful: true },
  ] },
  { metal: "Fe^3+", ligand: "OH-", name: "hydroxide", steps: [
    { n: 1, complex: "FeOH^2+", logBeta: "11.81", source: "epaEquilibria", range: ["11.81", "11.85"] },
    { n: 2, complex: "Fe(OH)2+", logBeta: "23.40", source: "epaEquilibria", range: ["20.81", "23.40"], doubtful: true },
    { n: 3, complex: "Fe(OH)3", logBeta: "29.43", source: "epaEquilibria", range: ["27.70", "32.04"], doubtful: true },
    { n: 4, complex: "Fe(OH)4-", logBeta: "34.40", source: "epaEquilibria", range: ["34.38", "34.40"] },
  ] },
  { metal: "Co^2+", ligand: "OH-", name: "hydroxide", steps: [
    { n: 1, complex: "CoOH+", logBeta: "4.30", source: "epaEquilibria", range: ["4.30", "4.77"] },
    { n: 2, complex: "Co(OH)2", logBeta: "9.20", source: "epaEquilibria", range: ["9.19", "9.40"] },
    { n: 3, complex: "Co(OH)3-", logBeta: "10.50", source: "epaEquilibria", range: ["9.90", "20.74"], doubtful: true },
    { n: 4, complex: "Co(OH)4^2-", logBeta: "9.70", source: "epaEquilibria", range: ["9.58", "10.20"] },
  ] },
  { metal: "Co^3+", ligand: "OH-", name: "hydroxide", steps: [{ n: 1, complex: "CoOH^2+", logBeta: "12.71", source: "epaEquilibria", ionicStrength: "3" }] },
  { metal: "Ni^2+", ligand: "OH-", name: "hydroxide", steps: [
    { n: 1, complex: "NiOH+", logBeta: "4.10", source: "epaEquilibria", range: ["4.10", "4.50"] },
    { n: 2, complex: "Ni(OH)2", logBeta: "9.00", source: "epaEquilibria", range: ["8.00", "10.00"], doubtful: true },
    { n: 3, complex: "Ni(OH)3-", logBeta: "12.00", source: "epaEquilibria", range: ["10.50", "12.00"], doubtful: true },
  ] },
  { metal: "Cu^2+", ligand: "OH-", name: "hydroxide", steps: [
    { n: 1, complex: "CuOH+", logBeta: "6.50", source: "epaEquilibria", range: ["6.00", "6.71"] },
    { n: 2, complex: "Cu(OH)2", logBeta: "11.80", source: "epaEquilibria", range: ["11.77", "14.32"], doubtful: true },
    { n: 3, complex: "Cu(OH)3-", logBeta: "15.11", source: "epaEquilibria", ionicStrength: "1", range: ["15.10", "15.40"] },
    { n: 4, complex: "Cu(OH)4^2-", logBeta: "16.01", source: "epaEquilibria", ionicStrength: "1", range: ["16.01", "16.53"] },
  ] },
  { metal: "Cu+", ligand: "OH-", name: "hydroxide", steps: [
    { n: 1, complex: "CuOH", logBeta: "6.32", source: "andraEquilibria", range: ["2.45", "6.32"], doubtful: true },
    { n: 2, complex: "Cu(OH)2-", logBeta: "9.80", source: "andraEquilibria", range: ["9.80", "11.82"], doubtful: true },
  ] },
  { metal: "Zn^2+", ligand: "OH-", name: "hydroxide", steps: [
    { n: 1, complex: "ZnOH+", logBeta: "5.00", source: "epaEquilibria", range: ["4.52", "5.33"] },
    { n: 2, complex: "Zn(OH)2", logBeta: "10.20", source: "epaEquilibria", range: ["8.83", "11.10"], doubtful: true },
    { n: 3, complex: "Zn(OH)3-", logBeta: "13.90", source: "epaEquilibria", range: ["13.15", "13.90"] },
    { n: 4, complex: "Zn(OH)4^2-", logBeta: "15.50", source: "epaEquilibria", range: ["14.38", "15.50"], doubtful: true },
  ] },
  { metal: "Ag+", ligand: "OH-", name: "hydroxide", steps: [
    { n: 1, complex: "AgOH", logBeta: "2.00", source: "epaEquilibria", range: ["2.00", "2.10"] },
    { n: 2, complex: "Ag(OH)2-", logBeta: "3.99", source: "epaEquilibria", range: ["3.79", "4.00"] },
  ] },
  { metal: "Cd^2+", ligand: "OH-", name: "hydroxide", steps: [
    { n: 1, complex: "CdOH+", logBeta: "3.90", source: "epaEquilibria", range: ["3.90", "4.60"] },
    { n: 2, complex: "Cd(OH)2", logBeta: "7.70", source: "epaEquilibria", range: ["7.10", "8.85"], doubtful: true },
    { n: 3, complex: "Cd(OH)3-", logBeta: "9.49", source: "epaEquilibria", ionicStrength: "3", range: ["8.70", "9.49"] },
    { n: 4, complex: "Cd(OH)4^2-", logBeta: "8.70", source: "epaEquilibria", range: ["8.52", "9.08"] },
  ] },
  { metal: "Hg^2+", ligand: "OH-", name: "hydroxide", steps: [
    { n: 1, complex: "HgOH+", logBeta: "10.60", source: "epaEquilibria", range: ["10.42", "10.60"] },
    { n: 2, complex: "Hg(OH)2", logBeta: "22.02", source: "andraEquilibria", range: ["21.85", "22.02"] },
    { n: 3, complex: "Hg(OH)3-", logBeta: "20.90", source: "epaEquilibria" },
  ] },
  { metal: "Pb^2+", ligand: "OH-", name: "hydroxide", steps: [
    { n: 1, complex: "PbOH+", logBeta: "6.40", source: "epaEquilibria", range: ["6.29", "7.82"], doubtful: true },
    { n: 2, complex: "Pb(OH)2", logBeta: "10.90", source: "epaEquilibria", range: ["10.88", "11.05"] },
    { n: 3, complex: "Pb(OH)3-", logBeta: "13.90", source: "epaEquilibria", range: ["13.90", "14.80"] },
    { n: 4, complex: "Pb(OH)4^2-", logBeta: "16.29", source: "epaEquilibria", range: ["16.29", "17.10"] },
  ] },
  { metal: "Sn^2+", ligand: "OH-", name: "hydroxide", steps: [
    { n: 1, complex: "SnOH+", logBeta: "10.60", source: "epaEquilibria", range: ["10.01", "12.33"], doubtful: true },
    { n: 2, complex: "Sn(OH)2", logBeta: "20.32", source: "andraEquilibria", range: ["20.08", "20.93"] },
    { n: 3, complex: "Sn(OH)3-", logBeta: "25.40", source: "epaEquilibria", range: ["24.58", "25.96"], doubtful: true },
  ] },
  { metal: "Al^3+", ligand: "OH-", name: "hydroxide", steps: [
    { n: 1, complex: "AlOH^2+", logBeta: "9.00", source: "epaEquilibria", range: ["9.00", "9.08"] },
    { n: 2, complex: "Al(OH)2+", logBeta: "17.90", source: "epaEquilibria", range: ["17.40", "17.90"] },
    { n: 3, complex: "Al(OH)3", logBeta: "25.20", source: "epaEquilibria", range: ["25.10", "25.58"] },
    { n: 4, complex: "Al(OH)4-", logBeta: "33.30", source: "epaEquilibria", range: ["33.10", "33.52"] },
  ] },
  { metal: "Cr^3+", ligand: "OH-", name: "hydroxide", steps: [
    { n: 1, complex: "CrOH^2+", logBeta: "10.34", source: "epaEquilibria", range: ["10.00", "10.58"] },
    { n: 2, complex: "Cr(OH)2+", logBeta: "19.10", source: "andraEquilibria", range: ["18.16", "19.10"] },
    { n: 3, complex: "Cr(OH)3", logBeta: "24.00", source: "epaEquilibria", range: ["23.99", "27.66"], doubtful: true },
    { n: 4, complex: "Cr(OH)4-", logBeta: "28.60", source: "epaEquilibria", range: ["28.36", "30.14"], doubtful: true },
  ] },
  { metal: "Mg^2+", ligand: "Cl-", name: "chloride", steps: [{ n: 1, complex: "MgCl+", logBeta: "0.35", source: "andraEquilibria", range: ["-0.13", "0.35"] }] },
  { metal: "Ca^2+", ligand: "Cl-", name: "chloride", steps: [
    { n: 1, complex: "CaCl+", logBeta: "-0.29", source: "brgmEquilibria", range: ["-0.70", "-0.29"] },
    { n: 2, complex: "CaCl2", logBeta: "-0.64", source: "brgmEquilibria" },
  ] },
  { metal: "Sr^2+", ligand: "Cl-", name: "chloride", steps: [{ n: 1, complex: "SrCl+", logBeta: "0.23", source: "andraEquilibria", range: ["-0.25", "0.23"] }] },
  { metal: "Ba^2+", ligand: "Cl-", name: "chloride", steps: [{ n: 1, complex: "BaCl+", logBeta: "-0.48", source: "brgmEquilibria", range: ["-0.50", "-0.48"] }] },
  { metal: "Mn^2+", ligand: "Cl-", name: "chloride", steps: [
    { n: 1, complex: "MnCl+", logBeta: "0.10", source: "epaEquilibria", celsius: 20, range: ["-0.13", "0.61"] },
    { n: 2, complex: "MnCl2", logBeta: "0.25", source: "epaEquilibria" },
    { n: 3, complex: "MnCl3-", logBeta: "-0.31", source: "epaEquilibria", range: ["-0.33", "-0.31"] },
  ] },
  { metal: "Fe^2+", ligand: "Cl-", name: "chloride", steps: [
    { n: 1, complex: "FeCl+", logBeta: "-0.16", source: "brgmEquilibria", range: ["-0.16", "1.00"], doubtful: true },
    { n: 2, complex: "FeCl2", logBeta: "-2.45", source: "livermoreEquilibria", range: ["-10.91", "-1.74"], doubtful: true },
    { n: 4, complex: "FeCl4^2-", logBeta: "-1.90", source: "livermoreEquilibria" },
  ] },
  { metal: "Fe^3+", ligand: "Cl-", name: "chloride", steps: [
    { n: 1, complex: "FeCl^2+", logBeta: "1.48", source: "epaEquilibria", range: ["-0.81", "1.52"], doubtful: true },
    { n: 2, complex: "FeCl2+", logBeta: "2.13", source: "epaEquilibria", range: ["0.70", "2.22"], doubtful: true },
    { n: 3, complex: "FeCl3", logBeta: "1.13", source: "epaEquilibria", range: ["1.02", "1.13"] },
    { n: 4, complex: "FeCl4-", logBeta: "-0.98", source: "andraEquilibria", range: ["-0.98", "-0.79"] },
  ] },
  { metal: "Co^2+", ligand: "Cl-", name: "chloride", steps: [
    { n: 1, complex: "CoCl+", logBeta: "0.54", source: "epaEquilibria", ionicStrength: "0.5", range: ["0.15", "0.57"] },
    { n: 2, complex: "CoCl2", logBeta: "0.02", source: "andraEquilibria" },
    { n: 3, complex: "CoCl3-", logBeta: "-1.71", source: "andraEquilibria" },
    { n: 4, complex: "CoCl4^2-", logBeta: "-2.09", source: "andraEquilibria" },
  ] },
  { metal: "Co^3+", ligand: "Cl-", name: "chloride", steps: [{ n: 1, complex: "CoCl^2+", logBeta: "2.31", source: "epaEquilibria", ionicStrength: "0.5" }] },
  { metal: "Ni^2+", ligand: "Cl-", name: "chloride", steps: [
    { n: 1, complex: "NiCl+", logBeta: "0.41", source: "epaEquilibria", ionicStrength: "1", range: ["-1.00", "0.41"], doubtful: true },
    { n: 2, complex: "NiCl2", logBeta: "-1.89", source: "epaEquilibria", range: ["-1.89", "0.96"], doubtful: true },
  ] },
  { metal: "Cu^2+", ligand: "Cl-", name: "chloride", steps: [
    { n: 1, complex: "CuCl+", logBeta: "0.20", source: "epaEquilibria", range: ["0.20", "0.83"] },
    { n: 2, complex: "CuCl2", logBeta: "-0.26", source: "epaEquilibria", range: ["-0.26", "0.60"] },
    { n: 3, complex: "CuCl3-", logBeta: "-2.29", source: "epaEquilibria", range: ["-2.29", "-1.28"], doubtful: true },
    { n: 4, complex: "CuCl4^2-", logBeta: "-4.59", source: "epaEquilibria", range: ["-4.59", "-3.98"] },
  ] },
  { metal: "Cu+", ligand: "Cl-", name: "chloride", steps: [
    { n: 1, complex: "CuCl", logBeta: "3.10", source: "epaEquilibria", range: ["3.10", "3.60"] },
    { n: 2, complex: "CuCl2-", logBeta: "5.42", source: "epaEquilibria", range: ["4.81", "5.68"] },
    { n: 3, complex: "CuCl3^2-", logBeta: "4.75", source: "epaEquilibria", range: ["4.59", "5.70"], doubtful: true },
  ] },
  { metal: "Zn^2+", ligand: "Cl-", name: "chloride", steps: [
    { n: 1, complex: "ZnCl+", logBeta: "0.40", source: "epaEquilibria", range: ["-0.52", "0.43"] },
    { n: 2, complex: "ZnCl2", logBeta: "0.60", source: "epaEquilibria", range: ["-1.02", "0.60"], doubtful: true },
    { n: 3, complex: "ZnCl3-", logBeta: "0.50", source: "epaEquilibria", range: ["-0.04", "0.54"] },
    { n: 4, complex: "ZnCl4^2-", logBeta: "0.20", source: "epaEquilibria", range: ["-1.05", "0.86"], doubtful: true },
  ] },
  { metal: "Ag+", ligand: "Cl-", name: "chloride", steps: [
    { n: 1, complex: "AgCl", logBeta: "3.31", source: "epaEquilibria", range: ["3.27", "3.31"] },
    { n: 2, complex: "AgCl2-", logBeta: "5.25", source: "epaEquilibria", range: ["5.17", "5.30"] },
    { n: 3, complex: "AgCl3^2-", logBeta: "5.20", source: "epaEquilibria", range: ["5.13", "5.29"] },
    { n: 4, complex: "AgCl4^3-", logBeta: "5.51", source: "epaEquilibria", range: ["3.81", "5.51"], doubtful: true },
  ] },
  { metal: "Cd^2+", ligand: "Cl-", name: "chloride", steps: [
    { n: 1, complex: "CdCl+", logBeta: "1.98", source: "epaEquilibria", range: ["1.97", "2.72"] },
    { n: 2, complex: "CdCl2", logBeta: "2.60", source: "epaEquilibria", range: ["2.59", "3.37"] },
    { n: 3, complex: "CdCl3-", logBeta: "2.40", source: "epaEquilibria", range: ["2.40", "2.75"] },
    { n: 4, complex: "CdCl4^2-", logBeta: "1.47", source: "andraEquilibria" },
  ] },
  { metal: "Hg^2+", ligand: "Cl-", name: "chloride", steps: [
    { n: 1, complex: "HgCl+", logBeta: "7.30", source: "epaEquilibria", range: ["6.76", "7.31"] },
    { n: 2, complex: "HgCl2", logBeta: "14.00", source: "epaEquilibria", range: ["13.16", "14.00"] },
    { n: 3, complex: "HgCl3-", logBeta: "15.00", source: "epaEquilibria", range: ["13.98", "15.06"], doubtful: true },
    { n: 4, complex: "HgCl4^2-", logBeta: "15.60", source: "epaEquilibria", range: ["15.12", "16.04"] },
  ] },
  { metal: "Pb^2+", ligand: "Cl-", name: "chloride", steps: [
    { n: 1, complex: "PbCl+", logBeta: "1.55", source: "epaEquilibria", range: ["1.44", "1.60"] },
    { n: 2, complex: "PbCl2", logBeta: "2.20", source: "epaEquilibria", range: ["1.80", "2.20"] },
    { n: 3, complex: "PbCl3-", logBeta: "1.80", source: "epaEquilibria", range: ["1.43", "1.80"] },
    { n: 4, complex: "PbCl4^2-", logBeta: "1.46", source: "epaEquilibria", range: ["1.38", "1.49"] },
  ] },
  { metal: "Sn^2+", ligand: "Cl-", name: "chloride", steps: [
    { n: 1, complex: "SnCl+", logBeta: "1.64", source: "epaEquilibria", range: ["1.05", "1.64"] },
    { n: 2, complex: "SnCl2", logBeta: "2.43", source: "epaEquilibria", range: ["1.71", "2.43"] },
    { n: 3, complex: "SnCl3-", logBeta: "1.26", source: "epaEquilibria", ionicStrength: "2", range: ["1.26", "2.13"] },
    { n: 4, complex: "SnCl4^2-", logBeta: "2.03", source: "andraEquilibria" },
  ] },
  { metal: "Cr^3+", ligand: "Cl-", name: "chloride", steps: [
    { n: 1, complex: "CrCl^2+", logBeta: "0.11", source: "epaEquilibria", ionicStrength: "1", range: ["-0.15", "0.62"] },
    { n: 2, complex: "CrCl2+", logBeta: "-0.91", source: "epaEquilibria", range: ["-0.91", "0.16"], doubtful: true },
  ] },
  { metal: "Fe^2+", ligand: "CN-", name: "cyanide", steps: [{ n: 6, complex: "Fe(CN)6^4-", logBeta: "35.40", source: "epaEquilibria", range: ["35.18", "45.62"], doubtful: true }] },
  { metal: "Fe^3+", ligand: "CN-", name: "cyanide", steps: [{ n: 6, complex: "Fe(CN)6^3-", logBeta: "43.60", source: "epaEquilibria", range: ["43.30", "52.61"], doubtful: true }] },
  { metal: "Co^2+", ligand: "CN-", name: "cyanide", steps: [
    { n: 3, complex: "Co(CN)3-", logBeta: "14.31", source: "epaEquilibria", ionicStrength: "1" },
    { n: 5, complex: "Co(CN)5^3-", logBeta: "23.00", source: "epaEquilibria", ionicStrength: "1" },
  ] },
  { metal: "Ni^2+", ligand: "CN-", name: "cyanide", steps: [
    { n: 4, complex: "Ni(CN)4^2-", logBeta: "30.20", source: "epaEquilibria", range: ["30.12", "34.08"], doubtful: true },
    { n: 5, complex: "Ni(CN)5^3-", logBeta: "33.34", source: "brgmEquilibria" },
  ] },
  { metal: "Cu+", ligand: "CN-", name: "cyanide", steps: [
    { n: 2, complex: "Cu(CN)2-", logBeta: "21.91", source: "epaEquilibria", ionicStrength: "0.1", range: ["16.00", "24.00"], doubtful: true },
    { n: 3, complex: "Cu(CN)3^2-", logBeta: "27.21", source: "epaEquilibria", range: ["27.21", "28.62"], doubtful: true },
    { n: 4, complex: "Cu(CN)4^3-", logBeta: "28.71", source: "epaEquilibria", range: ["28.71", "30.30"], doubtful: true },
  ] },
  { metal: "Zn^2+", ligand: "CN-", name: "cyanide", steps: [{ n: 4, complex: "Zn(CN)4^2-", logBeta: "16.76", source: "nbs1982", range: ["16.76", "19.32"], doubtful: true }] },
  { metal: "Ag+", ligand: "CN-", name: "cyanide", steps: [
    { n: 2, complex: "Ag(CN)2-", logBeta: "20.48", source: "epaEquilibria", range: ["20.39", "21.00"] },
    { n: 3, complex: "Ag(CN)3^2-", logBeta: "21.70", source: "epaEquilibria" },
  ] },
  { metal: "Cd^2+", ligand: "CN-", name: "cyanide", steps: [
    { n: 1, complex: "Cd(CN)+", logBeta: "6.01", source: "epaEquilibria", range: ["5.32", "6.01"] },
    { n: 2, complex: "Cd(CN)2", logBeta: "11.12", source: "epaEquilibria", range: ["10.37", "11.12"] },
    { n: 3, complex: "Cd(CN)3-", logBeta: "15.65", source: "epaEquilibria", range: ["14.84", "15.65"] },
    { n: 4, complex: "Cd(CN)4^2-", logBeta: "17.92", source: "epaEquilibria", range: ["17.92", "18.48"] },
  ] },
  { metal: "Hg^2+", ligand: "CN-", name: "cyanide", steps: [
    { n: 1, complex: "Hg(CN)+", logBeta: "17.00", source: "epaEquilibria", range: ["17.00", "18.03"], doubtful: true },
    { n: 2, complex: "Hg(CN)2", logBeta: "32.75", source: "epaEquilibria", range: ["32.75", "34.51"], doubtful: true },
    { n: 3, complex: "Hg(CN)3-", logBeta: "36.31", source: "epaEquilibria", range: ["36.31", "38.26"], doubtful: true },
    { n: 4, complex: "Hg(CN)4^2-", logBeta: "38.97", source: "epaEquilibria", range: ["38.97", "41.26"], doubtful: true },
  ] },
  { metal: "Mg^2+", ligand: "SO4^2-", name: "sulfate", steps: [{ n: 1, complex: "MgSO4", logBeta: "2.26", source: "epaEquilibria", range: ["2.23", "2.41"] }] },
  { metal: "Ca^2+", ligand: "SO4^2-", name: "sulfate", steps: [{ n: 1, complex: "CaSO4", logBeta: "2.36", source: "epaEquilibria", range: ["2.11", "2.36"] }] },
  { metal: "Sr^2+", ligand: "SO4^2-", name: "sulfate", steps: [{ n: 1, complex: "SrSO4", logBeta: "2.30", source: "epaEquilibria", range: ["2.29", "2.30"] }] },
  { metal: "Ba^2+", ligand: "SO4^2-", name: "sulfate", steps: [{ n: 1, complex: "BaSO4", logBeta: "2.70", source: "andraEquilibria" }] },
  { metal: "Mn^2+", ligand: "SO4^2-", name: "sulfate", steps: [{ n: 1, complex: "MnSO4", logBeta: "2.25", source: "epaEquilibria", range: ["1.99", "2.35"] }] },
  { metal: "Fe^2+", ligand: "SO4^2-", name: "sulfate", steps: [{ n: 1, complex: "FeSO4", logBeta: "2.39", source: "epaEquilibria", range: ["2.20", "2.44"] }] },
  { metal: "Fe^3+", ligand: "SO4^2-", name: "sulfate", steps: [
    { n: 1, complex: "Fe(SO4)+", logBeta: "4.05", source: "epaEquilibria", range: ["1.93", "4.25"], doubtful: true },
    { n: 2, complex: "Fe(SO4)2-", logBeta: "5.38", source: "epaEquilibria", range: ["3.21", "6.22"], doubtful: true },
  ] },
  { metal: "Co^2+", ligand: "SO4^2-", name: "sulfate", steps: [{ n: 1, complex: "CoSO4", logBeta: "2.30", source: "epaEquilibria", range: ["0.04", "2.30"], doubtful: true }] },
  { metal: "Ni^2+", ligand: "SO4^2-", name: "sulfate", steps: [
    { n: 1, complex: "NiSO4", logBeta: "2.30", source: "epaEquilibria", range: ["2.13", "2.42"] },
    { n: 2, complex: "Ni(SO4)2^2-", logBeta: "0.82", source: "epaEquilibria", range: ["0.82", "3.01"], doubtful: true },
  ] },
  { metal: "Cu^2+", ligand: "SO4^2-", name: "sulfate", steps: [{ n: 1, complex: "CuSO4", logBeta: "2.36", source: "epaEquilibria", range: ["2.30", "2.36"] }] },
  { metal: "Zn^2+", ligand: "SO4^2-", name: "sulfate", steps: [
    { n: 1, complex: "ZnSO4", logBeta: "2.34", source: "epaEquilibria", range: ["2.31", "2.46"] },
    { n: 2, complex: "Zn(SO4)2^2-", logBeta: "3.28", source: "epaEquilibria" },
  ] },
  { metal: "Ag+", ligand: "SO4^2-", name: "sulfate", steps: [{ n: 1, complex: "Ag(SO4)-", logBeta: "1.30", source: "epaEquilibria", range: ["1.29", "1.38"] }] },
  { metal: "Cd^2+", ligand: "SO4^2-", name: "sulfate", steps: [
    { n: 1, complex: "CdSO4", logBeta: "2.37", source: "epaEquilibria", range: ["0.00", "3.44"], doubtful: true },
    { n: 2, complex: "Cd(SO4)2^2-", logBeta: "3.50", source: "epaEquilibria", range: ["3.44", "3.50"] },
  ] },
  { metal: "Hg^2+", ligand: "SO4^2-", name: "sulfate", steps: [{ n: 1, complex: "HgSO4", logBeta: "2.42", source: "epaEquilibria", ionicStrength: "0.5", range: ["1.41", "2.68"], doubtful: true }] },
  { metal: "Pb^2+", ligand: "SO4^2-", name: "sulfate", steps: [
    { n: 1, complex: "PbSO4", logBeta: "2.69", source: "epaEquilibria", range: ["2.69", "2.82"] },
    { n: 2, complex: "Pb(SO4)2^2-", logBeta: "3.47", source: "epaEquilibria" },
  ] },
  { metal: "Sn^2+", ligand: "SO4^2-", name: "sulfate", steps: [{ n: 1, complex: "SnSO4", logBeta: "3.43", source: "andraEquilibria" }] },
  { metal: "Al^3+", ligand: "SO4^2-", name: "sulfate", steps: [
    { n: 1, complex: "Al(SO4)+", logBeta: "3.89", source: "epaEquilibria", range: ["3.01", "3.89"] },
    { n: 2, complex: "Al(SO4)2-", logBeta: "4.92", source: "epaEquilibria", range: ["4.90", "5.00"] },
  ] },
  { metal: "Cr^3+", ligand: "SO4^2-", name: "sulfate", steps: [{ n: 1, complex: "Cr(SO4)+", logBeta: "3.37", source: "epaEquilibria", ionicStrength: "1", celsius: 50, range: ["3.37", "4.61"], doubtful: true }] },
  { metal: "Mg^2+", ligand: "CO3^2-", name: "carbonate", steps: [{ n: 1, complex: "MgCO3", logBeta: "2.92", source: "epaEquilibria", range: ["2.92", "2.98"] }] },
  { metal: "Ca^2+", ligand: "CO3^2-", name: "carbonate", steps: [{ n: 1, complex: "CaCO3", logBeta: "3.20", source: "epaEquilibria", range: ["3.20", "3.33"] }] },
  { metal: "Sr^2+", ligand: "CO3^2-", name: "carbonate", steps: [{ n: 1, complex: "SrCO3", logBeta: "2.81", source: "epaEquilibria", range: ["2.80", "2.87"] }] },
  { metal: "Ba^2+", ligand: "CO3^2-", name: "carbonate", steps: [{ n: 1, complex: "BaCO3", logBeta: "2.71", source: "epaEquilibria", range: ["2.65", "2.71"] }] },
  { metal: "Mn^2+", ligand: "CO3^2-", name: "carbonate", steps: [{ n: 1, complex: "MnCO3", logBeta: "4.90", source: "usgsEquilibria", range: ["4.52", "6.50"], doubtful: true }] },
  { metal: "Fe^2+", ligand: "CO3^2-", name: "carbonate", steps: [
    { n: 1, complex: "FeCO3", logBeta: "5.27", source: "andraEquilibria", range: ["4.38", "5.27"] },
    { n: 2, complex: "Fe(CO3)2^2-", logBeta: "7.04", source: "andraEquilibria", range: ["6.96", "7.04"] },
  ] },
  { metal: "Fe^3+", ligand: "CO3^2-", name: "carbonate", steps: [
    { n: 1, complex: "Fe(CO3)+", logBeta: "9.72", source: "brgmEquilibria" },
    { n: 2, complex: "Fe(CO3)2-", logBeta: "19.60", source: "brgmEquilibria" },
    { n: 3, complex: "Fe(CO3)3^3-", logBeta: "24.00", source: "andraEquilibria" },
  ] },
  { metal: "Co^2+", ligand: "CO3^2-", name: "carbonate", steps: [{ n: 1, complex: "CoCO3", logBeta: "4.23", source: "epaEquilibria", ionicStrength: "0.5" }] },
  { metal: "Ni^2+", ligand: "CO3^2-", name: "carbonate", steps: [
    { n: 1, complex: "NiCO3", logBeta: "4.57", source: "epaEquilibria", ionicStrength: "0.7", range: ["4.20", "6.87"], doubtful: true },
    { n: 2, complex: "Ni(CO3)2^2-", logBeta: "6.20", source: "andraEquilibria", range: ["6.20", "10.11"], doubtful: true },
  ] },
  { metal: "Cu^2+", ligand: "CO3^2-", name: "carbonate", steps: [
    { n: 1, complex: "CuCO3", logBeta: "6.77", source: "epaEquilibria", range: ["6.73", "6.96"] },
    { n: 2, complex: "Cu(CO3)2^2-", logBeta: "10.20", source: "epaEquilibria", range: ["9.83", "10.30"] },
  ] },
  { metal: "Zn^2+", ligand: "CO3^2-", name: "carbonate", steps: [
    { n: 1, complex: "ZnCO3", logBeta: "4.76", source: "epaEquilibria", range: ["3.90", "5.30"], doubtful: true },
    { n: 2, complex: "Zn(CO3)2^2-", logBeta: "9.63", source: "usgsEquilibria" },
  ] },
  { metal: "Ag+", ligand: "CO3^2-", name: "carbonate", steps: [
    { n: 1, complex: "Ag(CO3)-", logBeta: "2.69", source: "andraEquilibria", range: ["2.69", "2.70"] },
    { n: 2, complex: "Ag(CO3)2^3-", logBeta: "2.16", source: "andraEquilibria", range: ["2.15", "2.18"] },
  ] },
  { metal: "Cd^2+", ligand: "CO3^2-", name: "carbonate", steps: [
    { n: 1, complex: "CdCO3", logBeta: "4.36", source: "epaEquilibria", ionicStrength: "0.1", range: ["2.90", "4.70"], doubtful: true },
    { n: 2, complex: "Cd(CO3)2^2-", logBeta: "7.23", source: "epaEquilibria", ionicStrength: "0.1", celsius: 20, range: ["6.40", "7.23"] },
  ] },
  { metal: "Hg^2+", ligand: "CO3^2-", name: "carbonate", steps: [
    { n: 1, complex: "HgCO3", logBeta: "12.08", source: "epaEquilibria", ionicStrength: "0.5", range: ["11.38", "12.08"] },
    { n: 2, complex: "Hg(CO3)2^2-", logBeta: "15.58", source: "epaEquilibria", ionicStrength: "0.5" },
  ] },
  { metal: "Pb^2+", ligand: "CO3^2-", name: "carbonate", steps: [
    { n: 1, complex: "PbCO3", logBeta: "6.48", source: "epaEquilibria", ionicStrength: "0.5", range: ["6.48", "7.24"] },
    { n: 2, complex: "Pb(CO3)2^2-", logBeta: "9.94", source: "epaEquilibria", ionicStrength: "0.5", range: ["9.40", "10.64"], doubtful: true },
  ] },
  { metal: "Mg^2+", ligand: "HCO3-", name: "hydrogencarbonate", steps: [{ n: 1, complex: "Mg(HCO3)+", logBeta: "1.01", source: "epaEquilibria", range: ["0.99", "1.07"] }] },
  { metal: "Ca^2+", ligand: "HCO3-", name: "hydrogencarbonate", steps: [{ n: 1, complex: "Ca(HCO3)+", logBeta: "1.27", source: "epaEquilibria", range: ["1.05", "1.27"] }] },
  { metal: "Sr^2+", ligand: "HCO3-", name: "hydrogencarbonate", steps: [{ n: 1, complex: "Sr(HCO3)+", logBeta: "1.21", source: "epaEquilibria", range: ["1.18", "1.21"] }] },
  { metal: "Ba^2+", ligand: "HCO3-", name: "hydrogencarbonate", steps: [{ n: 1, complex: "Ba(HCO3)+", logBeta: "0.98", source: "epaEquilibria", range: ["0.98", "1.03"] }] },
  { metal: "Mn^2+", ligand: "HCO3-", name: "hydrogencarbonate", steps: [{ n: 1, complex: "Mn(HCO3)+", logBeta: "1.30", source: "epaEquilibria", range: ["0.88", "1.95"], doubtful: true }] },
  { metal: "Fe^2+", ligand: "HCO3-", name: "hydrogencarbonate", steps: [{ n: 1, complex: "Fe(HCO3)+", logBeta: "1.10", source: "epaEquilibria", range: ["1.10", "2.72"], doubtful: true }] },
  { metal: "Co^2+", ligand: "HCO3-", name: "hydrogencarbonate", steps: [{ n: 1, complex: "Co(HCO3)+", logBeta: "1.89", source: "epaEquilibria", ionicStrength: "0.7" }] },
  { metal: "Ni^2+", ligand: "HCO3-", name: "hydrogencarbonate", steps: [{ n: 1, complex: "Ni(HCO3)+", logBeta: "2.09", source: "epaEquilibria", ionicStrength: "0.7", range: ["1.40", "2.14"] }] },
  { metal: "Cu^2+", ligand: "HCO3-", name: "hydrogencarbonate", steps: [{ n: 1, complex: "Cu(HCO3)+", logBeta: "1.80", source: "epaEquilibria", range: ["1.80", "2.70"] }] },
  { metal: "Zn^2+", ligand: "HCO3-", name: "hydrogencarbonate", steps: [{ n: 1, complex: "Zn(HCO3)+", logBeta: "1.50", source: "epaEquilibria", range: ["1.42", "2.10"] }] },
  { metal: "Cd^2+", ligand: "HCO3-", name: "hydrogencarbonate", steps: [{ n: 1, complex: "Cd(HCO3)+", logBeta: "1.50", source: "andraEquilibria", range: ["0.36", "1.50"], doubtful: true }] },
  { metal: "Hg^2+", ligand: "HCO3-", name: "hydrogencarbonate", steps: [{ n: 1, complex: "Hg(HCO3)+", logBeta: "6.02", source: "epaEquilibria", ionicStrength: "0.5", range: ["5.38", "6.02"] }] },
  { metal: "Pb^2+", ligand: "HCO3-", name: "hydrogencarbonate", steps: [{ n: 1, complex: "Pb(HCO3)+", logBeta: "2.87", source: "epaEquilibria", range: ["2.87", "3.44"] }] },
  { metal: "Mg^2+", ligand: "CH3COO-", name: "acetate", steps: [
    { n: 1, complex: "Mg(CH3COO)+", logBeta: "1.27", source: "epaEquilibria", range: ["1.26", "1.28"] },
    { n: 2, complex: "Mg(CH3COO)2", logBeta: "2.04", source: "livermoreEquilibria" },
  ] },
  { metal: "Ca^2+", ligand: "CH3COO-", name: "acetate", steps: [
    { n: 1, complex: "Ca(CH3COO)+", logBeta: "1.18", source: "epaEquilibria", range: ["0.93", "1.18"] },
    { n: 2, complex: "Ca(CH3COO)2", logBeta: "2.13", source: "livermoreEquilibria" },
  ] },
  { metal: "Sr^2+", ligand: "CH3COO-", name: "acetate", steps: [
    { n: 1, complex: "Sr(CH3COO)+", logBeta: "1.14", source: "epaEquilibria", range: ["1.08", "1.14"] },
    { n: 2, complex: "Sr(CH3COO)2", logBeta: "1.69", source: "livermoreEquilibria" },
  ] },
  { metal: "Ba^2+", ligand: "CH3COO-", name: "acetate", steps: [
    { n: 1, complex: "Ba(CH3COO)+", logBeta: "1.07", source: "epaEquilibria", range: ["0.99", "1.07"] },
    { n: 2, complex: "Ba(CH3COO)2", logBeta: "1.50", source: "livermoreEquilibria" },
  ] },
  { metal: "Mn^2+", ligand: "CH3COO-", name: "acetate", steps: [
    { n: 1, complex: "Mn(CH3COO)+", logBeta: "1.40", source: "epaEquilibria", range: ["1.22", "1.40"] },
    { n: 2, complex: "Mn(CH3COO)2", logBeta: "2.06", source: "livermoreEquilibria" },
    { n: 3, complex: "Mn(CH3COO)3-", logBeta: "2.40", source: "livermoreEquilibria" },
  ] },
  { metal: "Fe^2+", ligand: "CH3COO-", name: "acetate", steps: [
    { n: 1, complex: "Fe(CH3COO)+", logBeta: "1.40", source: "epaEquilibria", range: ["1.29", "1.40"] },
    { n: 2, complex: "Fe(CH3COO)2", logBeta: "2.48", source: "livermoreEquilibria" },
  ] },
  { metal: "Fe^3+", ligand: "CH3COO-", name: "acetate", steps: [
    { n: 1, complex: "Fe(CH3COO)^2+", logBeta: "4.02", source: "epaEquilibria", ionicStrength: "0.1", celsius: 20 },
    { n: 2, complex: "Fe(CH3COO)2+", logBeta: "7.57", source: "epaEquilibria", ionicStrength: "0.1", celsius: 20 },
    { n: 3, complex: "Fe(CH3COO)3", logBeta: "9.59", source: "epaEquilibria", ionicStrength: "0.1", celsius: 20 },
  ] },
  { metal: "Co^2+", ligand: "CH3COO-", name: "acetate", steps: [
    { n: 1, complex: "Co(CH3COO)+", logBeta: "1.38", source: "epaEquilibria", range: ["1.38", "1.46"] },
    { n: 2, complex: "Co(CH3COO)2", logBeta: "0.76", source: "epaEquilibria", ionicStrength: "2", range: ["0.76", "2.37"], doubtful: true },
    { n: 3, complex: "Co(CH3COO)3-", logBeta: "2.99", source: "livermoreEquilibria" },
  ] },
  { metal: "Ni^2+", ligand: "CH3COO-", name: "acetate", steps: [
    { n: 1, complex: "Ni(CH3COO)+", logBeta: "1.37", source: "epaEquilibria", range: ["1.34", "1.43"] },
    { n: 2, complex: "Ni(CH3COO)2", logBeta: "2.10", source: "epaEquilibria", range: ["2.10", "3.10"] },
    { n: 3, complex: "Ni(CH3COO)3-", logBeta: "2.92", source: "livermoreEquilibria" },
  ] },
  { metal: "Cu^2+", ligand: "CH3COO-", name: "acetate", steps: [
    { n: 1, complex: "Cu(CH3COO)+", logBeta: "2.21", source: "epaEquilibria", range: ["2.21", "2.23"] },
    { n: 2, complex: "Cu(CH3COO)2", logBeta: "3.40", source: "epaEquilibria", range: ["3.40", "3.63"] },
    { n: 3, complex: "Cu(CH3COO)3-", logBeta: "3.94", source: "epaEquilibria", ionicStrength: "0.1", range: ["3.94", "4.89"] },
  ] },
  { metal: "Cu+", ligand: "CH3COO-", name: "acetate", steps: [
    { n: 1, complex: "CuCH3COO", logBeta: "0.33", source: "livermoreEquilibria" },
    { n: 2, complex: "Cu(CH3COO)2-", logBeta: "0.30", source: "livermoreEquilibria" },
  ] },
  { metal: "Zn^2+", ligand: "CH3COO-", name: "acetate", steps: [
    { n: 1, complex: "Zn(CH3COO)+", logBeta: "1.58", source: "epaEquilibria", range: ["1.58", "1.61"] },
    { n: 2, complex: "Zn(CH3COO)2", logBeta: "2.64", source: "epaEquilibria", ionicStrength: "0.1", range: ["2.64", "3.45"] },
    { n: 3, complex: "Zn(CH3COO)3-", logBeta: "4.20", source: "livermoreEquilibria" },
  ] },
  { metal: "Ag+", ligand: "CH3COO-", name: "acetate", steps: [{ n: 1, complex: "AgCH3COO", logBeta: "0.73", source: "epaEquilibria" }, { n: 2, complex: "Ag(CH3COO)2-", logBeta: "0.64", source: "epaEquilibria" }] },
  { metal: "Cd^2+", ligand: "CH3COO-", name: "acetate", steps: [
    { n: 1, complex: "Cd(CH3COO)+", logBeta: "1.93", source: "epaEquilibria", range: ["1.73", "1.93"] },
    { n: 2, complex: "Cd(CH3COO)2", logBeta: "2.86", source: "epaEquilibria", range: ["2.11", "3.15"], doubtful: true },
    { n: 3, complex: "Cd(CH3COO)3-", logBeta: "2.55", source: "nbs1982", range: ["2.55", "3.42"] },
    { n: 4, complex: "Cd(CH3COO)4^2-", logBeta: "2.13", source: "nbs1982", range: ["2.11", "2.13"] },
  ] },
  { metal: "Hg^2+", ligand: "CH3COO-", name: "acetate", steps: [
    { n: 1, complex: "Hg(CH3COO)+", logBeta: "4.30", source: "epaEquilibria", range: ["3.08", "4.30"], doubtful: true },
    { n: 2, complex: "Hg(CH3COO)2", logBeta: "7.64", source: "epaEquilibria", ionicStrength: "3", range: ["6.89", "7.64"] },
    { n: 3, complex: "Hg(CH3COO)3-", logBeta: "9.95", source: "livermoreEquilibria" },
  ] },
  { metal: "Pb^2+", ligand: "CH3COO-", name: "acetate", steps: [
    { n: 1, complex: "Pb(CH3COO)+", logBeta: "2.68", source: "epaEquilibria", range: ["2.18", "2.68"] },
    { n: 2, complex: "Pb(CH3COO)2", logBeta: "4.08", source: "epaEquilibria", range: ["2.92", "4.08"], doubtful: true },
    { n: 3, complex: "Pb(CH3COO)3-", logBeta: "5.30", source: "livermoreEquilibria" },
  ] },
  { metal: "Sn^2+", ligand: "CH3COO-", name: "acetate", steps: [
    { n: 1, complex: "Sn(CH3COO)+", logBeta: "2.93", source: "epaEquilibria", ionicStrength: "3" },
    { n: 2, complex: "Sn(CH3COO)2", logBeta: "5.23", source: "epaEquilibria", ionicStrength: "3" },
    { n: 3, complex: "Sn(CH3COO)3-", logBeta: "6.46", source: "epaEquilibria", ionicStrength: "3" },
  ] },
  { metal: "Al^3+", ligand: "CH3COO-", name: "acetate", steps: [
    { n: 1, complex: "Al(CH3COO)^2+", logBeta: "2.06", source: "livermoreEquilibria" },
    { n: 2, complex: "Al(CH3COO)2+", logBeta: "3.92", source: "livermoreEquilibria" },
  ] },
  { metal: "Cr^3+", ligand: "CH3COO-", name: "acetate", steps: [
    { n: 1, complex: "Cr(CH3COO)^2+", logBeta: "5.44", source: "epaEquilibria", ionicStrength: "0.5" },
    { n: 2, complex: "Cr(CH3COO)2+", logBeta: "8.43", source: "epaEquilibria", ionicStrength: "0.5" },
    { n: 3, complex: "Cr(CH3COO)3", logBeta: "11.22", source: "epaEquilibria", ionicStrength: "0.5" },
  ] },
  { metal: "Mg^2+", ligand: "C10H12N2O8^4-", name: "EDTA(4-)", steps: [
    { n: 1, complex: "Mg(C10H12N2O8)^2-", logBeta: "10.57", source: "epaEquilibria", range: ["10.57", "10.90"] },
    { n: 1, complex: "MgH(C10H12N2O8)-", logBeta: "14.97", source: "epaEquilibria", range: ["14.97", "15.40"], protons: 1 },
  ] },
  { metal: "Ca^2+", ligand: "C10H12N2O8^4-", name: "EDTA(4-)", steps: [
    { n: 1, complex: "Ca(C10H12N2O8)^2-", logBeta: "12.42", source: "epaEquilibria", range: ["12.42", "12.69"] },
    { n: 1, complex: "CaH(C10H12N2O8)-", logBeta: "15.90", source: "epaEquilibria", range: ["15.90", "16.23"], protons: 1 },
  ] },
  { metal: "Sr^2+", ligand: "C10H12N2O8^4-", name: "EDTA(4-)", steps: [
    { n: 1, complex: "Sr(C10H12N2O8)^2-", logBeta: "10.44", source: "epaEquilibria", ionicStrength: "0.1", range: ["10.30", "10.44"] },
    { n: 1, complex: "SrH(C10H12N2O8)-", logBeta: "14.79", source: "epaEquilibria", ionicStrength: "0.1", celsius: 20, range: ["14.70", "14.79"], protons: 1 },
  ] },
  { metal: "Ba^2+", ligand: "C10H12N2O8^4-", name: "EDTA(4-)", steps: [{ n: 1, complex: "Ba(C10H12N2O8)^2-", logBeta: "7.72", source: "epaEquilibria" }] },
  { metal: "Mn^2+", ligand: "C10H12N2O8^4-", name: "EDTA(4-)", steps: [
    { n: 1, complex: "Mn(C10H12N2O8)^2-", logBeta: "15.60", source: "epaEquilibria" },
    { n: 1, complex: "MnH(C10H12N2O8)-", logBeta: "19.10", source: "epaEquilibria", protons: 1 },
  ] },
  { metal: "Fe^2+", ligand: "C10H12N2O8^4-", name: "EDTA(4-)", steps: [
    { n: 1, complex: "Fe(C10H12N2O8)^2-", logBeta: "16.00", source: "epaEquilibria", range: ["16.00", "16.02"] },
    { n: 1, complex: "FeH(C10H12N2O8)-", logBeta: "19.06", source: "epaEquilibria", range: ["18.30", "19.06"], protons: 1 },
  ] },
  { metal: "Fe^3+", ligand: "C10H12N2O8^4-", name: "EDTA(4-)", steps: [
    { n: 1, complex: "Fe(C10H12N2O8)-", logBeta: "27.70", source: "epaEquilibria" },
    { n: 1, complex: "FeHC10H12N2O8", logBeta: "29.20", source: "epaEquilibria", protons: 1 },
  ] },
  { metal: "Co^2+", ligand: "C10H12N2O8^4-", name: "EDTA(4-)", steps: [
    { n: 1, complex: "Co(C10H12N2O8)^2-", logBeta: "18.17", source: "epaEquilibria", ionicStrength: "0.1" },
    { n: 1, complex: "CoH(C10H12N2O8)-", logBeta: "21.59", source: "epaEquilibria", ionicStrength: "0.1", protons: 1 },
  ] },
  { metal: "Co^3+", ligand: "C10H12N2O8^4-", name: "EDTA(4-)", steps: [
    { n: 1, complex: "Co(C10H12N2O8)-", logBeta: "43.97", source: "epaEquilibria", ionicStrength: "0.1" },
    { n: 1, complex: "CoHC10H12N2O8", logBeta: "47.17", source: "epaEquilibria", ionicStrength: "0.1", celsius: 20, protons: 1 },
  ] },
  { metal: "Ni^2+", ligand: "C10H12N2O8^4-", name: "EDTA(4-)", steps: [
    { n: 1, complex: "Ni(C10H12N2O8)^2-", logBeta: "20.10", source: "epaEquilibria", range: ["20.10", "20.54"] },
    { n: 1, complex: "NiH(C10H12N2O8)-", logBeta: "23.60", source: "epaEquilibria", range: ["23.60", "24.20"], protons: 1 },
  ] },
  { metal: "Cu^2+", ligand: "C10H12N2O8^4-", name: "EDTA(4-)", steps: [
    { n: 1, complex: "Cu(C10H12N2O8)^2-", logBeta: "20.50", source: "epaEquilibria" },
    { n: 1, complex: "CuH(C10H12N2O8)-", logBeta: "24.00", source: "epaEquilibria", protons: 1 },
  ] },
  { metal: "Zn^2+", ligand: "C10H12N2O8^4-", name: "EDTA(4-)", steps: [
    { n: 1, complex: "Zn(C10H12N2O8)^2-", logBeta: "18.00", source: "epaEquilibria" },
    { n: 1, complex: "ZnH(C10H12N2O8)-", logBeta: "21.40", source: "epaEquilibria", protons: 1 },
  ] },
  { metal: "Ag+", ligand: "C10H12N2O8^4-", name: "EDTA(4-)", steps: [
    { n: 1, complex: "Ag(C10H12N2O8)^3-", logBeta: "8.08", source: "epaEquilibria" },
    { n: 1, complex: "AgH(C10H12N2O8)^2-", logBeta: "15.21", source: "epaEquilibria", protons: 1 },
  ] },
  { metal: "Cd^2+", ligand: "C10H12N2O8^4-", name: "EDTA(4-)", steps: [
    { n: 1, complex: "Cd(C10H12N2O8)^2-", logBeta: "18.20", source: "epaEquilibria" },
    { n: 1, complex: "CdH(C10H12N2O8)-", logBeta: "21.50", source: "epaEquilibria", protons: 1 },
  ] },
  { metal: "Hg^2+", ligand: "C10H12N2O8^4-", name: "EDTA(4-)", steps: [
    { n: 1, complex: "Hg(C10H12N2O8)^2-", logBeta: "23.11", source: "epaEquilibria" },
    { n: 1, complex: "HgH(C10H12N2O8)-", logBeta: "26.71", source: "epaEquilibria", protons: 1 },
  ] },
  { metal: "Pb^2+", ligand: "C10H12N2O8^4-", name: "EDTA(4-)", steps: [
    { n: 1, complex: "Pb(C10H12N2O8)^2-", logBeta: "19.80", source: "epaEquilibria", range: ["18.80", "19.80"] },
    { n: 1, complex: "PbH(C10H12N2O8)-", logBeta: "23.00", source: "epaEquilibria", protons: 1 },
  ] },
  { metal: "Sn^2+", ligand: "C10H12N2O8^4-", name: "EDTA(4-)", steps: [
    { n: 1, complex: "Sn(C10H12N2O8)^2-", logBeta: "19.93", source: "epaEquilibria", ionicStrength: "1", celsius: 20, range: ["19.93", "24.60"], doubtful: true },
    { n: 1, complex: "SnH(C10H12N2O8)-", logBeta: "22.84", source: "epaEquilibria", ionicStrength: "1", celsius: 20, range: ["22.84", "23.40"], protons: 1 },
  ] },
  { metal: "Al^3+", ligand: "C10H12N2O8^4-", name: "EDTA(4-)", steps: [
    { n: 1, complex: "Al(C10H12N2O8)-", logBeta: "19.10", source: "epaEquilibria", range: ["19.08", "19.10"] },
    { n: 1, complex: "AlHC10H12N2O8", logBeta: "21.80", source: "epaEquilibria", range: ["21.80", "21.82"], protons: 1 },
  ] },
  { metal: "Cr^3+", ligand: "C10H12N2O8^4-", name: "EDTA(4-)", steps: [
    { n: 1, complex: "Cr(C10H12N2O8)-", logBeta: "25.93", source: "epaEquilibria" },
    { n: 1, complex: "CrHC10H12N2O8", logBeta: "27.83", source: "epaEquilibria", protons: 1 },
  ] },
  { metal: "Mg^2+", ligand: "S2O3^2-", name: "thiosulfate", steps: [{ n: 1, complex: "MgS2O3", logBeta: "1.82", source: "andraEquilibria" }] },
  { metal: "Ca^2+", ligand: "S2O3^2-", name: "thiosulfate", steps: [{ n: 1, complex: "CaS2O3", logBeta: "1.35", source: "andraEquilibria" }] },
  { metal: "Sr^2+", ligand: "S2O3^2-", name: "thiosulfate", steps: [{ n: 1, complex: "SrS2O3", logBeta: "2.04", source: "andraEquilibria" }] },
  { metal: "Mn^2+", ligand: "S2O3^2-", name: "thiosulfate", steps: [{ n: 1, complex: "MnS2O3", logBeta: "1.90", source: "andraEquilibria" }] },
  { metal: "Fe^3+", ligand: "S2O3^2-", name: "thiosulfate", steps: [{ n: 1, complex: "Fe(S2O3)+", logBeta: "3.90", source: "andraEquilibria" }] },
  { metal: "Co^2+", ligand: "S2O3^2-", name: "thiosulfate", steps: [{ n: 1, complex: "CoS2O3", logBeta: "2.05", source: "andraEquilibria", range: ["0.81", "2.05"], doubtful: true }] },
  { metal: "Ni^2+", ligand: "S2O3^2-", name: "thiosulfate", steps: [{ n: 1, complex: "NiS2O3", logBeta: "2.06", source: "andraEquilibria" }] },
  { metal: "Cu+", ligand: "S2O3^2-", name: "thiosulfate", steps: [
    { n: 1, complex: "Cu(S2O3)-", logBeta: "10.13", source: "andraEquilibria" },
    { n: 2, complex: "Cu(S2O3)2^3-", logBeta: "12.20", source: "memory", ionicStrength: "unknown", doubtful: true },
  ] },
  { metal: "Ag+", ligand: "S2O3^2-", name: "thiosulfate", steps: [
    { n: 1, complex: "Ag(S2O3)-", logBeta: "9.23", source: "andraEquilibria", range: ["8.82", "9.23"] },
    { n: 2, complex: "Ag(S2O3)2^3-", logBeta: "13.64", source: "andraEquilibria", range: ["13.46", "13.64"] },
  ] },
  { metal: "Cd^2+", ligand: "S2O3^2-", name: "thiosulfate", steps: [{ n: 1, complex: "CdS2O3", logBeta: "2.46", source: "andraEquilibria" }] },
  { metal: "Hg^2+", ligand: "S2O3^2-", name: "thiosulfate", steps: [{ n: 2, complex: "Hg(S2O3)2^2-", logBeta: "29.40", source: "memory", ionicStrength: "unknown", doubtful: true }] },
  { metal: "Mg^2+", ligand: "C2O4^2-", name: "oxalate", steps: [
    { n: 1, complex: "MgC2O4", logBeta: "3.56", source: "andraEquilibria" },
    { n: 2, complex: "Mg(C2O4)2^2-", logBeta: "5.17", source: "andraEquilibria", range: ["4.41", "5.17"] },
  ] },
  { metal: "Ca^2+", ligand: "C2O4^2-", name: "oxalate", steps: [{ n: 1, complex: "CaC2O4", logBeta: "3.19", source: "andraEquilibria" }, { n: 2, complex: "Ca(C2O4)2^2-", logBeta: "4.02", source: "andraEquilibria" }] },
  { metal: "Sr^2+", ligand: "C2O4^2-", name: "oxalate", steps: [{ n: 1, complex: "SrC2O4", logBeta: "2.54", source: "andraEquilibria" }, { n: 2, complex: "Sr(C2O4)2^2-", logBeta: "3.00", source: "andraEquilibria" }] },
  { metal: "Mn^2+", ligand: "C2O4^2-", name: "oxalate", steps: [{ n: 1, complex: "MnC2O4", logBeta: "3.96", source: "nbs1982" }, { n: 2, complex: "Mn(C2O4)2^2-", logBeta: "5.43", source: "nbs1982" }] },
  { metal: "Fe^2+", ligand: "C2O4^2-", name: "oxalate", steps: [
    { n: 1, complex: "FeC2O4", logBeta: "4.10", source: "andraEquilibria" },
    { n: 2, complex: "Fe(C2O4)2^2-", logBeta: "6.20", source: "andraEquilibria" },
    { n: 3, complex: "Fe(C2O4)3^4-", logBeta: "5.22", source: "andraEquilibria" },
  ] },
  { metal: "Fe^3+", ligand: "C2O4^2-", name: "oxalate", steps: [
    { n: 1, complex: "Fe(C2O4)+", logBeta: "9.53", source: "andraEquilibria" },
    { n: 2, complex: "Fe(C2O4)2-", logBeta: "15.75", source: "andraEquilibria" },
    { n: 3, complex: "Fe(C2O4)3^3-", logBeta: "20.20", source: "andraEquilibria" },
  ] },
  { metal: "Co^2+", ligand: "C2O4^2-", name: "oxalate", steps: [{ n: 1, complex: "CoC2O4", logBeta: "4.78", source: "nbs1982" }, { n: 2, complex: "Co(C2O4)2^2-", logBeta: "7.06", source: "nbs1982" }] },
  { metal: "Ni^2+", ligand: "C2O4^2-", name: "oxalate", steps: [
    { n: 1, complex: "NiC2O4", logBeta: "5.19", source: "andraEquilibria", range: ["5.15", "5.19"] },
    { n: 2, complex: "Ni(C2O4)2^2-", logBeta: "7.64", source: "andraEquilibria" },
  ] },
  { metal: "Cu^2+", ligand: "C2O4^2-", name: "oxalate", steps: [{ n: 1, complex: "CuC2O4", logBeta: "5.62", source: "nbs1982" }, { n: 2, complex: "Cu(C2O4)2^2-", logBeta: "9.37", source: "nbs1982" }] },
  { metal: "Zn^2+", ligand: "C2O4^2-", name: "oxalate", steps: [{ n: 1, complex: "ZnC2O4", logBeta: "4.96", source: "nbs1982" }, { n: 2, complex: "Zn(C2O4)2^2-", logBeta: "7.47", source: "nbs1982" }] },
  { metal: "Cd^2+", ligand: "C2O4^2-", name: "oxalate", steps: [{ n: 1, complex: "CdC2O4", logBeta: "4.01", source: "nbs1982" }, { n: 2, complex: "Cd(C2O4)2^2-", logBeta: "5.78", source: "nbs1982" }] },
  { metal: "Hg^2+", ligand: "C2O4^2-", name: "oxalate", steps: [{ n: 2, complex: "Hg(C2O4)2^2-", logBeta: "8.88", source: "nbs1982" }] },
  { metal: "Pb^2+", ligand: "C2O4^2-", name: "oxalate", steps: [{ n: 1, complex: "PbC2O4", logBeta: "5.85", source: "andraEquilibria" }, { n: 2, complex: "Pb(C2O4)2^2-", logBeta: "8.05", source: "andraEquilibria" }] },
  { metal: "Sn^2+", ligand: "C2O4^2-", name: "oxalate", steps: [
    { n: 1, complex: "SnC2O4", logBeta: "6.50", source: "andraEquilibria" },
    { n: 2, complex: "Sn(C2O4)2^2-", logBeta: "12.90", source: "andraEquilibria" },
    { n: 3, complex: "Sn(C2O4)3^4-", logBeta: "17.10", source: "andraEquilibria" },
  ] },
  { metal: "Al^3+", ligand: "C2O4^2-", name: "oxalate", steps: [
    { n: 1, complex: "Al(C2O4)+", logBeta: "9.40", source: "andraEquilibria" },
    { n: 2, complex: "Al(C2O4)2-", logBeta: "15.39", source: "andraEquilibria" },
    { n: 3, complex: "Al(C2O4)3^3-", logBeta: "18.30", source: "andraEquilibria" },
  ] },
  { metal: "Mg^2+", ligand: "C6H5O7^3-", name: "citrate(3-)", steps: [
    { n: 1, complex: "Mg(C6H5O7)-", logBeta: "4.89", source: "epaEquilibria", range: ["4.81", "4.89"] },
    { n: 1, complex: "MgHC6H5O7", logBeta: "8.91", source: "epaEquilibria", range: ["8.91", "8.96"], protons: 1 },
  ] },
  { metal: "Ca^2+", ligand: "C6H5O7^3-", name: "citrate(3-)", steps: [
    { n: 1, complex: "Ca(C6H5O7)-", logBeta: "4.87", source: "epaEquilibria", range: ["4.80", "4.87"] },
    { n: 1, complex: "CaHC6H5O7", logBeta: "9.26", source: "epaEquilibria", range: ["9.26", "9.28"], protons: 1 },
  ] },
  { metal: "Sr^2+", ligand: "C6H5O7^3-", name: "citrate(3-)", steps: [
    { n: 1, complex: "Sr(C6H5O7)-", logBeta: "4.34", source: "epaEquilibria", ionicStrength: "0.1", range: ["4.24", "4.34"] },
    { n: 2, complex: "Sr(C6H5O7)2^4-", logBeta: "4.84", source: "andraEquilibria" },
    { n: 1, complex: "SrHC6H5O7", logBeta: "8.97", source: "epaEquilibria", ionicStrength: "0.1", range: ["8.97", "9.00"], protons: 1 },
  ] },
  { metal: "Ba^2+", ligand: "C6H5O7^3-", name: "citrate(3-)", steps: [
    { n: 1, complex: "Ba(C6H5O7)-", logBeta: "4.10", source: "epaEquilibria" },
    { n: 1, complex: "BaHC6H5O7", logBeta: "8.74", source: "epaEquilibria", protons: 1 },
  ] },
  { metal: "Mn^2+", ligand: "C6H5O7^3-", name: "citrate(3-)", steps: [
    { n: 1, complex: "Mn(C6H5O7)-", logBeta: "4.28", source: "epaEquilibria" },
    { n: 1, complex: "MnHC6H5O7", logBeta: "9.60", source: "epaEquilibria", protons: 1 },
  ] },
  { metal: "Fe^2+", ligand: "C6H5O7^3-", name: "citrate(3-)", steps: [
    { n: 1, complex: "Fe(C6H5O7)-", logBeta: "6.10", source: "epaEquilibria" },
    { n: 1, complex: "FeHC6H5O7", logBeta: "10.20", source: "epaEquilibria", range: ["10.02", "10.20"], protons: 1 },
  ] },
  { metal: "Fe^3+", ligand: "C6H5O7^3-", name: "citrate(3-)", steps: [
    { n: 1, complex: "FeC6H5O7", logBeta: "13.10", source: "epaEquilibria", range: ["12.65", "13.10"] },
    { n: 2, complex: "Fe(C6H5O7)2^3-", logBeta: "18.15", source: "andraEquilibria" },
    { n: 1, complex: "FeH(C6H5O7)+", logBeta: "14.40", source: "epaEquilibria", range: ["13.56", "14.40"], protons: 1 },
  ] },
  { metal: "Co^2+", ligand: "C6H5O7^3-", name: "citrate(3-)", steps: [
    { n: 1, complex: "Co(C6H5O7)-", logBeta: "6.19", source: "epaEquilibria", ionicStrength: "0.1" },
    { n: 1, complex: "CoHC6H5O7", logBeta: "10.44", source: "epaEquilibria", ionicStrength: "0.1", protons: 1 },
  ] },
  { metal: "Ni^2+", ligand: "C6H5O7^3-", name: "citrate(3-)", steps: [
    { n: 1, complex: "Ni(C6H5O7)-", logBeta: "6.59", source: "epaEquilibria", range: ["6.59", "6.76"] },
    { n: 2, complex: "Ni(C6H5O7)2^4-", logBeta: "8.77", source: "epaEquilibria", range: ["8.50", "8.77"] },
    { n: 1, complex: "NiHC6H5O7", logBeta: "10.50", source: "epaEquilibria", range: ["10.50", "10.52"], protons: 1 },
  ] },
  { metal: "Cu^2+", ligand: "C6H5O7^3-", name: "citrate(3-)", steps: [
    { n: 1, complex: "Cu(C6H5O7)-", logBeta: "7.57", source: "epaEquilibria" },
    { n: 2, complex: "Cu(C6H5O7)2^4-", logBeta: "8.90", source: "epaEquilibria" },
    { n: 1, complex: "CuHC6H5O7", logBeta: "10.87", source: "epaEquilibria", protons: 1 },
  ] },
  { metal: "Zn^2+", ligand: "C6H5O7^3-", name: "citrate(3-)", steps: [
    { n: 1, complex: "Zn(C6H5O7)-", logBeta: "6.21", source: "epaEquilibria" },
    { n: 2, complex: "Zn(C6H5O7)2^4-", logBeta: "7.40", source: "epaEquilibria" },
    { n: 1, complex: "ZnHC6H5O7", logBeta: "10.20", source: "epaEquilibria", protons: 1 },
  ] },
  { metal: "Cd^2+", ligand: "C6H5O7^3-", name: "citrate(3-)", steps: [
    { n: 1, complex: "Cd(C6H5O7)-", logBeta: "4.98", source: "epaEquilibria" },
    { n: 2, complex: "Cd(C6H5O7)2^4-", logBeta: "5.90", source: "epaEquilibria" },
    { n: 1, complex: "CdHC6H5O7", logBeta: "9.44", source: "epaEquilibria", protons: 1 },
  ] },
  { metal: "Hg^2+", ligand: "C6H5O7^3-", name: "citrate(3-)", steps: [{ n: 1, complex: "Hg(C6H5O7)-", logBeta: "12.11", source: "epaEquilibria" }] },
  { metal: "Pb^2+", ligand: "C6H5O7^3-", name: "citrate(3-)", steps: [
    { n: 1, complex: "Pb(C6H5O7)-", logBeta: "7.27", source: "epaEquilibria" },
    { n: 2, complex: "Pb(C6H5O7)2^4-", logBeta: "6.53", source: "epaEquilibria" },
  ] },
  { metal: "Sn^2+", ligand: "C6H5O7^3-", name: "citrate(3-)", steps: [
    { n: 1, complex: "Sn(C6H5O7)-", logBeta: "8.70", source: "andraEquilibria" },
    { n: 2, complex: "Sn(C6H5O7)2^4-", logBeta: "11.90", source: "andraEquilibria" },
  ] },
  { metal: "Al^3+", ligand: "C6H5O7^3-", name: "citrate(3-)", steps: [
    { n: 1, complex: "AlC6H5O7", logBeta: "9.97", source: "epaEquilibria", range: ["9.90", "9.97"] },
    { n: 2, complex: "Al(C6H5O7)2^3-", logBeta: "14.80", source: "epaEquilibria", range: ["14.13", "14.80"] },
    { n: 1, complex: "AlH(C6H5O7)+", logBeta: "12.85", source: "epaEquilibria", range: ["12.85", "12.90"], protons: 1 },
  ] },
  { metal: "Mg^2+", ligand: "C4H4O6^2-", name: "tartrate(2-)", steps: [{ n: 1, complex: "MgC4H4O6", logBeta: "2.30", source: "epaEquilibria" }] },
  { metal: "Ca^2+", ligand: "C4H4O6^2-", name: "tartrate(2-)", steps: [{ n: 1, complex: "CaC4H4O6", logBeta: "2.80", source: "epaEquilibria" }] },
  { metal: "Sr^2+", ligand: "C4H4O6^2-", name: "tartrate(2-)", steps: [{ n: 1, complex: "SrC4H4O6", logBeta: "2.55", source: "epaEquilibria", celsius: 20 }] },
  { metal: "Ba^2+", ligand: "C4H4O6^2-", name: "tartrate(2-)", steps: [{ n: 1, complex: "BaC4H4O6", logBeta: "2.54", source: "epaEquilibria" }] },
  { metal: "Mn^2+", ligand: "C4H4O6^2-", name: "tartrate(2-)", steps: [{ n: 1, complex: "MnC4H4O6", logBeta: "3.38", source: "epaEquilibria" }] },
  { metal: "Fe^2+", ligand: "C4H4O6^2-", name: "tartrate(2-)", steps: [{ n: 1, complex: "FeC4H4O6", logBeta: "3.10", source: "epaEquilibria" }] },
  { metal: "Fe^3+", ligand: "C4H4O6^2-", name: "tartrate(2-)", steps: [{ n: 1, complex: "Fe(C4H4O6)+", logBeta: "7.78", source: "epaEquilibria" }] },
  { metal: "Co^2+", ligand: "C4H4O6^2-", name: "tartrate(2-)", steps: [
    { n: 1, complex: "CoC4H4O6", logBeta: "3.05", source: "epaEquilibria" },
    { n: 2, complex: "Co(C4H4O6)2^2-", logBeta: "4.00", source: "epaEquilibria" },
  ] },
  { metal: "Ni^2+", ligand: "C4H4O6^2-", name: "tartrate(2-)", steps: [{ n: 1, complex: "NiC4H4O6", logBeta: "3.46", source: "epaEquilibria" }] },
  { metal: "Cu^2+", ligand: "C4H4O6^2-", name: "tartrate(2-)", steps: [{ n: 1, complex: "CuC4H4O6", logBeta: "3.97", source: "epaEquilibria" }] },
  { metal: "Zn^2+", ligand: "C4H4O6^2-", name: "tartrate(2-)", steps: [
    { n: 1, complex: "ZnC4H4O6", logBeta: "3.43", source: "epaEquilibria" },
    { n: 2, complex: "Zn(C4H4O6)2^2-", logBeta: "5.50", source: "epaEquilibria" },
  ] },
  { metal: "Cd^2+", ligand: "C4H4O6^2-", name: "tartrate(2-)", steps: [
    { n: 1, complex: "CdC4H4O6", logBeta: "2.70", source: "epaEquilibria" },
    { n: 2, complex: "Cd(C4H4O6)2^2-", logBeta: "4.10", source: "epaEquilibria" },
  ] },
  { metal: "Hg^2+", ligand: "C4H4O6^2-", name: "tartrate(2-)", steps: [{ n: 1, complex: "HgC4H4O6", logBeta: "7.81", source: "epaEquilibria" }] },
  { metal: "Pb^2+", ligand: "C4H4O6^2-", name: "tartrate(2-)", steps: [{ n: 1, complex: "PbC4H4O6", logBeta: "3.98", source: "epaEquilibria" }] },
  { metal: "Sn^2+", ligand: "C4H4O6^2-", name: "tartrate(2-)", steps: [{ n: 1, complex: "SnC4H4O6", logBeta: "6.06", source: "epaEquilibria", ionicStrength: "0.1", celsius: 20 }] },
  { metal: "Al^3+", ligand: "C4H4O6^2-", name: "tartrate(2-)", steps: [{ n: 2, complex: "Al(C4H4O6)2-", logBeta: "9.37", source: "epaEquilibria" }] },
  { metal: "Mg^2+", ligand: "F-", name: "fluoride", steps: [{ n: 1, complex: "MgF+", logBeta: "2.05", source: "epaEquilibria", range: ["1.15", "2.05"] }] },
  { metal: "Ca^2+", ligand: "F-", name: "fluoride", steps: [{ n: 1, complex: "CaF+", logBeta: "1.04", source: "epaEquilibria", ionicStrength: "1", range: ["0.68", "1.04"] }] },
  { metal: "Sr^2+", ligand: "F-", name: "fluoride", steps: [
    { n: 1, complex: "SrF+", logBeta: "0.55", source: "epaEquilibria", ionicStrength: "1", range: ["0.14", "0.55"] },
    { n: 2, complex: "SrF2", logBeta: "2.02", source: "andraEquilibria" },
  ] },
  { metal: "Ba^2+", ligand: "F-", name: "fluoride", steps: [{ n: 1, complex: "BaF+", logBeta: "0.40", source: "andraEquilibria", range: ["-0.18", "0.40"] }] },
  { metal: "Mn^2+", ligand: "F-", name: "fluoride", steps: [{ n: 1, complex: "MnF+", logBeta: "1.60", source: "epaEquilibria", range: ["0.84", "1.60"] }] },
  { metal: "Fe^2+", ligand: "F-", name: "fluoride", steps: [{ n: 1, complex: "FeF+", logBeta: "1.70", source: "andraEquilibria", range: ["1.00", "1.70"] }] },
  { metal: "Fe^3+", ligand: "F-", name: "fluoride", steps: [
    { n: 1, complex: "FeF^2+", logBeta: "6.04", source: "epaEquilibria", range: ["4.14", "6.85"], doubtful: true },
    { n: 2, complex: "FeF2+", logBeta: "10.47", source: "epaEquilibria", ionicStrength: "0.5", range: ["8.35", "11.58"], doubtful: true },
    { n: 3, complex: "FeF3", logBeta: "13.62", source: "epaEquilibria", ionicStrength: "0.5", range: ["13.62", "14.00"] },
  ] },
  { metal: "Co^2+", ligand: "F-", name: "fluoride", steps: [{ n: 1, complex: "CoF+", logBeta: "1.50", source: "epaEquilibria" }] },
  { metal: "Ni^2+", ligand: "F-", name: "fluoride", steps: [{ n: 1, complex: "NiF+", logBeta: "1.40", source: "epaEquilibria", range: ["1.30", "1.50"] }] },
  { metal: "Cu^2+", ligand: "F-", name: "fluoride", steps: [{ n: 1, complex: "CuF+", logBeta: "1.80", source: "epaEquilibria", range: ["1.20", "1.80"] }] },
  { metal: "Zn^2+", ligand: "F-", name: "fluoride", steps: [{ n: 1, complex: "ZnF+", logBeta: "1.30", source: "epaEquilibria", range: ["1.15", "1.30"] }] },
  { metal: "Ag+", ligand: "F-", name: "fluoride", steps: [{ n: 1, complex: "AgF", logBeta: "0.40", source: "epaEquilibria", range: ["-0.17", "0.44"] }] },
  { metal: "Cd^2+", ligand: "F-", name: "fluoride", steps: [
    { n: 1, complex: "CdF+", logBeta: "1.20", source: "epaEquilibria", range: ["1.10", "1.20"] },
    { n: 2, complex: "CdF2", logBeta: "1.50", source: "epaEquilibria", range: ["1.48", "1.50"] },
  ] },
  { metal: "Hg^2+", ligand: "F-", name: "fluoride", steps: [{ n: 1, complex: "HgF+", logBeta: "1.57", source: "epaEquilibria", ionicStrength: "0.5", range: ["1.57", "1.67"] }] },
  { metal: "Pb^2+", ligand: "F-", name: "fluoride", steps: [
    { n: 1, complex: "PbF+", logBeta: "1.85", source: "epaEquilibria", ionicStrength: "1", range: ["0.83", "2.27"], doubtful: true },
    { n: 2, complex: "PbF2", logBeta: "3.14", source: "epaEquilibria", ionicStrength: "1", range: ["1.61", "3.14"], doubtful: true },
    { n: 3, complex: "PbF3-", logBeta: "3.42", source: "epaEquilibria" },
    { n: 4, complex: "PbF4^2-", logBeta: "3.10", source: "epaEquilibria" },
  ] },
  { metal: "Sn^2+", ligand: "F-", name: "fluoride", steps: [
    { n: 1, complex: "SnF+", logBeta: "4.49", source: "epaEquilibria", ionicStrength: "1", range: ["4.08", "5.25"], doubtful: true },
    { n: 2, complex: "SnF2", logBeta: "7.29", source: "epaEquilibria", ionicStrength: "1", range: ["6.68", "8.89"], doubtful: true },
    { n: 3, complex: "SnF3-", logBeta: "10.11", source: "epaEquilibria", ionicStrength: "1", range: ["9.46", "11.50"], doubtful: true },
  ] },
  { metal: "Al^3+", ligand: "F-", name: "fluoride", steps: [
    { n: 1, complex: "AlF^2+", logBeta: "7.00", source: "epaEquilibria", range: ["6.87", "7.00"] },
    { n: 2, complex: "AlF2+", logBeta: "12.60", source: "epaEquilibria", range: ["12.34", "12.70"] },
    { n: 3, complex: "AlF3", logBeta: "16.70", source: "epaEquilibria", range: ["16.23", "16.80"] },
    { n: 4, complex: "AlF4-", logBeta: "19.40", source: "epaEquilibria", range: ["18.93", "19.40"] },
    { n: 6, complex: "AlF6^3-", logBeta: "19.85", source: "openStax2e", ionicStrength: "unknown" },
  ] },
  { metal: "Cr^3+", ligand: "F-", name: "fluoride", steps: [
    { n: 1, complex: "CrF^2+", logBeta: "5.20", source: "epaEquilibria", range: ["5.20", "5.21"] },
    { n: 2, complex: "CrF2+", logBeta: "9.31", source: "andraEquilibria" },
    { n: 3, complex: "CrF3", logBeta: "11.91", source: "andraEquilibria" },
  ] },
  { metal: "Mg^2+", ligand: "Br-", name: "bromide", steps: [{ n: 1, complex: "MgBr+", logBeta: "-0.14", source: "andraEquilibria" }] },
  { metal: "Mn^2+", ligand: "Br-", name: "bromide", steps: [{ n: 1, complex: "MnBr+", logBeta: "0.13", source: "andraEquilibria" }] },
  { metal: "Fe^3+", ligand: "Br-", name: "bromide", steps: [
    { n: 1, complex: "FeBr^2+", logBeta: "0.70", source: "andraEquilibria", range: ["0.62", "0.70"] },
    { n: 2, complex: "FeBr2+", logBeta: "0.90", source: "andraEquilibria" },
  ] },
  { metal: "Co^2+", ligand: "Br-", name: "bromide", steps: [{ n: 2, complex: "CoBr2", logBeta: "-0.04", source: "livermoreEquilibria" }] },
  { metal: "Ni^2+", ligand: "Br-", name: "bromide", steps: [{ n: 1, complex: "NiBr+", logBeta: "0.50", source: "epaEquilibria", range: ["-0.37", "0.50"] }] },
  { metal: "Cu^2+", ligand: "Br-", name: "bromide", steps: [{ n: 1, complex: "CuBr+", logBeta: "1.98", source: "nbs1982" }] },
  { metal: "Zn^2+", ligand: "Br-", name: "bromide", steps: [
    { n: 1, complex: "ZnBr+", logBeta: "-0.07", source: "epaEquilibria", range: ["-0.64", "-0.07"] },
    { n: 2, complex: "ZnBr2", logBeta: "-0.98", source: "epaEquilibria", range: ["-1.05", "-0.98"] },
    { n: 3, complex: "ZnBr3-", logBeta: "-1.76", source: "nbs1982", range: ["-1.85", "-1.76"] },
    { n: 4, complex: "ZnBr4^2-", logBeta: "-1.30", source: "brgmEquilibria" },
  ] },
  { metal: "Ag+", ligand: "Br-", name: "bromide", steps: [
    { n: 1, complex: "AgBr", logBeta: "4.60", source: "epaEquilibria", range: ["4.23", "4.60"] },
    { n: 2, complex: "AgBr2-", logBeta: "7.50", source: "epaEquilibria", range: ["7.28", "7.50"] },
    { n: 3, complex: "AgBr3^2-", logBeta: "8.10", source: "epaEquilibria", range: ["8.10", "8.71"] },
  ] },
  { metal: "Cd^2+", ligand: "Br-", name: "bromide", steps: [
    { n: 1, complex: "CdBr+", logBeta: "2.15", source: "epaEquilibria", range: ["2.14", "2.17"] },
    { n: 2, complex: "CdBr2", logBeta: "3.00", source: "epaEquilibria", range: ["2.86", "3.00"] },
    { n: 3, complex: "CdBr3-", logBeta: "3.19", source: "andraEquilibria", range: ["3.10", "3.19"] },
  ] },
  { metal: "Hg^2+", ligand: "Br-", name: "bromide", steps: [
    { n: 1, complex: "HgBr+", logBeta: "9.61", source: "epaEquilibria", ionicStrength: "0.5", range: ["9.05", "9.61"] },
    { n: 2, complex: "HgBr2", logBeta: "18.08", source: "epaEquilibria", ionicStrength: "0.5", range: ["17.45", "18.08"] },
    { n: 3, complex: "HgBr3-", logBeta: "20.51", source: "epaEquilibria", ionicStrength: "0.5", range: ["19.61", "20.51"] },
    { n: 4, complex: "HgBr4^2-", logBeta: "21.74", source: "epaEquilibria", ionicStrength: "0.5", range: ["20.96", "21.74"] },
  ] },
  { metal: "Pb^2+", ligand: "Br-", name: "bromide", steps: [
    { n: 1, complex: "PbBr+", logBeta: "1.70", source: "epaEquilibria", range: ["1.11", "1.77"] },
    { n: 2, complex: "PbBr2", logBeta: "1.51", source: "livermoreEquilibria", range: ["1.44", "2.60"], doubtful: true },
    { n: 3, complex: "PbBr3-", logBeta: "1.23", source: "livermoreEquilibria", range: ["1.19", "2.90"], doubtful: true },
  ] },
  { metal: "Sn^2+", ligand: "Br-", name: "bromide", steps: [
    { n: 1, complex: "SnBr+", logBeta: "1.16", source: "epaEquilibria", range: ["0.78", "1.33"] },
    { n: 2, complex: "SnBr2", logBeta: "1.70", source: "epaEquilibria", range: ["1.17", "1.97"] },
    { n: 3, complex: "SnBr3-", logBeta: "0.39", source: "epaEquilibria", ionicStrength: "3", range: ["0.39", "1.93"], doubtful: true },
  ] },
  { metal: "Cr^3+", ligand: "Br-", name: "bromide", steps: [{ n: 1, complex: "CrBr^2+", logBeta: "-2.02", source: "epaEquilibria", range: ["-2.78", "-0.62"], doubtful: true }] },
  { metal: "Mg^2+", ligand: "I-", name: "iodide", steps: [{ n: 1, complex: "MgI+", logBeta: "0.18", source: "andraEquilibria" }, { n: 2, complex: "MgI2", logBeta: "0.03", source: "andraEquilibria" }] },
  { metal: "Ca^2+", ligand: "I-", name: "iodide", steps: [{ n: 1, complex: "CaI+", logBeta: "0.14", source: "andraEquilibria" }, { n: 2, complex: "CaI2", logBeta: "-0.02", source: "andraEquilibria" }] },
  { metal: "Sr^2+", ligand: "I-", name: "iodide", steps: [{ n: 1, complex: "SrI+", logBeta: "0.14", source: "andraEquilibria" }, { n: 2, complex: "SrI2", logBeta: "-0.04", source: "andraEquilibria" }] },
  { metal: "Mn^2+", ligand: "I-", name: "iodide", steps: [{ n: 1, complex: "MnI+", logBeta: "0.23", source: "andraEquilibria" }] },
  { metal: "Fe^3+", ligand: "I-", name: "iodide", steps: [{ n: 1, complex: "FeI^2+", logBeta: "2.10", source: "andraEquilibria", range: ["1.88", "2.10"] }] },
  { metal: "Co^2+", ligand: "I-", name: "iodide", steps: [{ n: 2, complex: "CoI2", logBeta: "-0.09", source: "livermoreEquilibria" }] },
  { metal: "Zn^2+", ligand: "I-", name: "iodide", steps: [
    { n: 1, complex: "ZnI+", logBeta: "-2.04", source: "epaEquilibria", ionicStrength: "3", range: ["-3.01", "-2.04"] },
    { n: 2, complex: "ZnI2", logBeta: "-1.69", source: "epaEquilibria", range: ["-1.84", "-1.68"] },
    { n: 3, complex: "ZnI3-", logBeta: "-1.78", source: "nbs1982", range: ["-2.01", "-1.78"] },
    { n: 4, complex: "ZnI4^2-", logBeta: "-2.32", source: "nbs1982", range: ["-2.61", "-2.32"] },
  ] },
  { metal: "Ag+", ligand: "I-", name: "iodide", steps: [
    { n: 1, complex: "AgI", logBeta: "6.60", source: "epaEquilibria", celsius: 18, range: ["6.58", "6.60"] },
    { n: 2, complex: "AgI2-", logBeta: "11.70", source: "epaEquilibria", celsius: 18, range: ["10.68", "11.70"], doubtful: true },
    { n: 3, complex: "AgI3^2-", logBeta: "12.60", source: "epaEquilibria", range: ["12.60", "13.37"] },
    { n: 4, complex: "AgI4^3-", logBeta: "14.23", source: "epaEquilibria", ionicStrength: "2", range: ["14.08", "14.23"] },
  ] },
  { metal: "Cd^2+", ligand: "I-", name: "iodide", steps: [
    { n: 1, complex: "CdI+", logBeta: "2.28", source: "epaEquilibria", range: ["2.07", "2.28"] },
    { n: 2, complex: "CdI2", logBeta: "3.92", source: "epaEquilibria", range: ["3.47", "3.92"] },
    { n: 3, complex: "CdI3-", logBeta: "4.64", source: "andraEquilibria", range: ["4.55", "4.74"] },
    { n: 4, complex: "CdI4^2-", logBeta: "5.48", source: "andraEquilibria", range: ["5.35", "5.61"] },
  ] },
  { metal: "Hg^2+", ligand: "I-", name: "iodide", steps: [
    { n: 1, complex: "HgI+", logBeta: "13.41", source: "epaEquilibria", ionicStrength: "0.5", range: ["12.81", "13.41"] },
    { n: 2, complex: "HgI2", logBeta: "24.63", source: "epaEquilibria", ionicStrength: "0.5", range: ["23.92", "24.63"] },
    { n: 3, complex: "HgI3-", logBeta: "28.41", source: "epaEquilibria", ionicStrength: "0.5", range: ["27.71", "28.41"] },
    { n: 4, complex: "HgI4^2-", logBeta: "30.34", source: "epaEquilibria", ionicStrength: "0.5", range: ["29.75", "30.34"] },
  ] },
  { metal: "Pb^2+", ligand: "I-", name: "iodide", steps: [
    { n: 1, complex: "PbI+", logBeta: "2.00", source: "epaEquilibria", range: ["1.93", "2.00"] },
    { n: 2, complex: "PbI2", logBeta: "3.20", source: "epaEquilibria", range: ["2.76", "3.20"] },
    { n: 3, complex: "PbI3-", logBeta: "3.81", source: "andraEquilibria", range: ["3.34", "3.81"] },
    { n: 4, complex: "PbI4^2-", logBeta: "3.75", source: "andraEquilibria", range: ["3.75", "4.48"] },
  ] },
  { metal: "Sn^2+", ligand: "I-", name: "iodide", steps: [{ n: 1, complex: "SnI+", logBeta: "1.74", source: "andraEquilibria" }, { n: 2, complex: "SnI2", logBeta: "2.69", source: "andraEquilibria" }] },
  { metal: "Cr^3+", ligand: "I-", name: "iodide", steps: [{ n: 1, complex: "CrI^2+", logBeta: "-4.74", source: "epaEquilibria" }] },
  { metal: "Fe^3+", ligand: "SCN-", name: "thiocyanate", steps: [
    { n: 1, complex: "Fe(SCN)^2+", logBeta: "2.96", source: "nbs1982", range: ["2.95", "2.96"] },
    { n: 6, complex: "Fe(SCN)6^3-", logBeta: "3.51", source: "openStax2e", ionicStrength: "unknown" },
  ] },
  { metal: "Co^2+", ligand: "SCN-", name: "thiocyanate", steps: [{ n: 4, complex: "Co(SCN)4^2-", logBeta: "3.00", source: "openStax2e", ionicStrength: "unknown" }] },
  { metal: "Ag+", ligand: "SCN-", name: "thiocyanate", steps: [
    { n: 1, complex: "AgSCN", logBeta: "4.75", source: "nbs1982" },
    { n: 2, complex: "Ag(SCN)2-", logBeta: "8.31", source: "nbs1982" },
    { n: 3, complex: "Ag(SCN)3^2-", logBeta: "9.52", source: "nbs1982" },
    { n: 4, complex: "Ag(SCN)4^3-", logBeta: "9.77", source: "nbs1982", range: ["9.77", "10.08"] },
  ] },
  { metal: "Pb^2+", ligand: "SCN-", name: "thiocyanate", steps: [{ n: 2, complex: "Pb(SCN)2", logBeta: "1.15", source: "nbs1982" }] },
  { metal: "Mg^2+", ligand: "NH2CH2COO-", name: "glycinate", steps: [{ n: 1, complex: "Mg(NH2CH2COO)+", logBeta: "2.08", source: "epaEquilibria" }] },
  { metal: "Ca^2+", ligand: "NH2CH2COO-", name: "glycinate", steps: [{ n: 1, complex: "Ca(NH2CH2COO)+", logBeta: "1.39", source: "epaEquilibria" }] },
  { metal: "Sr^2+", ligand: "NH2CH2COO-", name: "glycinate", steps: [{ n: 1, complex: "Sr(NH2CH2COO)+", logBeta: "0.91", source: "epaEquilibria" }] },
  { metal: "Ba^2+", ligand: "NH2CH2COO-", name: "glycinate", steps: [{ n: 1, complex: "Ba(NH2CH2COO)+", logBeta: "0.77", source: "epaEquilibria" }] },
  { metal: "Mn^2+", ligand: "NH2CH2COO-", name: "glycinate", steps: [
    { n: 1, complex: "Mn(NH2CH2COO)+", logBeta: "3.19", source: "epaEquilibria" },
    { n: 2, complex: "Mn(NH2CH2COO)2", logBeta: "5.40", source: "epaEquilibria" },
  ] },
  { metal: "Fe^2+", ligand: "NH2CH2COO-", name: "glycinate", steps: [
    { n: 1, complex: "Fe(NH2CH2COO)+", logBeta: "4.31", source: "epaEquilibria" },
    { n: 2, complex: "Fe(NH2CH2COO)2", logBeta: "8.29", source: "epaEquilibria" },
  ] },
  { metal: "Fe^3+", ligand: "NH2CH2COO-", name: "glycinate", steps: [{ n: 1, complex: "Fe(NH2CH2COO)^2+", logBeta: "9.38", source: "epaEquilibria" }] },
  { metal: "Co^2+", ligand: "NH2CH2COO-", name: "glycinate", steps: [
    { n: 1, complex: "Co(NH2CH2COO)+", logBeta: "5.07", source: "epaEquilibria" },
    { n: 2, complex: "Co(NH2CH2COO)2", logBeta: "9.07", source: "epaEquilibria" },
    { n: 3, complex: "Co(NH2CH2COO)3-", logBeta: "11.60", source: "epaEquilibria" },
  ] },
  { metal: "Ni^2+", ligand: "NH2CH2COO-", name: "glycinate", steps: [
    { n: 1, complex: "Ni(NH2CH2COO)+", logBeta: "6.15", source: "epaEquilibria" },
    { n: 2, complex: "Ni(NH2CH2COO)2", logBeta: "11.12", source: "epaEquilibria" },
    { n: 3, complex: "Ni(NH2CH2COO)3-", logBeta: "14.63", source: "epaEquilibria" },
  ] },
  { metal: "Cu^2+", ligand: "NH2CH2COO-", name: "glycinate", steps: [
    { n: 1, complex: "Cu(NH2CH2COO)+", logBeta: "8.57", source: "epaEquilibria" },
    { n: 2, complex: "Cu(NH2CH2COO)2", logBeta: "15.70", source: "epaEquilibria" },
  ] },
  { metal: "Cu+", ligand: "NH2CH2COO-", name: "glycinate", steps: [{ n: 2, complex: "Cu(NH2CH2COO)2-", logBeta: "10.30", source: "epaEquilibria" }] },
  { metal: "Zn^2+", ligand: "NH2CH2COO-", name: "glycinate", steps: [
    { n: 1, complex: "Zn(NH2CH2COO)+", logBeta: "5.38", source: "epaEquilibria" },
    { n: 2, complex: "Zn(NH2CH2COO)2", logBeta: "9.81", source: "epaEquilibria" },
    { n: 3, complex: "Zn(NH2CH2COO)3-", logBeta: "12.30", source: "epaEquilibria" },
  ] },
  { metal: "Ag+", ligand: "NH2CH2COO-", name: "glycinate", steps: [
    { n: 1, complex: "AgNH2CH2COO", logBeta: "3.51", source: "epaEquilibria" },
    { n: 2, complex: "Ag(NH2CH2COO)2-", logBeta: "6.89", source: "epaEquilibria" },
  ] },
  { metal: "Cd^2+", ligand: "NH2CH2COO-", name: "glycinate", steps: [
    { n: 1, complex: "Cd(NH2CH2COO)+", logBeta: "4.69", source: "epaEquilibria" },
    { n: 2, complex: "Cd(NH2CH2COO)2", logBeta: "8.40", source: "epaEquilibria" },
    { n: 3, complex: "Cd(NH2CH2COO)3-", logBeta: "10.70", source: "epaEquilibria" },
  ] },
  { metal: "Hg^2+", ligand: "NH2CH2COO-", name: "glycinate", steps: [
    { n: 1, complex: "Hg(NH2CH2COO)+", logBeta: "10.81", source: "epaEquilibria" },
    { n: 2, complex: "Hg(NH2CH2COO)2", logBeta: "19.61", source: "epaEquilibria" },
  ] },
  { metal: "Pb^2+", ligand: "NH2CH2COO-", name: "glycinate", steps: [
    { n: 1, complex: "Pb(NH2CH2COO)+", logBeta: "5.47", source: "epaEquilibria" },
    { n: 2, complex: "Pb(NH2CH2COO)2", logBeta: "8.86", source: "epaEquilibria" },
  ] },
  { metal: "Cr^3+", ligand: "NH2CH2COO-", name: "glycinate", steps: [
    { n: 1, complex: "Cr(NH2CH2COO)^2+", logBeta: "9.13", source: "epaEquilibria" },
    { n: 2, complex: "Cr(NH2CH2COO)2+", logBeta: "16.03", source: "epaEquilibria" },
    { n: 3, complex: "Cr(NH2CH2COO)3", logBeta: "22.03", source: "epaEquilibria" },
  ] },
  { metal: "Mg^2+", ligand: "C2H8N2", name: "ethylenediamine", steps: [{ n: 1, complex: "Mg(C2H8N2)^2+", logBeta: "0.37", source: "epaEquilibria" }] },
  { metal: "Ca^2+", ligand: "C2H8N2", name: "ethylenediamine", steps: [{ n: 1, complex: "Ca(C2H8N2)^2+", logBeta: "0.11", source: "epaEquilibria" }] },
  { metal: "Mn^2+", ligand: "C2H8N2", name: "ethylenediamine", steps: [
    { n: 1, complex: "Mn(C2H8N2)^2+", logBeta: "2.74", source: "epaEquilibria" },
    { n: 2, complex: "Mn(C2H8N2)2^2+", logBeta: "4.80", source: "epaEquilibria" },
  ] },
  { metal: "Fe^2+", ligand: "C2H8N2", name: "ethylenediamine", steps: [
    { n: 1, complex: "Fe(C2H8N2)^2+", logBeta: "4.26", source: "epaEquilibria" },
    { n: 2, complex: "Fe(C2H8N2)2^2+", logBeta: "7.73", source: "epaEquilibria" },
    { n: 3, complex: "Fe(C2H8N2)3^2+", logBeta: "10.17", source: "epaEquilibria" },
  ] },
  { metal: "Co^2+", ligand: "C2H8N2", name: "ethylenediamine", steps: [
    { n: 1, complex: "Co(C2H8N2)^2+", logBeta: "5.50", source: "epaEquilibria", ionicStrength: "0.1" },
    { n: 2, complex: "Co(C2H8N2)2^2+", logBeta: "10.10", source: "epaEquilibria", ionicStrength: "0.1" },
    { n: 3, complex: "Co(C2H8N2)3^2+", logBeta: "13.20", source: "epaEquilibria", ionicStrength: "0.1" },
  ] },
  { metal: "Co^3+", ligand: "C2H8N2", name: "ethylenediamine", steps: [
    { n: 2, complex: "Co(C2H8N2)2^3+", logBeta: "34.70", source: "epaEquilibria", ionicStrength: "1" },
    { n: 3, complex: "Co(C2H8N2)3^3+", logBeta: "48.69", source: "epaEquilibria", ionicStrength: "1.5", celsius: 30 },
  ] },
  { metal: "Ni^2+", ligand: "C2H8N2", name: "ethylenediamine", steps: [
    { n: 1, complex: "Ni(C2H8N2)^2+", logBeta: "7.32", source: "epaEquilibria" },
    { n: 2, complex: "Ni(C2H8N2)2^2+", logBeta: "13.50", source: "epaEquilibria" },
    { n: 3, complex: "Ni(C2H8N2)3^2+", logBeta: "17.60", source: "epaEquilibria" },
  ] },
  { metal: "Cu^2+", ligand: "C2H8N2", name: "ethylenediamine", steps: [
    { n: 1, complex: "Cu(C2H8N2)^2+", logBeta: "10.50", source: "epaEquilibria" },
    { n: 2, complex: "Cu(C2H8N2)2^2+", logBeta: "19.60", source: "epaEquilibria" },
  ] },
  { metal: "Cu+", ligand: "C2H8N2", name: "ethylenediamine", steps: [{ n: 2, complex: "Cu(C2H8N2)2+", logBeta: "11.20", source: "epaEquilibria" }] },
  { metal: "Zn^2+", ligand: "C2H8N2", name: "ethylenediamine", steps: [
    { n: 1, complex: "Zn(C2H8N2)^2+", logBeta: "5.66", source: "epaEquilibria" },
    { n: 2, complex: "Zn(C2H8N2)2^2+", logBeta: "10.60", source: "epaEquilibria" },
    { n: 3, complex: "Zn(C2H8N2)3^2+", logBeta: "13.90", source: "epaEquilibria" },
  ] },
  { metal: "Ag+", ligand: "C2H8N2", name: "ethylenediamine", steps: [
    { n: 1, complex: "Ag(C2H8N2)+", logBeta: "4.60", source: "epaEquilibria" },
    { n: 2, complex: "Ag(C2H8N2)2+", logBeta: "7.50", source: "epaEquilibria" },
  ] },
  { metal: "Cd^2+", ligand: "C2H8N2", name: "ethylenediamine", steps: [
    { n: 1, complex: "Cd(C2H8N2)^2+", logBeta: "5.41", source: "epaEquilibria" },
    { n: 2, complex: "Cd(C2H8N2)2^2+", logBeta: "9.90", source: "epaEquilibria" },
    { n: 3, complex: "Cd(C2H8N2)3^2+", logBeta: "11.60", source: "epaEquilibria" },
  ] },
  { metal: "Hg^2+", ligand: "C2H8N2", name: "ethylenediamine", steps: [
    { n: 1, complex: "Hg(C2H8N2)^2+", logBeta: "14.21", source: "epaEquilibria" },
    { n: 2, complex: "Hg(C2H8N2)2^2+", logBeta: "23.11", source: "epaEquilibria" },
  ] },
  { metal: "Pb^2+", ligand: "C2H8N2", name: "ethylenediamine", steps: [
    { n: 1, complex: "Pb(C2H8N2)^2+", logBeta: "5.04", source: "epaEquilibria" },
    { n: 2, complex: "Pb(C2H8N2)2^2+", logBeta: "8.50", source: "epaEquilibria" },
  ] },
  { metal: "Cr^3+", ligand: "C2H8N2", name: "ethylenediamine", steps: [
    { n: 2, complex: "Cr(C2H8N2)2^3+", logBeta: "13.00", source: "epaEquilibria" },
    { n: 3, complex: "Cr(C2H8N2)3^3+", logBeta: "19.43", source: "epaEquilibria" },
  ] },
  { metal: "Mg^2+", ligand: "HCOO-", name: "formate", steps: [{ n: 1, complex: "Mg(HCOO)+", logBeta: "1.43", source: "epaEquilibria" }] },
  { metal: "Ca^2+", ligand: "HCOO-", name: "formate", steps: [{ n: 1, complex: "Ca(HCOO)+", logBeta: "1.43", source: "epaEquilibria" }] },
  { metal: "Sr^2+", ligand: "HCOO-", name: "formate", steps: [{ n: 1, complex: "Sr(HCOO)+", logBeta: "1.39", source: "epaEquilibria" }] },
  { metal: "Ba^2+", ligand: "HCOO-", name: "formate", steps: [{ n: 1, complex: "Ba(HCOO)+", logBeta: "1.38", source: "epaEquilibria" }] },
  { metal: "Co^2+", ligand: "HCOO-", name: "formate", steps: [
    { n: 1, complex: "Co(HCOO)+", logBeta: "1.21", source: "epaEquilibria", ionicStrength: "0.5", celsius: 30 },
    { n: 2, complex: "Co(HCOO)2", logBeta: "1.14", source: "epaEquilibria", ionicStrength: "2" },
  ] },
  { metal: "Ni^2+", ligand: "HCOO-", name: "formate", steps: [{ n: 1, complex: "Ni(HCOO)+", logBeta: "1.22", source: "epaEquilibria" }] },
  { metal: "Cu^2+", ligand: "HCOO-", name: "formate", steps: [{ n: 1, complex: "Cu(HCOO)+", logBeta: "2.00", source: "epaEquilibria" }] },
  { metal: "Zn^2+", ligand: "HCOO-", name: "formate", steps: [{ n: 1, complex: "Zn(HCOO)+", logBeta: "1.44", source: "epaEquilibria" }] },
  { metal: "Cd^2+", ligand: "HCOO-", name: "formate", steps: [{ n: 1, complex: "Cd(HCOO)+", logBeta: "1.70", source: "epaEquilibria" }] },
  { metal: "Hg^2+", ligand: "HCOO-", name: "formate", steps: [{ n: 1, complex: "Hg(HCOO)+", logBeta: "3.41", source: "epaEquilibria" }] },
  { metal: "Pb^2+", ligand: "HCOO-", name: "formate", steps: [{ n: 1, complex: "Pb(HCOO)+", logBeta: "2.20", source: "epaEquilibria" }] },
]);
