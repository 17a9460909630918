import type { FakeSheet } from "../pane/fakePort";

/** Thursday 2026-03-05. */
export const TODAY = 46086;

const HEADINGS = ["Piece", "Description", "Lender", "Out", "Due", "Back", "Quantity", "Value", "Currency", "Look"];

/** A small workbook typed in a hurry: late and due pieces, dates as text, two currencies, lenders and a day of looks. */
export const messySheets: readonly FakeSheet[] = [
  {
    name: "Loans",
    rows: [
      HEADINGS,
      ["1", "wool coat", "Ado & Fils", TODAY - 9, TODAY - 2, null, 1, 1250, "GBP", 1],
      ["2", "silk slip", "Ado & Fils", TODAY - 9, "9 Mar 2026", null, 1, 400, "GBP", 1],
      ["3", "felt hat", "Maison Orla", TODAY - 9, "10 Mar 2026", null, 2, 90, "EUR", 2],
      ["4", "brogues", "Maison Orla", TODAY - 9, TODAY, null, 1, 310, "EUR", 2],
      ["5", "scarf", "Maison Orla", TODAY - 9, "03/04/26", null, 1, 60, "EUR", 1],
      ["6", "gloves", "Ado & Fils", TODAY - 9, TODAY + 6, null, 1, 45, "GBP", 2],
    ],
  },
  {
    name: "Lenders",
    rows: [
      ["Lender", "Terms", "Courier days"],
      ["Ado & Fils", "7 days", 1],
      ["Maison Orla", "5 working days", 2],
    ],
  },
  {
    name: "Looks",
    rows: [
      ["Look", "Order", "Date", "Talent", "Change", "Hair and make-up", "Shooting"],
      [1, 1, TODAY, "Mina", 15, 20, 30],
      [2, 2, TODAY, "Teo", 10, 10, 25],
    ],
  },
  {
    name: "Day",
    rows: [
      ["Date", TODAY],
      ["Call", "08:00"],
      ["Wrap", "18:00"],
    ],
  },
];

/** So many pieces, each with a date kept as text. */
export function manySheets(count: number): readonly FakeSheet[] {
  const rows = Array.from({ length: count }, (_, index) => [
    String(index + 1),
    "wool coat",
    "Ado & Fils",
    TODAY - 9,
    "9 Mar 2026",
    null,
    1,
    100,
    "GBP",
    null,
  ]);
  return [{ name: "Loans", rows: [HEADINGS, ...rows] }];
}
