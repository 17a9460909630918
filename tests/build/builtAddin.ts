import { execFileSync } from "node:child_process";
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, utimesSync } from "node:fs";
import { join } from "node:path";

const top = join(__dirname, "../..");

/** The two bundles: what each is built from, and its main script. */
const BUNDLES = {
  functions: { script: "functions.js", sources: ["src/functions", "src/sheet", "src/domain", "shared"] },
  page: { script: "shell.js", sources: ["src/pane", "src/excel", "src/checks", "src/sheet", "src/domain", "shared"] },
} as const;

const BUILD_FILES = [
  "src/build/webpack.addin.mjs",
  "src/build/completeMetadata.mjs",
  "src/build/icons",
  "manifest.xml",
];

/** When a file below was last changed, in milliseconds. */
function lastChange(path: string): number {
  const stat = statSync(path);
  if (!stat.isDirectory()) return stat.mtimeMs;
  return Math.max(stat.mtimeMs, ...readdirSync(path).map((name) => lastChange(join(path, name))));
}

/**
 * The folder in which a bundle stands as built for production: dist/ where it is newer than its sources, else a build of
 * its own in the cache, so that a test never judges an old bundle and never writes where somebody serves from.
 */
export function builtAddin(bundle: keyof typeof BUNDLES): string {
  const { script, sources } = BUNDLES[bundle];
  const changed = Math.max(...[...sources, ...BUILD_FILES].map((path) => lastChange(join(top, path))));
  const cache = join(top, "node_modules/.cache/built-addin");
  const isCurrent = (folder: string): boolean => {
    const file = join(folder, script);
    // A development build says where its map is.
    return (
      existsSync(file) && statSync(file).mtimeMs > changed && !readFileSync(file, "utf8").includes("sourceMappingURL")
    );
  };
  const current = [join(top, "dist"), cache].find(isCurrent);
  if (current !== undefined) return current;
  mkdirSync(cache, { recursive: true });
  const webpack = join(top, "node_modules/webpack/bin/webpack.js");
  const options = ["--config", "src/build/webpack.addin.mjs", "--mode", "production", "--config-name", bundle];
  execFileSync(process.execPath, [webpack, ...options, "--output-path", cache], { cwd: top, stdio: "pipe" });
  // webpack leaves a file alone whose content stays the same, while its age is what is read here.
  utimesSync(join(cache, script), new Date(), new Date());
  return cache;
}
