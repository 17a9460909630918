import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import type { Reason } from "../domain/problem";
import { succeed } from "../domain/succeed";
import { findDataRows } from "./findDataRows";
import { readColumnChoices } from "./readColumnChoices";
import { readHeading } from "./readHeading";
import { readTable, type TableRequest } from "./readTable";
import { readText } from "./readText";
import { sameHeading } from "./sameHeading";
import type { Table } from "./table";

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
  const headed: Table[] = [];
  for (let row = 0; row < (cells?.length ?? 0); row++) {
    if (!mayBeHeadings(cells![row]!)) continue;
    for (const kind of KINDS) {
      const own = parts.filter((part) => isFor(part, kind, cells![row]!));
      const table = readTable({ ...REQUESTS[kind], cells: [cells![row]!], kind, columns: own.join(";") });
      if (!table.ok && !NOT_THAT_KIND.includes(table.problem.reason)) return table;
      if (!table.ok || (kind === "receipts" && !isReceipts(table.value))) continue;
      headed.push({ ...table.value, cells: cells!, headingRow: row });
      for (const part of own) unused.delete(part);
    }
  }
  for (const part of unused) {
    const [asReceipts, asPieces] = KINDS.map((kind) => readColumnChoices(part, kind));
    const kind = asReceipts!.ok || !asPieces!.ok ? "receipts" : "pieces";
    const refused = readTable({ cells, kind, needs: [], columns: part });
    if (!refused.ok) return refused;
  }
  if (headed.length > 0) return succeed(withRows(headed));
  const refused = readTable({ cells, kind: "receipts", needs: [] });
  if (!refused.ok) return refused;
  return fail("column-missing", { argument: "rows", column: "Amount, Rental fee or Deposit", field: "amount" });
}

/** Headings are words: a row with a number, or a text that begins with one, is data, and is not looked at any further. */
function mayBeHeadings(row: readonly unknown[]): boolean {
  for (let column = 0; column < row.length; column++) {
    if (typeof row[column] === "number" && row[column] !== 0) return false;
  }
  const texts = row.filter((cell) => typeof cell === "string");
  return texts.some((text) => text !== "") && !texts.some((text) => /^\W*\d/.test(text));
}

/** A pieces table with a price has no receipts in it: what a piece is worth was not spent. */
function isReceipts({ headings, columnOf }: Table): boolean {
  const asPiece = readHeading("pieces", headings[columnOf["amount"]!]!)?.readings[0]?.field ?? "";
  const isValue = asPiece === "value" || asPiece === "totalValue";
  return !isValue || ["shop", "kept", "amountRefunded"].some((field) => columnOf[field] !== undefined);
}

function isFor(part: string, kind: Kind, headings: readonly unknown[]): boolean {
  const choices = readColumnChoices(part, kind);
  return (
    choices.ok &&
    choices.value.every(
      ({ heading }) =>
        heading === null || headings.some((cell) => typeof cell === "string" && sameHeading(heading, cell)),
    )
  );
}

/** The tables with their rows of data, each ending where the next begins. */
function withRows(headed: readonly Table[]): MoneyTables {
  const tables = headed.map((table) => {
    const { cells, headingRow, headings, kind, columnOf } = table;
    const next = headed.find((other) => other.headingRow > headingRow)?.headingRow;
    const own = next === undefined ? cells : cells.slice(0, next);
    return { ...table, dataRows: findDataRows(own, headingRow, headings, kind, columnOf) };
  });
  return {
    receipts: tables.filter(({ kind }) => kind === "receipts"),
    pieces: tables.filter(({ kind }) => kind === "pieces"),
  };
}
