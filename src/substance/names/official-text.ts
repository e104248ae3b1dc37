// The official text of a hazard statement, as a label prints it.
import { once } from "../../foundation/memo";
import { OFFICIAL_STATEMENTS } from "../data/official-statements";

const texts = /* @__PURE__ */ once(() => new Map(OFFICIAL_STATEMENTS().map(({ code, text }) => [code, text])));

/** The official text of a code; undefined for one that is not in the table. */
export const officialText = (code: string): string | undefined => texts().get(code);
