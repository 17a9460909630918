import { readFileSync } from "node:fs";
import { basename } from "node:path";
import ts from "typescript";
import { bindingFiles } from "./bindingFiles.mjs";
import { splitExample } from "./splitExample.mjs";

/** One line each, and a function without it does not ship. */
const NEEDED_ONCE = [
  "customfunction",
  "family",
  "answers",
  "shape",
  "units",
  "blanks",
  "bounds",
  "errors",
  "source",
  "returns",
];
const KNOWN = new Set([...NEEDED_ONCE, "param", "caution", "example"]);

/**
 * What each worksheet function says of itself, read from the comment over its declaration.
 *
 * Gives, sorted by file: { id, file, family, answers, summary, params: [{ name, optional, matrix, text }], returnsTable,
 * shape, units, blanks, bounds, errors, source, cautions, examples: [{ formula, gives, fails }] }; of gives and fails one is null.
 * Throws with every fault of every file, so that no function is built undocumented.
 */
export function functionDocs(files = bindingFiles()) {
  const faults = [];
  const docs = files.map((file) => readBinding(file, (fault) => faults.push(`${basename(file)}: ${fault}`)));
  const seen = new Map();
  for (const doc of docs.filter(Boolean)) {
    if (seen.has(doc.id)) faults.push(`${doc.file}: ${doc.id} is already in ${seen.get(doc.id)}`);
    seen.set(doc.id, doc.file);
  }
  if (faults.length > 0) throw new Error(`Functions that are not fully documented:\n${faults.join("\n")}`);
  return docs;
}

function readBinding(file, fault) {
  const text = readFileSync(file, "utf8");
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true);
  const declaration = source.statements.find(ts.isFunctionDeclaration);
  if (declaration === undefined) return fault("declares no function");
  const range = (ts.getLeadingCommentRanges(text, declaration.getFullStart()) ?? []).at(-1);
  if (range === undefined) return fault("has no comment");
  const { summary, tags } = readComment(text.slice(range.pos, range.end));

  for (const tag of tags) if (!KNOWN.has(tag.name)) fault(`@${tag.name} is not a tag that is read`);
  for (const name of NEEDED_ONCE) {
    const found = tags.filter((tag) => tag.name === name);
    if (found.length !== 1 || found[0].text === "") fault(`needs one @${name} with its text`);
  }
  if (summary === "") fault("has no summary");
  const textOf = (name) => tags.find((tag) => tag.name === name)?.text ?? "";
  const allOf = (name) => tags.filter((tag) => tag.name === name).map((tag) => tag.text);
  const examples = allOf("example").map((example) => {
    const split = splitExample(example);
    if (split === null) fault(`the example "${example}" is no formula followed by "gives" or "fails" and what`);
    return split;
  });
  if (!examples.some((example) => example?.gives)) fault("needs an @example that gives a result");
  if (!examples.some((example) => example?.fails)) fault("needs an @example that fails");
  if (allOf("caution").includes("")) fault("has a @caution without text");
  return {
    id: textOf("customfunction"),
    file: basename(file),
    family: textOf("family"),
    answers: textOf("answers"),
    summary,
    params: readParams(declaration, allOf("param"), fault),
    returnsTable: declaration.type?.getText() === "any[][]",
    shape: textOf("shape"),
    units: textOf("units"),
    blanks: textOf("blanks"),
    bounds: textOf("bounds"),
    errors: textOf("errors"),
    source: textOf("source"),
    cautions: allOf("caution"),
    examples: examples.filter(Boolean),
  };
}

/** The first paragraph, and each tag with the lines under it joined. */
function readComment(comment) {
  const lines = comment
    .replace(/^\/\*\*/, "")
    .replace(/\*\/$/, "")
    .split(/\r?\n/)
    .map((line) => line.replace(/^\s*\* ?/, "").trim());
  const tags = [];
  const head = [];
  for (const line of lines) {
    const opened = /^@(\w+)\s*(.*)$/.exec(line);
    if (opened !== null) tags.push({ name: opened[1], text: opened[2] });
    else if (tags.length === 0) head.push(line);
    else if (line !== "") tags.at(-1).text = `${tags.at(-1).text} ${line}`.trim();
  }
  const paragraph = head
    .join("\n")
    .trim()
    .split(/\n{2,}/)[0];
  return { summary: paragraph.replace(/\s+/g, " "), tags };
}

function readParams(declaration, described, fault) {
  const documented = described.map((text) => /^(?:\{[^}]*\}\s*)?(\[?)(\w+)\]?\s+(.*)$/.exec(text));
  const params = declaration.parameters.map((parameter) => ({
    name: parameter.name.getText(),
    optional: parameter.questionToken !== undefined,
    matrix: parameter.type?.getText() === "any[][]",
  }));
  const namesDocumented = documented.map((match) => match?.[2]).join(", ");
  const namesDeclared = params.map((param) => param.name).join(", ");
  if (namesDocumented !== namesDeclared)
    fault(`@param names ${namesDocumented || "nothing"}, the function takes ${namesDeclared}`);
  return params.map((param, place) => {
    const match = documented[place];
    if (match && (match[1] === "[") !== param.optional)
      fault(`@param ${param.name} and the function disagree on whether it may be left out`);
    return { ...param, text: match?.[3] ?? "" };
  });
}
