// A form that balances while somebody types: a text comes in with every key, lines for the screen go out. In a page, call
// `balancingForm` from the input's `input` event. Try it: npx tsx --tsconfig test/tsconfig.json docs/examples/balancing-form.ts "Fe + O2 -> Fe2O3"
import { explain, tryBalance } from "preparative";

export interface FormState {
  readonly status: "empty" | "typing" | "wrong" | "balanced";
  readonly lines: readonly string[];
}

export function balancingForm(text: string): FormState {
  if (text.trim() === "") return { status: "empty", lines: [] };
  const outcome = tryBalance(text);
  if (outcome.ok) {
    const { counts } = explain(outcome.value);
    const check = counts.map(({ of, left, right, total }) => `${of}: ${left} = ${right} = ${total.toFraction()}`);
    return { status: "balanced", lines: [outcome.value.toUnicode(), ...check] };
  }
  const { error } = outcome;
  // not finished is no fault: say what is expected, without a caret
  if (error.incomplete) return { status: "typing", lines: [error.problem] };
  const lines = [error.problem];
  if (error.input !== undefined && error.position !== undefined) {
    lines.push(error.input, `${" ".repeat(error.position)}^`);
  }
  if (error.code === "equation.underdetermined") lines.push(...error.details.elementary.map((one) => `one of: ${one}`));
  else if (error.hint !== undefined) lines.push(error.hint);
  return { status: "wrong", lines };
}

const [, script, typed] = process.argv;
if (script?.endsWith("balancing-form.ts")) console.log(balancingForm(typed ?? "").lines.join("\n"));
