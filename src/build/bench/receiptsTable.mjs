import { seeded } from "./seeded.mjs";

const FIRST_DAY = 46_023;

/**
 * A receipts table with its heading row, as a host sends it: parsed from JSON, so that equal texts are not the same text.
 * Nine in ten are settled, as after a season; further columns, as many as asked for, hold notes. The numbers are seeded.
 */
export function receiptsTable(rowCount, columnCount) {
  const random = seeded(11);
  const upTo = (bound) => Math.floor(random() * bound);
  const columns = [
    ["Shop", () => `Shop ${upTo(40)}`],
    ["Job", () => `Job ${upTo(12)}`],
    ["Bought", () => FIRST_DAY + upTo(70)],
    ["Amount", () => upTo(50_000) / 100],
    ["Kept", () => (upTo(4) === 0 ? "yes" : null)],
    ["Terms", () => `${14 * (1 + upTo(4))} days`],
    ["Refunded", () => (upTo(8) !== 0 ? FIRST_DAY + 70 + upTo(7) : null)],
    ["Amount refunded", () => null],
    ["Currency", () => "GBP"],
    ...Array.from({ length: Math.max(0, columnCount - 9) }, (_, place) => [`Remark ${place}`, (row) => `Note ${row}`]),
  ].slice(0, columnCount);
  const rows = Array.from({ length: rowCount }, (_, row) => columns.map(([, cell]) => cell(row)));
  return JSON.parse(JSON.stringify([columns.map(([heading]) => heading), ...rows]));
}
