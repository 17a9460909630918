import type { ColumnFormat, ResultTable } from "../resultTable";
import type { LenderTotal } from "./lenderTotal";

const COLUMNS: readonly (readonly [heading: string, format: ColumnFormat, field: keyof LenderTotal])[] = [
  ["Lender", "as is", "lender"],
  ["Pieces out", "as is", "piecesOut"],
  ["Value out", "money", "valueOut"],
  ["Next due", "date", "nextDue"],
  ["Late pieces", "as is", "latePieces"],
  ["Late value", "money", "lateValue"],
  ["Most days late", "as is", "mostDaysLate"],
  ["No due date", "as is", "piecesWithoutDue"],
  ["Unvalued", "as is", "piecesWithoutValue"],
];

/** What stands for the lender of pieces that have none. */
const NO_LENDER = "(no lender)";

/** The totals as they spill; the Currency column stands last, and only where the sheet has currencies. */
export function lenderTotalsTable(totals: readonly LenderTotal[], hasCurrencies: boolean): ResultTable {
  const columns = hasCurrencies ? [...COLUMNS, ["Currency", "as is", "currency"] as const] : COLUMNS;
  return {
    headings: columns.map(([heading]) => heading),
    formats: columns.map(([, format]) => format),
    rows: totals.map((total) =>
      columns.map(([, , field]) => (field === "lender" ? (total.lender ?? NO_LENDER) : total[field])),
    ),
  };
}
