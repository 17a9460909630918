import { succeed } from "../../domain/succeed";
import { jobMoney } from "../../domain/value/jobMoney";
import { nameKey } from "../../sheet/nameKey";
import { readMoneyTables } from "../../sheet/readMoneyTables";
import { readReceipts } from "../../sheet/readReceipts";
import { readRentals } from "../../sheet/readRentals";
import { answerTable } from "../answerTable";
import { rangeArgument } from "../rangeArgument";

/**
 * The money of each job: what was spent, kept, refunded and is still to come back, and rental and deposits.
 *
 * @customfunction JOBMONEY
 * @family Value at risk
 * @answers How does the money of each job stand?
 * @param rows The receipts, or the pieces, with their heading row; or both, one below the other, as VSTACK(Receipts[#All],Pieces[#All]) puts them. Needs Amount, Rental fee or Deposit.
 * @param [columns] Which heading means what, where yours is not understood, such as "job=Production; amount=Till total".
 * @shape A table that spills: Job, Spent, Kept, Refunded, To come back, Rental and Deposits held, one row a job in the order first seen, rows without a job last as "(no job)"; and Currency, one row each, where there are several.
 * @units Money exact to the cent; To come back is Spent less Kept less Refunded. Rental fee and Deposit are for the whole row, whatever its Quantity. Spellings are one job when they differ in case, accents, spacing or punctuation.
 * @blanks A blank amount adds nothing. Kept "yes": all that is not refunded. Amount refunded blank or 0 with Refunded filled: all that is not kept. Out blank: no deposit paid yet. Back blank: the lender still holds it.
 * @bounds Amounts of 0 or more. Everything dated counts, whenever it is: filter the rows for a span of time. A deposit is held until all of its row is back, or it is settled.
 * @errors A range without any of these columns, and a column that could be two things, are #VALUE!. A cell that cannot be read leaves its error in the figures it spoils.
 * @source Common practice, no source: receipts are settled job by job, with what was rented and what lenders hold as deposit.
 * @caution A sum of the sheet's figures and no tax or accounting advice: receipts, slips and the lender's terms decide.
 * @example =TACK.JOBMONEY({"Job","Shop","Amount","Kept","Amount refunded";"Lumen","Kessel",250,50,120;"Lumen","Odeon",90,"yes","";"Tide","Kessel",40,"",""}) gives {"Job","Spent","Kept","Refunded","To come back","Rental","Deposits held";"Lumen",340,140,120,80,0,0;"Tide",40,0,0,40,0,0}
 * @example =TACK.JOBMONEY({"Job","Piece","Rental fee","Deposit","Out","Back";"Lumen","Cape",60,200,"2026-03-02","";"Lumen","Mask",25,100,"2026-03-02","2026-03-05"}) gives {"Job","Spent","Kept","Refunded","To come back","Rental","Deposits held";"Lumen",0,0,0,0,85,200}
 * @example =TACK.JOBMONEY({"Job","Piece";"Lumen","Cape"}) fails rows has no column headed Amount, Rental fee or Deposit
 * @returns {any[][]} The money of each job.
 */
export function jobmoney(rows: any[][], columns?: any): any[][] {
  const tables = readMoneyTables(rangeArgument(rows), columns);
  if (!tables.ok) return answerTable(tables);
  const { receipts, pieces } = tables.value;
  return answerTable(succeed(jobMoney(receipts.map(readReceipts), pieces.map(readRentals), nameKey)));
}
