import { needed } from "../../domain/needed";
import { valueByDay } from "../../domain/value/valueByDay";
import { readDate } from "../../sheet/readDate";
import { readFlag } from "../../sheet/readFlag";
import { answerTable } from "../answerTable";
import { valuedPieces } from "../valuedPieces";

/**
 * How many pieces are held on each day of a span, and their insured value.
 *
 * @customfunction VALUEBYDAY
 * @family Value at risk
 * @answers How does the value on the rail rise and fall?
 * @param rows The pieces with their heading row, columns in any order; needs Value (or Total value), Out and Back.
 * @param from The first day to show. A date, or text such as 2026-03-02.
 * @param to The last day to show, counted in.
 * @param [columns] Which heading means what, where yours is not understood, such as "value=Ins. amt".
 * @param [countBackDay] TRUE counts a piece on the day it comes back, too; left out or FALSE: held at close of day.
 * @shape A table that spills: Date, Pieces, Value and Unvalued, one row a day; where the sheet has currencies also Currency, one row a day for each that is held in the span.
 * @units Whole days; money exact to the cent. Unvalued counts the pieces without a value; they are in Pieces, too.
 * @blanks Out blank: not held. Back blank: still held. Value blank or 0: Unvalued. Quantity blank or 0: 1. Quantity back blank or 0 on a piece that is back: all of them.
 * @bounds Dates from 1900-01-01 to 9999-12-31, at most ten years; amounts of 0 or more; up to a whole sheet of rows.
 * @errors A column that is missing or could be two things, and days that are none or in the wrong order, are #VALUE!. A cell that cannot be read leaves its error in the figures of the days it matters to.
 * @source Common practice, no source: held from the out day, no longer on the back day; each day agrees with VALUEOUT.
 * @caution A total of the sheet's figures and no advice on insurance: what is covered, from when and up to what limit, the policy decides.
 * @example =TACK.VALUEBYDAY({"Piece","Value","Quantity","Out","Back";"Silk slip",400.1,1,"2026-03-02","2026-03-04";"Tea cups",20.2,3,"2026-03-03",""},DATE(2026,3,1),DATE(2026,3,4)) gives {"Date","Pieces","Value","Unvalued";"2026-03-01",0,0,0;"2026-03-02",1,400.1,0;"2026-03-03",4,460.7,0;"2026-03-04",3,60.6,0}
 * @example =TACK.VALUEBYDAY({"Piece","Value","Currency","Out","Back";"Slip",400,"GBP","2026-03-02","";"Hat","","EUR","2026-03-02",""},DATE(2026,3,2),DATE(2026,3,2)) gives {"Date","Pieces","Value","Unvalued","Currency";"2026-03-02",1,400,0,"GBP";"2026-03-02",1,0,1,"EUR"}
 * @example =TACK.VALUEBYDAY({"Piece","Value","Out","Back";"Slip",400,"2026-03-02",""},DATE(2026,3,5),DATE(2026,3,1)) fails give a day from 2026-03-05 on
 * @returns {any[][]} The value by day.
 */
export function valuebyday(rows: any[][], from: any, to: any, columns?: any, countBackDay?: any): any[][] {
  const first = needed(readDate(from, "from"), "from", "the first day to show, such as 2026-03-02");
  if (!first.ok) return answerTable(first);
  const last = needed(readDate(to, "to"), "to", "the last day to show, such as 2026-03-13");
  if (!last.ok) return answerTable(last);
  const backDay = readFlag(countBackDay, "countBackDay");
  if (!backDay.ok) return answerTable(backDay);
  const pieces = valuedPieces(rows, columns);
  if (!pieces.ok) return answerTable(pieces);
  return answerTable(valueByDay(pieces.value, first.value, last.value, backDay.value ?? false));
}
