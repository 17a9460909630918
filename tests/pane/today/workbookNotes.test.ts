import { closedDaysOf } from "../../../src/pane/today/closedDaysOf";
import { crewOf } from "../../../src/pane/today/crewOf";
import { sheetDay } from "../../../src/pane/today/sheetDay";
import { dayTimes } from "../../../src/pane/today/dayTimes";
import type { Cell } from "../../../src/sheet/cell";
import type { WorkbookSnapshot } from "../../../src/sheet/sheetSnapshot";
import { readSheets } from "../readSheets";

/** A workbook with one host table that begins at C3 of its sheet. */
function withTable(cells: readonly (readonly Cell[])[]): WorkbookSnapshot {
  const blank: readonly Cell[] = [null, null];
  const values = [blank, blank, ...cells.map((row) => [null, null, ...row])];
  const columnCount = cells[0]?.length ?? 0;
  return {
    name: "shoot.xlsx",
    dateSystem: 1900,
    sheets: [
      {
        sheetId: "s0",
        name: "Job",
        visible: true,
        isProtected: false,
        firstRow: 0,
        firstColumn: 0,
        values,
        formulas: values.map((row) => row.map(() => null)),
        tables: [{ name: "T", row: 2, column: 2, rowCount: cells.length, columnCount }],
      },
    ],
  };
}

test("a table of two columns that says what people are asked for is the crew, with its place", () => {
  const found = crewOf(
    withTable([
      ["What", "How many"],
      ["dressers", 2],
      ["chairs", 3],
      ["meal after hours", 6],
      ["meal minutes", 45],
    ]),
  );
  expect(found.crew).toEqual({
    dressers: 2,
    chairs: 3,
    cameras: 1,
    meal: { afterHours: 6, minutes: 45 },
    crossingMinutes: 0,
  });
  expect(found.place).toEqual({ at: { sheetId: "s0", row: 2, column: 2 }, sheetName: "Job" });
});

test("other tables of two columns are no crew, and the smallest one stands in for it", () => {
  const found = crewOf(
    withTable([
      ["Closed", "Why"],
      [46115, "Good Friday"],
    ]),
  );
  expect(found).toEqual({ crew: { dressers: 1, chairs: 1, cameras: 1, meal: null, crossingMinutes: 0 }, place: null });
});

test("the column headed Closed gives the closed days, blanks and words in it passed over", () => {
  const found = closedDaysOf(
    withTable([
      ["Why", "Closed"],
      ["Good Friday", 46115],
      ["tbc", "ask"],
      [null, null],
      ["Easter Monday", "2026-04-06"],
    ]),
  );
  expect(found.days).toEqual([46115, 46118]);
  expect(found.place?.at).toEqual({ sheetId: "s0", row: 2, column: 3 });
  expect(closedDaysOf(withTable([["Piece"], ["1"]]))).toEqual({ days: [], place: null });
});

test("notes at the head of a sheet give a day's call and wrap, whatever order they stand in", async () => {
  const read = await readSheets([
    {
      name: "Day 1",
      rows: [
        ["Wrap", "18:00"],
        ["Call time", "8am"],
        ["Date", "2026-03-30"],
      ],
    },
  ]);
  expect(dayTimes(read)).toEqual([
    { date: 46111, call: 8 / 24, wrap: 18 / 24, at: { sheetId: "s0", row: 1, column: 1 }, sheetName: "Day 1" },
  ]);
});

test("the rows of a day table give a call each, and a word that only looks like a note gives none", async () => {
  const read = await readSheets([
    {
      name: "Days",
      rows: [
        ["Date", "Call", "Wrap", "Dressers"],
        [46111, "08:00", "18:00", 1],
        [46112, 0.375, null, 1],
      ],
    },
    {
      name: "Notes",
      rows: [
        ["Call", "the lender"],
        ["Wrap", null],
      ],
    },
  ]);
  expect(dayTimes(read).map(({ date, call, wrap }) => [date, call, wrap])).toEqual([
    [46111, 8 / 24, 18 / 24],
    [46112, 0.375, null],
  ]);
});

test("the day a sheet counts for is the date beside its words, and a word without a date is none", async () => {
  const own = async (rows: readonly (readonly Cell[])[]) =>
    sheetDay((await readSheets([{ name: "Job", rows }])).workbook);
  expect(await own([["Harbour Light"], [null], ["As-of day", 46119]])).toEqual({
    day: 46119,
    at: { sheetId: "s0", row: 2, column: 1 },
    sheetName: "Job",
  });
  expect(await own([["as of", "soon"]])).toBeNull();
  expect(await own([["Last shoot day", 46112]])).toBeNull();
});
