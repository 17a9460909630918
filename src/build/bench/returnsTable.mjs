import { piecesTable } from "./piecesTable.mjs";

/** The pieces table with conditions in place of its blank last columns, and some pieces that came back short or damaged. */
export function returnsTable(rowCount, columnCount) {
  const [headings, ...rows] = piecesTable(rowCount, columnCount);
  const place = (heading) => headings.indexOf(heading);
  const [back, quantity, quantityBack, out, condition] = ["Back", "Quantity", "Quantity back", "Note", "Photo"].map(
    place,
  );
  headings[out] = "Condition out";
  headings[condition] = "Condition back";
  rows.forEach((row, index) => {
    row[out] = "good";
    if (row[back] === null) return;
    row[condition] = index % 50 === 0 ? "stain at hem" : "Good";
    if (row[quantity] !== null && index % 3 === 0) row[quantityBack] = 1;
  });
  return JSON.parse(JSON.stringify([headings, ...rows]));
}
