import { tables } from "../../../shared/start-tables.json";
import type { Cell } from "../../sheet/cell";
import { tableKinds } from "../../sheet/tableKinds";
import type { StartTable } from "./StartTable";

interface Written {
  readonly id: string;
  readonly name: string;
  readonly why: string;
  readonly needed: readonly string[];
  readonly columns: readonly (readonly string[])[];
  readonly rows?: readonly (readonly Cell[])[];
  readonly examples?: readonly (readonly Cell[])[];
}

/** The tables to begin with, from shared/start-tables.json, in the order they are offered. */
export const startTables: readonly StartTable[] = (tables as readonly Written[]).map((table) => ({
  ...table,
  kind: tableKinds.find((kind) => kind === table.id) ?? null,
  columns: table.columns.map(([heading = "", format = "", list = ""]) => ({
    heading,
    format: format === "" ? null : format,
    list: list === "" ? null : list,
  })),
  rows: (table.rows ?? []).map(withBlanks),
  examples: (table.examples ?? []).map(withBlanks),
}));

function withBlanks(row: readonly Cell[]): readonly Cell[] {
  return row.map((cell) => (cell === "" ? null : cell));
}
