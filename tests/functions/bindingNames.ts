import { readdirSync } from "node:fs";
import { join } from "node:path";

/** The files of the bindings folder, by their names alone and not by the build's reading of it. */
export const bindingNames: readonly string[] = readdirSync(join(__dirname, "../../src/functions/bindings"))
  .filter((name) => name.endsWith(".ts"))
  .map((name) => name.slice(0, -".ts".length));
