import { dueRows } from "../../domain/loans/dueRows";
import { needed } from "../../domain/needed";
import { succeed } from "../../domain/succeed";
import { readDate } from "../../sheet/readDate";
import { readPieces } from "../../sheet/readPieces";
import { readTable } from "../../sheet/readTable";
import { withOwnColumns } from "../../sheet/withOwnColumns";
import { answerTable } from "../answerTable";
import { rangeArgument } from "../rangeArgument";

/**
 * The pieces due back in a span of days and not back yet, the soonest first.
 *
 * @customfunction DUEROWS
 * @family Loans
 * @answers What goes back this week?
 * @param rows The pieces with their heading row, columns in any order; needs Out, Due (or Extended to) and Back.
 * @param from The first day of the span. A date, or text such as 2026-03-05.
 * @param to The last day of the span, which is counted too.
 * @param [columns] Which heading means what, where yours is not understood, such as "due=Wanted back".
 * @shape A table that spills: the heading row, then each row that is due with its own columns as typed; the heading row alone when nothing is due.
 * @units Dates as yyyy-mm-dd.
 * @blanks Out blank: not out. Due and Extended to blank: not listed. Back blank: still out. Quantity blank or 0: 1. Quantity back blank or 0 on a piece that is back: all of them.
 * @bounds Dates from 1900-01-01 to 9999-12-31, both ends counted; up to a whole sheet of rows. A Back after the span is not yet back.
 * @errors A column that is missing or could be two things, a day that is no date, and a span that ends before it begins are #VALUE!. A row of which it cannot be told stands last, with the error in the cell that cannot be read.
 * @source Common practice, no source: Extended to replaces Due, settled pieces are no longer out.
 * @caution A late piece can cost its lender's fee or its price; the slip and what was agreed with the lender decide, not this list.
 * @example =TACK.DUEROWS({"Piece","Out","Due","Back";"Wool coat","2026-03-02","2026-03-09","";"Silk slip","2026-03-02","2026-03-05","";"Belt","2026-03-02","2026-03-13",""},DATE(2026,3,5),DATE(2026,3,11)) gives {"Piece","Out","Due","Back";"Silk slip","2026-03-02","2026-03-05","";"Wool coat","2026-03-02","2026-03-09",""}
 * @example =TACK.DUEROWS({"Piece","Out","Due","Back";"Silk slip","2026-03-02","2026-03-05","2026-03-04"},DATE(2026,3,2),DATE(2026,3,9)) gives {"Piece","Out","Due","Back"}
 * @example =TACK.DUEROWS({"Piece","Out","Due","Back"},DATE(2026,3,9),DATE(2026,3,2)) fails to: "2026-03-02" cannot be used
 * @returns {any[][]} The rows that are due.
 */
export function duerows(rows: any[][], from: any, to: any, columns?: any): any[][] {
  const first = needed(readDate(from, "from"), "from", "the first day of the span, such as 2026-03-02");
  if (!first.ok) return answerTable(first);
  const last = needed(readDate(to, "to"), "to", "the last day of the span, such as 2026-03-08");
  if (!last.ok) return answerTable(last);
  const needs = ["out", ["due", "extendedTo"], "back"];
  const uses = ["extendedTo", "settled", "quantity", "quantityBack"];
  const table = readTable({ cells: rangeArgument(rows), kind: "pieces", needs, uses, columns });
  if (!table.ok) return answerTable(table);
  const due = dueRows(readPieces(table.value), first.value, last.value);
  return answerTable(due.ok ? succeed(withOwnColumns(table.value, due.value, [])) : due);
}
