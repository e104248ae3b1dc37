// What is left to better equipped rooms: by the hazard statements of what is handled, at the strength it is handled at, and by
// the heat that is needed. A studio has gloves, goggles, ventilation and a kiln; a classroom no kiln; a kitchen neither.
import type { SourceKey } from "./sources";

/** Where the work is done. */
export type Setting = "home" | "school" | "studio";

/** What a setting leaves out. */
interface SettingRow {
  readonly setting: Setting;
  /** Codes of hazard statements that nothing handled there may carry. */
  readonly codes: readonly string[];
  /** The hottest, °C; absent where there is a kiln. */
  readonly hottest?: number;
  readonly source: SourceKey;
}

const FATAL = ["H300", "H310", "H330", "H340", "H350", "H360"];
const TOXIC = ["H301", "H311", "H331", "H370", "H372"];

export const SETTINGS: readonly SettingRow[] = [
  { setting: "home", codes: [...FATAL, ...TOXIC, "H314"], hottest: 250, source: "commonPractice" },
  { setting: "school", codes: [...FATAL, ...TOXIC], hottest: 600, source: "commonPractice" },
  { setting: "studio", codes: FATAL, source: "commonPractice" },
];
