import { fail } from "../../domain/fail";
import { tapeTable } from "../../domain/prep/tapeTable";
import { succeed } from "../../domain/succeed";
import { readNumberBetween } from "../../sheet/readNumberBetween";
import { readShoes } from "../../sheet/readShoes";
import { readShoeSystem } from "../../sheet/readShoeSystem";
import { readTable } from "../../sheet/readTable";
import { answerTable } from "../answerTable";
import { rangeArgument } from "../rangeArgument";

/**
 * The tape that covers the soles of borrowed shoes: painter's tape inside, with cloth gaffer tape over it outside.
 *
 * @customfunction TAPE
 * @family Carrying, preparing, running about
 * @answers How much tape do the soles take?
 * @param rows The shoes with their heading row, columns in any order; needs Shoes, Size and Where (inside or outside), and takes Pairs.
 * @param [columns] Which heading means what, where yours is not understood, such as "where=Set; shoes=Style".
 * @param [tapeWidth] The width of both tapes in mm; 50 when left out.
 * @param [overlap] How far one strip lies over the next, in mm; 5 when left out.
 * @param [sizeSystem] The system of sizes that name none: "EU" (when left out), "UK", "US men", "US women" or "Mondopoint".
 * @shape A table that spills: Shoes, Layers, Painter's tape, Gaffer tape, one row for each row in sheet order; the heading row alone when there are none.
 * @units Metres, up to the next centimetre, for both shoes of all pairs of the row. Layers: 1 inside, 2 outside. A sole is taken as 15 mm longer than the foot and 0.4 of the foot's length broad; strips run from heel to toe.
 * @blanks Pairs blank or 0: 1. Size or Where blank: an error in the figures that depend on it.
 * @bounds Adult sizes as in SHOESIZE; tapes 10 to 150 mm wide; overlap from 0 to less than the width. "Inside and out" counts as outside.
 * @errors A cell that cannot be read stands as an error in the figures that depend on it; the other rows are not touched. A missing column, and an overlap as wide as the tape, are #VALUE!.
 * @source Common practice, no source: the layers, the strips and their defaults. Foot length from size as in SHOESIZE; breadth and allowance of a sole from memory.
 * @caution An estimate: buy a roll to spare. Try the tape on a hidden spot first, as glue can mark leather and lift finishes, and take it off before the return. Taped soles can slip: try them on the floor of the set before anyone walks.
 * @example =TACK.TAPE({"Shoes","Size","Where";"Pumps",38,"inside";"Boots",42,"outside"}) gives {"Shoes","Layers","Painter's tape","Gaffer tape";"Pumps",1,1.53,0;"Boots",2,1.69,1.69}
 * @example =TACK.TAPE({"Shoes","Size","Where","Pairs";"Derbies","UK 8","exterior",2},,100,0) gives {"Shoes","Layers","Painter's tape","Gaffer tape";"Derbies",2,2.22,2.22}
 * @example =TACK.TAPE({"Shoes","Size","Where"}) gives {"Shoes","Layers","Painter's tape","Gaffer tape"}
 * @example =TACK.TAPE({"Shoes","Size";"Pumps",38}) fails rows has no column headed Where
 * @example =TACK.TAPE({"Shoes","Size","Where";"Pumps",38,"inside"},,50,50) fails overlap: "50" cannot be used
 * @returns {any[][]} One row for each row of shoes.
 */
export function tape(rows: any[][], columns?: any, tapeWidth?: any, overlap?: any, sizeSystem?: any): any[][] {
  const width = readNumberBetween(tapeWidth, "tapeWidth", 10, 150, " mm");
  if (!width.ok) return answerTable(width);
  const widthMm = width.value ?? 50;
  const lap = readNumberBetween(overlap, "overlap", 0, 150, " mm");
  if (!lap.ok) return answerTable(lap);
  const lapMm = lap.value ?? 5;
  if (lapMm >= widthMm) {
    const expected = `less than the width of the tape, ${widthMm} mm`;
    return answerTable(fail("argument-not-usable", { argument: "overlap", given: String(lapMm), expected }));
  }
  const system = readShoeSystem(sizeSystem, "sizeSystem");
  if (!system.ok) return answerTable(system);
  const table = readTable({ cells: rangeArgument(rows), kind: "shoes", needs: ["shoes", "size", "where"], columns });
  if (!table.ok) return answerTable(table);
  return answerTable(succeed(tapeTable(readShoes(table.value, system.value ?? "EU"), widthMm, lapMm)));
}
