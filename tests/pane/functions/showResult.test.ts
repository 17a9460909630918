import { argumentAccused } from "../../../src/pane/functions/argumentAccused";
import { functionDocs } from "../../../src/pane/functions/functionDocs";
import { showCell } from "../../../src/pane/functions/showCell";
import { showResult } from "../../../src/pane/functions/showResult";
import { bindingNamed } from "../../functions/bindingNamed";
import { readFormula } from "../../functions/readFormula";
import { standInHost } from "../../functions/standInHost";

let takeAway: () => void;
beforeAll(() => (takeAway = standInHost("Double")));
afterAll(() => takeAway());

const call = (formula: string) => {
  const { id, args } = readFormula(formula);
  return showResult(() => bindingNamed(id.toLowerCase())(...args.map((arg) => arg ?? null)));
};

test.each([
  [{ basicValue: 46086, numberFormat: "yyyy-mm-dd" }, "2026-03-05"],
  [{ basicValue: 0.395833333333333, numberFormat: "hh:mm" }, "09:30"],
  [{ basicValue: 1.0625, numberFormat: "[h]:mm" }, "25:30"],
  [{ basicValue: 1250, numberFormat: "#,##0.00" }, "1,250.00"],
  [0.1 + 0.2, "0.3"],
  [true, "TRUE"],
  ["", ""],
  [null, "0"],
])("%j is shown as %s", (cell, text) => {
  expect(showCell(cell)).toBe(text);
});

// The examples of the functions' own comments, run through the binding itself.
const examples = functionDocs.flatMap(({ params, examples: own }) => own.map((example) => ({ ...example, params })));

test.each(examples.filter(({ gives }) => /^\d{4}-\d\d-\d\d$|^\d\d:\d\d$/.test(gives ?? "")))(
  "$formula shows $gives",
  ({ formula, gives }) => {
    expect(call(formula)).toEqual({ kind: "value", text: gives });
  },
);

test.each(examples.filter(({ fails }) => fails !== null))(
  "$formula shows an error and its sentence",
  ({ formula, fails, params }) => {
    const shown = call(formula);
    expect(shown).toMatchObject({ kind: "error", sentence: expect.stringContaining(fails ?? "") });
    if (shown.kind !== "error") return;
    expect(shown.code).toMatch(/^#(?:VALUE!|N\/A)$/);
    const accused = argumentAccused(shown.sentence, params);
    // A sentence that begins with the name of an argument is shown at that argument, whatever follows it.
    const named = params.find(
      ({ name }) => shown.sentence.startsWith(`${name}:`) || shown.sentence.startsWith(`${name} is blank`),
    );
    expect(accused).toBe(named?.name ?? accused);
  },
);

test("a table keeps an error in its cell", () => {
  const bad = Object.assign(new Error("not a date"), { code: "#VALUE!" });
  expect(
    showResult(() => [
      ["Piece", "Due"],
      ["coat", bad],
    ]),
  ).toEqual({
    kind: "table",
    rows: [
      ["Piece", "Due"],
      ["coat", "#VALUE!"],
    ],
  });
});
