import { readFileSync } from "node:fs";
import { basename } from "node:path";
import { generateCustomFunctionsMetadata } from "custom-functions-metadata";
import ts from "typescript";
import { bindingFiles } from "../../src/build/bindingFiles.mjs";
import { completeMetadata } from "../../src/build/completeMetadata.mjs";
import { functionDocs } from "../../src/build/functionDocs.mjs";
import { bindingNames } from "./bindingNames";

// What the vendor's metadata generator gets wrong in silence, each with a test: see the titles.

const files = bindingFiles();
const byFile = files.map(
  (file) =>
    [
      basename(file, ".ts"),
      ts.createSourceFile(file, readFileSync(file, "utf8"), ts.ScriptTarget.ES2022, true),
    ] as const,
);

test("the build reads every file of the folder, sorted", () => {
  expect(files.map((file) => basename(file, ".ts"))).toEqual([...bindingNames].sort());
  expect(files.length).toBeGreaterThan(0);
});

describe.each(byFile)("%s", (name, source) => {
  const declared = source.statements.filter((statement) => !ts.isImportDeclaration(statement));
  const declaration = declared.find(ts.isFunctionDeclaration);

  test("declares one exported function and nothing else: an arrow function vanishes and a re-export empties the metadata", () => {
    expect(declared.map((statement) => ts.SyntaxKind[statement.kind])).toEqual(["FunctionDeclaration"]);
    expect(declaration!.modifiers?.map((modifier) => modifier.kind)).toEqual([ts.SyntaxKind.ExportKeyword]);
    expect(declaration!.name?.text).toBe(name);
  });

  test("takes and returns any or any[][]: any other type fails, or arrives as something else", () => {
    const types = [...declaration!.parameters.map((parameter) => parameter.type), declaration!.type];
    for (const type of types) expect(["any", "any[][]"]).toContain(type?.getText());
  });

  test("gives no parameter a default value, since a host passes null for one left out", () => {
    for (const parameter of declaration!.parameters) {
      expect(parameter.initializer).toBeUndefined();
      expect(parameter.dotDotDotToken).toBeUndefined();
    }
  });

  test("takes parameters that may be left out only after those that may not", () => {
    const optional = declaration!.parameters.map((parameter) => parameter.questionToken !== undefined);
    expect(optional).toEqual([...optional].sort());
  });
});

test("ids are unique, are the file's name in capitals, and have at least three letters", () => {
  const ids = functionDocs().map((doc) => doc.id);
  expect(new Set(ids).size).toBe(ids.length);
  expect(ids).toEqual(files.map((file) => basename(file, ".ts").toUpperCase()));
  for (const id of ids) expect(id).toMatch(/^[A-Z][A-Z0-9._]{2,127}$/);
});

test("the vendor's generator finds these functions, without an error and with every description", async () => {
  const generated = await generateCustomFunctionsMetadata(files);
  expect(generated.errors).toEqual([]);
  const metadata = completeMetadata(generated.metadataJson);
  expect(metadata.allowErrorForDataTypeAny).toBe(true);
  // The comment read by us and by the vendor must say the same.
  expect(
    metadata.functions.map(({ id, description, parameters, result }) => ({
      id,
      summary: description,
      params: parameters.map((parameter) => ({
        name: parameter.name,
        optional: parameter.optional === true,
        matrix: parameter.dimensionality === "matrix",
        text: parameter.description,
      })),
      returnsTable: result.dimensionality === "matrix",
    })),
  ).toEqual(functionDocs().map(({ id, summary, params, returnsTable }) => ({ id, summary, params, returnsTable })));
});
