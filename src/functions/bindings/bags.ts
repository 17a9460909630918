import { bagsTable } from "../../domain/carry/bags/bagsTable";
import { packedBagsOf } from "../../domain/carry/bags/packedBagsOf";
import { gramsInUnit } from "../../domain/carry/gramsInUnit";
import { fail } from "../../domain/fail";
import { needed } from "../../domain/needed";
import { succeed } from "../../domain/succeed";
import { readBagPieces } from "../../sheet/readBagPieces";
import { readGrams } from "../../sheet/readGrams";
import { answerTable } from "../answerTable";
import { carriedTable } from "../carriedTable";

/**
 * Which bag each piece goes into, so that there are as few bags as can be and none weighs more than the limit.
 *
 * @customfunction BAGS
 * @family Carrying, preparing, running about
 * @answers How many bags, and what goes into which?
 * @param rows The pieces to pack with their heading row, columns in any order; needs Weight, Kind or Description. All rows count, back or not: pass those to be packed.
 * @param limit What one bag may weigh at most, in unit or as text such as "10 kg" or "22 lb".
 * @param [unit] The unit of the result, of the limit and of weights without one: "kg" (when left out), "g", "lb" or "oz".
 * @param [columns] Which heading means what, where yours is not understood, such as "piece=Ref; together=Set".
 * @shape A table that spills: Piece, Weight, Bag, one row for each single piece in sheet order (Quantity 3 gives three); the heading row alone when there are no rows. Bags are numbered from 1 as they first appear. Pieces that say the same under Together go into one bag.
 * @units Weight is that of one piece, in unit; bags are compared with the limit in whole grams.
 * @blanks Weight blank or 0: the typical weight of the Kind; Kind blank: the kind named in Description. Quantity blank or 0: 1. Together blank: any bag. Piece blank: its Description stands.
 * @bounds At most 10,000 pieces. Only weight counts, not size or what creases; the bag itself, hangers and covers are not counted. The number of bags is proved to be the fewest in most cases; where a fixed number of steps does not settle it, the best found stands: on the hardest sets tried at most one bag in twenty above the least there could be.
 * @errors A limit that is no weight above 0, an unknown unit and a missing column are #VALUE!. A piece above the limit has the error in Bag; one that cannot be weighed in Weight and Bag; and so has all that must go together with it. The other pieces are packed.
 * @source First fit decreasing, the bound L2 of Martello and Toth, bin completion and repeated repacking, checked against published instances with proved numbers of bags; typical weights as for CARRIED.
 * @caution Lifting and carrying injure, and a limit that is only just kept is no safe load: about 50 lb (22.7 kg) of bags is what stylists are known to carry, common practice. LIFTLIMIT gives a limit for one way of lifting; local rules and a doctor's or safety adviser's word come first.
 * @example =TACK.BAGS({"Piece","Weight";"P1",6;"P2",5;"P3",4;"P4",5},10) gives {"Piece","Weight","Bag";"P1",6,1;"P2",5,2;"P3",4,1;"P4",5,2}
 * @example =TACK.BAGS({"Piece","Weight","Quantity","Together";"Boots",1.5,2,"";"Gown",3,1,"set A";"Cape",1,1,"Set A"},5) gives {"Piece","Weight","Bag";"Boots",1.5,1;"Boots",1.5,1;"Gown",3,2;"Cape",1,2}
 * @example =TACK.BAGS({"Piece","Weight"},10) gives {"Piece","Weight","Bag"}
 * @example =TACK.BAGS({"Piece","Weight";"P1",6},"heavy") fails limit: "heavy" cannot be used
 * @returns {any[][]} One row for each single piece.
 */
export function bags(rows: any[][], limit: any, unit?: any, columns?: any): any[][] {
  const passed = carriedTable(rows, unit, columns, ["piece", "together"]);
  if (!passed.ok) return answerTable(passed);
  const { table, gramsPerUnit } = passed.value;
  const expected = "a weight above 0, such as 10 or 10 kg";
  const limitGrams = needed(readGrams(limit, "limit", gramsPerUnit), "limit", expected);
  if (!limitGrams.ok) return answerTable(limitGrams);
  // A limit that comes to no whole gram holds nothing.
  if (Math.round(limitGrams.value) < 1) {
    const given = String(gramsInUnit(limitGrams.value, gramsPerUnit));
    return answerTable(fail("argument-not-usable", { argument: "limit", given, expected }));
  }
  const packed = packedBagsOf(readBagPieces(table, gramsPerUnit), limitGrams.value, gramsPerUnit);
  return answerTable(packed.ok ? succeed(bagsTable(packed.value, gramsPerUnit)) : packed);
}
