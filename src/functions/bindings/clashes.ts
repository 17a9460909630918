import { clashes as clashesOf } from "../../domain/day/clashes";
import { clashTable } from "../../domain/day/clashTable";
import { datedPlans } from "../../domain/day/datedPlans";
import { succeed } from "../../domain/succeed";
import { readLooks } from "../../sheet/readLooks";
import { readNeededPieces } from "../../sheet/readNeededPieces";
import { readTable } from "../../sheet/readTable";
import { answerTable } from "../answerTable";
import { columnsOfTable } from "../columnsOfTable";
import { rangeArgument } from "../rangeArgument";

/**
 * The pieces that a look cannot have: two looks need one at once, or it is not out, or already back, on the day.
 *
 * @customfunction CLASHES
 * @family The day
 * @answers Is everything there for every look?
 * @param pieces The pieces with their heading row, columns in any order; needs Piece or Description, Look, Out and Back.
 * @param looks The looks with their heading row, of one day or several; needs Look, Shooting and Change.
 * @param [columns] Which heading means what in either table, where yours is not understood, such as "look=Outfit; shooting=Mins".
 * @shape A table that spills: Piece, Look, Other look, Why, in the order of the pieces; Other look is filled where two looks need one piece at once. No clash: the heading row alone.
 * @units Days as yyyy-mm-dd, minutes rounded up to whole ones.
 * @blanks The day is the look's Date, else the piece's Shoot; both blank: only what overlaps is told. Out blank: not out, unless Lender says it is your own. Quantity blank or 0: 1. Talent, Arrives and the like as for DAYPLAN; looks without a Date make one day of their own.
 * @bounds A Look cell may name several, "3, 9" or "1-3"; the looks' own Pieces column may list piece numbers. Planned times are compared, not order numbers: a look needs its pieces from the start of its change to the end of its shot. Each day is planned as DAYPLAN does, with one dresser, one chair, one camera and no meal, from the first Arrives, else 09:00, but no look waits for another's piece. A piece on its Back day is no longer there; settled pieces are left out.
 * @errors A look on two rows of one day, an After that cannot be kept, and any cell of the looks that cannot be read are #VALUE!; a cell of a piece that cannot be read is the error in Why, and the other rows survive.
 * @source Common practice, no source.
 * @example =TACK.CLASHES({"Piece","Look","Out","Back";"P1","1, 2","2026-03-02",""},{"Look","Talent","Change","Shooting";1,"Mina",15,30;2,"Teo",20,25}) gives {"Piece","Look","Other look","Why";"P1",1,2,"look 2 needs it 30 minutes before look 1 is done"}
 * @example =TACK.CLASHES({"Piece","Look","Out","Back";"P1",1,"2026-03-12","";"P2",1,"2026-03-02","2026-03-10";"P3",1,"2026-03-02","2026-03-11"},{"Look","Change","Shooting","Date";1,15,30,"2026-03-10"}) gives {"Piece","Look","Other look","Why";"P1",1,"","out only 2026-03-12, needed 2026-03-10";"P2",1,"","back 2026-03-10, needed 2026-03-10"}
 * @example =TACK.CLASHES({"Piece","Look","Out","Back";"P1","1, 2","2026-03-02",""},{"Look","Talent","Change","Shooting";1,"Mina",15,30;2,"Mina",20,25}) gives {"Piece","Look","Other look","Why"}
 * @example =TACK.CLASHES({"Piece","Look","Out","Back";"P1",1,"2026-03-02",""},{"Look","Talent"}) fails looks has no column headed Shooting
 * @returns {any[][]} One row a clash.
 */
export function clashes(pieces: any[][], looks: any[][], columns?: any): any[][] {
  const tables = [
    { kind: "pieces", cells: rangeArgument(pieces) },
    { kind: "looks", cells: rangeArgument(looks) },
  ] as const;
  const lookNeeds = ["look", "shooting", ["change", "likely"]];
  const lookColumns = columnsOfTable(columns, tables, 1);
  const lookTable = readTable({ ...tables[1], needs: lookNeeds, columns: lookColumns, argument: "looks" });
  if (!lookTable.ok) return answerTable(lookTable);
  const listsPieces = lookTable.value.columnOf["pieces"] !== undefined;
  const pieceNeeds = [["piece", "description"], ...(listsPieces ? [] : ["look"]), "out", "back"];
  const uses = ["look", "shoot", "quantity", "quantityBack", "settled", "lender"];
  const pieceColumns = columnsOfTable(columns, tables, 0);
  const pieceTable = readTable({ ...tables[0], needs: pieceNeeds, uses, columns: pieceColumns, argument: "pieces" });
  if (!pieceTable.ok) return answerTable(pieceTable);
  const lookRows = readLooks(lookTable.value);
  if (!lookRows.ok) return answerTable(lookRows);
  const days = datedPlans(lookRows.value);
  if (!days.ok) return answerTable(days);
  const needed = readNeededPieces(pieceTable.value, lookRows.value);
  return answerTable(succeed(clashTable(clashesOf(needed, days.value))));
}
