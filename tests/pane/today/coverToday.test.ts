import { coverOn } from "../../../src/pane/today/coverOn";
import { coverToday } from "../../../src/pane/today/coverToday";
import { coversUnread } from "../../../src/pane/today/coversUnread";
import { readCoverNotes } from "../../../src/sheet/readCoverNotes";
import type { Cell } from "../../../src/sheet/cell";
import { readSheets } from "../readSheets";

const DAY = 46086;

async function notesOf(...sheets: readonly (readonly (readonly Cell[])[])[]) {
  const { workbook, tables } = await readSheets(sheets.map((rows, index) => ({ name: `Sheet${index + 1}`, rows })));
  return readCoverNotes(workbook.sheets, tables);
}

const days = [
  ["Date", "Call", "Cover"],
  [DAY, 0.4, 100],
  [DAY + 1, 0.4, 200],
];

test("a day's own cover goes before the one of every day, and the cell that says it is known", async () => {
  const cover = coverToday(await notesOf([["Insurance limit", 50]], days), "all", "GBP", true);
  expect([DAY - 1, DAY, DAY + 1, DAY + 2].map((day) => coverOn(cover, day)?.amount)).toEqual([50, 100, 200, 50]);
  expect(coverOn(cover, DAY + 1)?.place).toMatchObject({ sheetName: "Sheet2", at: { row: 2, column: 2 } });
  expect(coverOn(coverToday(await notesOf(days), "all", "GBP", true), DAY + 5)).toBeNull();
});

test("of two that speak of the same days the first counts", async () => {
  const cover = coverToday(await notesOf([["Cover", 50]], [["Insurance limit", 70]]), "all", "", true);
  expect(coverOn(cover, DAY)?.amount).toBe(50);
});

test("a limit speaks of its own currency, and without one only of a sheet that has one currency", async () => {
  const unnamed = await notesOf([["Cover", 50]]);
  expect(coverOn(coverToday(unnamed, "all", "GBP", true), DAY)?.amount).toBe(50);
  expect(coverOn(coverToday(unnamed, "all", "GBP", false), DAY)).toBeNull();
  const pounds = await notesOf([["Cover", "£50"]]);
  expect(coverOn(coverToday(pounds, "all", "GBP", false), DAY)?.amount).toBe(50);
  expect(coverOn(coverToday(pounds, "all", "EUR", true), DAY)).toBeNull();
  expect(coverOn(coverToday(pounds, "all", "", true), DAY)?.amount).toBe(50);
  expect(coverOn(coverToday(await notesOf([["Cover", "$50"]]), "all", "USD", true), DAY)?.amount).toBe(50);
});

test("a limit that is used for nothing is said with its reason", async () => {
  const sentences = async (rows: readonly (readonly Cell[])[], currencies: readonly string[]) =>
    coversUnread(await notesOf(rows), currencies).map(({ sentence }) => sentence);
  expect(await sentences([["Cover", 50]], ["GBP"])).toEqual([]);
  expect(await sentences([["Cover", 50]], ["GBP", "EUR"])).toEqual([
    "It does not say of which currency, and what is held is in GBP and EUR.",
  ]);
  expect(await sentences([["Cover", "€50"]], ["GBP"])).toEqual(["It is in EUR, and what is held is in GBP."]);
  expect((await sentences([["Cover", "50k"]], ["GBP"]))[0]).toMatch(/^Cover B1: "50k" cannot be used; /);
});
