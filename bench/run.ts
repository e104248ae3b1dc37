// Runs every bench file in turn; fails if one of them misses a line it must hold. `npm run bench -- formula` runs one.
import { spawnSync } from "node:child_process";
import { readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";

const folder = fileURLToPath(new URL(".", import.meta.url));
const wanted = process.argv.slice(2);
const files = readdirSync(folder).filter(
  (file) => /^[a-z]+\.ts$/.test(file) && !["run.ts", "harness.ts"].includes(file),
);
for (const file of files.filter((f) => wanted.length === 0 || wanted.some((w) => f.startsWith(w)))) {
  console.log(`\n== ${file}`);
  const { status } = spawnSync(process.execPath, ["--import", "tsx", folder + file], { stdio: "inherit" });
  if (status !== 0) process.exitCode = 1;
}
