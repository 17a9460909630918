import fc from "fast-check";
import type { Problem } from "../../../src/domain/problem";
import { jobMoney } from "../../../src/domain/value/jobMoney";
import type { ReceiptRow } from "../../../src/domain/value/receiptRow";
import type { RentalRow } from "../../../src/domain/value/rentalRow";
import type { RentalRows } from "../../../src/domain/value/rentalRows";
import { pieceRowOf } from "../loans/pieceRowOf";
import { receiptRowsOf } from "./receiptRowsOf";

const unread: Problem = { reason: "error-in-cell", facts: { argument: "Amount, row 2", given: "#N/A" } };
const lower = (name: string): string => name.toLowerCase();

interface Rental extends Partial<Omit<RentalRow, "piece">> {
  readonly piece?: Parameters<typeof pieceRowOf>[0];
}

function rentalsOf(rows: readonly Rental[], hasCurrencies = false): RentalRows {
  const filled = rows.map(({ piece, ...fields }, index) => ({
    job: null,
    currency: null,
    rentalFee: null,
    deposit: null,
    ...fields,
    piece: pieceRowOf({ row: index + 1, out: 1, ...piece }),
  }));
  return { count: filled.length, at: (index) => filled[index]!, hasCurrencies };
}

function rowsOf(receipts: readonly Partial<ReceiptRow>[], rentals: readonly Rental[] = []) {
  return jobMoney([receiptRowsOf(receipts)], [rentalsOf(rentals)], lower).rows;
}

test("adds up receipts, rental and deposits of each job, exact to the cent", () => {
  const receipts = [
    { job: "Lumen", amount: 0.1, kept: 0.05 },
    { job: "LUMEN", amount: 0.2, amountRefunded: 0.2 },
    { job: "Tide", amount: 40, kept: true },
  ];
  const rentals = [
    { job: "Tide", rentalFee: 25.5, deposit: 100 },
    { job: "lumen", rentalFee: 60 },
  ];
  const { headings, formats, rows } = jobMoney([receiptRowsOf(receipts)], [rentalsOf(rentals)], lower);
  expect(headings).toEqual(["Job", "Spent", "Kept", "Refunded", "To come back", "Rental", "Deposits held"]);
  expect(formats).toEqual(["as is", ...Array<string>(6).fill("money")]);
  expect(rows).toEqual([
    ["Lumen", 0.3, 0.05, 0.2, 0.05, 60, 0],
    ["Tide", 40, 40, 0, 0, 25.5, 100],
  ]);
});

test("jobs stand in the order first seen, rows without a job last, rows without an amount in none", () => {
  const receipts = [
    { amount: 5 },
    { job: "B", amount: 1, row: 4 },
    { job: "A", amount: 1, row: 3 },
    { job: "C", kept: true },
  ];
  expect(rowsOf(receipts, [{ job: "C" }]).map((row) => row[0])).toEqual(["A", "B", "(no job)"]);
});

test("a deposit is held until the whole row is back or settled", () => {
  const held = (piece: Rental["piece"]) => rowsOf([], [{ job: "A", deposit: 10, piece }])[0]![6];
  expect(held({})).toBe(10);
  expect(held({ out: null })).toBe(0);
  expect(held({ back: 90 })).toBe(0);
  expect(held({ back: 90, quantity: 3, quantityBack: 2 })).toBe(10);
  expect(held({ settled: true })).toBe(0);
  expect(held({ back: unread })).toBe(unread);
});

test("a cell that cannot be read spoils its job's figures, and no other job's", () => {
  const receipts = [
    { job: "A", amount: unread },
    { job: "A", amount: 5 },
    { job: "B", amount: 5 },
  ];
  expect(rowsOf(receipts)).toEqual([
    ["A", unread, 0, 0, unread, 0, 0],
    ["B", 5, 0, 0, 5, 0, 0],
  ]);
  expect(rowsOf([{ job: unread, amount: 5 }])).toEqual([[unread, 5, 0, 0, 5, 0, 0]]);
});

test("currencies are kept apart where there are several, and not shown where there is one", () => {
  const euros = [{ job: "A", amount: 5, currency: "EUR" }];
  const pounds = [{ job: "A", rentalFee: 7, currency: "GBP" }];
  const apart = jobMoney([receiptRowsOf(euros)], [rentalsOf(pounds)], lower);
  expect(apart.headings.at(-1)).toBe("Currency");
  expect(apart.rows).toEqual([
    ["A", 5, 0, 0, 5, 0, 0, "EUR"],
    ["A", 0, 0, 0, 0, 7, 0, "GBP"],
  ]);
  // The receipts name no currency, the rentals one: it is that of all.
  expect(jobMoney([receiptRowsOf([{ job: "A", amount: 5 }])], [rentalsOf(pounds)], lower).rows).toEqual([
    ["A", 5, 0, 0, 5, 7, 0],
  ]);
});

test("the sums of all jobs are the sums of all rows, in whatever order the rows stand", () => {
  const cents = fc.option(fc.integer({ min: 1, max: 100_000 }).map((amount) => amount / 100));
  const receipt = fc.record({ job: fc.option(fc.constantFrom("A", "a", "B")), amount: cents, amountRefunded: cents });
  fc.assert(
    fc.property(fc.array(receipt, { maxLength: 20 }), (receipts) => {
      const sumOf = (field: "amount" | "amountRefunded") =>
        receipts.reduce((sum, row) => sum + Math.round((row[field] ?? 0) * 100), 0);
      const rows = rowsOf(receipts);
      const added = (place: number) => rows.reduce((sum, row) => sum + Math.round((row[place] as number) * 100), 0);
      expect([added(1), added(3)]).toEqual([sumOf("amount"), sumOf("amountRefunded")]);
      const sorted = (all: typeof rows) => [...all].map((row) => [lower(row[0] as string), ...row.slice(1)]).sort();
      expect(sorted(rowsOf([...receipts].reverse()))).toEqual(sorted(rows));
    }),
  );
});
