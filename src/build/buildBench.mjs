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

/** Builds the bench page when a source is newer than what stands there; true when it was built. */
export async function buildBench() {
  const stamp = sourceStamp();
  const stampFile = join(benchFolder, "stamp.txt");
  if (existsSync(stampFile) && readFileSync(stampFile, "utf8") === stamp) return false;
  rmSync(benchFolder, { recursive: true, force: true });
  mkdirSync(benchFolder, { recursive: true });
  const bindings = await readBindings();
  await build({
    absWorkingDir: top,
    entryPoints: { bench: "src/bench/main.ts" },
    outdir: benchFolder,
    bundle: true,
    splitting: true,
    chunkNames: "chunks/[name]-[hash]",
    assetNames: "assets/[name]-[hash]",
    format: "esm",
    target: "es2022",
    jsx: "automatic",
    minify: true,
    keepNames: true,
    legalComments: "none",
    logLevel: "warning",
    define: { "process.env.NODE_ENV": '"production"' },
    loader: { ".woff": "file", ".woff2": "file", ".svg": "file", ".png": "file" },
    plugins: [bindingsPlugin(bindings)],
  });
  writeFileSync(join(benchFolder, "functions.json"), JSON.stringify({ functions: bindings.metadata }, null, 2));
  copyFileSync(join(top, "src/bench/page/bench.html"), join(benchFolder, "index.html"));
  cpSync(join(top, "sample-workbooks"), join(benchFolder, "sample-workbooks"), {
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
  for (const folder of ["src", "shared", "sample-workbooks"]) {
    const entries = readdirSync(join(top, folder), { recursive: true, withFileTypes: true });
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
