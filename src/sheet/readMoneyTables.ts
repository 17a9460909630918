import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import type { Reason } from "../domain/problem";
import { succeed } from "../domain/succeed";
import { isFilledCell } from "./isFilledCell";
import { readCell } from "./readCell";
import { readColumnChoices } from "./readColumnChoices";
import { readHeading } from "./readHeading";
import { readTable, type TableRequest } from "./readTable";
import { readText } from "./readText";
import { sameHeading } from "./sameHeading";
import type { Table } from "./table";

type Cells = NonNullable<TableRequest["cells"]>;

/** The tables of a range that say what a job costs: receipts, and pieces with a rental fee or a deposit. */
interface MoneyTables {
  readonly receipts: readonly Table[];
  readonly pieces: readonly Table[];
}

const REQUESTS = {
  receipts: { needs: ["amount"], uses: ["job", "kept", "refunded", "amountRefunded", "currency"] },
  pieces: {
    needs: [["rentalFee", "deposit"]],
    uses: ["job", "out", "back", "settled", "quantity", "quantityBack", "currency"],
  },
} as const;
const KINDS = ["receipts", "pieces"] as const;
type Kind = (typeof KINDS)[number];

/** What says that a range, or a part of it, is not a table of that kind; every other problem is the user's to mend. */
const NOT_THAT_KIND: readonly Reason[] = ["heading-row-missing", "column-missing"];

/**
 * The receipts and the rented pieces of one range: a table of either, one table with the columns of both, or both tables
 * one below the other, as VSTACK puts them.
 *
 * Each part of `columns` goes to the tables that have its heading. Problems: those of readTable and of the columns argument.
 */
export function readMoneyTables(cells: TableRequest["cells"], columns: unknown): Outcome<MoneyTables> {
  const text = columns === 0 ? succeed(null) : readText(columns, "columns");
  if (!text.ok) return text;
  const parts = (text.value ?? "").split(/[;\n]/).filter((part) => part.trim() !== "");
  const unused = new Set(parts);
  const tables: Record<Kind, Table[]> = { receipts: [], pieces: [] };
  let missing: Outcome<Table> | null = null;
  for (const section of sectionsOf(cells, parts)) {
    for (const kind of KINDS) {
      const own = parts.filter((part) => isFor(part, kind, section.cells));
      const table = readTable({ ...REQUESTS[kind], cells: section.cells, kind, columns: own.join(";") });
      if (!table.ok) {
        if (!NOT_THAT_KIND.includes(table.problem.reason)) return table;
        if (kind === "receipts") missing ??= table;
      } else if (kind === "pieces" || isReceipts(table.value)) {
        tables[kind].push(moved(table.value, cells!, section.firstRow));
        for (const part of own) unused.delete(part);
      }
    }
  }
  for (const part of unused) {
    const [asReceipts, asPieces] = KINDS.map((kind) => readColumnChoices(part, kind));
    const kind = asReceipts!.ok || !asPieces!.ok ? "receipts" : "pieces";
    const refused = readTable({ cells, kind, needs: [], columns: part });
    if (!refused.ok) return refused;
  }
  if (tables.receipts.length + tables.pieces.length > 0) return succeed(tables);
  if (missing !== null && !missing.ok && missing.problem.reason !== "column-missing") return missing;
  return fail("column-missing", { argument: "rows", column: "Amount, Rental fee or Deposit", field: "amount" });
}

/** A pieces table with a price has no receipts in it: what a piece is worth was not spent. */
function isReceipts({ headings, columnOf }: Table): boolean {
  const asPiece = readHeading("pieces", headings[columnOf["amount"]!]!)?.readings[0]?.field ?? "";
  const isValue = asPiece === "value" || asPiece === "totalValue";
  return !isValue || ["shop", "kept", "amountRefunded"].some((field) => columnOf[field] !== undefined);
}

interface Section {
  readonly firstRow: number;
  readonly cells: TableRequest["cells"];
}

/** A range cut before each row that heads a table of either kind, but for the first. */
function sectionsOf(cells: TableRequest["cells"], parts: readonly string[]): readonly Section[] {
  if (cells === null) return [{ firstRow: 0, cells }];
  const starts = [0];
  let seen = false;
  for (let row = 0; row < cells.length; row++) {
    if (!isHeadingRow(cells[row]!, parts)) continue;
    if (seen) starts.push(row);
    seen = true;
  }
  return starts.map((firstRow, place) => ({ firstRow, cells: cells.slice(firstRow, starts[place + 1]) }));
}

function isHeadingRow(row: readonly unknown[], parts: readonly string[]): boolean {
  if (!Array.isArray(row)) return false;
  // Rows of data have a number in them, nearly all.
  for (let column = 0; column < row.length; column++) {
    if (typeof row[column] === "number" && row[column] !== 0) return false;
  }
  const filled = row.filter(isFilledCell).map(readCell);
  if (filled.filter((cell) => typeof cell === "string").length < 2) return false;
  return KINDS.some((kind) => {
    const columns = parts.filter((part) => isFor(part, kind, [row])).join(";");
    return readTable({ ...REQUESTS[kind], cells: [row], kind, columns }).ok;
  });
}

function isFor(part: string, kind: Kind, cells: TableRequest["cells"]): boolean {
  const choices = readColumnChoices(part, kind);
  if (!choices.ok) return false;
  const heads = (cells ?? []).slice(0, 20);
  return choices.value.every(
    ({ heading }) =>
      heading === null ||
      heads.some((row) => row.some((cell) => typeof cell === "string" && sameHeading(heading, cell))),
  );
}

/** A table of a section, its rows counted in the whole range. */
function moved(table: Table, cells: Cells, firstRow: number): Table {
  if (firstRow === 0) return { ...table, cells };
  const { headingRow, dataRows } = table;
  return { ...table, cells, headingRow: headingRow + firstRow, dataRows: dataRows.map((row) => row + firstRow) };
}
