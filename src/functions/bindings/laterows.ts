import { needed } from "../../domain/needed";
import type { LateRow } from "../../domain/loans/lateRow";
import { lateRows } from "../../domain/loans/lateRows";
import { succeed } from "../../domain/succeed";
import { readDate } from "../../sheet/readDate";
import { readPieces } from "../../sheet/readPieces";
import { readTable } from "../../sheet/readTable";
import { withOwnColumns } from "../../sheet/withOwnColumns";
import { answerTable } from "../answerTable";
import { rangeArgument } from "../rangeArgument";

/**
 * The pieces that are late and still out, the latest first, with the days each is late.
 *
 * @customfunction LATEROWS
 * @family Loans
 * @answers What is late, and by how much?
 * @param rows The pieces with their heading row, columns in any order; needs Out, Due (or Extended to) and Back.
 * @param asOf The day to look at; due on that day is not late. A date, or text such as 2026-03-05.
 * @param [columns] Which heading means what, where yours is not understood, such as "due=Wanted back; value=Ins. amt".
 * @shape A table that spills: the heading row, then each late row with its own columns as typed and Days late behind them; the heading row alone when nothing is late.
 * @units Days late in whole calendar days; dates as yyyy-mm-dd.
 * @blanks Out blank: not out. Due and Extended to blank: not late. Back blank: still out. Quantity blank or 0: 1. Quantity back blank or 0 on a piece that is back: all of them.
 * @bounds Dates from 1900-01-01 to 9999-12-31; up to a whole sheet of rows.
 * @errors A column that is missing or could be two things, and an asOf that is no date, are #VALUE!. A row with a cell that decides and cannot be read stands last with the error in Days late.
 * @source Common practice, no source: Extended to replaces Due, settled pieces are no longer out, the most late come first, then the most valuable by Value times what is still out.
 * @caution A late piece can cost its lender's fee or its price; the slip and what was agreed with the lender decide, not this list.
 * @example =TACK.LATEROWS({"Piece","Out","Due","Back";"Silk slip","2026-03-02","2026-03-05","";"Wool coat","2026-03-02","2026-03-09",""},DATE(2026,3,9)) gives {"Piece","Out","Due","Back","Days late";"Silk slip","2026-03-02","2026-03-05","",4}
 * @example =TACK.LATEROWS({"Piece","Out","Due","Back";"Silk slip","2026-03-02","2026-03-05","2026-03-05"},DATE(2026,3,9)) gives {"Piece","Out","Due","Back","Days late"}
 * @example =TACK.LATEROWS({"Piece","Out","Due","Back";"Silk slip","2026-03-02","2026-03-05",""},"03/04/26") fails asOf: "03/04/26" could be
 * @returns {any[][]} The late rows.
 */
export function laterows(rows: any[][], asOf: any, columns?: any): any[][] {
  const day = needed(readDate(asOf, "asOf"), "asOf", "the day to look at, such as 2026-03-05");
  if (!day.ok) return answerTable(day);
  const uses = ["extendedTo", "settled", "quantity", "quantityBack", "value", "totalValue"];
  const table = readTable({
    cells: rangeArgument(rows),
    kind: "pieces",
    needs: ["out", ["due", "extendedTo"], "back"],
    uses,
    columns,
  });
  if (!table.ok) return answerTable(table);
  const pieces = readPieces(table.value);
  const late = lateRows(pieces, day.value);
  const added = { heading: "Days late", format: "as is", cell: (row: LateRow) => row.daysLate } as const;
  return answerTable(succeed(withOwnColumns(table.value, late, [added])));
}
