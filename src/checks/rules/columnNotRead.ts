import { headingVocabulary } from "../../sheet/headingVocabulary";
import { readCell } from "../../sheet/readCell";
import { remarkFields } from "../../sheet/remarkFields";
import type { SheetTable } from "../../sheet/sheetTable";
import { defineRule } from "../defineRule";
import { likelyColumns } from "../likelyColumns";

/** What the lists and totals of a pieces table cannot do without, and what its cells would look like. */
const NEEDED = [
  { fields: ["lender"], likely: "lender" },
  { fields: ["value", "totalValue"], likely: "value" },
  { fields: ["out"], likely: "day" },
  { fields: ["due", "terms"], likely: "day" },
] as const;

/** A table may do without any of them: only a heading without a meaning, over cells that look like it, is worth a word. */
export const columnNotRead = defineRule({
  id: "columnNotRead",
  about:
    "A heading that is not understood over what could be the lender, the value or a day, and two headings for one thing.",
  why: "Nothing is totalled, valued or late by a column that is not read, though every cell of it is right.",
  severity: "warning",
  fixable: false,
  scope: "table",
  tables: ["pieces", "lenders", "looks", "requests", "receipts", "stops", "shoes", "day"],
  needs: [],
  messages: {
    missing: 'No heading is read as {{field}}, and "{{heading}}" may be it. Choose it under Columns.',
    undecided: '"{{heading}}" and "{{other}}" could both be {{field}}, so neither is read. Choose one under Columns.',
  },
  check(table, report) {
    for (const [field, [first, second]] of table.contested ?? []) {
      if (remarkFields.has(field) || first === undefined || second === undefined) continue;
      const data = { heading: headingOf(table, first), other: headingOf(table, second), field: nameOf(table, field) };
      report({ cell: headingCell(table, first), messageId: "undecided", data });
    }
    if (table.kind !== "pieces") return;
    const isKnown = (field: string): boolean =>
      table.columnOf[field] !== undefined || table.contested?.has(field) === true;
    const said = new Set<number>();
    for (const { fields, likely } of NEEDED) {
      if (fields.some(isKnown)) continue;
      const column = likelyColumns(table, likely).find((one) => !said.has(one));
      if (column === undefined) continue;
      said.add(column);
      const data = { heading: headingOf(table, column), field: nameOf(table, fields[0]) };
      report({ cell: headingCell(table, column), messageId: "missing", data });
    }
  },
});

function nameOf({ kind }: SheetTable, field: string): string {
  return headingVocabulary(kind).canonical.get(field) ?? field;
}

function headingOf(table: SheetTable, column: number): string {
  return (table.headings[column] ?? "").trim();
}

function headingCell(table: SheetTable, column: number) {
  const { sheetId, sheetName, firstRow, firstColumn, headingRow, headings, cells } = table;
  return {
    at: { sheetId, row: firstRow + headingRow, column: firstColumn + column },
    sheetName,
    heading: headings[column] ?? "",
    raw: readCell(cells[headingRow]?.[column]),
  };
}
