import { lendertotals } from "../../../src/functions/bindings/lendertotals";
import { HostError } from "../HostError";
import { sayResult } from "../sayResult";
import { standInHost } from "../standInHost";

let takeAway: () => void;
beforeAll(() => (takeAway = standInHost("Double")));
afterAll(() => takeAway());

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
const asOf = "2026-03-09";

// A sheet as typed in a hurry: a title above, blank and repeated rows, three spellings, dates as text, signs, a total below.
const messy = [
  ["Autumn story", null, null, null, null, null, null, null],
  [null, null, null, null, null, null, null, null],
  ["Lender", "Note", "Ins. value", "Qty", "Date out", "Return due", "Date back", "Settled"],
  ["Maison Orla", "", "£1,250.00", null, 46083, "2026-03-05", null, null],
  ["maison  orla", "", 99.9, 2, "2 Mar 2026", 46090, null, null],
  [null, null, null, null, null, null, null, null],
  ["Lender", "Note", "Ins. value", "Qty", "Date out", "Return due", "Date back", "Settled"],
  ["MAISON-ORLA", "", 0.1, 3, 46083, 46088, 46089, null],
  ["Rail & Co", "lost on set", 400, 1, 46083, 46085, null, "lost"],
  ["Rail & Co", "", null, 1, 46083, null, null, ""],
  [null, "whose is this?", 10, 1, 46083, 46093, null, null],
  ["Total", null, 1760, null, null, null, null, null],
];

test("reads a sheet as typed in a hurry", () => {
  // By hand. Maison Orla: 1250 + 2 x 99.90 = 1449.80; the third row came back. Rail & Co: the lost piece is out no more.
  expect(sayResult(lendertotals(messy, asOf))).toEqual([
    HEADINGS,
    ["Maison Orla", 3, 1449.8, "2026-03-09", 1, 1250, 4, 0, 0],
    ["Rail & Co", 1, 0, "", 0, 0, 0, 1, 1],
    ["(no lender)", 1, 10, "2026-03-12", 0, 0, 0, 0, 0],
  ]);
});

test("the date of Next due carries a date format and the money two decimals", () => {
  const [, orla] = lendertotals(messy, asOf) as unknown[][];
  expect(orla![3]).toEqual({ type: "Double", basicValue: 46090, numberFormat: "yyyy-mm-dd" });
  expect(orla![2]).toEqual({ type: "Double", basicValue: 1449.8, numberFormat: "#,##0.00" });
});

test("a Currency column gives each lender a row for each currency, and Currency stands last", () => {
  const rows = [
    ["Lender", "Value", "Currency", "Out", "Due", "Back"],
    ["Orla", 100, "GBP", 46083, 46093, ""],
    ["Orla", 100, "EUR", 46083, 46093, ""],
    ["Orla", 100, "€", 46083, 46093, ""],
  ];
  expect(sayResult(lendertotals(rows, asOf))).toEqual([
    [...HEADINGS, "Currency"],
    ["Orla", 2, 200, "2026-03-12", 0, 0, 0, 0, 0, "EUR"],
    ["Orla", 1, 100, "2026-03-12", 0, 0, 0, 0, 0, "GBP"],
  ]);
});

test("Total value is the row's own, and part of it counts when part is back", () => {
  const rows = [
    ["Lender", "Quantity", "Total value", "Out", "Due", "Back", "Quantity back"],
    ["Orla", 3, 300, 46083, 46085, 46086, 1],
  ];
  expect(sayResult(lendertotals(rows, asOf))).toEqual([HEADINGS, ["Orla", 2, 200, "", 2, 200, 5, 0, 0]]);
});

test("an error in one cell stands in the figures that depend on it, and the other lenders survive", () => {
  const rows = [
    ["Lender", "Value", "Out", "Due", "Back"],
    ["Orla", { type: "Error", basicValue: "#REF!" }, 46083, 46093, ""],
    ["Ada", 50, 46083, "soon", ""],
    ["Bo", 50, 46083, 46093, ""],
  ];
  const [, ...lenders] = lendertotals(rows, asOf) as unknown[][];
  expect(lenders.map((row) => row.map((cell) => (cell instanceof HostError ? cell.message : sayResult(cell))))).toEqual(
    [
      [
        "Ada",
        1,
        50,
        ...Array(4).fill('Due, row 3: "soon" is not a date; type it like 2026-03-05 or 5 Mar 2026.'),
        0,
        0,
      ],
      ["Bo", 1, 50, "2026-03-12", 0, 0, 0, 0, 0],
      ["Orla", 1, "Value, row 2 holds the error #REF!; mend that cell first.", "2026-03-12", 0, 0, 0, 0, 0],
    ],
  );
});

test("headings of one's own are understood through the columns argument", () => {
  const rows = [
    ["From", "Ins. amt", "Out", "Due", "Back"],
    ["Orla", 100, 46083, 46093, ""],
  ];
  expect(sayResult(lendertotals(rows, asOf, "value=Ins. amt; lender=From"))).toEqual([
    HEADINGS,
    ["Orla", 1, 100, "2026-03-12", 0, 0, 0, 0, 0],
  ]);
});

test("a missing column is named, with how to map it", () => {
  const rows = [
    ["Lender", "Ins. amt", "Out", "Due", "Back"],
    ["Orla", 100, 46083, 46093, ""],
  ];
  expect(() => lendertotals(rows, asOf)).toThrow(
    expect.objectContaining({ code: "#VALUE!", message: expect.stringMatching(/Value.*value=/) }),
  );
});

test("headings alone, and rows with nothing out, give the heading row alone", () => {
  const headings = ["Lender", "Value", "Out", "Due", "Back"];
  expect(lendertotals([headings], asOf)).toEqual([HEADINGS]);
  expect(lendertotals([headings, ["Orla", 5, 46083, 46093, 46084]], asOf)).toEqual([HEADINGS]);
});
