// The tables of this layer rest on sources of lower layers.
import { generalSources } from "../../foundation/data/sources";
import { citation } from "../../foundation/source";
import { ionSources } from "../../ion/internal";

/** What a row of this layer may name. */
export type SourceKey = keyof typeof ionSources | keyof typeof generalSources;

/** A source on one line, as it is printed under a working. */
export const cite = (key: SourceKey): string => citation(key, [ionSources, generalSources]);
