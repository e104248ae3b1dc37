// All that an answer has to say, as one text: every field to its depth, what it prints, and the working of each figure.
import { explain, Formula, isQuantity } from "preparative";

const DEPTH = 8;

/** Names of what an object of a class works out when it is asked. */
function gettersOf(value: object): string[] {
  const prototype: object | null = Object.getPrototypeOf(value);
  if (prototype === null || prototype === Object.prototype) return [];
  const all = Object.entries(Object.getOwnPropertyDescriptors(prototype));
  return all.flatMap(([name, { get }]) => (get === undefined ? [] : [name]));
}

export function told(value: unknown, depth = 0): string {
  if (value instanceof Formula) return `${value}`;
  if (isQuantity(value)) return `${explain(value)}`;
  if (typeof value !== "object" || value === null) return String(value);
  if (depth > DEPTH) return "…";
  if (Array.isArray(value)) return `[${value.map((one) => told(one, depth + 1)).join(", ")}]`;
  // what was asked may have its facts with it, which is no part of an answer
  const keys = [...Object.keys(value), ...gettersOf(value)].filter((key) => key !== "facts");
  const fields = keys.map((key) => `${key}: ${told((value as Record<string, unknown>)[key], depth + 1)}`);
  return `${value}{${fields.join(", ")}}`;
}
