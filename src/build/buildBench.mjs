import { build } from "esbuild";
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
import { createRequire } from "node:module";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const require = createRequire(import.meta.url);
const top = fileURLToPath(new URL("../..", import.meta.url));

/** Where the built bench stands. */
export const benchFolder = join(top, "dist", "bench");

/**
 * Builds the bench page when a source changed since; true when it was built. Another entry and folder give the page
 * with more around it, as the tests need it.
 */
export async function buildBench({ entry = "src/bench/main.ts", folder = benchFolder } = {}) {
  const stamp = sourceStamp();
  const stampFile = join(folder, "stamp.txt");
  if (existsSync(stampFile) && readFileSync(stampFile, "utf8") === stamp) return false;
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  const bindings = await readBindings();
  await build({
    absWorkingDir: top,
    entryPoints: { bench: entry },
    outdir: folder,
    bundle: true,
    splitting: true,
    chunkNames: "chunks/[name]-[hash]",
    assetNames: "assets/[name]-[hash]",
    format: "esm",
    target: "es2022",
    jsx: "automatic",
    minify: true,
    legalComments: "none",
    logLevel: "warning",
    define: { "process.env.NODE_ENV": '"production"' },
    loader: { ".woff": "file", ".woff2": "file", ".svg": "file", ".png": "file" },
    plugins: [bindingsPlugin(bindings)],
  });
  writeFileSync(join(folder, "functions.json"), JSON.stringify({ functions: bindings.metadata }, null, 2));
  copyFileSync(join(top, "src/bench/page/bench.html"), join(folder, "index.html"));
  cpSync(join(top, "sample-workbooks"), join(folder, "sample-workbooks"), {
    recursive: true,
    filter: (path) => statSync(path).isDirectory() || path.endsWith(".xlsx"),
  });
  writeFileSync(stampFile, stamp);
  return true;
}

/** Changes whenever a file that the bench is built from changes. */
function sourceStamp() {
  const hash = createHash("sha256");
  const add = (path) => {
    const { mtimeMs, size } = statSync(path);
    hash.update(`${path} ${mtimeMs} ${size}\n`);
  };
  for (const name of ["src", "shared", "sample-workbooks"]) {
    const entries = readdirSync(join(top, name), { recursive: true, withFileTypes: true });
    for (const entry of entries) if (entry.isFile()) add(join(entry.parentPath ?? entry.path, entry.name));
  }
  add(join(top, "package-lock.json"));
  return hash.digest("hex");
}

/** The bindings with the metadata that the vendor's generator reads from their comments. */
async function readBindings() {
  const { bindingFiles } = await import("./bindingFiles.mjs");
  const { completeMetadata } = await import("./completeMetadata.mjs");
  const { generateCustomFunctionsMetadata } = require("custom-functions-metadata");
  const generated = await generateCustomFunctionsMetadata(bindingFiles(), true);
  if (generated.errors.length > 0) throw new Error(generated.errors.join("\n"));
  const metadata = completeMetadata(JSON.parse(generated.metadataJson)).functions;
  return { metadata, associate: generated.associate };
}

/** Serves the module "tackstitch:bindings": every binding by its id, and the metadata. */
function bindingsPlugin({ metadata, associate }) {
  const lines = associate.map(
    ({ id, functionName, sourceFileName }) =>
      `export { ${functionName} as ${JSON.stringify(id)} } from ${JSON.stringify(sourceFileName)};`,
  );
  const entry = [
    `import * as functionOf from "tackstitch:bindings-by-id";`,
    `export { functionOf };`,
    `export const metadata = ${JSON.stringify(metadata)};`,
  ].join("\n");
  const contents = { "tackstitch:bindings": entry, "tackstitch:bindings-by-id": lines.join("\n") };
  return {
    name: "bindings",
    setup(setup) {
      setup.onResolve({ filter: /^tackstitch:bindings/ }, ({ path }) => ({ path, namespace: "bindings" }));
      setup.onLoad({ filter: /.*/, namespace: "bindings" }, ({ path }) => ({
        contents: contents[path],
        resolveDir: join(top, "src", "bench"),
      }));
    },
  };
}
