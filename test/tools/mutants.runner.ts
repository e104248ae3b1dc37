// A mutant that stops a test file from being read leaves it without tests: that is an error of the run, not a success.
import type { RunnerTestFile } from "vitest";
import { VitestTestRunner } from "vitest/runners";

export default class extends VitestTestRunner {
  onCollected(files: readonly RunnerTestFile[]): void {
    for (const { name, result } of files)
      if (result?.state === "fail") void Promise.reject(new Error(`${name}: ${result.errors?.[0]?.message}`));
  }
}
