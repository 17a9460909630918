import { sayProblem } from "../../src/domain/wording";
import type { ReceiptRow } from "../../src/domain/value/receiptRow";
import { readReceipts } from "../../src/sheet/readReceipts";
import { readTable } from "../../src/sheet/readTable";
import { isProblem } from "../../src/domain/isProblem";

const HEADINGS = ["Shop", "Job", "Bought", "Amount", "Kept", "Terms", "Refunded", "Amount refunded"];

function receiptsOf(rows: readonly (readonly unknown[])[], headings: readonly unknown[] = HEADINGS) {
  const table = readTable({ cells: [headings, ...rows], kind: "receipts", needs: [] });
  if (!table.ok) throw new Error(sayProblem(table.problem));
  return readReceipts(table.value);
}

function shown(receipt: ReceiptRow): Record<string, unknown> {
  const fields = ["row", "shop", "job", "bought", "amount", "kept", "terms", "refunded", "amountRefunded", "currency"];
  const entries = fields.map((field) => [field, receipt[field as keyof ReceiptRow]] as const);
  return Object.fromEntries(entries.map(([field, value]) => [field, isProblem(value) ? sayProblem(value) : value]));
}

test("reads a row as typed", () => {
  const rows = receiptsOf([[" Kessel ", "Lumen", "2026-03-02", "£1,250.00", "£50", "28 days", 46090.5, 100]]);
  expect(rows.count).toBe(1);
  expect(shown(rows.at(0))).toEqual({
    row: 1,
    shop: "Kessel",
    job: "Lumen",
    bought: 46083,
    amount: 1250,
    kept: 50,
    terms: { kind: "days", count: 28, from: "out" },
    refunded: 46090,
    amountRefunded: 100,
    currency: "GBP",
  });
});

test("blank cells are null however a host sends them, and so are columns the sheet has not", () => {
  const blank = { row: 1, shop: "K", job: null, bought: null, amount: null, terms: null };
  const more = { refunded: null, amountRefunded: null, currency: null };
  for (const empty of [null, undefined, ""])
    expect(shown(receiptsOf([["K", ...Array<unknown>(7).fill(empty)]]).at(0))).toEqual({
      ...blank,
      ...more,
      kept: null,
    });
  // A 0 under Kept is an amount of 0, which is as good as nothing.
  expect(shown(receiptsOf([["K", 0, 0, 0, 0, 0, 0, 0]]).at(0))).toEqual({ ...blank, ...more, kept: 0 });
  expect(shown(receiptsOf([["K", 46083]], ["Shop", "Bought"]).at(0))).toMatchObject({ amount: null, kept: null });
});

test("kept and refunded may say yes or no", () => {
  const kept = (raw: unknown) => receiptsOf([["K", "", "", 5, raw, "", "", ""]]).at(0).kept;
  expect(["yes", "x", true, "no", "30%"].map(kept).map((value) => (isProblem(value) ? "problem" : value))).toEqual([
    true,
    true,
    true,
    false,
    "problem",
  ]);
  const refunded = (raw: unknown) => receiptsOf([["K", "", "", 5, "", "", raw, ""]]).at(0).refunded;
  expect(["yes", "no", "5 Mar 2026"].map(refunded)).toEqual([true, false, 46086]);
});

test("a cell that cannot be read is a problem that names its heading and row", () => {
  const rows = receiptsOf([
    ["K", "", "03/04/26", -5, "some", "soonish", 40, "a lot"],
    ["K", "", "", 5, "", "soonish", "", ""],
  ]);
  const first = shown(rows.at(0));
  expect(first["bought"]).toContain("Bought, row 2");
  expect(first["amount"]).toBe('Amount, row 2: "-5" cannot be used; give an amount of 0 or more.');
  expect(first["kept"]).toBe('Kept, row 2: "some" cannot be used; give yes, no or an amount of 0 or more.');
  expect(first["terms"]).toContain("Terms, row 2");
  expect(first["refunded"]).toContain("amounts belong under Amount refunded");
  expect(first["amountRefunded"]).toContain("Amount refunded, row 2");
  expect(shown(rows.at(1))["terms"]).toContain("Terms, row 3");
});

test("has currencies where amounts carry two signs or there is a column of them", () => {
  expect(receiptsOf([["K", "", "", "£5", "", "", "", ""]]).hasCurrencies).toBe(false);
  const two = receiptsOf([
    ["K", "", "", "£5", "", "", "", ""],
    ["K", "", "", "5 €", "", "", "", ""],
  ]);
  expect([two.hasCurrencies, two.at(0).currency, two.at(1).currency]).toEqual([true, "GBP", "EUR"]);
  expect(receiptsOf([["K", "eur"]], ["Shop", "Currency"]).hasCurrencies).toBe(true);
});
