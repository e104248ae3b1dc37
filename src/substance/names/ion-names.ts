// Ions by every name they have.
import { allIons, compositionKey, HYDROGENS, type Ion } from "../../ion/internal";
import { addTo } from "./multimap";
import { otherNamesOf } from "./other-names";
import { plainName } from "./words";

/** Other names of an anion for its listed hydrogen salts as well: dihydrogenpyrophosphate. */
function nameHydrogenKin(ion: Ion, listed: readonly Ion[], byName: Map<string, Ion[]>): void {
  for (let n = 1; n < -ion.charge && n < HYDROGENS.length; n += 1) {
    const key = compositionKey(new Map(ion.counts).set("H", (ion.counts.get("H") ?? 0) + n));
    const kin = listed.find((one) => one.charge === ion.charge + n && compositionKey(one.counts) === key);
    if (kin === undefined) continue;
    for (const also of otherNamesOf(ion)) {
      const name = plainName(`${HYDROGENS[n]}${also}`).name;
      if (!byName.has(name)) byName.set(name, [kin]);
    }
  }
}

let built: ReadonlyMap<string, readonly Ion[]> | undefined;

/** Ions by name, built on first use. */
export function ionsByName(): ReadonlyMap<string, readonly Ion[]> {
  if (built !== undefined) return built;
  const { listed, anions, cations } = allIons();
  const byName = new Map<string, Ion[]>();
  for (const ion of [...anions, ...cations])
    for (const name of new Set([ion.row.name, ...otherNamesOf(ion)].map((one) => plainName(one).name)))
      addTo(byName, name, ion);
  for (const ion of listed) nameHydrogenKin(ion, listed, byName);
  built = byName;
  return built;
}
