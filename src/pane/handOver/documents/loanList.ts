import { isoFromSerial } from "../../../domain/dates/isoFromSerial";
import { isProblem } from "../../../domain/isProblem";
import { loanState } from "../../../domain/loans/loanState";
import { returnDay } from "../../../domain/loans/returnDay";
import { usualWarningDays } from "../../../domain/loans/usualWarningDays";
import { amountFromTenThousandths } from "../../../domain/value/amountFromTenThousandths";
import { valueHeld } from "../../../domain/value/valueHeld";
import { sayDay } from "../../sayDay";
import { sendsToday } from "../../today/sendsToday";
import type { DocumentCell } from "../paper/DocumentTable";
import { cellText } from "../../cellText";
import { fieldText } from "./fieldText";
import type { HandOverDocument } from "./HandOverDocument";
import type { HandOverSource } from "./HandOverSource";
import { heldPieces, type HeldPiece } from "./heldPieces";
import { heldValue } from "./heldValue";
import { unreadCells } from "./unreadCells";

const HEADINGS = [
  "Lender",
  "Piece",
  "Description",
  "Slip",
  "Quantity",
  "Value",
  "Currency",
  "Out",
  "Due",
  "Send by",
  "State",
];

/** Everything that is out on the day, with where it stands: as values for another spreadsheet, and on paper. */
export function loanList(source: HandOverSource): HandOverDocument {
  const { held, untold } = heldPieces(source.pieces, source.asOf, false);
  const sends = sendsToday(source.pieces, source.read, source.asOf);
  const sendByOf = new Map(sends.lines.map(({ at, sendBy }) => [`${at.sheetId} ${at.row}`, sendBy]));
  const rows = held.map((piece) => listRow(piece, source.asOf, sendByOf));
  const table = { headings: HEADINGS, rows };
  const value = heldValue(held);
  return {
    paper: {
      title: `Pieces out ${isoFromSerial(source.asOf)}`,
      pages: [
        {
          title: `Pieces out on ${sayDay(source.asOf)}`,
          blocks: [
            {
              kind: "facts",
              facts: [
                ["Job", source.job.job],
                ["Value", value],
              ],
            },
            { kind: "table", caption: "Pieces out", table },
          ],
        },
      ],
    },
    table: rows.length === 0 ? null : table,
    ownFile: null,
    missing: [
      ...(rows.length === 0 ? [`Nothing is out on ${sayDay(source.asOf)}.`] : []),
      ...unreadCells(held, ["due", "value"]),
      ...untold,
    ],
  };
}

function listRow(
  { table, row, quantity }: HeldPiece,
  asOf: number,
  sendByOf: ReadonlyMap<string, number>,
): DocumentCell[] {
  const value = valueHeld(row, quantity);
  const due = returnDay(row);
  const day = (serial: unknown): string => (typeof serial === "number" ? isoFromSerial(serial) : "");
  const out = typeof row.out === "number" ? row.out : null;
  const state = isProblem(due) ? null : loanState(out, due, null, asOf, usualWarningDays);
  return [
    fieldText(row.lender),
    fieldText(row.piece),
    fieldText(row.description) || fieldText(row.kind),
    cellText(table, row.row, "slip"),
    quantity,
    typeof value === "number" ? amountFromTenThousandths(value) : null,
    fieldText(row.currency),
    day(row.out),
    isProblem(due) ? "?" : day(due),
    day(sendByOf.get(`${table.sheetId} ${table.firstRow + row.row}`)),
    state?.ok === true ? state.value : "",
  ];
}
