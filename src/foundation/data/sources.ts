// The two keys of every table whose figures have no better ground: the user is warned.
import type { Sources } from "../source";

export const generalSources = {
  memory: { title: "recalled from memory, not confirmed in a source" },
  commonPractice: { title: "common practice, no source" },
} as const satisfies Sources;
