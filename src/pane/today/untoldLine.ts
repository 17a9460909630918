import type { PieceRow } from "../../domain/loans/pieceRow";
import type { Problem } from "../../domain/problem";
import { sayProblem } from "../../domain/wording";
import { cellName } from "../../sheet/cellName";
import type { CellPosition } from "../../sheet/cellPosition";
import type { SheetTable } from "../../sheet/sheetTable";
import { namePiece } from "./namePiece";
import { placeOf } from "./placeOf";

/** A row that cannot be counted, with the sentence that says why. */
export interface UntoldLine {
  readonly at: CellPosition;
  readonly sheetName: string;
  readonly name: string;
  readonly sentence: string;
}

/**
 * A row that a problem in one of its cells keeps from being counted.
 *
 * The sentence names the cell as the sheet shows it; a function can only count the rows it was given.
 */
export function untoldLine(table: SheetTable, row: PieceRow, problem: Problem): UntoldLine {
  const field = Object.entries(row).find(([, held]) => held === problem)?.[0] ?? "out";
  const at = placeOf(table, row.row, [field, "value", "totalValue", "out"]);
  const heading = table.headings[at.column - table.firstColumn]?.trim() ?? "";
  const argument = `${heading} ${cellName(at.row, at.column)}`.trim();
  const facts = "argument" in problem.facts ? { ...problem.facts, argument } : problem.facts;
  const sentence = sayProblem({ ...problem, facts } as Problem);
  return { at, sheetName: table.sheetName, name: namePiece(row), sentence };
}
