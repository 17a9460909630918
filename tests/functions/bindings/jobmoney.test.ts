import { jobmoney } from "../../../src/functions/bindings/jobmoney";
import { sayResult } from "../sayResult";
import { standInHost } from "../standInHost";

let takeAway: () => void;
beforeAll(() => (takeAway = standInHost("Double")));
afterAll(() => takeAway());

const DAY = 46083;
const HEADINGS = ["Job", "Spent", "Kept", "Refunded", "To come back", "Rental", "Deposits held"];
const receipts = [
  ["Job", "Shop", "Bought", "Amount", "Kept", "Amount refunded"],
  ["Lumen", "Kessel", DAY, 250, 50, 120],
  ["", "Odeon", DAY, 90, "", ""],
];
const pieces = [
  ["Item no.", "Project", "Rental fee", "Deposit", "Date out", "Date back"],
  ["P1", "LUMEN", 60, 200, DAY, ""],
  ["P2", "Tide", "£25.50", 100, DAY, DAY + 3],
  ["P3", "Tide", "", "", DAY, ""],
];

test("receipts and pieces one below the other come to one row a job", () => {
  const expected = [
    HEADINGS,
    ["Lumen", 250, 50, 120, 80, 60, 200],
    ["Tide", 0, 0, 0, 0, 25.5, 0],
    ["(no job)", 90, 0, 0, 90, 0, 0],
  ];
  expect(sayResult(jobmoney([...receipts, ...pieces]))).toEqual(expected);
  expect(sayResult(jobmoney([...receipts, ["", "", "", "", "", ""], ...pieces]))).toEqual(expected);
});

test("the pieces first come to the same money", () => {
  expect(sayResult(jobmoney([...pieces, ...receipts]))).toEqual([
    HEADINGS,
    ["LUMEN", 250, 50, 120, 80, 60, 200],
    ["Tide", 0, 0, 0, 0, 25.5, 0],
    ["(no job)", 90, 0, 0, 90, 0, 0],
  ]);
});

test("errors name the row in the whole range", () => {
  const [, lumen] = jobmoney([...receipts, ...pieces.slice(0, 1), ["P1", "Lumen", -60, "", DAY, ""]]) as unknown[][];
  expect((lumen![5] as Error).message).toBe('Rental fee, row 5: "-60" cannot be used; give an amount of 0 or more.');
  expect(sayResult([lumen!.slice(0, 5)])).toEqual([["Lumen", 250, 50, 120, 80]]);
});

test("nothing in the tables is the heading row alone", () => {
  expect(jobmoney([receipts[0]!])).toEqual([HEADINGS]);
});
