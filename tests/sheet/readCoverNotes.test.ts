import { readCoverNotes } from "../../src/sheet/readCoverNotes";
import type { Cell } from "../../src/sheet/cell";
import { readSheets } from "../pane/readSheets";

const DAY = 46086;

async function notesOf(...sheets: readonly (readonly (readonly Cell[])[])[]) {
  const { workbook, tables } = await readSheets(sheets.map((rows, index) => ({ name: `Sheet${index + 1}`, rows })));
  return readCoverNotes(workbook.sheets, tables).map(({ sheetName, at, day, limit }) => ({
    at: `${sheetName} ${at.row},${at.column}`,
    day,
    limit: limit.ok ? limit.value : limit.problem.reason,
  }));
}

test.each([
  ["Insurance limit, all pieces", 120000],
  ["Cover", 120000],
  ["Insured for:", 120000],
  ["COVER FOR ALL PIECES", 120000],
])("a figure beside %j is the cover of every day", async (label, figure) => {
  expect(await notesOf([["Harbour Light"], [null], [label, figure]])).toEqual([
    { at: "Sheet1 2,1", day: null, limit: { amount: 120000, currency: null } },
  ]);
});

test("its currency is the one its own text names, else the one the words name", async () => {
  expect(
    await notesOf([["Cover", "£120,000"]], [["Insurance limit (EUR)", 90000]], [["Cover (EUR)", "$5,000"]]),
  ).toMatchObject([
    { limit: { amount: 120000, currency: "GBP" } },
    { limit: { amount: 90000, currency: "EUR" } },
    { limit: { amount: 5000, currency: "$" } },
  ]);
});

test("the rows of a day table state the cover of their own day, and of every day where they name none", async () => {
  const rows = [
    ["Date", "Call", "Cover"],
    [DAY, 0.4, 100],
    ["9 Mar 2026", 0.4, "£200"],
    [null, 0.4, 300],
    [DAY + 1, 0.4, null],
  ];
  expect(await notesOf(rows)).toEqual([
    { at: "Sheet1 1,2", day: DAY, limit: { amount: 100, currency: null } },
    { at: "Sheet1 2,2", day: 46090, limit: { amount: 200, currency: "GBP" } },
    { at: "Sheet1 3,2", day: null, limit: { amount: 300, currency: null } },
  ]);
});

test("a row whose day cannot be read, a blank, a 0 and a word without a figure state nothing", async () => {
  expect(
    await notesOf(
      [
        ["Date", "Call", "Cover"],
        ["03/04/26", 0.4, 100],
        [DAY, 0.4, 0],
      ],
      [["Cover", "Mirela"]],
      [["Cover", 0]],
    ),
  ).toEqual([]);
});

test("a figure that cannot be read is kept with its problem", async () => {
  expect(await notesOf([["Insurance limit", "about 120k"]])).toMatchObject([{ limit: "argument-not-usable" }]);
  expect(await notesOf([["Insurance limit", -5]])).toMatchObject([{ limit: "argument-not-usable" }]);
});

test("words within the rows of a table are no note, and notes below it are", async () => {
  const rows = [
    ["Piece", "Description", "Value", "Out"],
    ["1", "Cover", 100, DAY],
    [null, null, null, null],
    ["Insurance limit", 5000],
  ];
  const notes = await notesOf(rows);
  expect(notes.map(({ at }) => at)).not.toContain("Sheet1 1,2");
});

test("the limit of one piece is kept apart from the limit of all", async () => {
  const rows = [
    ["Insurance limit, all pieces", 120000],
    ["Insurance limit, one piece", 5500],
  ];
  const { workbook, tables } = await readSheets([{ name: "Job", rows }]);
  expect(readCoverNotes(workbook.sheets, tables).map(({ covers, at }) => [covers, at.row])).toEqual([
    ["all", 0],
    ["one", 1],
  ]);
});
