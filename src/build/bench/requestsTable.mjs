import { seeded } from "./seeded.mjs";

const FIRST_DAY = 46_023;
const ANSWERS = ["yes", "yes", "no", "no", "part", "waiting", null];

/**
 * A requests table with its heading row, as a host sends it: parsed from JSON, so that equal texts are not the same text.
 * Most requests are settled, about a tenth is to be chased on day 46,100; further columns, as many as asked for, hold notes.
 */
export function requestsTable(rowCount, columnCount) {
  const random = seeded(13);
  const upTo = (bound) => Math.floor(random() * bound);
  const columns = [
    ["Lender", () => `Press office ${upTo(200)}`],
    ["Contact", () => "Ines"],
    ["Asked", () => FIRST_DAY + upTo(75)],
    ["Wanted", (row) => `Two coats and a dress for job ${row}`],
    ["Needed by", () => FIRST_DAY + 70 + upTo(60)],
    ["Answer", () => ANSWERS[upTo(ANSWERS.length)]],
    ["Answered", () => FIRST_DAY + 75],
    ["Collect", () => "Mon 10:00, back door"],
    ["Collected", () => (upTo(4) === 0 ? null : FIRST_DAY + 80)],
    ...Array.from({ length: Math.max(0, columnCount - 9) }, (_, place) => [`Remark ${place}`, (row) => `Note ${row}`]),
  ].slice(0, columnCount);
  const rows = Array.from({ length: rowCount }, (_, row) => columns.map(([, cell]) => cell(row)));
  return JSON.parse(JSON.stringify([columns.map(([heading]) => heading), ...rows]));
}
