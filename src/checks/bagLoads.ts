import { pieceGrams } from "../domain/carry/pieceGrams";
import { isProblem } from "../domain/isProblem";
import { isUndecided } from "../sheet/isUndecided";
import { nameKey } from "../sheet/nameKey";
import { readCarriedPieces } from "../sheet/readCarriedPieces";
import type { SheetTable } from "../sheet/sheetTable";
import type { CheckedRow } from "./checkedRow";
import type { CheckFacts } from "./checkFacts";
import { textIn } from "./textIn";

/** One bag of a table of pieces. */
interface BagLoad {
  /** As typed first. */
  readonly bag: string;
  readonly rows: readonly CheckedRow[];
  /** What is in it weighs at least so much. */
  readonly grams: number;
}

const GRAMS_PER_KG = 1000;

/**
 * The bags of a table in the order of the sheet, spellings of one bag as one, with what they weigh.
 *
 * Pieces that are back are no longer in their bag. What cannot be weighed has a finding of its own, and the bag is at least so heavy.
 */
export function bagLoads(table: SheetTable, facts: CheckFacts): readonly BagLoad[] {
  const pieces = readCarriedPieces(table, GRAMS_PER_KG);
  const bags = new Map<string, { readonly bag: string; readonly rows: CheckedRow[]; grams: number }>();
  for (const [index, row] of table.dataRows.entries()) {
    const checked = { table, row };
    const bag = textIn(checked, "bag");
    if (bag === null || isUndecided(bag)) continue;
    const loan = facts.loan(checked);
    if (loan !== null && (loan.back !== null || loan.isSettled)) continue;
    const piece = pieces.at(index);
    const grams = pieceGrams(piece);
    if (isProblem(grams) || isProblem(piece.quantity)) continue;
    const key = nameKey(bag) || bag;
    const seen = bags.get(key) ?? { bag, rows: [], grams: 0 };
    seen.rows.push(checked);
    seen.grams += grams * (piece.quantity || 1);
    bags.set(key, seen);
  }
  return [...bags.values()];
}
