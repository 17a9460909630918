import { carriedWeight } from "../../domain/carry/carriedWeight";
import { readCarriedPieces } from "../../sheet/readCarriedPieces";
import { answer } from "../answer";
import { carriedTable } from "../carriedTable";

/**
 * The weight of all the rows passed, by the sheet's weights, else by what each kind of garment typically weighs.
 *
 * @customfunction CARRIED
 * @family Carrying, preparing, running about
 * @answers How much is there to carry?
 * @param rows The pieces to carry with their heading row, columns in any order; needs Weight, Kind or Description. All rows count, back or not: pass those to be carried.
 * @param [unit] The unit of the result and of weights without one: "kg" (when left out), "g", "lb" or "oz".
 * @param [columns] Which heading means what, where yours is not understood, such as "weight=Wt; kind=Type".
 * @shape One number; 0 when there are no rows. WEIGHTS says how much of it is estimated.
 * @units Weight is for one piece and counts Quantity times; "1.2kg", "800 g" and "2 lb 3 oz" are read as they say, a bare number in the heading's unit, else in unit. A pair of shoes is one piece.
 * @blanks Weight blank or 0: the typical weight of the Kind; Kind blank: the kind named in Description. Quantity blank or 0: 1. Blank rows and a totals row are passed over.
 * @bounds Weights of 0 or more; up to a whole sheet of rows; hangers, covers and bags are not counted.
 * @errors A weight that cannot be read, an unknown unit, a missing column, and a row with neither a weight nor a kind of known weight are #VALUE! that names the row.
 * @source Typical weights of clothes: Ecobalyse, default product mass; of suits a web page of low authority; of shoes, boots, bags and small things no source, from memory. Pound of 453.59237 g.
 * @caution Lifting and carrying injure. About 50 lb (22.7 kg) of bags is what stylists are known to carry, common practice and not a safe load; local rules and a doctor's or safety adviser's word come first, and estimates may be far off.
 * @example =TACK.CARRIED({"Piece","Kind","Weight","Quantity";"P1","Coat",1.2,1;"P2","Dress",0.4,2}) gives 2
 * @example =TACK.CARRIED({"Piece","Kind","Weight";"P1","Puffer","";"P2","Dress","400 g"}) gives 1.35
 * @example =TACK.CARRIED({"Piece","Weight";"P1","2 lb";"P2",3},"lb") gives 5
 * @example =TACK.CARRIED({"Piece","Kind","Weight"}) gives 0
 * @example =TACK.CARRIED({"Piece","Kind","Weight";"P1","Gizmo",""}) fails Kind, row 2: "Gizmo" cannot be used; give the weight in that row
 * @example =TACK.CARRIED({"Piece","Weight";"P1",1.2},"stone") fails unit: "stone" cannot be used
 * @returns {any} The weight carried.
 */
export function carried(rows: any[][], unit?: any, columns?: any): any {
  const passed = carriedTable(rows, unit, columns);
  if (!passed.ok) return answer(passed);
  const { table, gramsPerUnit } = passed.value;
  return answer(carriedWeight(readCarriedPieces(table, gramsPerUnit), gramsPerUnit));
}
