import fc from "fast-check";
import { refunds } from "../../../src/functions/bindings/refunds";
import { refundsToday } from "../../../src/pane/today/refundsToday";
import type { Cell } from "../../../src/sheet/cell";
import { readSheets } from "../readSheets";

// Thursday 2026-03-05.
const ASOF = 46086;
const headings = ["Shop", "Bought", "Amount", "Kept", "Terms", "Refunded"];

async function refundsOf(rows: readonly (readonly Cell[])[], head: readonly string[] = headings) {
  const read = await readSheets([{ name: "Receipts", rows: [head, ...rows] }]);
  return refundsToday(read.tables, ASOF);
}

test("open receipts stand by the last day of each shop, what is refunded left out, and each knows its row", async () => {
  const lines = await refundsOf([
    ["Kessel", ASOF - 3, 250, null, "28 days", null],
    ["Odeon", ASOF - 10, 90, 30, "14 days", null],
    ["Kessel", ASOF - 3, 80, null, "28 days", ASOF - 1],
    ["Tull", ASOF - 20, 15, null, "14 days", null],
    ["Nowhere", ASOF - 3, 40, null, null, null],
  ]);
  expect(lines?.map(({ shop, daysLeft, toComeBack, at }) => [shop, daysLeft, toComeBack, at.row])).toEqual([
    ["Tull", -6, 15, 4],
    ["Odeon", 4, 60, 2],
    ["Kessel", 25, 250, 1],
    ["Nowhere", null, 40, 5],
  ]);
});

test("a cell that cannot be read leaves its sentence and the figures that stand without it", async () => {
  const lines = await refundsOf([["Kessel", ASOF - 3, "about 20", null, "28 days", null]]);
  expect(lines?.[0]).toMatchObject({ shop: "Kessel", toComeBack: null, daysLeft: 25 });
  expect(lines?.[0]?.sentence).toContain("about 20");
});

test("without the columns that REFUNDS needs there is nothing to say", async () => {
  expect(await refundsOf([["Kessel", ASOF - 3, 250, null]], headings.slice(0, 4))).toBeNull();
});

test("shop, last day, days left and money are those of REFUNDS, in its order", async () => {
  const row = fc.tuple(
    fc.constantFrom("Kessel", "Odeon"),
    fc.option(fc.integer({ min: ASOF - 40, max: ASOF + 4 })),
    fc.constantFrom(250, 99.95, null),
    fc.constantFrom(null, 20, "yes"),
    fc.constantFrom("28 days", "14 days", null),
    fc.constantFrom(null, null, "yes"),
  );
  await fc.assert(
    fc.asyncProperty(fc.array(row, { minLength: 1, maxLength: 10 }), async (rows) => {
      const lines = (await refundsOf(rows)) ?? [];
      const cells = lines.map(({ shop, refundBy, daysLeft, toComeBack }) =>
        [shop, refundBy, daysLeft, toComeBack].map((cell) => cell ?? ""),
      );
      const plain = (cell: unknown) =>
        typeof cell === "object" && cell !== null ? (cell as { basicValue: unknown }).basicValue : cell;
      expect(cells).toEqual(
        refunds([headings, ...rows], ASOF)
          .slice(1)
          .map((cell) => cell.map(plain)),
      );
    }),
  );
});
