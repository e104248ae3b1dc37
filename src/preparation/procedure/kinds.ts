// The kinds of preparation by name.

export const PROCEDURES = [
  "precipitation",
  "neutralisation",
  "metal and acid",
  "displacement",
  "double salt",
  "crystallisation",
  "thermal decomposition",
  "complex formation",
  "redox",
  "other",
] as const;

/** Kinds of preparation. */
export type ProcedureKind = (typeof PROCEDURES)[number];
