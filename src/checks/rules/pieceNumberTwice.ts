import { cellName } from "../../sheet/cellName";
import { isPieceNumber } from "../../sheet/isPieceNumber";
import { nameKey } from "../../sheet/nameKey";
import { readDone } from "../../sheet/readDone";
import { cellIn } from "../cellIn";
import type { CheckedRow } from "../checkedRow";
import { dayIn } from "../dayIn";
import { defineRule } from "../defineRule";
import { positionIn } from "../positionIn";
import { textIn } from "../textIn";

/** A number on more rows than this is no number; each row is compared with so many before it. */
const MOST_COMPARED = 10;

/** A piece borrowed a second time has a second row: right where the first row is back, or settled, by the day of the second. */
export const pieceNumberTwice = defineRule({
  id: "pieceNumberTwice",
  about: "Two rows with the same piece number that are out at the same time.",
  why: "One piece is counted twice, or two pieces cannot be told apart when they are counted back.",
  severity: "warning",
  fixable: false,
  scope: "table",
  tables: ["pieces"],
  reads: { pieces: ["piece", "job", "out", "back", "settled"] },
  needs: ["piece"],
  messages: {
    twice:
      "{{piece}} already stands in {{cell}}. Give each piece a number of its own, or delete the row that is twice.",
  },
  check(table, report) {
    const rowsOf = new Map<string, CheckedRow[]>();
    for (const index of table.dataRows) {
      const row = { table, row: index };
      const piece = textIn(row, "piece");
      if (piece === null || !isPieceNumber(piece)) continue;
      // Each job numbers its pieces anew.
      const key = `${nameKey(textIn(row, "job") ?? "")}|${piece.toLowerCase()}`;
      const rows = rowsOf.get(key);
      if (rows === undefined) {
        rowsOf.set(key, [row]);
        continue;
      }
      const earlier = rows.slice(-MOST_COMPARED).find((other) => areTogether(other, row));
      rows.push(row);
      if (earlier === undefined) continue;
      const at = positionIn(earlier, "piece");
      report({ row, field: "piece", messageId: "twice", data: { piece, cell: cellName(at.row, at.column) } });
    }
  },
});

function areTogether(one: CheckedRow, other: CheckedRow): boolean {
  return !(isOverBy(one, other) || isOverBy(other, one));
}

function isOverBy(row: CheckedRow, later: CheckedRow): boolean {
  const laterOut = dayIn(later, "out");
  const back = dayIn(row, "back");
  if (readDone(cellIn(row, "settled"), "") === true) return true;
  return back !== null && (laterOut === null || back <= laterOut);
}
