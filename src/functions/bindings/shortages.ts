import type { Shortage } from "../../domain/loans/shortage";
import { shortages as shortagesOf } from "../../domain/loans/shortages";
import { succeed } from "../../domain/succeed";
import { damageReader } from "../../sheet/damageReader";
import { readPieces } from "../../sheet/readPieces";
import { readTable } from "../../sheet/readTable";
import { withOwnColumns } from "../../sheet/withOwnColumns";
import { answerTable } from "../answerTable";
import { rangeArgument } from "../rangeArgument";

/**
 * The rows that came back short or damaged, with the pieces missing and their value.
 *
 * @customfunction SHORTAGES
 * @family Loans
 * @answers What is missing or damaged, and what is it worth?
 * @param rows The pieces with their heading row, columns in any order; needs Back, and Quantity back or Condition back.
 * @param [columns] Which heading means what, where yours is not understood, such as "quantityBack=Cnt in; value=Ins. amt".
 * @shape A table that spills: the heading row, then each such row in sheet order with its own columns as typed, and Missing, Damaged (TRUE or FALSE) and Value missing behind them; the heading row alone when all came back well.
 * @units Missing in pieces; Value missing in the row's own currency, exact to the cent.
 * @blanks Back blank: not back, not listed. Quantity back blank or 0: all came back. Quantity blank or 0: 1. Condition back blank: not damaged. Value blank or 0: Value missing blank.
 * @bounds More back than went out is none missing; up to a whole sheet of rows. Settled rows (lost, bought, gifted) are not listed.
 * @errors A column that is missing or could be two things is #VALUE!. A cell that cannot be read stands as an error in the figures that depend on it; the other rows are not touched.
 * @source Common practice, no source: damaged is a Condition back that differs from Condition out and is no way of saying good ("OK", "as new", "no marks").
 * @caution These are the sheet's words and figures and no statement of what you owe; the slip, the lender and your insurance decide.
 * @example =TACK.SHORTAGES({"Piece","Quantity","Value","Back","Quantity back";"Tea cups",6,20.2,"2026-03-09",4;"Belt",1,90,"2026-03-09",1}) gives {"Piece","Quantity","Value","Back","Quantity back","Missing","Damaged","Value missing";"Tea cups",6,20.2,"2026-03-09",4,2,FALSE,40.4}
 * @example =TACK.SHORTAGES({"Piece","Back","Condition out","Condition back";"Slip","2026-03-09","Good","torn hem";"Coat","2026-03-09","worn cuff","Worn cuff";"Belt","2026-03-09","new","OK"}) gives {"Piece","Back","Condition out","Condition back","Missing","Damaged","Value missing";"Slip","2026-03-09","Good","torn hem",0,TRUE,0}
 * @example =TACK.SHORTAGES({"Piece","Back";"Slip","2026-03-09"}) fails has no column headed Quantity back or Condition back
 * @returns {any[][]} The rows that are short or damaged.
 */
export function shortages(rows: any[][], columns?: any): any[][] {
  const table = readTable({
    cells: rangeArgument(rows),
    kind: "pieces",
    needs: ["back", ["quantityBack", "conditionBack"]],
    uses: ["quantityBack", "conditionBack", "quantity", "conditionOut", "value", "totalValue", "settled"],
    columns,
  });
  if (!table.ok) return answerTable(table);
  const found = shortagesOf(readPieces(table.value), damageReader());
  return answerTable(
    succeed(
      withOwnColumns(table.value, found, [
        { heading: "Missing", format: "as is", cell: (row: Shortage) => row.piecesMissing },
        { heading: "Damaged", format: "as is", cell: (row: Shortage) => row.isDamaged },
        { heading: "Value missing", format: "money", cell: (row: Shortage) => row.valueMissing },
      ]),
    ),
  );
}
