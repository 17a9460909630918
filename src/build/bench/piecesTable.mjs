import { seeded } from "./seeded.mjs";

const FIRST_DAY = 46_023;
const KINDS = ["Coat", "Dress", "Shoes", "Belt", "Shirt"];

/**
 * A pieces table with its heading row, as a host sends it: parsed from JSON, so that equal texts are
 * not the same text. About half the pieces are back, a tenth is late; the numbers are seeded.
 */
export function piecesTable(rowCount, columnCount) {
  const random = seeded(7);
  const upTo = (bound) => Math.floor(random() * bound);
  const columns = [
    ["Piece", (row) => `P${row + 1}`],
    ["Description", (row) => `Piece number ${row + 1}, as described`],
    ["Kind", () => KINDS[upTo(KINDS.length)]],
    ["Lender", () => `Press office ${upTo(200)}`],
    ["Slip", () => `S-${upTo(5000)}`],
    ["Size", () => upTo(46)],
    ["Colour", () => "ecru"],
    ["Quantity", () => (upTo(10) === 0 ? 2 : null)],
    ["Value", () => (upTo(20) === 0 ? null : upTo(200_000) / 100)],
    ["Currency", () => "GBP"],
    ["Weight", () => upTo(3000) / 1000],
    ["Out", () => FIRST_DAY + upTo(60)],
    ["Due", () => FIRST_DAY + 70 + upTo(40)],
    ["Terms", () => "7 days"],
    ["Look", () => upTo(18) + 1],
    ["Talent", () => "Ines"],
    ["Back", () => (upTo(2) === 0 ? FIRST_DAY + 65 + upTo(12) : null)],
    ["Quantity back", () => null],
    ["Note", () => null],
    ["Photo", () => null],
  ].slice(0, columnCount);
  const rows = Array.from({ length: rowCount }, (_, row) => columns.map(([, cell]) => cell(row)));
  return JSON.parse(JSON.stringify([columns.map(([heading]) => heading), ...rows]));
}
