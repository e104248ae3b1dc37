// Foundation: what every room needs and no room owns - errors and the bibliography.
export type { Source, SourceKey } from "./bibliography";
export { cite, source, sourceKeys } from "./bibliography";
export type { ErrorDetails, ErrorPlace, ErrorRecord, Result, SourceErrorCode } from "./error";
export { isPreparativeError, PreparativeError, SourceError } from "./error";
export type { Fraction } from "./fraction";
