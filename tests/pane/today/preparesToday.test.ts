import { fittingsToday } from "../../../src/pane/today/fittingsToday";
import { pieceTables } from "../../../src/pane/today/pieceTables";
import { preparesToday } from "../../../src/pane/today/preparesToday";
import { sendsToday } from "../../../src/pane/today/sendsToday";
import type { Cell } from "../../../src/sheet/cell";
import { readSheets } from "../readSheets";

// Thursday 2026-03-05.
const ASOF = 46086;
const headings = ["Piece", "Kind", "Lender", "Out", "Due", "Back", "Alteration", "Alteration undone", "Tape off"];

async function readOf(rows: readonly (readonly Cell[])[], head: readonly string[] = headings) {
  const read = await readSheets([
    { name: "Loans", rows: [head, ...rows] },
    {
      name: "Lenders",
      rows: [
        ["Lender", "Terms", "Courier days"],
        ["By courier", "7 days", 3],
      ],
    },
  ]);
  return { read, pieces: pieceTables(read.tables) };
}

async function preparesOf(rows: readonly (readonly Cell[])[], head?: readonly string[]) {
  const { read, pieces } = await readOf(rows, head);
  return preparesToday(pieces, sendsToday(pieces, read, ASOF), ASOF);
}

test("what is late or due within three days and is not as it came is to be undone, the first to leave first", async () => {
  const lines = await preparesOf([
    ["a", "dress", "Ado", ASOF - 9, ASOF + 3, null, "hem up", null, null],
    ["b", "shoes", "Ado", ASOF - 9, ASOF - 1, null, null, null, null],
    ["c", "boots", "Ado", ASOF - 9, ASOF + 1, null, "x", "no", "tbc"],
    ["d", "dress", "Ado", ASOF - 9, ASOF + 4, null, "hem up", null, null],
  ]);
  expect(lines?.map(({ name, goes, tasks, at }) => [name, goes, tasks, at.column])).toEqual([
    ["b", ASOF - 1, ["take the tape off the soles"], 8],
    ["c", ASOF + 1, ["undo the alteration", "take the tape off the soles"], 7],
    ["a", ASOF + 3, ["undo the alteration (hem up)"], 7],
  ]);
});

test("what goes by courier counts from the last day to send it, and from the day it is due once that is past", async () => {
  // Due Wednesday the 11th: three working days before is Friday the 6th.
  const lines = await preparesOf([["a", "dress", "By courier", ASOF - 9, ASOF + 6, null, "hem up", null, null]]);
  expect(lines).toMatchObject([{ name: "a", goes: ASOF + 1, isSent: true }]);
  const tooLate = await preparesOf([["a", "dress", "By courier", ASOF - 9, ASOF + 1, null, "hem up", null, null]]);
  expect(tooLate).toMatchObject([{ name: "a", goes: ASOF + 1, isSent: false }]);
});

test("what is undone, needs nothing, is back or never was altered stands in no list", async () => {
  const lines = await preparesOf([
    ["a", "dress", "Ado", ASOF - 9, ASOF, null, "hem up", ASOF - 1, null],
    ["b", "shoes", "Ado", ASOF - 9, ASOF, null, null, null, "n/a"],
    ["c", "dress", "Ado", ASOF - 9, ASOF, ASOF - 1, "hem up", null, null],
    ["d", "dress", "Ado", ASOF - 9, ASOF, null, "no", null, null],
    ["e", "dress", "Ado", null, ASOF, null, "hem up", null, null],
  ]);
  expect(lines).toEqual([]);
});

test("where nobody keeps alterations or tape there is nothing to say", async () => {
  expect(await preparesOf([["a", "shoes", "Ado", ASOF - 9, ASOF, null]], headings.slice(0, 6))).toBeNull();
});

test("fittings of the day and the three days after stand by day, and words in that column are none", async () => {
  const head = ["Piece", "Lender", "Out", "Due", "Look", "Talent", "Fitting"];
  const { pieces } = await readOf(
    [
      ["a", "Ado", ASOF, ASOF + 9, 4, "Mina", ASOF + 3.5],
      ["b", "Ado", ASOF, ASOF + 9, 5, "Teo", ASOF],
      ["c", "Ado", ASOF, ASOF + 9, 5, "Teo", ASOF - 1],
      ["d", "Ado", ASOF, ASOF + 9, 5, "Teo", ASOF + 4],
      ["e", "Ado", ASOF, ASOF + 9, 5, "Teo", "done"],
    ],
    head,
  );
  expect(fittingsToday(pieces, ASOF)?.map(({ name, day, talent, look }) => [name, day, talent, look])).toEqual([
    ["b", ASOF, "Teo", "5"],
    ["a", ASOF + 3, "Mina", "4"],
  ]);
  expect(fittingsToday((await readOf([], headings)).pieces, ASOF)).toBeNull();
});
