// The tables of this layer rest on sources of lower layers.

import { amountSources } from "../../amount/internal";
import { aqueousSources } from "../../aqueous/internal";
import { periodicTableSources } from "../../element/internal";
import { generalSources } from "../../foundation/data/sources";
import { memoised, once } from "../../foundation/memo";
import { citation } from "../../foundation/source";
import { heatingSources, hydrateSources } from "../../hydrate/internal";
import { ionSources } from "../../ion/internal";
import { quantitySources } from "../../quantity/internal";
import { solubilitySources } from "../../solubility/internal";
import { hazardSources, substanceSources } from "../../substance/internal";
import { thermochemistrySources } from "../../thermochemistry/internal";

/** What a row of this layer may name. */
export type SourceKey = keyof typeof quantitySources | keyof typeof periodicTableSources | keyof typeof ionSources | keyof typeof amountSources | keyof typeof hydrateSources | keyof typeof heatingSources | keyof typeof substanceSources | keyof typeof hazardSources | keyof typeof aqueousSources | keyof typeof solubilitySources | keyof typeof thermochemistrySources | keyof typeof generalSources;

/** Tables in which a key is looked up. */
const tables = /* @__PURE__ */ once(() => [quantitySources, periodicTableSources, ionSources, amountSources, hydrateSources, heatingSources, substanceSources, hazardSources, aqueousSources, solubilitySources, thermochemistrySources, generalSources]);

const remembered = /* @__PURE__ */ memoised(400, (key) => citation(key, tables()));

/** A source on one line, as it is printed under a working; a plan cites the same few many times. */
export const cite = (key: SourceKey): string => remembered(key);
