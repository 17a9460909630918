import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, rmSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { installWhatIsMissing } from "./installWhatIsMissing.mjs";

/**
 * Everything that must hold, in one command: types, lint, layers, formatting, stale generated files, dead
 * code, the built add-in and its size, then every test, the browser suite last. Ends with one line
 * 'N passed, N failed' in which each step counts as one beside the single tests.
 */
const root = fileURLToPath(new URL("../..", import.meta.url));
const cache = `${root}node_modules/.cache/tests`;
installWhatIsMissing();
mkdirSync(cache, { recursive: true });

let passed = 0;
let failed = 0;

function run(command, args) {
  return spawnSync(command, args, { cwd: root, stdio: "inherit", shell: process.platform === "win32" }).status === 0;
}

function step(title, command, args) {
  const started = Date.now();
  const ok = run(command, args);
  if (ok) passed++;
  else failed++;
  console.log(`${ok ? "ok  " : "FAIL"}  ${title}  (${((Date.now() - started) / 1000).toFixed(1)} s)`);
}

/** Runs a jest suite and adds its own counts; a suite that could not report at all is one failure. */
function suite(title, args) {
  const report = `${cache}/${title.replace(/\W+/g, "-")}.json`;
  rmSync(report, { force: true });
  const ok = run("npx", ["jest", "-c", "src/build/jest.config.mjs", "--json", `--outputFile=${report}`, ...args]);
  if (!existsSync(report)) {
    failed++;
    console.log(`FAIL  ${title}: no report`);
    return;
  }
  const result = JSON.parse(readFileSync(report, "utf8"));
  passed += result.numPassedTests;
  // A file that cannot even be loaded holds no counted test but is a failure all the same.
  const broken = result.numFailedTests + result.numRuntimeErrorTestSuites;
  failed += broken === 0 && !ok ? 1 : broken;
  console.log(
    `${ok ? "ok  " : "FAIL"}  ${title}: ${result.numPassedTests} passed, ${broken} failed, ${result.numPendingTests} skipped`,
  );
}

const started = Date.now();
step("types", "npx", ["tsc", "-p", "."]);
step("types without a browser", "npx", ["tsc", "--noEmit", "-p", "src/build/tsconfig.pure.json"]);
step("lint", "npx", ["eslint", "-c", "src/build/eslint.config.mjs", "--max-warnings=0", "src", "tests"]);
step("layers", "npx", ["depcruise", "--config", "src/build/layers.cjs", "src"]);
step("dead code and unused packages", "npx", ["knip", "-c", "src/build/knip.json"]);
step("format", "npx", ["prettier", "--check", "--log-level=warn", "src", "tests", "shared", "!**/*.tsv"]);
step("generated tables are current", "node", ["src/build/docsTables.mjs", "--check"]);
step("sample workbooks are current", "node", ["src/build/sampleWorkbooks.mjs", "--check"]);
step("add-in build", "npm", ["run", "--silent", "build"]);
step("size of the function bundle", "npx", ["size-limit", "--silent"]);
suite("tests", ["--testPathIgnorePatterns", "tests/browser"]);
if (!process.argv.includes("--no-browser")) {
  step("bench build", "node", ["src/build/buildBench.mjs"]);
  suite("browser tests", ["tests/browser", "--runInBand"]);
}
console.log(`${((Date.now() - started) / 60000).toFixed(1)} minutes`);
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);
