import { smallestCrew } from "../../src/domain/day/smallestCrew";
import { crewOnDay } from "../../src/sheet/crewOnDay";
import { dayNotesFor } from "../../src/sheet/dayNotesFor";
import type { DayNotes } from "../../src/sheet/dayNotes";
import { readClosedDaysFound } from "../../src/sheet/readClosedDaysFound";
import { readCrewFound } from "../../src/sheet/readCrewFound";
import { readDayNotes } from "../../src/sheet/readDayNotes";
import type { Cell } from "../../src/sheet/cell";
import type { SheetSnapshot } from "../../src/sheet/sheetSnapshot";
import { readSheets } from "../pane/readSheets";

const nothing = { date: null, call: null, wrap: null, meal: null, dressers: null, chairs: null };

/** A workbook with one host table that begins at C3 of its sheet. */
function withTable(cells: readonly (readonly Cell[])[]): readonly SheetSnapshot[] {
  const blank: readonly Cell[] = [null, null];
  const values = [blank, blank, ...cells.map((row) => [null, null, ...row])];
  const columnCount = cells[0]?.length ?? 0;
  return [
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
  ];
}

test("a table of two columns that says what people are asked for is the crew, with its place", () => {
  const found = readCrewFound(
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
    handOverMinutes: 0,
  });
  expect(found.place).toMatchObject({ at: { sheetId: "s0", row: 2, column: 2 }, sheetName: "Job" });
  expect(found.mealPlace).toEqual({
    at: { sheetId: "s0", row: 5, column: 3 },
    sheetName: "Job",
    heading: "meal after hours",
    raw: 6,
  });
});

test("other tables of two columns are no crew, and the smallest one stands in for it", () => {
  const found = readCrewFound(
    withTable([
      ["Closed", "Why"],
      [46115, "Good Friday"],
    ]),
  );
  expect(found).toEqual({ crew: smallestCrew, place: null, mealPlace: null });
});

test("the column headed Closed gives the closed days, blanks and words in it passed over", () => {
  const found = readClosedDaysFound(
    withTable([
      ["Why", "Closed"],
      ["Good Friday", 46115],
      ["tbc", "ask"],
      [null, null],
      ["Easter Monday", "2026-04-06"],
    ]),
  );
  expect(found.days).toEqual([46115, 46118]);
  expect(found.place).toEqual({
    at: { sheetId: "s0", row: 2, column: 3 },
    sheetName: "Job",
    reference: "T[Closed]",
  });
  expect(readClosedDaysFound(withTable([["Piece"], ["1"]]))).toEqual({ days: [], place: null });
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
  const at = (row: number) => ({ at: { sheetId: "s0", row, column: 1 }, sheetName: "Day 1" });
  expect(readDayNotes(read.workbook.sheets, read.tables)).toEqual([
    {
      ...nothing,
      date: 46111,
      call: { value: 8 / 24, heading: "Call time", raw: "8am", ...at(1) },
      wrap: { value: 18 / 24, heading: "Wrap", raw: "18:00", ...at(0) },
    },
  ]);
});

test("the rows of a day table give a call each, and a word that only looks like a note gives none", async () => {
  const read = await readSheets([
    {
      name: "Days",
      rows: [
        ["Date", "Call", "Wrap", "Dressers"],
        [46111, "08:00", "18:00", "2"],
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
  expect(
    readDayNotes(read.workbook.sheets, read.tables).map(({ date, call, wrap, dressers }) => [
      date,
      call?.value,
      wrap?.value,
      dressers?.value,
    ]),
  ).toEqual([
    [46111, 8 / 24, 18 / 24, 2],
    [46112, 0.375, undefined, 1],
  ]);
});

const figure = (value: number) => ({
  value,
  raw: value,
  heading: "",
  sheetName: "Day",
  at: { sheetId: "s0", row: value, column: 0 },
});

test("what is said of a day in two places is put together, the first counting", () => {
  const notes: readonly DayNotes[] = [
    { ...nothing, date: 46111, dressers: figure(2) },
    { ...nothing, date: 46112, call: figure(0.5) },
    { ...nothing, date: 46111, call: figure(0.25), dressers: figure(3) },
  ];
  expect(dayNotesFor(notes, 46111, 2)).toEqual({
    ...nothing,
    date: 46111,
    call: figure(0.25),
    dressers: figure(2),
  });
});

test("notes without a date count for the one day of the looks, and for none of several", () => {
  const notes = [{ ...nothing, call: figure(0.25) }];
  expect(dayNotesFor(notes, 46111, 1).call?.value).toBe(0.25);
  expect(dayNotesFor(notes, null, 0).call?.value).toBe(0.25);
  expect(dayNotesFor(notes, 46111, 2).call).toBeNull();
});

test("looks without a date go by the notes of a day only where all notes are of that day", () => {
  const notes = [{ ...nothing, date: 46111, call: figure(0.25) }];
  expect(dayNotesFor(notes, null, 0)).toMatchObject({ date: 46111, call: { value: 0.25 } });
  expect(dayNotesFor([...notes, { ...nothing, date: 46112, call: figure(0.5) }], null, 0).call).toBeNull();
  expect(dayNotesFor(notes, null, 2).call).toBeNull();
});

test("a day's own people and meal go before those listed for the whole job", () => {
  const listed = { crew: { ...smallestCrew, cameras: 2, dressers: 3 }, place: figure(7), mealPlace: null };
  expect(crewOnDay(listed, nothing)).toEqual(listed);
  const own = crewOnDay(listed, { ...nothing, dressers: figure(2), meal: figure(6) });
  expect(own.crew).toEqual({ ...smallestCrew, cameras: 2, dressers: 2, meal: { afterHours: 6, minutes: 30 } });
  expect([own.place?.raw, own.mealPlace?.raw]).toEqual([2, 6]);
});
