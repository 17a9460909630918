import { lenderTotals } from "../../domain/loans/lenderTotals";
import { lenderTotalsTable } from "../../domain/loans/lenderTotalsTable";
import { needed } from "../../domain/needed";
import { succeed } from "../../domain/succeed";
import { nameKey } from "../../sheet/nameKey";
import { readDate } from "../../sheet/readDate";
import { readPieces } from "../../sheet/readPieces";
import { readTable } from "../../sheet/readTable";
import { answerTable } from "../answerTable";
import { rangeArgument } from "../rangeArgument";

/**
 * What each lender has out with you on a day: pieces, value, the next due day and what is late.
 *
 * @customfunction LENDERTOTALS
 * @family Loans
 * @answers What do I still owe each lender, and when?
 * @param rows The pieces with their heading row, columns in any order; needs Lender, Value (or Total value), Out, Due (or Extended to) and Back.
 * @param asOf The day to look at; due on that day is not late. A date, or text such as 2026-03-05.
 * @param [columns] Which heading means what, where yours is not understood, such as "value=Ins. amt; lender=From".
 * @shape A table that spills: Lender, Pieces out, Value out, Next due, Late pieces, Late value, Most days late, No due date, Unvalued, and Currency where the sheet has currencies, one row for each lender and currency; the heading row alone when nothing is out.
 * @units Money in the row's currency, exact to the cent; days in whole calendar days; dates as yyyy-mm-dd.
 * @blanks Lender blank: the row "(no lender)", last. Out blank: not out. Due blank: counted in No due date. Value blank or 0: counted in Unvalued. Quantity blank or 0: 1. Quantity back blank or 0 on a piece that is back: all of them.
 * @bounds Dates from 1900-01-01 to 9999-12-31; amounts of 0 or more; up to a whole sheet of rows.
 * @errors A column that is missing or could be two things, and an asOf that is no date, are #VALUE!. A cell that cannot be read stands as an error in the figures that depend on it; the other lenders are not touched.
 * @source Common practice, no source: most days late first, then most value, then first seen; spellings that differ in case, accents, spacing or punctuation are one lender; currencies are never added.
 * @caution These are the sheet's figures and no statement of what you are liable for; the slips and your insurance decide.
 * @example =TACK.LENDERTOTALS({"Lender","Value","Out","Due","Back";"Maison Orla",400,"2026-03-02","2026-03-05","";"MAISON ORLA",250.5,"2026-03-02","2026-03-09","";"Rail & Co",90,"2026-03-02","2026-03-12",""},DATE(2026,3,9)) gives {"Lender","Pieces out","Value out","Next due","Late pieces","Late value","Most days late","No due date","Unvalued";"Maison Orla",2,650.5,"2026-03-09",1,400,4,0,0;"Rail & Co",1,90,"2026-03-12",0,0,0,0,0}
 * @example =TACK.LENDERTOTALS({"Lender","Out","Due","Back";"Maison Orla","2026-03-02","2026-03-05",""},DATE(2026,3,9)) fails Value
 * @returns {any[][]} One row for each lender and currency.
 */
export function lendertotals(rows: any[][], asOf: any, columns?: any): any[][] {
  const day = needed(readDate(asOf, "asOf"), "asOf", "the day to look at, such as 2026-03-05");
  if (!day.ok) return answerTable(day);
  const needs = ["lender", ["value", "totalValue"], "out", ["due", "extendedTo"], "back"];
  const uses = ["extendedTo", "settled", "quantity", "quantityBack", "currency"];
  const table = readTable({ cells: rangeArgument(rows), kind: "pieces", needs, uses, columns });
  if (!table.ok) return answerTable(table);
  const pieces = readPieces(table.value);
  return answerTable(succeed(lenderTotalsTable(lenderTotals(pieces, day.value, nameKey), pieces.hasCurrencies)));
}
