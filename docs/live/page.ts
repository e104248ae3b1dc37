// The live page: each input answers while somebody types, from the library in this page and nothing else.
import { aboutEquation, aboutFormula, aboutMixture, aboutPreparation } from "./answers";

const byId = <T extends HTMLElement>(id: string): T => document.getElementById(id) as T;

/** Answer an input into its place, at once and after each change. */
function wired(input: string, output: string, about: (text: string) => string): void {
  const field = byId<HTMLInputElement | HTMLTextAreaElement>(input);
  const show = (): void => {
    byId(output).innerHTML = field.value.trim() === "" ? "" : about(field.value.trim());
  };
  field.addEventListener("input", show);
  show();
}

wired("formula", "formula-answer", aboutFormula);
wired("equation", "equation-answer", aboutEquation);
wired("mixture", "mixture-answer", aboutMixture);

const form = byId<HTMLFormElement>("preparation");
const field = (name: string): string => (form.elements.namedItem(name) as HTMLInputElement).value.trim();

function plan(): void {
  const { sheet, refused } = aboutPreparation({
    equation: field("reaction"),
    product: field("product"),
    materials: field("materials"),
    amount: field("amount"),
  });
  byId("preparation-answer").innerHTML = refused ?? "";
  const frame = byId<HTMLIFrameElement>("sheet");
  frame.hidden = sheet === undefined;
  frame.srcdoc = sheet ?? "";
}

form.addEventListener("submit", (event) => {
  event.preventDefault();
  plan();
});
plan();
byId("print").addEventListener("click", () => byId<HTMLIFrameElement>("sheet").contentWindow?.print());
document.documentElement.dataset["ready"] = "yes";
