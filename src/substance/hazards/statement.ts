import { frozen } from "../../foundation/frozen";
import { readable } from "../../foundation/readable";
import {
  HAZARD_STATEMENTS,
  PICTOGRAMS,
  PRECAUTIONARY_STATEMENTS,
  type StatementRow,
  SUPPLEMENTAL_STATEMENTS,
} from "../data/statements";
import { readableText, SubstanceError } from "../error";

/** A pictogram, hazard, supplemental or precautionary code. */
export interface StatementEntry extends StatementRow {
  /** What sort of code it is. */
  readonly kind: "pictogram" | "hazard" | "supplemental" | "precautionary";
}

const tables = () =>
  [
    ["pictogram", PICTOGRAMS],
    ["hazard", HAZARD_STATEMENTS()],
    ["supplemental", SUPPLEMENTAL_STATEMENTS()],
    ["precautionary", PRECAUTIONARY_STATEMENTS()],
  ] as const;

/**
 * What a code stands for, in our own short paraphrase. A real label takes the official text of its country.
 *
 * @param code - such as "H314", "EUH031", "P305+P351+P338", "GHS05"; a suffix ("H360FD", "H350i") falls back to the bare number
 * @throws {SubstanceError} `substance.unknown-code`, `substance.bad-input`, `substance.too-long`
 * @source UN GHS (9th and 10th revised), Annexes 1 and 3; CLP Annexes II to V; wording our own
 * @category Cautions
 * @example
 * statementOf("H314").paraphrase // => "burns skin and eyes badly"
 * statementOf("H360FD").code // => "H360"
 */
export function statementOf(code: string): StatementEntry {
  const text = readableText(code, "a statement code").replace(/\s+/g, "");
  for (const one of [text, text.replace(/(?<=\d)[A-Za-z]+$/, "")])
    for (const [kind, table] of tables()) {
      const row = table.find((entry) => entry.code === one);
      if (row !== undefined) return frozen(readable({ ...row, kind }));
    }
  throw new SubstanceError("substance.unknown-code", `no statement has the code ${text}`, {
    input: text,
    hint: "codes look like H314, H302+H312, EUH031, P280, GHS05",
  });
}
