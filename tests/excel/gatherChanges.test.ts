import { gatherChanges } from "../../src/excel/gatherChanges";
import type { SheetChange } from "../../src/sheet/SheetPort";

const area = (row: number) => ({ row, column: 0, rowCount: 1, columnCount: 1 });
const change = (sheetId: string, row: number | null, sheetsChanged = false): SheetChange => ({
  sheetId,
  area: row === null ? null : area(row),
  sheetsChanged,
});

function gathering(): { told: SheetChange[][]; gathered: ReturnType<typeof gatherChanges> } {
  const told: SheetChange[][] = [];
  return { told, gathered: gatherChanges((changes) => told.push([...changes]), 150) };
}

beforeEach(() => jest.useFakeTimers());
afterEach(() => jest.useRealTimers());

test("a burst is told once, 150 ms after its first change, each area once", () => {
  const { told, gathered } = gathering();
  gathered.add(change("a", 1));
  jest.advanceTimersByTime(149);
  gathered.add(change("a", 1));
  gathered.add(change("a", 2));
  expect(told).toEqual([]);
  jest.advanceTimersByTime(1);
  expect(told).toEqual([[change("a", 1), change("a", 2)]]);
});

test("a steady flow is still told every 150 ms", () => {
  const { told, gathered } = gathering();
  for (let row = 0; row < 10; row++) {
    gathered.add(change("a", row));
    jest.advanceTimersByTime(100);
  }
  expect(told.length).toBeGreaterThanOrEqual(4);
});

test("a change of the whole sheet swallows its areas, and leaves other sheets alone", () => {
  const { told, gathered } = gathering();
  gathered.add(change("a", 1));
  gathered.add(change("b", 5));
  gathered.add(change("a", null));
  jest.advanceTimersByTime(150);
  expect(told).toEqual([[change("a", null), change("b", 5)]]);
});

test("a sheet that was renamed is told as changed, areas and all", () => {
  const { told, gathered } = gathering();
  gathered.add(change("a", 1));
  gathered.add(change("a", null, true));
  jest.advanceTimersByTime(150);
  expect(told).toEqual([[change("a", null, true)]]);
});

test("a great many areas are told as the whole sheet", () => {
  const { told, gathered } = gathering();
  for (let row = 0; row < 41; row++) gathered.add(change("a", row * 2));
  jest.advanceTimersByTime(150);
  expect(told).toEqual([[change("a", null)]]);
});

test("nothing is told after stopping", () => {
  const { told, gathered } = gathering();
  gathered.add(change("a", 1));
  gathered.stop();
  jest.advanceTimersByTime(1000);
  expect(told).toEqual([]);
});
