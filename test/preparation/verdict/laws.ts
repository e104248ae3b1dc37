// What the laws of a verdict compare.
import type { Finding } from "preparative";

/** What a finding is about: a formula, a jar, a material; its figures change with every weighing. */
export const about = ({ code, text }: Finding): string =>
  code === "consistent"
    ? code
    : `${code} ${
        /for (\S+)$|what (\S+) gives|the (.+?) was |if the (.+) was|with .* of (\S+) would/
          .exec(text)
          ?.slice(1)
          .find((one) => one !== undefined) ?? ""
      }`;

export type Standing = "heavy" | "fits" | "light";

export const standingOf = (verdict: readonly Finding[]): Standing =>
  verdict.some(({ code }) => code === "consistent")
    ? "fits"
    : verdict.some(({ code }) => code === "lighter-than-losses-explain")
      ? "light"
      : "heavy";

/** Ten times every mass and volume, for a batch on a balance with ten times the step. */
export function scaled(value: unknown): unknown {
  if (typeof value === "string" && / (g|mL)$/.test(value)) {
    const [number, unit] = value.split(" ") as [string, string];
    const decimals = Math.max(0, (number.split(".")[1] ?? "").length - 1);
    return `${(10 * Number.parseFloat(number)).toFixed(decimals)} ${unit}`;
  }
  if (Array.isArray(value)) return value.map(scaled);
  return typeof value === "object" && value !== null
    ? Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, scaled(inner)]))
    : value;
}
