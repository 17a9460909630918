import type { Problem } from "../../../src/domain/problem";
import { openRefunds } from "../../../src/domain/value/openRefunds";
import type { ReceiptRow } from "../../../src/domain/value/receiptRow";
import { receiptRowsOf } from "./receiptRowsOf";

const days = (count: number) => ({ kind: "days", count, from: "out" }) as const;
const unread = (argument: string): Problem => ({ reason: "error-in-cell", facts: { argument, given: "#N/A" } });

function openOn(asOf: number, rows: readonly Partial<ReceiptRow>[]) {
  return openRefunds(receiptRowsOf(rows), asOf).rows;
}

test("is the receipts with money to come back, soonest first, those of one day in sheet order", () => {
  const rows = [
    { shop: "A", bought: 90, terms: days(30), amount: 50 },
    { shop: "B", bought: 95, terms: days(14), amount: 90.1, kept: 30.05 },
    { shop: "C", bought: 92, terms: days(28), amount: 70, amountRefunded: 70 },
    { shop: "D", bought: 92, terms: days(28), amount: 70 },
    { shop: "E", bought: 92, terms: days(28), amount: 70, kept: true },
  ];
  expect(openOn(100, rows)).toEqual([
    ["B", 109, 9, 60.05],
    ["A", 120, 20, 50],
    ["D", 120, 20, 70],
  ]);
});

test("a window that has ended stays, first, with days below 0", () => {
  const rows = [
    { shop: "A", bought: 99, terms: days(1), amount: 50 },
    { shop: "B", bought: 80, terms: days(14), amount: 20 },
  ];
  expect(openOn(100, rows)).toEqual([
    ["B", 94, -6, 20],
    ["A", 100, 0, 50],
  ]);
});

test("receipts of which the day is not known come last", () => {
  const terms = unread("Terms, row 3");
  const rows = [
    { shop: "A", bought: 99, amount: 50 },
    { shop: "B", bought: 99, terms, amount: 20 },
    { shop: "C", bought: 99, terms: days(30), amount: 10 },
    { shop: null, bought: null, terms: days(30), amount: 5 },
  ];
  expect(openOn(100, rows)).toEqual([
    ["C", 129, 29, 10],
    ["A", null, null, 50],
    ["B", terms, terms, 20],
    [null, null, null, 5],
  ]);
});

test("an amount that cannot be read leaves its problem where the amount would stand", () => {
  const amount = unread("Amount, row 2");
  expect(openOn(100, [{ shop: "A", bought: 99, terms: days(30), amount }])).toEqual([["A", 129, 29, amount]]);
});

test("a receipt dated after the day is not there yet", () => {
  expect(openOn(100, [{ shop: "A", bought: 101, terms: days(30), amount: 5 }])).toEqual([]);
});

test("a column of currencies stands last, and only where the sheet has them", () => {
  const rows = [{ shop: "A", bought: 99, terms: days(30), amount: 5, currency: "EUR" }];
  const without = openRefunds(receiptRowsOf(rows), 100);
  expect([without.headings, without.formats]).toEqual([
    ["Shop", "Refund by", "Days left", "To come back"],
    ["as is", "date", "as is", "money"],
  ]);
  const apart = openRefunds(receiptRowsOf(rows, true), 100);
  expect([apart.headings.at(-1), apart.formats.length, apart.rows[0]!.at(-1)]).toEqual(["Currency", 5, "EUR"]);
});
