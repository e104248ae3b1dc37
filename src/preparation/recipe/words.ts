// How the figures of a recipe's findings are printed and compared.
import type { Quantity } from "../../quantity";

export const shown = (q: Quantity, figures = 3): string => q.format({ significant: figures, uncertainty: "none" });
export const ratioOf = (q: Quantity): number => q.toNumber("");
export const near = (a: number, b: number, within: number): boolean => Math.abs(a / b - 1) <= within;
