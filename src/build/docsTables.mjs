import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { checksTable } from "./checksTable.mjs";
import { functionDocs } from "./functionDocs.mjs";
import { functionDocsJson } from "./functionDocsJson.mjs";
import { functionsTable } from "./functionsTable.mjs";
import { loadSource } from "./loadSource.mjs";
import { replaceBetween } from "./replaceBetween.mjs";

// Writes the generated tables of README.md and the functions' help for the pane, or with --check fails when they are stale.

const at = (path) => fileURLToPath(new URL(`../../${path}`, import.meta.url));

try {
  const docs = functionDocs();
  const { allRules } = await loadSource("src/checks/allRules.ts");
  const readme = readFileSync(at("README.md"), "utf8");
  const withFunctions = replaceBetween(readme, "functions", functionsTable(docs));
  const fresh = {
    "README.md": replaceBetween(withFunctions, "checks", checksTable(allRules)),
    "shared/function-docs.json": await functionDocsJson(docs),
  };
  for (const [path, text] of Object.entries(fresh)) {
    if (existsSync(at(path)) && readFileSync(at(path), "utf8") === text) console.log(`${path}: up to date.`);
    else if (process.argv.includes("--check")) throw new Error(`${path} is stale; run npm run docs.`);
    else {
      writeFileSync(at(path), text);
      console.log(`${path}: written.`);
    }
  }
} catch (error) {
  console.error(error.message);
  process.exitCode = 1;
}
