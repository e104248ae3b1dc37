// First aid and protection, by the statements that ask for them.
import { FIRST_AID } from "../data/first-aid";
import { PROTECTION_BY_CODE, type ProtectionKind } from "../data/protection";

/** The first lines for a set of codes: of each place the gravest row. */
export function firstAidFor(codes: readonly string[]): string[] {
  const bare = codes.map((code) => code.slice(0, 4));
  const said = new Map<string, string>();
  for (const { codes: asking, when, does } of FIRST_AID()) {
    if (!said.has(when) && asking.some((code) => bare.includes(code))) said.set(when, `${when}: ${does}`);
  }
  return [...said.values()];
}

/** The protection that a set of codes asks for, a line of each kind. */
export function protectionFor(codes: readonly string[]): readonly { kind: ProtectionKind; does: string }[] {
  const bare = new Set(codes.flatMap((code) => [code, code.slice(0, 4)]));
  const asked = PROTECTION_BY_CODE().filter((row) => row.codes.some((code) => bare.has(code)));
  return asked.filter(({ kind }, i) => asked.findIndex((row) => row.kind === kind) === i);
}
