import { readdirSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const FOLDER = fileURLToPath(new URL("../functions/bindings", import.meta.url));

/** The files of the worksheet functions, sorted: the one reading of the folder that the build, the metadata and the docs share. */
export function bindingFiles(folder = FOLDER) {
  return readdirSync(folder)
    .filter((name) => name.endsWith(".ts"))
    .sort()
    .map((name) => join(folder, name));
}
