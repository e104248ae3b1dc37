// The tables of this layer rest on sources of lower layers.

import { amountSources } from "../../amount/data/sources";
import { aqueousSources } from "../../aqueous/data/sources";
import { generalSources } from "../../foundation/data/sources";
import { citation } from "../../foundation/source";
import { hydrateSources } from "../../hydrate/data/sources";
import { ionSources } from "../../ion/data/sources";
import { quantitySources } from "../../quantity/data/sources";
import { solubilitySources } from "../../solubility/data/sources";
import { substanceSources } from "../../substance/data/sources";
import { thermochemistrySources } from "../../thermochemistry/data/sources";

/** What a row of this layer may name. */
export type SourceKey = keyof typeof quantitySources | keyof typeof ionSources | keyof typeof amountSources | keyof typeof hydrateSources | keyof typeof substanceSources | keyof typeof aqueousSources | keyof typeof solubilitySources | keyof typeof thermochemistrySources | keyof typeof generalSources;

/** A source on one line, as it is printed under a working. */
export const cite = (key: SourceKey): string => citation(key, [quantitySources, ionSources, amountSources, hydrateSources, substanceSources, aqueousSources, solubilitySources, thermochemistrySources, generalSources]);
