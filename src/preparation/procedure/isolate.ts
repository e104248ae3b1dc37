// The product out of its vessel, by how it stands there.
import { madeOf } from "../../substance/internal";
import { matterOf } from "../contents/matter";
import { cool } from "../operation/cool";
import { type Bench, POT } from "./bench";
import { filterHot, isolateCrystals } from "./crystals";
import { isolatePrecipitate } from "./precipitate";
import { filterAndRinse } from "./rinsing";
import { keepLiquor } from "./second-crop";
import { useOf } from "./use";
import { celsius } from "./words";

export function isolate(bench: Bench): void {
  const { isolation, setting, theory } = bench.frame;
  if (isolation.how === "precipitate") isolatePrecipitate(bench);
  else if (isolation.how === "crystallise") isolateCrystals(bench);
  else if (isolation.how === "unknown") {
    const { product, temperature } = setting;
    // What is not wanted, charcoal or a base that is left, goes before anything comes out.
    if (bench.pot.books.solids.length > 0) filterHot(bench, bench.pot.books.temperature);
    const crop = matterOf(product.formula);
    const there = bench.pot.books.dissolved.find((one) => one.matter.key === crop.core.key)?.amount;
    const coming = there === undefined ? [] : [{ matter: crop, amount: there }];
    const done = cool(bench.pot, temperature, coming);
    const unknown = [...new Set([...done.after.books.unknown, isolation.missing])];
    const hasAlcohol = setting.asides.some((one) => useOf(one, product.formula) === "alcohol");
    bench.did(
      POT,
      { ...done, after: done.after.with({ unknown }) },
      {
        target: temperature,
        care: "isolating",
        say: () =>
          hasAlcohol
            ? `Let it cool to ${celsius(temperature)}; what of the ${product.name} the alcohol leaves dissolved is not known (${isolation.missing} missing).`
            : `Let it cool to ${celsius(temperature)} and stand; how the ${product.name} comes out is not known (${isolation.missing} missing): if nothing comes, ${
                madeOf(product.formula).ammonia
                  ? "add as much alcohol as liquor, slowly; do not boil it down, the ammonia would leave"
                  : "boil down or add as much alcohol as liquor"
              }.`,
      },
    );
    filterAndRinse(bench, product.formula, theory, temperature);
    keepLiquor(bench, `what it still contains of ${product.name}`);
  }
}
