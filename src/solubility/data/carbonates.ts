// Metals and their carbonates: which constants decide between the normal and the basic solid, what is expected to precipitate,
// and what the trade knows of the case (common practice, no source). The constants themselves are in products.ts.

import { once } from "../../foundation/memo";
import type { SourceKey } from "./sources";

/** A metal with the two solids its carbonate is decided between. */
interface CarbonateRow {
  readonly metal: string;
  /** Normal carbonate whose constant is used, and the name of its form. */
  readonly carbonate: readonly [solid: string, form?: string];
  /** Basic solid it competes with: the basic carbonate where its constant is firm, else the hydroxide. */
  readonly basic: readonly [solid: string, form?: string];
  readonly normalSolid: string;
  readonly basicSolid: string;
  readonly practice: { readonly soda?: string; readonly bicarbonate?: string };
  /** With which precipitant the trade gets the basic solid, of which no constant is known. */
  readonly basicWith?: "soda";
  /** With which precipitant the liquor is boiled. */
  readonly boiledWith?: "soda";
  /** Of the solids named and of the practice. */
  readonly source: SourceKey;
}

export const CARBONATES = /* @__PURE__ */ once((): readonly CarbonateRow[] => [
  { metal: "Ca^2+", carbonate: ["CaCO3", "calcite"], basic: ["Ca(OH)2", "portlandite"], normalSolid: "CaCO3", basicSolid: "Ca(OH)2", practice: {}, source: "commonPractice" },
  { metal: "Sr^2+", carbonate: ["SrCO3"], basic: ["Sr(OH)2·8H2O"], normalSolid: "SrCO3", basicSolid: "Sr(OH)2·8H2O", practice: {}, source: "commonPractice" },
  { metal: "Ba^2+", carbonate: ["BaCO3"], basic: ["Ba(OH)2·8H2O"], normalSolid: "BaCO3", basicSolid: "Ba(OH)2·8H2O", practice: {}, source: "commonPractice" },
  { metal: "Cd^2+", carbonate: ["CdCO3"], basic: ["Cd(OH)2"], normalSolid: "CdCO3", basicSolid: "Cd(OH)2", practice: {}, source: "commonPractice" },
  { metal: "Mn^2+", carbonate: ["MnCO3"], basic: ["Mn(OH)2"], normalSolid: "MnCO3", basicSolid: "Mn(OH)2", practice: { soda: "oxidises when wet", bicarbonate: "oxidises when wet" }, source: "commonPractice" },
  { metal: "Co^2+", carbonate: ["CoCO3"], basic: ["Co(OH)2"], normalSolid: "CoCO3", basicSolid: "Co5(OH)6(CO3)2", practice: {}, basicWith: "soda", source: "commonPractice" },
  { metal: "Fe^2+", carbonate: ["FeCO3"], basic: ["Fe(OH)2"], normalSolid: "FeCO3", basicSolid: "Fe(OH)2", practice: { soda: "use bicarbonate, and keep the air out", bicarbonate: "keep the air out" }, source: "commonPractice" },
  { metal: "Mg^2+", carbonate: ["MgCO3·3H2O"], basic: ["Mg(OH)2", "brucite"], normalSolid: "MgCO3·3H2O", basicSolid: "Mg5(CO3)4(OH)2·4H2O", practice: { soda: "basic on boiling", bicarbonate: "the trihydrate precipitates cold; boiling turns it basic" }, boiledWith: "soda", source: "commonPractice" },
  { metal: "Zn^2+", carbonate: ["ZnCO3·H2O"], basic: ["Zn5(OH)6(CO3)2"], normalSolid: "ZnCO3", basicSolid: "Zn5(OH)6(CO3)2", practice: { bicarbonate: "normal only cold and with carbon dioxide in excess" }, source: "commonPractice" },
  { metal: "Pb^2+", carbonate: ["PbCO3"], basic: ["Pb3(OH)2(CO3)2"], normalSolid: "PbCO3", basicSolid: "Pb3(OH)2(CO3)2", practice: { soda: "white lead" }, source: "commonPractice" },
  { metal: "Ni^2+", carbonate: ["NiCO3·5.5H2O"], basic: ["Ni(OH)2"], normalSolid: "NiCO3·6H2O", basicSolid: "Ni3(OH)4CO3·4H2O", practice: { bicarbonate: "normal only cold and saturated with carbon dioxide, else basic" }, basicWith: "soda", source: "commonPractice" },
  { metal: "Ag+", carbonate: ["Ag2CO3"], basic: ["Ag2O"], normalSolid: "Ag2CO3", basicSolid: "Ag2O", practice: { soda: "an excess of soda turns it brown: oxide", bicarbonate: "yellow; keep it from light and heat" }, source: "commonPractice" },
  { metal: "La^3+", carbonate: ["La2(CO3)3·8H2O"], basic: ["La(OH)3"], normalSolid: "La2(CO3)3·8H2O", basicSolid: "La(OH)3", practice: { soda: "basic on boiling" }, source: "commonPractice" },
  { metal: "Cu^2+", carbonate: ["CuCO3"], basic: ["Cu2(OH)2CO3"], normalSolid: "CuCO3", basicSolid: "Cu2(OH)2CO3", practice: {}, source: "commonPractice" },
]);

/** A metal of which no two constants have to be weighed: what falls is known, or only one of its solids has a constant. */
export interface SettledRow {
  readonly metal: string;
  readonly verdict: "normal" | "basic" | "hydroxide";
  readonly solid: string;
  readonly practice: { readonly soda?: string; readonly bicarbonate?: string };
  readonly source: SourceKey;
}

/** Of an ion too acid to keep a carbonate in water. */
const HYDROLYSES = "hydrolyses: hydroxide precipitates and carbon dioxide leaves";

export const SETTLED = /* @__PURE__ */ once((): readonly SettledRow[] => [
  { metal: "Al^3+", verdict: "hydroxide", solid: "Al(OH)3", practice: { soda: HYDROLYSES, bicarbonate: HYDROLYSES }, source: "commonPractice" },
  { metal: "Cr^3+", verdict: "hydroxide", solid: "Cr(OH)3", practice: { soda: HYDROLYSES, bicarbonate: HYDROLYSES }, source: "commonPractice" },
  { metal: "Fe^3+", verdict: "hydroxide", solid: "Fe(OH)3", practice: { soda: HYDROLYSES, bicarbonate: HYDROLYSES }, source: "commonPractice" },
  { metal: "Sn^2+", verdict: "hydroxide", solid: "Sn(OH)2", practice: { soda: HYDROLYSES, bicarbonate: HYDROLYSES }, source: "commonPractice" },
  { metal: "Ti^4+", verdict: "hydroxide", solid: "TiO2", practice: { soda: HYDROLYSES, bicarbonate: HYDROLYSES }, source: "commonPractice" },
  { metal: "Bi^3+", verdict: "hydroxide", solid: "BiO(OH)", practice: { soda: HYDROLYSES, bicarbonate: HYDROLYSES }, source: "commonPractice" },
  { metal: "Li+", verdict: "normal", solid: "Li2CO3", practice: { soda: "from strong hot liquors only, less soluble hot than cold: dilute ones stay clear", bicarbonate: "stays in solution until carbon dioxide is boiled out" }, source: "commonPractice" },
  { metal: "Ce^3+", verdict: "normal", solid: "Ce2(CO3)3·8H2O", practice: { soda: "basic on standing or boiling", bicarbonate: "with carbon dioxide in excess" }, source: "commonPractice" },
  { metal: "Hg^2+", verdict: "basic", solid: "HgCO3·2HgO", practice: { soda: "red-brown; oxide on boiling", bicarbonate: "red-brown; oxide on boiling" }, source: "commonPractice" },
]);
