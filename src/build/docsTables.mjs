import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { checksTable } from "./checksTable.mjs";
import { functionDocs } from "./functionDocs.mjs";
import { functionsTable } from "./functionsTable.mjs";
import { loadSource } from "./loadSource.mjs";
import { replaceBetween } from "./replaceBetween.mjs";

// Writes the generated tables of README.md, or with --check fails when they are stale.

const README = fileURLToPath(new URL("../../README.md", import.meta.url));

try {
  const text = readFileSync(README, "utf8");
  const { allRules } = await loadSource("src/checks/allRules.ts");
  const withFunctions = replaceBetween(text, "functions", functionsTable(functionDocs()));
  const fresh = replaceBetween(withFunctions, "checks", checksTable(allRules));
  if (text === fresh) console.log("README.md: the tables are up to date.");
  else if (process.argv.includes("--check")) throw new Error("README.md: the tables are stale; run npm run docs.");
  else {
    writeFileSync(README, fresh);
    console.log("README.md: the tables are written.");
  }
} catch (error) {
  console.error(error.message);
  process.exitCode = 1;
}
