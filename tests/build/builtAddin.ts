import { execFileSync } from "node:child_process";
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";

const top = join(__dirname, "../..");

/** When a file below was last changed, in milliseconds. */
function lastChange(path: string): number {
  const stat = statSync(path);
  if (!stat.isDirectory()) return stat.mtimeMs;
  return Math.max(stat.mtimeMs, ...readdirSync(path).map((name) => lastChange(join(path, name))));
}

/**
 * The folder of the built function bundle: dist/ where it is newer than its sources, else a build of its own in the
 * cache, so that a test never judges an old bundle and never writes where somebody serves from.
 */
export function builtFunctions(): { readonly script: string; readonly metadata: string } {
  const sources = [
    "src/functions",
    "src/sheet",
    "src/domain",
    "src/build/webpack.addin.mjs",
    "src/build/completeMetadata.mjs",
    "shared",
  ];
  const changed = Math.max(...sources.map((path) => lastChange(join(top, path))));
  const folders = [join(top, "dist"), join(top, "node_modules/.cache/built-functions")];
  const current = folders.find((folder) => {
    const script = join(folder, "functions.js");
    return existsSync(script) && isProduction(script) && statSync(script).mtimeMs > changed;
  });
  const folder = current ?? folders[1] ?? "";
  if (current === undefined) {
    mkdirSync(folder, { recursive: true });
    const webpack = join(top, "node_modules/webpack/bin/webpack.js");
    const options = ["--config", "src/build/webpack.addin.mjs", "--mode", "production", "--config-name", "functions"];
    execFileSync(process.execPath, [webpack, ...options, "--output-path", folder], { cwd: top, stdio: "pipe" });
    // webpack leaves a file alone whose content stays the same; its age is what this reads.
    writeFileSync(join(folder, "functions.js"), readFileSync(join(folder, "functions.js")));
  }
  return {
    script: readFileSync(join(folder, "functions.js"), "utf8"),
    metadata: readFileSync(join(folder, "functions.json"), "utf8"),
  };
}

/** A development build is many times larger and says where its map is. */
function isProduction(script: string): boolean {
  return !readFileSync(script, "utf8").includes("sourceMappingURL");
}
