// Errors every layer shares: one base class, a stable dotted code, the place in the text that was read, and a hint.
// Recognised by a brand kept in the global symbol registry, so two loaded copies of the library still know each other.

const BRAND: unique symbol = /* @__PURE__ */ Symbol.for("preparative.error");

/** What an error carries beside its code; every field is plain data. */
export interface ErrorDetails {
  /** Fields by code of the error. */
  readonly [name: string]: unknown;
}

/** Where and how to mend it, for errors that come from reading a text. */
export interface ErrorPlace {
  /** The whole text that was read. */
  readonly input?: string | undefined;
  /** Index into `input` (UTF-16 code units) of the first character that does not fit. */
  readonly position?: number | undefined;
  /** What to try instead. */
  readonly hint?: string | undefined;
  /** Facts of the error, by name. */
  readonly details?: ErrorDetails | undefined;
}

/** An error as plain data, as `toJSON` gives it. */
export interface ErrorRecord {
  /** Name of the error's class. */
  readonly name: string;
  /** Stable dotted code: `area.what-went-wrong`. */
  readonly code: string;
  /** What is wrong, for a person to read. */
  readonly message: string;
  /** Text that was refused; absent where no text was read. */
  readonly input?: string;
  /** Where in `input` reading stopped, counted from 0. */
  readonly position?: number;
  /** What to try in its place. */
  readonly hint?: string;
  /** Plain data by code; empty where there is none. */
  readonly details: ErrorDetails;
}

/** Codes of what is open until the text goes on, wherever they point. */
const UNFINISHED: ReadonlySet<string> = /* @__PURE__ */ new Set(["formula.unclosed-bracket", "equation.no-arrow"]);

/** Longest stretch of the input that a caret line quotes. */
const CARET_WIDTH = 76;

/** The text around `position` with a caret line below it. */
function caret(input: string, position: number): string {
  const start = Math.max(0, Math.min(position - CARET_WIDTH / 2, input.length - CARET_WIDTH));
  const shown = input.slice(start, start + CARET_WIDTH).replace(/[\n\r\t]/g, " ");
  return `  ${shown}\n  ${" ".repeat(position - start)}^`;
}

/** Longest problem and longest hint of a message: a page, whatever text it quotes. */
const LONGEST_PART = 1500;

/** Longest stretch without a space in a problem: a word of the caller's, quoted. */
const LONGEST_WORD = 80;

const shortened = (text: string): string => (text.length > LONGEST_PART ? `${text.slice(0, LONGEST_PART)}…` : text);

const withShortWords = (text: string): string =>
  text.length > LONGEST_WORD ? shortened(text).replace(/\S{81,}/g, (word) => `${word.slice(0, LONGEST_WORD)}…`) : text;

/** A detail as data that survives `JSON.stringify`: whole numbers of any size as text, what is no data by its kind. */
function plainDetail(value: unknown): unknown {
  if (typeof value === "bigint") return String(value);
  if (typeof value === "symbol" || typeof value === "function") return typeof value;
  if (Array.isArray(value)) return value.map(plainDetail);
  if (typeof value !== "object" || value === null || typeof (value as { toJSON?: unknown }).toJSON === "function")
    return value;
  return Object.fromEntries(Object.entries(value).map(([name, part]) => [name, plainDetail(part)]));
}

/**
 * Base of every error the library throws on purpose. Branch on `code`, not on the message: codes are public and stable.
 * `instanceof PreparativeError` also knows the errors of another loaded copy of the library; the classes of the layers know
 * their own copy's only, for which the code speaks.
 *
 * @category Errors
 * @example
 * try {
 *   quantity("12,5 g" as string);
 * } catch (error) {
 *   isPreparativeError(error) && error.code; // => "quantity.decimal-comma"
 * }
 */
export class PreparativeError extends Error {
  /** @internal Its name in consoles, whatever a minifier makes of it. */
  static override get name(): string {
    return "PreparativeError";
  }

  /** @internal `instanceof` of the base class asks for the brand, so that errors of another loaded copy pass. */
  static override [Symbol.hasInstance](value: unknown): boolean {
    return this === PreparativeError
      ? isPreparativeError(value)
      : Function.prototype[Symbol.hasInstance].call(this, value);
  }

  /** Stable dotted code: `area.what-went-wrong`. */
  readonly code: string;
  /** Text that was refused; undefined where no text was read. */
  readonly input: string | undefined;
  /** Where in `input` it went wrong, counted from 0. */
  readonly position: number | undefined;
  /** What to try in its place; undefined where nothing can be advised. */
  readonly hint: string | undefined;
  /** Plain data for programs, by code; empty where there is none. */
  readonly details: ErrorDetails;

  /** What is wrong in one line, without the quoted text and the hint that `message` adds. */
  get problem(): string {
    return this.message.split("\n", 1)[0]!;
  }

  /**
   * Was the text refused for ending too early? More typing may mend it: a form that reads while somebody types waits
   * before it complains.
   */
  get incomplete(): boolean {
    const { code, input, position } = this;
    if (input === undefined || position === undefined) return false;
    return position >= input.trimEnd().length || UNFINISHED.has(code);
  }

  constructor(code: string, problem: string, place: ErrorPlace = {}) {
    const { input, position, hint, details = {} } = place;
    let message = withShortWords(problem);
    if (input !== undefined && position !== undefined) message += `\n${caret(input, position)}`;
    if (hint !== undefined) message += `\n  hint: ${shortened(hint)}`;
    super(message);
    this.name = "PreparativeError";
    this.code = code;
    this.input = input;
    this.position = position;
    this.hint = hint;
    this.details = plainDetail(details) as ErrorDetails;
    Object.defineProperty(this, BRAND, { value: true });
  }

  /** The error as plain data that survives `JSON.stringify`. */
  toJSON(): ErrorRecord {
    const { name, code, message, input, position, hint, details } = this;
    return {
      name,
      code,
      message,
      ...(input === undefined ? {} : { input }),
      ...(position === undefined ? {} : { position }),
      ...(hint === undefined ? {} : { hint }),
      details,
    };
  }
}

/** An error class of one room, with the codes it can carry. */
export interface ErrorClass<Code extends string> {
  new (code: Code, problem: string, place?: ErrorPlace): PreparativeError & { readonly code: Code };
}

/**
 * The error class of a room: the base with the room's own name and codes.
 *
 * @internal
 */
export function errorClass<Code extends string>(name: string): ErrorClass<Code> {
  return class extends PreparativeError {
    declare readonly code: Code;

    constructor(code: Code, problem: string, place: ErrorPlace = {}) {
      super(code, problem, place);
      this.name = name;
    }
  };
}

/** Codes of what the bibliography refuses. */
export type SourceErrorCode = "source.unknown";

/**
 * A key of the bibliography that it does not hold. Codes start with `source.`.
 *
 * @category Errors
 * @example
 * try {
 *   cite("nope" as never);
 * } catch (error) {
 *   isPreparativeError(error) && error.code; // => "source.unknown"
 * }
 */
export class SourceError extends /* @__PURE__ */ errorClass<SourceErrorCode>("SourceError") {}

/**
 * The same error, its place stated in a longer text that holds the one it was read from.
 *
 * @internal
 */
export function relocated(error: PreparativeError, input: string, by: number): PreparativeError {
  const Same = error.constructor as new (code: string, problem: string, place: ErrorPlace) => PreparativeError;
  const { code, position = 0, hint, details } = error;
  return new Same(code, error.problem, { input, position: position + by, hint, details });
}

/**
 * Is this one of the library's own errors? Works across two loaded copies of the library.
 *
 * @category Errors
 * @example
 * isPreparativeError(new TypeError("other")) // => false
 */
export function isPreparativeError(value: unknown): value is PreparativeError {
  return typeof value === "object" && value !== null && (value as { [BRAND]?: true })[BRAND] === true;
}

/**
 * An error with one of the `Codes`; comparing its `code` tells what its `details` hold, where `Details` names them.
 *
 * @category Errors
 */
export type ErrorWithCode<Codes extends string, Details extends object = Readonly<Record<never, never>>> = {
  [Code in Codes]: PreparativeError & {
    readonly code: Code;
    readonly details: Code extends keyof Details ? Details[Code] : ErrorDetails;
  };
}[Codes];

/**
 * What a `try…` function returns: the value, or the error that the plain function would have thrown. `E` says which codes
 * it can carry.
 */
export type Result<T, E extends PreparativeError = PreparativeError> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly error: E };

/**
 * Run anything of the library and get the outcome as data: the value, or the error it refused with. Errors that are not
 * the library's own still pass through, because they are bugs.
 *
 * @param run - a function without arguments that calls the library
 * @returns `{ ok: true, value }` or `{ ok: false, error }`
 * @category Errors
 * @example
 * attempt(() => molarMass("NaCl").format({ decimals: 2 })) // => { ok: true, value: "58.44 g/mol" }
 * const outcome = attempt(() => molarMass("Tc2O7"));
 * outcome.ok ? "" : outcome.error.code // => "element.no-atomic-weight"
 */
export function attempt<T, E extends PreparativeError = PreparativeError>(run: () => T): Result<T, E> {
  try {
    return { ok: true, value: run() };
  } catch (error) {
    if (isPreparativeError(error)) return { ok: false, error: error as E };
    throw error;
  }
}

/**
 * A value of any kind as text for a message: what cannot become text is described by its kind.
 *
 * @internal
 */
export function shownValue(value: unknown): string {
  try {
    return String(value);
  } catch {
    return typeof value;
  }
}

/** `U+2009` and the like, for naming a character that cannot be recognised by eye. */
export function codePointName(character: string): string {
  return `U+${character.codePointAt(0)!.toString(16).toUpperCase().padStart(4, "0")}`;
}
