import { isProblem } from "../../domain/isProblem";
import { openRefunds } from "../../domain/value/openRefunds";
import { sayProblem } from "../../domain/wording";
import type { CellPosition } from "../../sheet/cellPosition";
import { readReceipts } from "../../sheet/readReceipts";
import type { SheetTable } from "../../sheet/sheetTable";
import { placeOf } from "./placeOf";

/** A receipt on which money is still to come back. */
export interface RefundLine {
  readonly at: CellPosition;
  readonly sheetName: string;
  readonly shop: string;
  /** null where the receipt gives no day or no terms, or one that cannot be read. */
  readonly refundBy: number | null;
  readonly daysLeft: number | null;
  /** null where it cannot be told. */
  readonly toComeBack: number | null;
  /** "" where the sheet names none. */
  readonly currency: string;
  /** Why a figure cannot be told. */
  readonly sentence: string | null;
}

const NEEDS = ["shop", "bought", "amount", "terms"] as const;

/** The receipts that REFUNDS lists, in its order; null where no table has the columns it needs. */
export function refundsToday(tables: readonly SheetTable[], asOf: number): readonly RefundLine[] | null {
  const readable = tables.filter(
    ({ kind, columnOf }) => kind === "receipts" && NEEDS.every((field) => columnOf[field] !== undefined),
  );
  if (readable.length === 0) return null;
  const lines = readable.flatMap((table) => {
    const receipts = readReceipts(table);
    // Receipt by receipt, since the function's rows do not say which receipt they are of.
    return table.dataRows.flatMap((row, index) => {
      const { rows } = openRefunds({ count: 1, at: () => receipts.at(index), hasCurrencies: true }, asOf);
      return rows.map(([shop, day, daysLeft, toComeBack, currency]): RefundLine => {
        const problem = [toComeBack, day, shop, currency].find((cell) => isProblem(cell));
        const money = typeof toComeBack === "number" ? toComeBack : null;
        return {
          at: placeOf(table, row, money === null ? ["amount"] : ["terms"]),
          sheetName: table.sheetName,
          shop: typeof shop === "string" ? shop : `row ${table.firstRow + row + 1}`,
          refundBy: typeof day === "number" ? day : null,
          daysLeft: typeof daysLeft === "number" ? daysLeft : null,
          toComeBack: money,
          currency: typeof currency === "string" ? currency : "",
          sentence: isProblem(problem) ? sayProblem(problem) : null,
        };
      });
    });
  });
  // Sorting is stable: ties keep the order of the sheet.
  return lines.sort((a, b) => (a.refundBy === b.refundBy ? 0 : (a.refundBy ?? Infinity) - (b.refundBy ?? Infinity)));
}
