// The formula of a salt from its two ions.
/** Size of the charge of an ion. */
export const chargeOf = (ion: string): number => Number(/\^(\d+)[+-]$/.exec(ion)?.[1] ?? 1);
/** An ion without its charge. */
export const bare = (ion: string): string => ion.replace(/\^\d+[+-]$|[+-]$/, "");
const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));

/** One kind of ion as often as a salt needs it. */
function counted(ion: string, n: number): string {
  const text = bare(ion);
  if (n === 1) return text;
  return /^[A-Z][a-z]?$/.test(text) || text.startsWith("[") ? `${text}${n}` : `(${text})${n}`;
}

/** The formula of a salt of two ions, without crystal water. */
export function saltOf(cation: string, anion: string): string {
  const [plus, minus] = [chargeOf(cation), chargeOf(anion)];
  const whole = gcd(plus, minus);
  return `${counted(cation, minus / whole)}${counted(anion, plus / whole)}`;
}
