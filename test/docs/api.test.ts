// The public signatures as they were when somebody last looked: a change shows in review. After a change that is meant:
//
//   npx vitest run test/docs/api.test.ts -u
import { expect, it } from "vitest";
import { report } from "../tools/api";

it("has the public signatures that were agreed on", async () => {
  await expect(report()).toMatchFileSnapshot("../../docs/api.txt");
});
