import { holidays as holidaysFunction } from "../../../src/functions/bindings/holidays";
import { addClosedDays } from "../../../src/pane/holidays/addClosedDays";
import { findClosedDays } from "../../../src/pane/holidays/findClosedDays";
import { holidayPlaces } from "../../../src/pane/holidays/holidayPlaces";
import { listedHolidays } from "../../../src/pane/holidays/listedHolidays";
import type { Cell } from "../../../src/sheet/cell";
import { readClosedDaysFound } from "../../../src/sheet/readClosedDaysFound";
import { fakePort } from "../fakePort";
import type { FakePort, FakeSheet } from "../fakePort";

// GOV.UK bank holidays, England and Wales 2026, the first three: 1 January, 3 April, 6 April.
const NEW_YEAR = 46023;
const GOOD_FRIDAY = 46115;
const EASTER_MONDAY = 46118;

const job = (rows: readonly (readonly Cell[])[], below: readonly (readonly Cell[])[] = []): FakeSheet => ({
  name: "Job",
  rows: [["Closed", "Why"], ...rows, ...below],
  tables: [{ name: "ClosedDays", row: 0, column: 0, rowCount: rows.length + 1, columnCount: 2 }],
});
async function workbookOf(port: FakePort) {
  const workbook = await port.readWorkbook();
  if (!workbook.ok) throw new Error("the fake workbook cannot be read");
  return workbook.value;
}
async function holidaysIn(port: FakePort) {
  const listed = listedHolidays("England and Wales", 2026, 2026, await workbookOf(port));
  if (!listed.ok) throw new Error("no holidays");
  return listed.value;
}
/** Adds what is missing, as the pane does, and answers the receipt's way back. */
async function addMissing(port: FakePort) {
  const workbook = await workbookOf(port);
  const missing = (await holidaysIn(port)).filter(({ isListed }) => !isListed);
  const step = addClosedDays(missing, findClosedDays(workbook), workbook);
  const receipt = step.how === "write" ? await port.write("add", step.edits) : await port.build("add", step.plan);
  return { how: step.how, receipt, restore: () => (receipt.ok ? port.restore(receipt.value) : null) };
}
const daysOf = async (port: FakePort) => readClosedDaysFound((await workbookOf(port)).sheets).days;

test("the days are those of HOLIDAYS for whole years, each with whether the closed days have it", async () => {
  const listed = await holidaysIn(fakePort([job([[GOOD_FRIDAY, "Good Friday"]])]));
  const given = holidaysFunction("England and Wales", "2026-01-01", "2026-12-31").slice(1);
  expect(listed.map(({ name }) => name)).toEqual(given.map(([, name]) => name));
  expect(listed.slice(0, 3).map(({ day, isListed }) => [day, isListed])).toEqual([
    [NEW_YEAR, false],
    [GOOD_FRIDAY, true],
    [EASTER_MONDAY, false],
  ]);
});

test("every place offered has holidays in its first and its last year, and none in the years beyond", async () => {
  const workbook = await workbookOf(fakePort([job([])]));
  for (const { name, firstYear, lastYear } of holidayPlaces) {
    const whole = listedHolidays(name, firstYear, lastYear, workbook);
    expect(whole.ok && whole.value.length).toBeGreaterThan(5);
    expect(listedHolidays(name, firstYear - 1, lastYear, workbook).ok).toBe(false);
    expect(listedHolidays(name, firstYear, lastYear + 1, workbook).ok).toBe(false);
  }
});

test("a full table grows by the missing days, which then count as closed, and gets its old length back", async () => {
  const port = fakePort([job([[GOOD_FRIDAY, "Good Friday"]])]);
  const { how, restore } = await addMissing(port);
  expect(how).toBe("build");
  expect((await holidaysIn(port)).every(({ isListed }) => isListed)).toBe(true);
  expect([port.at("s0", 1, 1), port.at("s0", 2, 0), port.at("s0", 2, 1)]).toEqual([
    "Good Friday",
    NEW_YEAR,
    "New Year's Day",
  ]);
  await restore();
  expect(await daysOf(port)).toEqual([GOOD_FRIDAY]);
  expect(port.at("s0", 2, 0)).toBeNull();
});

test("blank rows at the foot of the table are filled first, in one step that can be put back", async () => {
  const blanks = Array.from({ length: 9 }, () => [null, null]);
  const port = fakePort([job([[GOOD_FRIDAY, "Good Friday"], ...blanks])]);
  const { how, restore } = await addMissing(port);
  expect(how).toBe("write");
  expect(port.at("s0", 2, 0)).toBe(NEW_YEAR);
  expect((await holidaysIn(port)).every(({ isListed }) => isListed)).toBe(true);
  await restore();
  expect(await daysOf(port)).toEqual([GOOD_FRIDAY]);
});

test("a table that is still blank is the one that is filled", async () => {
  const port = fakePort([job([[null, null]])]);
  expect((await addMissing(port)).receipt.ok).toBe(true);
  expect(await daysOf(port)).toHaveLength(8);
});

test("what stands below the table is never written over: nothing is added, and the sentence names the cell", async () => {
  const port = fakePort([job([[GOOD_FRIDAY, "Good Friday"]], [["mine", null]])]);
  const { receipt } = await addMissing(port);
  expect(receipt).toMatchObject({ ok: false, problem: { reason: "cells-changed", facts: { cells: "A3" } } });
  expect(await daysOf(port)).toEqual([GOOD_FRIDAY]);
});

test("a workbook without such a table gets one on a sheet of its own, under names that are free", async () => {
  const port = fakePort([{ name: "closed days", rows: [["x"]] }]);
  const { receipt, restore } = await addMissing(port);
  expect(receipt.ok).toBe(true);
  const { sheets } = await workbookOf(port);
  expect(sheets.map(({ name, tables }) => [name, tables.map((table) => table.name)])).toEqual([
    ["closed days", []],
    ["Closed days 2", ["ClosedDays"]],
  ]);
  expect(await daysOf(port)).toHaveLength(8);
  await restore();
  expect((await workbookOf(port)).sheets).toHaveLength(1);
});
