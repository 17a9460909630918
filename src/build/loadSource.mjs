import { mkdirSync, rmSync } from "node:fs";
import { fileURLToPath, pathToFileURL } from "node:url";
import { build } from "esbuild";

const ROOT = new URL("../../", import.meta.url);

/** A TypeScript module of src/ as Node sees it: bundled to a file of its own under node_modules/.cache, and imported from there. */
export async function loadSource(path) {
  const folder = new URL("node_modules/.cache/tackstitch/", ROOT);
  mkdirSync(folder, { recursive: true });
  const outfile = fileURLToPath(new URL(`${path.replace(/\W+/g, "-")}-${process.pid}.mjs`, folder));
  const entry = fileURLToPath(new URL(path, ROOT));
  await build({
    entryPoints: [entry],
    outfile,
    bundle: true,
    platform: "node",
    format: "esm",
    target: "node20",
    logLevel: "error",
  });
  try {
    return await import(pathToFileURL(outfile).href);
  } finally {
    rmSync(outfile);
  }
}
