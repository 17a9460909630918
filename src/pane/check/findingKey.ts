import type { Finding } from "../../checks/finding";
import type { Cell } from "../../sheet/cell";
import type { SheetTable } from "../../sheet/sheetTable";
import type { TableKind } from "../../sheet/tableKind";
import { tableAt } from "../../sheet/tableAt";

/** What tells one row from another once rows have been sorted or inserted. */
const NAMING_FIELDS: Readonly<Record<TableKind, readonly string[]>> = {
  pieces: ["piece", "description", "lender", "look"],
  requests: ["lender", "asked", "wanted"],
  lenders: ["lender"],
  looks: ["date", "look", "talent"],
  day: ["date"],
  stops: ["stop"],
  receipts: ["shop", "bought", "amount"],
  shoes: ["shoes", "size"],
};

/**
 * What a finding is recognised by: its rule, its sheet and heading, what the cell holds, and the name of its row.
 *
 * The row's name and not its number, so that a finding stays ignored when rows are sorted or inserted, and comes
 * back when the value changes. A row without any name goes by its number. Two rows that are alike in all of this
 * share a key.
 */
export function findingKey(finding: Finding, tables: readonly SheetTable[]): string {
  const { at, ruleId, messageId, sheetName, heading, raw } = finding;
  const table = tableAt(at, tables);
  const parts = [
    ruleId,
    messageId,
    sheetName,
    heading,
    contentText(raw),
    table === undefined ? `row ${at.row}` : rowName(table, at.row),
  ];
  return JSON.stringify(parts);
}

function rowName(table: SheetTable, sheetRow: number): string {
  const row = sheetRow - table.firstRow;
  if (row === table.headingRow) return "headings";
  const names = NAMING_FIELDS[table.kind].map((field) => {
    const column = table.columnOf[field];
    return column === undefined ? "" : contentText((table.cells[row]?.[column] ?? null) as Cell);
  });
  return names.every((name) => name === "") ? `row ${sheetRow}` : names.join(" / ");
}

function contentText(cell: Cell): string {
  if (cell === null) return "";
  return typeof cell === "object" ? cell.error : String(cell).trim();
}
