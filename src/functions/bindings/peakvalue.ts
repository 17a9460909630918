import { peakValue } from "../../domain/value/peakValue";
import { readFlag } from "../../sheet/readFlag";
import { answerTable } from "../answerTable";
import { valuedPieces } from "../valuedPieces";

/**
 * The day on which most value is held, the first of equals.
 *
 * @customfunction PEAKVALUE
 * @family Value at risk
 * @answers When is most at risk, and how much: what must the cover reach?
 * @param rows The pieces with their heading row, columns in any order; needs Value (or Total value), Out and Back.
 * @param [columns] Which heading means what, where yours is not understood, such as "value=Ins. amt".
 * @param [countBackDay] TRUE counts a piece on the day it comes back, too; left out or FALSE: held at close of day.
 * @shape A table that spills: Date, Pieces and Value, and one row; the heading row alone when nothing is ever held.
 * @units A whole day; money in the one currency of the pieces, exact to the cent.
 * @blanks Out blank: not held. Back blank: held from then on. Value blank or 0: counts in Pieces and adds no value. Quantity blank or 0: 1. Quantity back blank or 0 on a piece that is back: all of them.
 * @bounds Dates from 1900-01-01 to 9999-12-31; amounts of 0 or more; up to a whole sheet of rows.
 * @errors A missing column, a cell of a piece that is ever held and cannot be read (the peak might be higher), and values in two currencies are #VALUE! that names the row.
 * @source Common practice, no source: held from the out day, no longer on the back day; settled pieces are not held.
 * @caution A total of the sheet's figures and no advice on insurance: what is covered, from when and up to what limit, the policy decides.
 * @example =TACK.PEAKVALUE({"Piece","Value","Out","Back";"Silk slip",400,"2026-03-02","2026-03-04";"Wool coat",900,"2026-03-03","2026-03-04";"Hat",900,"2026-03-09",""}) gives {"Date","Pieces","Value";"2026-03-03",2,1300}
 * @example =TACK.PEAKVALUE({"Piece","Value","Out","Back";"Silk slip",400,"2026-03-02","2026-03-04";"Wool coat",900,"2026-03-04",""},,TRUE) gives {"Date","Pieces","Value";"2026-03-04",2,1300}
 * @example =TACK.PEAKVALUE({"Piece","Value","Out","Back";"Silk slip",400,"",""}) gives {"Date","Pieces","Value"}
 * @example =TACK.PEAKVALUE({"Piece","Value","Out","Back";"Silk slip","ask Ada","2026-03-02",""}) fails Value, row 2: "ask Ada" cannot be used
 * @returns {any[][]} The day of the highest value.
 */
export function peakvalue(rows: any[][], columns?: any, countBackDay?: any): any[][] {
  const backDay = readFlag(countBackDay, "countBackDay");
  if (!backDay.ok) return answerTable(backDay);
  const pieces = valuedPieces(rows, columns);
  if (!pieces.ok) return answerTable(pieces);
  return answerTable(peakValue(pieces.value, backDay.value ?? false));
}
