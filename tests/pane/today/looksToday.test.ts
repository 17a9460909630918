import { dayfit } from "../../../src/functions/bindings/dayfit";
import { dayplan } from "../../../src/functions/bindings/dayplan";
import { looksToday } from "../../../src/pane/today/looksToday";
import type { Cell } from "../../../src/sheet/cell";
import { readSheets } from "../readSheets";

const DAY1 = 46111;
const DAY2 = DAY1 + 1;
const headings = ["Look", "Order", "Date", "Talent", "Set", "Change", "Hair and make-up", "Shooting"];
const rows: readonly (readonly Cell[])[] = [
  [1, 2, DAY1, "Mirela", "Slipway", 15, 45, 30],
  [2, 1, DAY1, "Jonas", "Slipway", 12, 20, 25],
  [3, 1, DAY2, "Adaeze", "Net loft", 15, 40, 30],
];
const notes = (day: number, call: string, wrap: string) => [
  ["Date", day],
  ["Call", call],
  ["Wrap", wrap],
];
const workbook = [
  { name: "Looks", rows: [headings, ...rows] },
  { name: "Day 1", rows: notes(DAY1, "08:00", "10:00") },
  { name: "Day 2", rows: notes(DAY2, "09:00", "18:00") },
];

test("the day shown is the as-of day, else the next one with looks, else the first, unless another is wanted", async () => {
  const read = await readSheets(workbook);
  const shown = (asOf: number, wanted: number | null = null) => looksToday(read, asOf, wanted, new Map())?.day;
  expect(shown(DAY2)).toBe(DAY2);
  expect(shown(DAY1 - 5)).toBe(DAY1);
  expect(shown(DAY2 + 5)).toBe(DAY1);
  expect(shown(DAY1, DAY2)).toBe(DAY2);
  expect(shown(DAY1, 12345)).toBe(DAY1);
});

test("the times are those of DAYPLAN for the looks of that day, its call and the smallest crew, and the spare that of DAYFIT", async () => {
  const looks = looksToday(await readSheets(workbook), DAY1, null, new Map());
  const ofDay = [headings, ...rows.filter((row) => row[2] === DAY1)].map((row) => [...row]);
  const plan = dayplan(ofDay, 8 / 24).slice(1);
  expect(looks?.lines.map(({ label, talent }) => [label, talent])).toEqual(
    plan.map((line) => [String(line[0]), line[1]]),
  );
  expect(
    looks?.lines.map(({ times }) => [
      times?.changeFrom,
      times?.readyBy,
      times?.shootFrom,
      times?.shootUntil,
      times?.waitsFor,
      times?.minutesSpare,
    ]),
  ).toEqual(plan.map((line) => line.slice(2)));
  expect(looks?.minutesSpareAtWrap).toBe(dayfit(ofDay, 8 / 24, 10 / 24));
  // By hand: Jonas 08:00 to 08:20 in the chair, ready 08:32, shot until 08:57; Mirela 08:20 to 09:05, ready 09:20, shot until 09:50.
  expect(looks?.minutesSpareAtWrap).toBe(10);
});

test("each look goes to its own cell, and the call to the cell that holds it", async () => {
  const looks = looksToday(await readSheets(workbook), DAY1, null, new Map());
  expect(looks?.lines.map(({ label, at }) => [label, at.row])).toEqual([
    ["2", 2],
    ["1", 1],
  ]);
  expect(looks?.callPlace?.at).toEqual({ sheetId: "s1", row: 1, column: 1 });
});

test("without a call in the workbook the looks stand in order without times, until one is typed into the pane", async () => {
  const read = await readSheets(workbook.slice(0, 1));
  const untimed = looksToday(read, DAY1, null, new Map());
  expect(untimed?.lines.map(({ label, times }) => [label, times])).toEqual([
    ["2", null],
    ["1", null],
  ]);
  expect(looksToday(read, DAY1, null, new Map([[DAY1, 0.5]]))?.lines[0]?.times?.changeFrom).toBe(0.5);
});

test("a look that cannot be read gives one sentence that names it", async () => {
  const looks = looksToday(
    await readSheets([{ name: "Looks", rows: [headings, [7, 1, DAY1, "Teo", "Quay", "0:15", 0, 30]] }]),
    DAY1,
    null,
    new Map(),
  );
  expect(looks?.lines).toEqual([]);
  expect(looks?.sentence).toContain("look 7");
});

test("a workbook without looks has nothing to say of them", async () => {
  expect(looksToday(await readSheets([{ name: "Sheet1", rows: [["hello"]] }]), DAY1, null, new Map())).toBeNull();
});
