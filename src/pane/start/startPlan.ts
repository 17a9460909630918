import type { BuildPlan, NewColumns, NewSheet } from "../../sheet/buildPlan";
import type { Cell } from "../../sheet/cell";
import { cellName } from "../../sheet/cellName";
import { headingVocabulary } from "../../sheet/headingVocabulary";
import { readHeading } from "../../sheet/readHeading";
import type { WorkbookSnapshot } from "../../sheet/sheetSnapshot";
import { exampleDay } from "./exampleDay";
import { exampleMark } from "./exampleMark";
import type { FoundTable } from "./FoundTable";
import { freeName } from "../freeName";
import type { StartTable } from "./StartTable";

/** What the user chose to begin with. */
export interface StartChoice {
  /** Tables to add, by id. */
  readonly tables: readonly string[];
  /** Headings to add to tables that are there, by the table's id. */
  readonly columns: Readonly<Partial<Record<string, readonly string[]>>>;
  readonly withExamples: boolean;
}

/** So many rows of a list are offered to choose from. */
const LIST_ROWS = 500;

/** The plan for what was chosen. Names that are taken get a number; lists point at the tables that are there or come. */
export function startPlan(
  found: readonly FoundTable[],
  workbook: WorkbookSnapshot,
  choice: StartChoice,
  today: number,
): BuildPlan {
  const sheetNames = workbook.sheets.map(({ name }) => name);
  const tableNames = [...sheetNames, ...workbook.sheets.flatMap(({ tables }) => tables.map(({ name }) => name))];
  const chosen = found.filter(({ start }) => choice.tables.includes(start.id));
  const names = new Map<string, { readonly sheet: string; readonly table: string }>();
  for (const { start } of chosen) {
    const sheet = freeName(start.name, sheetNames, " ");
    const table = freeName(
      start.name.replace(/(?: |^)(\p{L})/gu, (_, letter: string) => letter.toUpperCase()),
      tableNames,
      "",
    );
    sheetNames.push(sheet);
    tableNames.push(table);
    names.set(start.id, { sheet, table });
  }
  const addSheets = chosen.map(({ start }): NewSheet => {
    const examples = choice.withExamples ? start.examples.map((row) => exampleRow(start, row, today)) : [];
    const rows = [...start.rows, ...examples];
    return {
      name: names.get(start.id)!.sheet,
      tableName: names.get(start.id)!.table,
      headings: start.columns.map(({ heading }) => heading),
      rows: rows.length > 0 ? rows : [start.columns.map(() => null)],
      formats: start.columns.map(({ format }) => format),
      lists: start.columns.map(({ list }) => listSource(list, found, names)),
    };
  });
  const addColumns = found.flatMap(({ start, table, missing }): NewColumns[] => {
    const wanted = missing.filter(({ heading }) => choice.columns[start.id]?.includes(heading));
    if (table === null || wanted.length === 0) return [];
    return [
      {
        sheetId: table.sheetId,
        tableName: table.tableName ?? null,
        row: table.firstRow + table.headingRow,
        column: table.firstColumn + table.headings.length,
        rowCount: table.cells.length - table.headingRow,
        headings: wanted.map(({ heading }) => heading),
        formats: wanted.map(({ format }) => format),
      },
    ];
  });
  return { addSheets, removeSheets: [], addColumns, removeColumns: [] };
}

function exampleRow({ columns }: StartTable, row: readonly Cell[], today: number): readonly Cell[] {
  return columns.map(({ heading }, column) =>
    heading === "Note" ? exampleMark : exampleDay(row[column] ?? null, today),
  );
}

/** Where a list stands, as a reference; null where the table it belongs to neither is there nor comes. */
function listSource(
  list: string | null,
  found: readonly FoundTable[],
  names: ReadonlyMap<string, { readonly sheet: string }>,
): string | null {
  if (list === null || !list.startsWith("=")) return list;
  const [id = "", heading = ""] = list.slice(1).split(".");
  const other = found.find(({ start }) => start.id === id);
  const coming = names.get(id);
  if (other === undefined) return null;
  if (coming !== undefined) {
    const column = other.start.columns.findIndex((one) => one.heading === heading);
    return absolute(coming.sheet, 1, column);
  }
  const { table } = other;
  if (table === null) return null;
  const field = readHeading(table.kind, heading)?.readings[0]?.field ?? "";
  const column = headingVocabulary(table.kind).canonical.has(field) ? table.columnOf[field] : undefined;
  if (column === undefined) return null;
  return absolute(table.sheetName, table.firstRow + table.headingRow + 1, table.firstColumn + column);
}

function absolute(sheetName: string, row: number, column: number): string {
  const fixed = (at: number): string => cellName(at, column).replace(/^([A-Z]+)(\d+)$/, "$$$1$$$2");
  return `='${sheetName.replace(/'/g, "''")}'!${fixed(row)}:${fixed(row + LIST_ROWS - 1)}`;
}
