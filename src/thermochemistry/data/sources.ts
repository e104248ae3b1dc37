// Sources of the tables of heats; what they share with lower layers stands there.
import { generalSources } from "../../foundation/data/sources";
import { type Access, citation, type Sources } from "../../foundation/source";
import { ionSources } from "../../ion/internal";

export const thermochemistrySources = {
  codata1989: { title: "CODATA Key Values for Thermodynamics", year: 1989, fromMemory: "partly" },
  parker1965: { title: "Parker, Thermal Properties of Aqueous Uni-univalent Electrolytes, Natl. Stand. Ref. Data Ser., Natl. Bur. Stand. (U.S.) 2", year: 1965, access: "as reprinted in a handbook table of enthalpies of dilution of acids" },
  schoenitzNavrotsky1999: { title: "Schoenitz and Navrotsky, Enthalpy of formation of katoite Ca3Al2[(OH)4]3: energetics of the hydrogarnet substitution, American Mineralogist 84, 389", year: 1999, access: "as quoted by the database of the French geological survey" },
  perry1997: { title: "Perry's Chemical Engineers' Handbook, 7th ed., specific heats of aqueous solutions", year: 1997, access: "read on a public copy of page 2-184" },
} as const satisfies Sources;

/** How the figures reached us, where they were not read in the source itself. */
export const thermochemistryAccess = {
  codata1989: "spot-checked, else from memory",
} as const satisfies Access<typeof thermochemistrySources>;

/** What a row of this layer may name. */
export type SourceKey = keyof typeof thermochemistrySources | keyof typeof ionSources | keyof typeof generalSources;

/** A source on one line, as it is printed under a working. */
export const cite = (key: SourceKey): string => citation(key, [thermochemistrySources, ionSources, generalSources]);
