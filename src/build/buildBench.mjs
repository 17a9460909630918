import {
  copyFileSync,
  cpSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { createHash } from "node:crypto";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { limitCache } from "./limitCache.mjs";

const top = fileURLToPath(new URL("../..", import.meta.url));

/** Where the built bench stands. */
export const benchFolder = join(top, "dist", "bench");

/**
 * Builds the bench page when a source changed since; true when it was built. Another entry and folder give the page
 * with more around it, as the tests need it.
 */
export async function buildBench({ entry = "src/bench/main.ts", folder = benchFolder } = {}) {
  const stamp = sourceStamp(entry);
  const stampFile = join(folder, "stamp.txt");
  if (existsSync(stampFile) && readFileSync(stampFile, "utf8") === stamp) return false;
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  limitCache(join(top, "node_modules/.cache/webpack/bench"));
  await bundle({ entry, folder });
  copyFileSync(join(top, "src/bench/page/bench.html"), join(folder, "index.html"));
  cpSync(join(top, "sample-workbooks"), join(folder, "sample-workbooks"), {
    recursive: true,
    filter: (path) => statSync(path).isDirectory() || path.endsWith(".xlsx"),
  });
  writeFileSync(stampFile, stamp);
  return true;
}

/** Changes whenever a file that the bench is built from changes. */
function sourceStamp(entry) {
  const hash = createHash("sha256");
  const add = (path) => {
    const { mtimeMs, size } = statSync(path);
    hash.update(`${path} ${mtimeMs} ${size}\n`);
  };
  for (const name of new Set([entry.split("/")[0], "src", "shared", "sample-workbooks"])) {
    const entries = readdirSync(join(top, name), { recursive: true, withFileTypes: true });
    for (const entry of entries) if (entry.isFile()) add(join(entry.parentPath ?? entry.path, entry.name));
  }
  add(join(top, "package-lock.json"));
  return hash.digest("hex");
}

/** Writes the page's scripts and styles, or throws with all that is wrong. */
async function bundle({ entry, folder }) {
  // Only now: on a page that is up to date nothing of this is needed, and it takes a while to load.
  const [{ default: webpack }, { benchConfig }, { bindingsModule }] = await Promise.all([
    import("webpack"),
    import("./webpack.bench.mjs"),
    import("./bindingsModule.mjs"),
  ]);
  const compiler = webpack(benchConfig({ entry, folder, bindings: await bindingsModule() }));
  try {
    const stats = await promisify(compiler.run).call(compiler);
    if (stats.hasErrors() || stats.hasWarnings()) {
      throw new Error(stats.toString({ all: false, errors: true, warnings: true }));
    }
  } finally {
    await promisify(compiler.close).call(compiler);
  }
}

// Run as a program it builds; unhandled, a rejection ends it with an error.
if (process.argv[1] === fileURLToPath(import.meta.url)) void buildBench();
