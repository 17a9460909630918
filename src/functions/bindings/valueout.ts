import { needed } from "../../domain/needed";
import { valueOut } from "../../domain/value/valueOut";
import { readDate } from "../../sheet/readDate";
import { readFlag } from "../../sheet/readFlag";
import { readPieces } from "../../sheet/readPieces";
import { readTable } from "../../sheet/readTable";
import { answer } from "../answer";
import { rangeArgument } from "../rangeArgument";

/**
 * The insured value of all pieces held on a day.
 *
 * @customfunction VALUEOUT
 * @family Value at risk
 * @answers How much is on the rail that day, against the cover?
 * @param rows The pieces with their heading row, columns in any order; needs Value (or Total value), Out and Back.
 * @param onDate The day to look at. A date, or text such as 2026-03-05.
 * @param [columns] Which heading means what, where yours is not understood, such as "value=Ins. amt".
 * @param [countBackDay] TRUE counts a piece on the day it comes back, too; left out or FALSE: held at close of day.
 * @shape One amount; 0 when nothing is held.
 * @units Money in the one currency of the pieces held, exact to the cent.
 * @blanks Out blank: not held. Back blank: still held. Value blank or 0: adds nothing (LENDERTOTALS counts such pieces as Unvalued). Quantity blank or 0: 1. Quantity back blank or 0 on a piece that is back: all of them.
 * @bounds Dates from 1900-01-01 to 9999-12-31; amounts of 0 or more; up to a whole sheet of rows.
 * @errors A missing column, an onDate that is no date, a value or day of a held piece that cannot be read, and pieces in two currencies are #VALUE! that names the row.
 * @source Common practice, no source: held from the out day, no longer on the back day; settled pieces are not held.
 * @caution A total of the sheet's figures and no advice on insurance: what is covered, from when and up to what limit, the policy decides.
 * @example =TACK.VALUEOUT({"Piece","Value","Quantity","Out","Back";"Silk slip",400.1,1,"2026-03-02","";"Tea cups",20.2,3,"2026-03-02","2026-03-09";"Wool coat",900,1,"2026-03-16",""},DATE(2026,3,5)) gives 460.7
 * @example =TACK.VALUEOUT({"Piece","Value","Out","Back";"Silk slip",400,"2026-03-02","2026-03-05"},DATE(2026,3,5)) gives 0
 * @example =TACK.VALUEOUT({"Piece","Value","Out","Back";"Silk slip",400,"2026-03-02","2026-03-05"},DATE(2026,3,5),,TRUE) gives 400
 * @example =TACK.VALUEOUT({"Piece","Value","Out","Back";"Silk slip","ask Ada","2026-03-02",""},DATE(2026,3,6)) fails Value, row 2: "ask Ada" cannot be used
 * @returns {any} The value held on that day.
 */
export function valueout(rows: any[][], onDate: any, columns?: any, countBackDay?: any): any {
  const day = needed(readDate(onDate, "onDate"), "onDate", "the day to look at, such as 2026-03-05");
  if (!day.ok) return answer(day);
  const backDay = readFlag(countBackDay, "countBackDay");
  if (!backDay.ok) return answer(backDay);
  const uses = ["settled", "quantity", "quantityBack", "currency"];
  const table = readTable({
    cells: rangeArgument(rows),
    kind: "pieces",
    needs: [["value", "totalValue"], "out", "back"],
    uses,
    columns,
  });
  if (!table.ok) return answer(table);
  const pieces = readPieces(table.value);
  return answer(valueOut(pieces, day.value, backDay.value ?? false), "money");
}
