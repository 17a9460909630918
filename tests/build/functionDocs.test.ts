import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { functionDocs } from "../../src/build/functionDocs.mjs";

const COMPLETE = `/**
 * The double of a number,
 * for a test.
 *
 * More that is not the summary.
 *
 * @customfunction TWICE
 * @family Tests
 * @answers How much is twice that?
 * @param number What to double.
 * @param [unit] Its unit.
 * @shape One number.
 * @units None.
 * @blanks Blank is 0.
 * @bounds Any number.
 * @errors Text is #VALUE!,
 *   as it is no number.
 * @source Arithmetic.
 * @caution None needed.
 * @example =TACK.TWICE(2) gives 4
 * @example =TACK.TWICE("(two)") fails is no number
 * @returns {any} The double.
 */
export function twice(number: any, unit?: any): any {
  return number * 2;
}
`;

let folder: string;
beforeEach(() => (folder = mkdtempSync(join(tmpdir(), "docs-"))));
afterEach(() => rmSync(folder, { recursive: true }));

function docsOf(source: string, name = "twice.ts"): ReturnType<typeof functionDocs> {
  const file = join(folder, name);
  writeFileSync(file, source);
  return functionDocs([file]);
}

test("reads everything a function says of itself", () => {
  expect(docsOf(COMPLETE)).toEqual([
    {
      id: "TWICE",
      file: "twice.ts",
      family: "Tests",
      answers: "How much is twice that?",
      summary: "The double of a number, for a test.",
      params: [
        { name: "number", optional: false, matrix: false, text: "What to double." },
        { name: "unit", optional: true, matrix: false, text: "Its unit." },
      ],
      returnsTable: false,
      shape: "One number.",
      units: "None.",
      blanks: "Blank is 0.",
      bounds: "Any number.",
      errors: "Text is #VALUE!, as it is no number.",
      source: "Arithmetic.",
      cautions: ["None needed."],
      examples: [
        { formula: "=TACK.TWICE(2)", gives: "4", fails: null },
        { formula: '=TACK.TWICE("(two)")', gives: null, fails: "is no number" },
      ],
    },
  ]);
});

const faults: readonly [title: string, change: (source: string) => string, fault: RegExp][] = [
  ...["family", "answers", "shape", "units", "blanks", "bounds", "errors", "source", "returns"].map(
    (tag): [string, (source: string) => string, RegExp] => [
      `without @${tag}`,
      (source) => source.replace(new RegExp(` \\* @${tag} .*\\n`), ""),
      new RegExp(`twice.ts: needs one @${tag} with its text`),
    ],
  ),
  ["with a tag that has no text", (source) => source.replace("@units None.", "@units"), /needs one @units/],
  ["with a tag twice", (source) => source.replace("@units None.", "@units None.\n * @units None."), /needs one @units/],
  ["without a summary", (source) => source.replace(/ \* The double[^@]*/, " * "), /has no summary/],
  ["without a comment", (source) => source.slice(source.indexOf("export")), /has no comment/],
  [
    "without a function declaration",
    () => "export const twice = (number: any): any => number * 2;\n",
    /declares no function/,
  ],
  [
    "without an example that fails",
    (source) => source.replace(/ \* @example.*fails.*\n/, ""),
    /needs an @example that fails/,
  ],
  [
    "without an example that gives",
    (source) => source.replace(/ \* @example.*gives.*\n/, ""),
    /needs an @example that gives/,
  ],
  [
    "with an example that is no formula",
    (source) => source.replace("=TACK.TWICE(2) gives", "TWICE of 2 gives"),
    /is no formula followed by/,
  ],
  [
    "with a @param the function does not take",
    (source) => source.replace("@param number", "@param numbr"),
    /@param names numbr, unit, the function takes number, unit/,
  ],
  ["without a @param", (source) => source.replace(/ \* @param \[unit\].*\n/, ""), /the function takes number, unit/],
  [
    "with a @param that is optional in one place only",
    (source) => source.replace("[unit]", "unit"),
    /disagree on whether it may be left out/,
  ],
  ["with a misspelled tag", (source) => source.replace("@caution", "@cautoin"), /@cautoin is not a tag that is read/],
];

test.each(faults)("a function %s does not ship", (_title, change, fault) => {
  const changed = change(COMPLETE);
  expect(changed).not.toBe(COMPLETE);
  expect(() => docsOf(changed)).toThrow(fault);
});

test("the same id in two files does not ship", () => {
  writeFileSync(join(folder, "first.ts"), COMPLETE);
  writeFileSync(join(folder, "second.ts"), COMPLETE);
  expect(() => functionDocs([join(folder, "first.ts"), join(folder, "second.ts")])).toThrow(
    "second.ts: TWICE is already in first.ts",
  );
});

test("every fault of every file is said at once", () => {
  const changed = COMPLETE.replace("@family Tests", "@family").replace("@units None.", "@units");
  expect(() => docsOf(changed)).toThrow(/@family[^]*@units/);
});
