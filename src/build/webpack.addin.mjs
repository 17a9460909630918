import { createRequire } from "node:module";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import CustomFunctionsMetadataPlugin from "custom-functions-metadata-plugin";
import TerserPlugin from "terser-webpack-plugin";
import webpack from "webpack";
import { bindingFiles } from "./bindingFiles.mjs";
import { completeMetadata } from "./completeMetadata.mjs";
import { drawIcon, ICON_SIZES } from "./icons/drawIcon.mjs";
import { typeScriptRule } from "./typeScriptRule.mjs";

const require = createRequire(import.meta.url);
const top = fileURLToPath(new URL("../..", import.meta.url));
const fromTop = (path) => fileURLToPath(new URL(`../../${path}`, import.meta.url));

const { Compilation, sources } = webpack;

/** Changes functions.json before it is written: see completeMetadata. */
const metadataCompletion = {
  apply(compiler) {
    compiler.hooks.compilation.tap("metadataCompletion", (compilation) => {
      const stage = Compilation.PROCESS_ASSETS_STAGE_ADDITIONS;
      compilation.hooks.processAssets.tap({ name: "metadataCompletion", stage }, () => {
        // Absent when the generator found faults, which it has reported itself.
        if (!compilation.getAsset("functions.json")) return;
        compilation.updateAsset("functions.json", (source) => {
          const complete = completeMetadata(JSON.parse(source.source().toString()));
          return new sources.RawSource(JSON.stringify(complete, null, 2));
        });
      });
    });
  },
};

/** The files that are no scripts: pages, manifest and icons. */
const plainFiles = {
  apply(compiler) {
    const copied = {
      "taskpane.html": fromTop("src/excel/shell/taskpane.html"),
      "help.html": fromTop("src/excel/shell/help.html"),
      "manifest.xml": fromTop("manifest.xml"),
    };
    compiler.hooks.thisCompilation.tap("plainFiles", (compilation) => {
      const stage = Compilation.PROCESS_ASSETS_STAGE_ADDITIONAL;
      compilation.hooks.processAssets.tap({ name: "plainFiles", stage }, () => {
        for (const [name, path] of Object.entries(copied)) {
          compilation.fileDependencies.add(path);
          compilation.emitAsset(name, new sources.RawSource(readFileSync(path)));
        }
        for (const size of ICON_SIZES) {
          compilation.emitAsset(`icons/icon-${size}.png`, new sources.RawSource(drawIcon(size)));
        }
      });
    });
  },
};

/** What both bundles share. */
function shared(mode) {
  return {
    mode,
    context: top,
    devtool: mode === "production" ? false : "source-map",
    resolve: { extensions: [".ts", ".tsx", ".mjs", ".js", ".json"] },
    module: {
      // The tables of shared/ are imported by name, so that only what is used is bundled.
      parser: { json: { namedExports: true, exportsDepth: 1 } },
      rules: [
        typeScriptRule,
        { test: /\.css$/, use: [require.resolve("style-loader"), require.resolve("css-loader")] },
      ],
    },
    performance: { hints: false },
    stats: "errors-warnings",
  };
}

/** One module that imports the bindings, made up here: with a single entry webpack can join all modules into one scope. */
function oneEntry(files) {
  const imports = files.map((file) => `import ${JSON.stringify(file)};`).join("\n");
  return `data:text/javascript,${encodeURIComponent(imports)}`;
}

/**
 * The add-in as Excel loads it, two bundles in dist/.
 *
 * functions.js is one plain script that needs nothing but CustomFunctions: no document, location or fetch, so no
 * automatic publicPath either, which throws without a document. shell.js opens the page and loads pane.js when it is shown.
 */
export default (_, { mode = "production" } = {}) => [
  {
    ...shared(mode),
    name: "functions",
    target: "es2020",
    entry: { functions: oneEntry(bindingFiles()) },
    output: {
      path: fromTop("dist"),
      filename: "[name].js",
      publicPath: "",
      iife: true,
      chunkFormat: false,
      chunkLoading: false,
    },
    plugins: [
      new CustomFunctionsMetadataPlugin({ input: bindingFiles(), output: "functions.json" }),
      metadataCompletion,
    ],
    optimization: { minimizer: [new TerserPlugin({ extractComments: false })] },
  },
  {
    ...shared(mode),
    name: "page",
    target: ["web", "es2020"],
    entry: { shell: fromTop("src/excel/shell/shell.ts") },
    output: { path: fromTop("dist"), filename: "[name].js", chunkFilename: "[name].js", publicPath: "" },
    plugins: [plainFiles],
    optimization: {
      splitChunks: false,
      // The pane is large and terser slow; a tenth in size is not worth most of a minute each build.
      minimizer: [new TerserPlugin({ minify: TerserPlugin.esbuildMinify })],
    },
  },
];
