import { kindWeights } from "../../domain/carry/kindWeights";
import { kindWeightsTable } from "../../domain/carry/kindWeightsTable";
import { succeed } from "../../domain/succeed";
import { nameKey } from "../../sheet/nameKey";
import { readCarriedPieces } from "../../sheet/readCarriedPieces";
import { answerTable } from "../answerTable";
import { carriedTable } from "../carriedTable";

/**
 * What the rows weigh by kind of piece, with what was weighed kept apart from what is estimated.
 *
 * @customfunction WEIGHTS
 * @family Carrying, preparing, running about
 * @answers Where does the weight come from, and how much of it is a guess?
 * @param rows The pieces to carry with their heading row, columns in any order; needs Weight, Kind or Description. All rows count, back or not: pass those to be carried.
 * @param [unit] The unit of the result and of weights without one: "kg" (when left out), "g", "lb" or "oz".
 * @param [columns] Which heading means what, where yours is not understood, such as "weight=Wt; kind=Type".
 * @shape A table that spills: Kind, Pieces, Weight, Weighed, Estimated, one row for each kind in the order first seen; Weight is Weighed and Estimated together; the heading row alone when there are no rows. Puffers and overcoats are one kind, Coat; a kind that is not known stands as typed.
 * @units Weights in unit, for all the pieces of the row: Weight is for one piece and counts Quantity times; "1.2kg", "800 g" and "2 lb 3 oz" are read as they say, a bare number in the heading's unit, else in unit. "Approx 2 kg" counts as Estimated.
 * @blanks Weight blank or 0: estimated by the Kind; Kind blank: the kind named in Description, and if that names none the row "(no kind)", last. Quantity blank or 0: 1. Blank rows and a totals row are passed over.
 * @bounds Weights of 0 or more; up to a whole sheet of rows; hangers, covers and bags are not counted.
 * @errors An unknown unit and a missing column are #VALUE!. A weight that cannot be read, and a kind of unknown weight without one, stand as an error in the figures that depend on them; the other kinds are not touched.
 * @source Typical weights of clothes: Ecobalyse, default product mass; of suits a web page of low authority; of shoes, boots, bags and small things no source, from memory.
 * @caution Lifting and carrying injure, and estimates may be far off: weigh the heavy pieces. Local rules and a doctor's or safety adviser's word come first.
 * @example =TACK.WEIGHTS({"Piece","Kind","Weight","Quantity";"P1","Puffer",1.2,1;"P2","Dress","",2;"P3","Coat","",1}) gives {"Kind","Pieces","Weight","Weighed","Estimated";"Coat",2,2.15,1.2,0.95;"Dress",2,0.6,0,0.6}
 * @example =TACK.WEIGHTS({"Description","Weight";"Silk dress","2 lb";"Gizmo",1},"lb") gives {"Kind","Pieces","Weight","Weighed","Estimated";"Dress",1,2,2,0;"(no kind)",1,1,1,0}
 * @example =TACK.WEIGHTS({"Piece","Lender";"P1","Maison Orla"}) fails rows has no column headed Weight or Kind or Description
 * @returns {any[][]} One row for each kind.
 */
export function weights(rows: any[][], unit?: any, columns?: any): any[][] {
  const carried = carriedTable(rows, unit, columns);
  if (!carried.ok) return answerTable(carried);
  const { table, gramsPerUnit } = carried.value;
  const byKind = kindWeights(readCarriedPieces(table, gramsPerUnit, true), nameKey);
  return answerTable(succeed(kindWeightsTable(byKind, gramsPerUnit)));
}
