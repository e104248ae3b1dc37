// The tables of this layer rest on sources of lower layers.
import type { periodicTableSources } from "../../element/internal";
import type { generalSources } from "../../foundation/data/sources";
import type { ionSources } from "../../ion/internal";

/** What a row of this layer may name. */
export type SourceKey = keyof typeof periodicTableSources | keyof typeof ionSources | keyof typeof generalSources;

