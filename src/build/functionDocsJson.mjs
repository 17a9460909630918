import { format } from "prettier";

const SOURCE = "Written by npm run docs from the comments over src/functions/bindings; not to be edited by hand.";

/** What the functions say of themselves, as the data file that the pane reads: shared/function-docs.json. */
export function functionDocsJson(docs) {
  const functions = docs.map((doc) => ({ ...doc, file: undefined }));
  return format(JSON.stringify({ source: SOURCE, functions }), { parser: "json", printWidth: 120 });
}
