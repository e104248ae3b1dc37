// The tables of this layer rest on sources of lower layers.

import { amountSources } from "../../amount/internal";
import { aqueousSources } from "../../aqueous/internal";
import { periodicTableSources } from "../../element/internal";
import { generalSources } from "../../foundation/data/sources";
import { citation } from "../../foundation/source";
import { heatingSources, hydrateSources } from "../../hydrate/internal";
import { ionSources } from "../../ion/internal";
import { quantitySources } from "../../quantity/internal";
import { solubilitySources } from "../../solubility/internal";
import { hazardSources, substanceSources } from "../../substance/internal";
import { thermochemistrySources } from "../../thermochemistry/internal";

/** What a row of this layer may name. */
export type SourceKey = keyof typeof quantitySources | keyof typeof periodicTableSources | keyof typeof ionSources | keyof typeof amountSources | keyof typeof hydrateSources | keyof typeof heatingSources | keyof typeof substanceSources | keyof typeof hazardSources | keyof typeof aqueousSources | keyof typeof solubilitySources | keyof typeof thermochemistrySources | keyof typeof generalSources;

/** A source on one line, as it is printed under a working. */
export const cite = (key: SourceKey): string => citation(key, [quantitySources, periodicTableSources, ionSources, amountSources, hydrateSources, heatingSources, substanceSources, hazardSources, aqueousSources, solubilitySources, thermochemistrySources, generalSources]);
