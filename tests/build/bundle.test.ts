import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { createContext, runInContext } from "node:vm";
import { gzipSync } from "node:zlib";
import packageSettings from "../../package.json";
import { builtAddin } from "./builtAddin";

/** The size limit stands once, beside the package's other settings; no date library, no user interface library. */
const MOST_BYTES_GZIPPED = Number.parseFloat(packageSettings["size-limit"][0]!.limit) * 1000;

const folder = builtAddin("functions");
const script = readFileSync(join(folder, "functions.js"), "utf8");
const metadata = readFileSync(join(folder, "functions.json"), "utf8");
const { functions, ...settings } = JSON.parse(metadata) as {
  functions: { id: string; name: string; description: string; parameters: { name: string; optional?: boolean }[] }[];
};
const bindings = join(__dirname, "../../src/functions/bindings");

type Binding = (...args: unknown[]) => unknown;

/** Runs the bundle where there is nothing but CustomFunctions: no document, location, fetch, process or timer. */
function runBare(): Map<string, Binding> {
  const associated = new Map<string, Binding>();
  class HostError {
    constructor(
      readonly code: string,
      readonly message: string,
    ) {}
  }
  const CustomFunctions = {
    associate: (id: string, binding: Binding) => associated.set(id, binding),
    Error: HostError,
    ErrorCode: { invalidValue: "#VALUE!", notAvailable: "#N/A" },
  };
  runInContext(script, createContext({ CustomFunctions }), { filename: "functions.js" });
  return associated;
}

const associated = runBare();
const call = (id: string, ...args: unknown[]): unknown => {
  const binding = associated.get(id);
  if (binding === undefined) throw new Error(`${id} is not associated`);
  return binding(...args);
};

test("every function of functions.json is associated while the script runs, and no other", () => {
  expect([...associated.keys()].sort()).toEqual(functions.map((entry) => entry.id).sort());
});

test("every binding of the folder is in the bundle", () => {
  const names = readdirSync(bindings).filter((name) => name.endsWith(".ts"));
  expect(functions).toHaveLength(names.length);
});

test("errors inside ranges and formatted numbers reach the functions", () => {
  expect(settings).toMatchObject({ allowErrorForDataTypeAny: true, allowCustomDataForDataTypeAny: true });
});

test("each description is one paragraph, and each function has one", () => {
  for (const { id, description } of functions) expect([id, /^[^\n@]{10,}$/.test(description)]).toEqual([id, true]);
});

const PIECES = [
  ["Piece", "Lender", "Value", "Out", "Due", "Back"],
  ["Silk coat", "Maison Orla", 1200, 46080, 46086, null],
  ["Brogues", "Ado & Fils", 300, 46080, 46090, null],
];

test("the value out on a day is 1500 for two pieces of 1200 and 300", () => {
  expect(call("VALUEOUT", PIECES, 46085)).toBe(1500);
});

test("two days after the first is due, the late rows are its one row with 2 days late", () => {
  const rows = call("LATEROWS", PIECES, 46088) as unknown[][];
  expect(rows).toHaveLength(2);
  expect(rows[0]?.at(-1)).toBe("Days late");
  expect([rows[1]?.[0], rows[1]?.at(-1)]).toEqual(["Silk coat", 2]);
});

test("bad input is thrown as the host's error with its code and its sentence", () => {
  let thrown: unknown;
  try {
    call("VALUEOUT", PIECES, "03/04/26");
  } catch (error) {
    thrown = error;
  }
  expect(thrown).toMatchObject({ code: "#VALUE!", message: expect.stringContaining("2026-04-03") as string });
});

test("a date is a plain number until the host says that it takes formats", () => {
  const rows = call("LATEROWS", PIECES, 46088) as unknown[][];
  expect(rows[1]?.[4]).toBe(46086);
});

test(`the script is at most ${MOST_BYTES_GZIPPED} bytes gzipped`, () => {
  expect(gzipSync(script, { level: 9 }).length).toBeLessThanOrEqual(MOST_BYTES_GZIPPED);
});

test("no date library and no user interface library is in it", () => {
  // Words that stay in such libraries when they are minified.
  const words = script.match(/luxon|DateTime|IANAZone|formatToParts|createElement|useState|\breact|fluent|__REACT/gi);
  expect(words).toBeNull();
});

test("it touches neither page, network, storage nor clock", () => {
  // As code: a dot, a bracket or a call follows; in a heading's vocabulary the same words are plain text.
  const uses = script.match(
    /\b(?:document|location|localStorage|navigator|process|window)[.[]|\b(?:fetch|setTimeout|eval|XMLHttpRequest|require)\(|\bDate\.now\b|\bnew Date\b|\bMath\.random\b/g,
  );
  expect(uses).toBeNull();
});

test("the page loads the shell before the functions, and nothing from elsewhere but the host's own library", () => {
  const page = readFileSync(join(__dirname, "../../src/excel/shell/taskpane.html"), "utf8");
  const sources = [...page.matchAll(/\b(?:src|href)="([^"]+)"/g)].map(([, source]) => source);
  expect(sources).toEqual(["https://appsforoffice.microsoft.com/lib/1/hosted/office.js", "shell.js", "functions.js"]);
});

const shell = join(__dirname, "../../dist/shell.js");
const builtShell = existsSync(shell) ? test : test.skip;
builtShell("the shell, where npm run build has written it, is small and leaves the pane for later", () => {
  const text = readFileSync(shell, "utf8");
  expect(gzipSync(text).length).toBeLessThan(5_000);
  expect(text.match(/useState|createRoot/g)).toBeNull();
});
