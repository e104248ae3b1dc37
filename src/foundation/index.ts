// Foundation: what every layer needs and no room owns - errors, exact fractions and citations.
export type { ErrorDetails, ErrorPlace, ErrorRecord, ErrorWithCode, Result, SourceErrorCode } from "./error";
export { attempt, isPreparativeError, PreparativeError, SourceError } from "./error";
export type { Fraction } from "./fraction";
export type { Source } from "./source";
