import fc from "fast-check";
import { sendby } from "../../../src/functions/bindings/sendby";
import { pieceTables } from "../../../src/pane/today/pieceTables";
import { sendsToday } from "../../../src/pane/today/sendsToday";
import type { Cell } from "../../../src/sheet/cell";
import { readSheets } from "../readSheets";

// Thursday 2026-03-05.
const ASOF = 46086;
const pieces = ["Piece", "Lender", "Out", "Due", "Back", "Value"];
const lenders = ["Lender", "Terms", "Courier days"];

async function sendsOf(rows: readonly (readonly Cell[])[], couriers: readonly (readonly Cell[])[]) {
  const read = await readSheets([
    { name: "Loans", rows: [pieces, ...rows] },
    { name: "Lenders", rows: [lenders, ...couriers] },
  ]);
  return sendsToday(pieceTables(read.tables), read, ASOF);
}

test("a piece is sent its lender's courier days before it is due, over the weekend, soonest first", async () => {
  const sends = await sendsOf(
    [
      ["a", "Ado", ASOF - 9, ASOF + 4, null, 100],
      ["b", "orla", ASOF - 9, ASOF + 4, null, 100],
      ["c", "No Courier", ASOF - 9, ASOF + 4, null, 100],
      ["d", "Ado", ASOF - 9, ASOF + 4, ASOF - 1, 100],
      ["e", "Ado", ASOF - 9, ASOF - 1, null, 100],
    ],
    [
      ["Ado", "7 days", 1],
      ["Orla", "7 days", 2],
      ["No Courier", "7 days", null],
    ],
  );
  // Due Monday 9 March: one working day before is Friday the 6th, two are Thursday the 5th.
  expect(sends.lines.map(({ name, sendBy }) => [name, sendBy])).toEqual([
    ["b", ASOF],
    ["a", ASOF + 1],
  ]);
});

test("the last day to send is what SENDBY gives for the due date and the courier days", async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.integer({ min: ASOF, max: ASOF + 40 }),
      fc.integer({ min: 1, max: 9 }),
      async (due, courierDays) => {
        const sends = await sendsOf([["a", "Ado", ASOF - 9, due, null, 100]], [["Ado", "7 days", courierDays]]);
        expect(sends.lines[0]?.sendBy).toBe(sendby(due, courierDays));
      },
    ),
  );
});
