// How far a step is from failing, as a figure and as room between 0 (fails) and 1 (cannot).
import type { Plan } from "../preparation";
import { type Quantity, quantity } from "../quantity";
import { LEAST, roomIn } from "./room";
import type { FoundStep } from "./search";

/** One margin. */
export interface Margin {
  /** One sentence for a person to read. */
  readonly text: string;
  /** What the margin rests on: a share, log10(Q/K), pH units or volts. */
  readonly figure: Quantity<"number">;
  /** 0 where it just fails, 1 where nothing threatens it. */
  readonly room: number;
}

const percent = (share: number): string => `${(100 * share).toPrecision(3)} %`;
const clamp = (x: number): number => Math.max(0, Math.min(1, x));

/** Volts that are plenty for a metal; powers of ten for a solubility product; units of pH before lye takes a solid back. */
const PLENTY = 0.5;
const PLENTY_OF_K = 2;
const PLENTY_OF_PH = 3;

/** The margins of a step, the nearest first. */
export function marginsOf({ judgement, candidate }: FoundStep, plan: Plan): readonly Margin[] {
  const { share, beside, feasibility } = judgement;
  const found: Margin[] = [];
  const number = (value: number, unit: string, label: string): Quantity =>
    quantity({ value: Number(value.toPrecision(4)).toString(), unit }, { label });
  found.push({
    text:
      candidate.family.separate === "filter"
        ? `${percent(share)} of the theory precipitates`
        : `${percent(share)} of the theory can be had`,
    figure: number(share, "", "share of the theory"),
    room: clamp((share - LEAST) / (1 - LEAST)),
  });
  const { overdosed } = judgement;
  if (overdosed !== undefined)
    found.push({
      text: `with a fifth too much of the lye ${percent(overdosed)} of the theory is still solid`,
      figure: number(overdosed, "", "share that is solid after a fifth too much"),
      room: clamp((overdosed - LEAST) / (1 - LEAST)),
    });
  const room = candidate.family.tests.includes("it precipitates at equilibrium") ? roomIn(feasibility) : undefined;
  if (room !== undefined) {
    const { logarithm, more, pH, redissolvesFrom } = room;
    found.push({
      text: `its solubility product may be 10^${logarithm.toFixed(1)} ${more ? "times greater and more" : "times greater"} before less than ${100 * LEAST} % precipitates`,
      figure: number(logarithm, "", "log10(Q/K)"),
      room: clamp(logarithm / PLENTY_OF_K),
    });
    if (redissolvesFrom !== undefined)
      found.push({
        text: `with lye less than ${100 * LEAST} % of it is solid from pH ${redissolvesFrom.toFixed(1)} on, ${(redissolvesFrom - pH).toFixed(1)} units above the liquor`,
        figure: number(redissolvesFrom - pH, "", "pH units until lye redissolves it"),
        room: clamp((redissolvesFrom - pH) / PLENTY_OF_PH),
      });
  }
  if (beside > 0)
    found.push({
      text: `${percent(beside)} forms another solid`,
      figure: number(beside, "", "share of another solid"),
      room: clamp(1 - 3 * beside),
    });
  for (const { code, numbers } of feasibility.reasons) {
    if (code === "potentials") {
      const difference = numbers.at(-1);
      const volts =
        difference?.dimension === "electric potential" || difference?.unit === "V"
          ? difference.toNumber("V")
          : undefined;
      if (volts !== undefined)
        found.push({
          text: `the potentials differ by ${volts.toFixed(2)} V`,
          figure: number(volts, "V", "difference of potentials"),
          room: clamp(volts / PLENTY),
        });
    }
    if (code === "passive" || code === "hydrolysis" || code === "fired-oxide")
      found.push({
        text: feasibility.reasons.find((one) => one.code === code)!.text,
        figure: number(0.3, "", "judged by rule"),
        room: 0.3,
      });
  }
  const { completeness } = plan;
  if (completeness !== undefined && "precipitated" in completeness) {
    const falls = completeness.precipitated.toNumber("");
    found.push({
      text: `the liquor keeps ${percent(1 - falls)} of it`,
      figure: number(falls, "", "share that the liquor gives"),
      room: clamp((falls - LEAST) / (1 - LEAST)),
    });
  }
  return found.sort((a, b) => a.room - b.room);
}
