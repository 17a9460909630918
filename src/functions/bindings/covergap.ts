import { needed } from "../../domain/needed";
import { coverGap } from "../../domain/value/coverGap";
import { readCoverLimit } from "../../sheet/readCoverLimit";
import { answerTable } from "../answerTable";
import { valuedPieces } from "../valuedPieces";

/**
 * The days on which more is held than the insurance covers, and single pieces above the cover of one.
 *
 * @customfunction COVERGAP
 * @family Value at risk
 * @answers When, and for what, is the cover not enough?
 * @param rows The pieces with their heading row, columns in any order; needs Value (or Total value), Out and Back.
 * @param limit The most that is covered for all pieces together; an amount, or text such as "£100,000".
 * @param [pieceLimit] The most that is covered for one piece; left out: single pieces are not looked at.
 * @param [columns] Which heading means what, where yours is not understood, such as "value=Ins. amt".
 * @shape A table that spills: What, From, Until, Value and Over by; first unbroken spans of days ("All pieces", Value their highest), then single pieces by name; the heading row alone when the cover is enough.
 * @units Whole days, both counted, and the back day counts as held; Until is blank where nothing is back. Money in the one currency of the pieces, exact to the cent; a single piece has the value of one, whatever its Quantity.
 * @blanks Limit blank: #VALUE!. Out blank: not held. Back blank: still held. Value blank or 0: adds nothing (VALUEBYDAY counts such pieces as Unvalued). Quantity blank or 0: 1. Quantity back blank or 0 on a piece that is back: all of them.
 * @bounds Limits above 0; equal to the limit is not over. Dates from 1900-01-01 to 9999-12-31; up to a whole sheet of rows.
 * @errors A missing column, a limit that is no amount, values in two currencies, or a limit in another one, are #VALUE!. A piece that cannot be read stands last with its error in Value, and so does a span that it falls into.
 * @source Common practice, no source: a floater has a limit for all pieces, often one for each, and cover has to hold until a piece is handed over.
 * @caution A comparison of figures and no advice on insurance: the policy decides what is covered, where, from when, and what a piece is taken to be worth.
 * @example =TACK.COVERGAP({"Piece","Value","Out","Back";"Silk slip",400,"2026-03-02","2026-03-05";"Wool coat",900,"2026-03-04","2026-03-09"},1000,600) gives {"What","From","Until","Value","Over by";"All pieces","2026-03-04","2026-03-05",1300,300;"Wool coat","2026-03-04","2026-03-09",900,300}
 * @example =TACK.COVERGAP({"Piece","Value","Out","Back";"Silk slip",400,"2026-03-02",""},400) gives {"What","From","Until","Value","Over by"}
 * @example =TACK.COVERGAP({"Piece","Value","Out","Back";"Silk slip",400,"2026-03-02",""},"none") fails limit: "none" cannot be used
 * @returns {any[][]} What is above the cover.
 */
export function covergap(rows: any[][], limit: any, pieceLimit?: any, columns?: any): any[][] {
  const whole = needed(readCoverLimit(limit, "limit"), "limit", "the most that is covered, such as 100000");
  if (!whole.ok) return answerTable(whole);
  const single = readCoverLimit(pieceLimit, "pieceLimit");
  if (!single.ok) return answerTable(single);
  const pieces = valuedPieces(rows, columns);
  if (!pieces.ok) return answerTable(pieces);
  return answerTable(coverGap(pieces.value, whole.value, single.value));
}
