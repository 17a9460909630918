import { createRequire } from "node:module";
import { bindingFiles } from "./bindingFiles.mjs";
import { completeMetadata } from "./completeMetadata.mjs";

const require = createRequire(import.meta.url);

/**
 * The text of a module with every binding by its id (`functionOf`) and the metadata that the vendor's generator reads
 * from their comments. The generator's plugin is for a page of Excel's: it registers the bindings as they load.
 */
export async function bindingsModule() {
  const { generateCustomFunctionsMetadata } = require("custom-functions-metadata");
  const { errors, metadataJson, associate } = await generateCustomFunctionsMetadata(bindingFiles(), true);
  if (errors.length > 0) throw new Error(errors.join("\n"));
  const imports = associate.map(
    ({ functionName, sourceFileName }, index) =>
      `import { ${functionName} as f${index} } from ${JSON.stringify(sourceFileName)};`,
  );
  const byId = associate.map(({ id }, index) => `${JSON.stringify(id)}: f${index}`);
  return [
    ...imports,
    `export const functionOf = { ${byId.join(", ")} };`,
    `export const metadata = ${JSON.stringify(completeMetadata(metadataJson).functions)};`,
  ].join("\n");
}
