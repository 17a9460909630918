import { lenderTotalsTable } from "../../../src/domain/loans/lenderTotalsTable";

const HEADINGS = [
  "Lender",
  "Pieces out",
  "Value out",
  "Next due",
  "Late pieces",
  "Late value",
  "Most days late",
  "No due date",
  "Unvalued",
];

test("the heading row stands alone when nothing is out", () => {
  expect(lenderTotalsTable([], false)).toEqual({ headings: HEADINGS, formats: expect.any(Array), rows: [] });
});

test("Currency stands last, where the sheet has currencies", () => {
  expect(lenderTotalsTable([], true).headings).toEqual([...HEADINGS, "Currency"]);
});

test("pieces with no lender are named so, and the next due day is shown as a date", () => {
  const figures = {
    piecesOut: 1,
    valueOut: 2,
    nextDue: 46090,
    latePieces: 0,
    lateValue: 0,
    mostDaysLate: 0,
    piecesWithoutDue: 0,
    piecesWithoutValue: 0,
  };
  const table = lenderTotalsTable([{ lender: null, currency: "GBP", ...figures }], true);
  expect(table.rows).toEqual([["(no lender)", 1, 2, 46090, 0, 0, 0, 0, 0, "GBP"]]);
  expect(table.formats[3]).toBe("date");
});
