// The official texts of statements, as a label prints them.
import { once } from "../../foundation/memo";
import { OFFICIAL_PRECAUTIONS, type OfficialPrecaution } from "../data/official-precautions";
import { OFFICIAL_STATEMENTS } from "../data/official-statements";

const texts = /* @__PURE__ */ once(() => new Map(OFFICIAL_STATEMENTS().map(({ code, text }) => [code, text])));

/** The official text of a code; undefined for one that is not in the table. */
export const officialText = (code: string): string | undefined => texts().get(code);

const HAZARD = /^H\d{3}/;

/** The precautionary statements that a set of hazard statements asks for, in the order in which a small label takes them. */
export function officialPrecautions(codes: readonly string[]): readonly OfficialPrecaution[] {
  const bare = new Set(codes.map((code) => HAZARD.exec(code)?.[0]));
  const asked = OFFICIAL_PRECAUTIONS().filter(({ hazards }) => hazards.some((hazard) => bare.has(hazard)));
  return asked.filter(({ code }, i) => asked.findIndex((one) => one.code === code) === i);
}
