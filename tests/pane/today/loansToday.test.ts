import fc from "fast-check";
import { laterows } from "../../../src/functions/bindings/laterows";
import { lendertotals } from "../../../src/functions/bindings/lendertotals";
import { loansToday } from "../../../src/pane/today/loansToday";
import { pieceTables } from "../../../src/pane/today/pieceTables";
import type { Cell } from "../../../src/sheet/cell";
import { readSheets } from "../readSheets";

const ASOF = 46086;
const headings = [
  "Piece",
  "Lender",
  "Out",
  "Due",
  "Back",
  "Quantity",
  "Quantity back",
  "Value",
  "Extended to",
  "Settled",
];

async function loansOf(rows: readonly (readonly Cell[])[]) {
  const read = await readSheets([{ name: "Loans", rows: [headings, ...rows] }]);
  return loansToday(pieceTables(read.tables), ASOF);
}
const names = (lines: readonly { readonly name: string }[]) => lines.map(({ name }) => name);

test("each piece that is out stands in one list: late, due on the day, or due later", async () => {
  const loans = await loansOf([
    ["a", "Ado", ASOF - 9, ASOF - 2, null, 1, null, 100, null, null],
    ["b", "Ado", ASOF - 9, ASOF, null, 1, null, 100, null, null],
    ["c", "Ado", ASOF - 9, ASOF + 3, null, 1, null, 100, null, null],
    ["d", "Ado", ASOF - 9, ASOF - 2, ASOF - 1, 1, null, 100, null, null],
    ["e", "Ado", ASOF + 1, ASOF + 3, null, 1, null, 100, null, null],
    ["f", "Ado", ASOF - 9, ASOF - 2, null, 1, null, 100, ASOF + 1, null],
    ["g", "Ado", ASOF - 9, ASOF - 2, null, 1, null, 100, null, "lost"],
    ["h", "Ado", ASOF - 9, null, null, 3, null, 100, null, null],
    ["i", "Ado", ASOF - 9, ASOF - 4, ASOF - 1, 3, 1, 50, null, null],
  ]);
  expect(names(loans.late)).toEqual(["i", "a"]);
  expect(loans.late[0]).toMatchObject({ daysLate: 4, quantity: 2, value: 100, lender: "Ado", due: ASOF - 4 });
  expect(names(loans.dueToday)).toEqual(["b"]);
  expect(names(loans.dueLater)).toEqual(["f", "c"]);
  expect(loans.piecesWithoutDue).toBe(3);
  expect(loans.untold).toEqual([]);
});

test("the button of a row goes to the day that counts: extended to where it is filled, else due", async () => {
  const loans = await loansOf([
    ["a", "Ado", ASOF - 9, ASOF - 2, null, 1, null, 100, null, null],
    ["f", "Ado", ASOF - 9, ASOF - 5, null, 1, null, 100, ASOF - 1, null],
  ]);
  expect(loans.late.map(({ at }) => at)).toEqual([
    { sheetId: "s0", row: 1, column: 3 },
    { sheetId: "s0", row: 2, column: 8 },
  ]);
});

test("a row that cannot be told stands apart with the sentence of its cell, in no other list", async () => {
  const loans = await loansOf([["a", "Ado", ASOF - 9, "03/04/26", null, 1, null, 100, null, null]]);
  expect([loans.late, loans.dueToday, loans.dueLater]).toEqual([[], [], []]);
  expect(loans.untold[0]).toMatchObject({ name: "a", at: { sheetId: "s0", row: 1, column: 3 } });
  expect(loans.untold[0]?.sentence).toContain("03/04/26");
});

const day = fc.integer({ min: ASOF - 6, max: ASOF + 6 });
const row = fc.tuple(
  fc.constantFrom("a", "b", "c", "d"),
  fc.constantFrom("Ado", "ado", "Orla", null),
  fc.option(day),
  fc.option(fc.oneof(day, fc.constant("soonish"))),
  fc.option(day),
  fc.constantFrom(1, 2, 3, null),
  fc.constantFrom(1, 0, null),
  fc.constantFrom(100, 99.5, null),
  fc.option(day, { freq: 5 }),
  fc.constantFrom(null, null, null, "lost"),
);

test("what is late, and for how long, is what LATEROWS gives", async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(row, { minLength: 1, maxLength: 12 }), async (rows) => {
      const cells = [headings, ...rows];
      const loans = await loansOf(rows);
      const spilled = laterows(cells, ASOF)
        .slice(1)
        .filter((line) => typeof line.at(-1) === "number");
      expect(loans.late.map(({ name, daysLate }) => [name, daysLate])).toEqual(
        spilled.map((line) => [line[0], line.at(-1)]),
      );
    }),
  );
});

test("pieces out, late and without a due day add up to what LENDERTOTALS gives", async () => {
  const readable = row.filter(([, , , due]) => due !== "soonish");
  await fc.assert(
    fc.asyncProperty(fc.array(readable, { minLength: 1, maxLength: 12 }), async (rows) => {
      const loans = await loansOf(rows);
      const totals = lendertotals([headings, ...rows], ASOF);
      const column = (name: string) => totals[0]?.indexOf(name) ?? -1;
      const sum = (name: string) => totals.slice(1).reduce((all, line) => all + Number(line[column(name)]), 0);
      expect(loans.piecesOut).toBe(sum("Pieces out"));
      expect(loans.late.reduce((all, { quantity }) => all + quantity, 0)).toBe(sum("Late pieces"));
      expect(loans.piecesWithoutDue).toBe(sum("No due date"));
    }),
  );
});
