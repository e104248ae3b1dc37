// The head of a sheet: what is made, from what, and the figures that are looked for first.
import type { Block } from "../document/blocks";
import { about, handy, sizeOf } from "../figures";
import { filled } from "../words";
import { asRead, type OnPaper, rangeOf } from "./context";

export function titleBlock({ plan, words }: OnPaper): Block {
  const { product, weighings } = plan;
  const named = product.name === product.formula ? product.formula : `${product.name}, ${product.formula}`;
  const materials = weighings.map((one) => one.material).join(", ");
  return {
    kind: "title",
    text: plan.title,
    lines: [filled(words.from, { product: named, materials }), plan.equation.toUnicode()],
    blanks: [words.batch, words.date, words.worker, words.checked],
  };
}

function vesselCell({ plan, words }: OnPaper) {
  const { vessel } = plan;
  if (vessel?.smallest !== undefined)
    return {
      label: words.vessel,
      value: filled(words.open, { size: sizeOf(vessel.smallest) }),
      note: filled(words.liquid, { volume: handy(vessel.liquid, 2) }),
    };
  const fired = plan.steps.some(({ operation }) => operation === "fire");
  return { label: words.vessel, value: fired ? words.crucible : words.unknown, note: "" };
}

function heatCell({ plan, words }: OnPaper) {
  const { heat } = plan;
  if ("missing" in heat) return { label: words.heat, value: words.unknown, note: "" };
  const { rise } = heat.rise;
  const phrase = rise.value.isNegative() ? words.cools : words.warms;
  const size = rise.value.isNegative() ? rise.negated() : rise;
  return {
    label: words.heat,
    value: about(size, "ΔK", 2).replace("ΔK", "K"),
    note: phrase,
  };
}

export function stripBlock(on: OnPaper): Block {
  const { plan, words } = on;
  const { theoreticalYield } = plan.product;
  const { low, high } = rangeOf(plan);
  const gas = plan.gas.map(({ formula, volume }) => `${handy(volume)} ${formula}`).join(", ");
  return {
    kind: "strip",
    cells: [
      {
        label: words.expected,
        value: filled(words.range, { low: low.replace(" g", ""), high }),
        note: filled(words.theory, { mass: asRead(plan, theoreticalYield) }),
      },
      vesselCell(on),
      {
        label: words.gas,
        value: gas === "" ? words.none : gas,
        note: gas === "" ? "" : filled(words.atRoom, { temperature: about(plan.temperature, "°C", 2) }),
      },
      heatCell(on),
      {
        label: words.waste,
        value: plan.waste.volume === undefined ? words.none : handy(plan.waste.volume, 2),
        note: plan.waste.volume === undefined ? "" : words.collect,
      },
    ],
  };
}
