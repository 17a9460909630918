import type { CheckedWorkbook } from "../../src/checks/checkedWorkbook";
import { columnNumber } from "./columnNumber";
import type { Cell } from "../../src/sheet/cell";
import type { SheetSnapshot, TableArea } from "../../src/sheet/sheetSnapshot";
import type { SheetTable } from "../../src/sheet/sheetTable";
import type { TableKind } from "../../src/sheet/tableKind";

/** A small workbook as a test writes it: rows under canonical headings, one sheet a kind, headings in row 1. */
export interface Sample {
  readonly tables: Partial<Record<TableKind, readonly (readonly Cell[])[]>>;
  /** "pieces!B2" to the formula behind that cell. */
  readonly formulas?: Readonly<Record<string, string>>;
  /** What headings say of currency or unit. */
  readonly hints?: Partial<Record<TableKind, SheetTable["hintOf"]>>;
  /** Headings that mean nothing; all others are columns of their own name. */
  readonly unread?: Partial<Record<TableKind, readonly string[]>>;
  /** Fields that several headings could be, which are then in no column. */
  readonly contested?: Partial<Record<TableKind, Readonly<Record<string, readonly string[]>>>>;
  readonly dateSystem?: 1900 | 1904;
  /** Sheets of their own with notes, by name; a sheet's `table` names the host's table that all its cells are. */
  readonly beside?: Readonly<Record<string, { readonly rows: readonly (readonly Cell[])[]; readonly table?: string }>>;
}

/** The fields of headings that camel case does not give. */
const FIELD_OF_HEADING: Readonly<Record<string, string>> = { hairAndMakeUp: "hairMakeup", makeUpFirst: "makeupFirst" };

/** "Quantity back" is quantityBack; the tests of the check do not lean on the vocabulary of headings. */
function fieldOf(heading: string): string {
  const words = heading.split(/[\s-]+/);
  const field = words
    .map((word, index) => (index === 0 ? word.toLowerCase() : word[0]?.toUpperCase() + word.slice(1).toLowerCase()))
    .join("");
  return FIELD_OF_HEADING[field] ?? field;
}

/** The tables of a sample as the check reads them. */
export function workbookOf(sample: Sample): CheckedWorkbook {
  const kinds = Object.keys(sample.tables) as TableKind[];
  const workbook = { dateSystem: sample.dateSystem ?? 1900, tables: kinds.map((kind) => sheetTableOf(sample, kind)) };
  if (sample.beside === undefined) return workbook;
  const sheets = workbook.tables.map(({ kind }) => sheetOf(kind, [], []));
  const beside = Object.entries(sample.beside).map(([name, { rows, table }]) => {
    const area = { row: 0, column: 0, rowCount: rows.length, columnCount: rows[0]?.length ?? 0 };
    return sheetOf(name, rows, table === undefined ? [] : [{ name: table, ...area }]);
  });
  return { ...workbook, sheets: [...sheets, ...beside] };
}

function sheetOf(name: string, values: readonly (readonly Cell[])[], tables: readonly TableArea[]): SheetSnapshot {
  const formulas = values.map((row) => row.map(() => null));
  const place = { sheetId: name, name, visible: true, isProtected: false, firstRow: 0, firstColumn: 0 };
  return { ...place, values, formulas, tables };
}

function sheetTableOf(sample: Sample, kind: TableKind): SheetTable {
  const cells = sample.tables[kind] ?? [];
  const headings = (cells[0] ?? []).map(String);
  const formulas: (string | null)[][] = cells.map((row) => row.map(() => null));
  for (const [place, formula] of Object.entries(sample.formulas ?? {})) {
    const [, sheet, column, row] = /^(\w+)!([A-Z]+)(\d+)$/.exec(place) ?? [];
    if (sheet === kind) formulas[Number(row) - 1]![columnNumber(column!)] = formula;
  }
  const contested = sample.contested?.[kind] ?? {};
  const aside = [...(sample.unread?.[kind] ?? []), ...Object.values(contested).flat()];
  const isAside = (heading: string): boolean => aside.includes(heading);
  const isFilled = (row: readonly Cell[]): boolean => row.some((cell) => cell !== null && cell !== "");
  return {
    kind,
    cells,
    formulas,
    headingRow: 0,
    headings,
    columnOf: Object.fromEntries(
      headings.flatMap((heading, column) => (isAside(heading) ? [] : [[fieldOf(heading), column]])),
    ),
    contested: new Map(
      Object.entries(contested).map(([field, names]) => [field, names.map((name) => headings.indexOf(name))]),
    ),
    dataRows: cells.flatMap((row, index) => (index > 0 && isFilled(row) ? [index] : [])),
    sheetId: kind,
    sheetName: kind,
    firstRow: 0,
    firstColumn: 0,
    ...(sample.hints?.[kind] === undefined ? {} : { hintOf: sample.hints[kind] }),
  };
}
