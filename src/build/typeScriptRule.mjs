import { createRequire } from "node:module";
import { fileURLToPath } from "node:url";

/** How webpack reads our own files. Types are checked apart (npm run types), so that a build need not wait for it. */
export const typeScriptRule = {
  test: /\.tsx?$/,
  exclude: /node_modules/,
  loader: createRequire(import.meta.url).resolve("ts-loader"),
  options: {
    configFile: fileURLToPath(new URL("../../tsconfig.json", import.meta.url)),
    transpileOnly: true,
    // Else every file of the project joins the bundle's program.
    onlyCompileBundledFiles: true,
    compilerOptions: { noEmit: false },
  },
};
