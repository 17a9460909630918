import { createHash } from "node:crypto";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import TerserPlugin from "terser-webpack-plugin";
import webpack from "webpack";
import { typeScriptRule } from "./typeScriptRule.mjs";

const top = fileURLToPath(new URL("../..", import.meta.url));

/**
 * The bench page: bench.js with bench.css beside it, and chunks of what is loaded later.
 *
 * `bindings` is the text of the module "tackstitch:bindings"; see bindingsModule.
 */
export const benchConfig = ({ entry, folder, bindings }) => ({
  mode: "production",
  name: "bench",
  target: ["web", "es2022"],
  context: top,
  devtool: false,
  entry: { bench: join(top, entry) },
  output: {
    path: folder,
    filename: "[name].js",
    chunkFilename: "chunks/[name]-[contenthash:8].js",
    cssFilename: "[name].css",
    assetModuleFilename: "assets/[name]-[contenthash:8][ext]",
    publicPath: "",
  },
  resolve: { extensions: [".ts", ".tsx", ".mjs", ".js", ".json"] },
  module: {
    // The tables of shared/ are imported by name; deeper, a list's own methods would pass for missing names.
    parser: { json: { namedExports: true, exportsDepth: 1 } },
    rules: [
      typeScriptRule,
      // The grid's modules leave the endings of what they import away.
      { test: /\.m?js$/, include: /node_modules/, resolve: { fullySpecified: false } },
      { test: /\.css$/, type: "css/auto" },
    ],
  },
  experiments: { css: true },
  plugins: [
    new webpack.experiments.schemes.VirtualUrlPlugin(
      { bindings: { type: ".js", source: () => bindings, version: digest(bindings) } },
      "tackstitch",
    ),
  ],
  optimization: {
    // The names of the chunks need not say their last byte, and the sums over 13 MB take their time.
    realContentHash: false,
    minimizer: [new TerserPlugin({ minify: TerserPlugin.esbuildMinify, extractComments: false })],
  },
  cache: {
    type: "filesystem",
    name: "bench",
    buildDependencies: { config: [fileURLToPath(import.meta.url)] },
  },
  // A cache that cannot be read, as when two builds run at once, is no news: all is built anew.
  infrastructureLogging: { level: "error" },
  performance: { hints: false },
});

function digest(text) {
  return createHash("sha256").update(text).digest("hex").slice(0, 12);
}
