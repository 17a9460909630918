import type { TableKind } from "../sheet/tableKind";

/** What a rule can consult: a kind of table, or the notes beside the tables, whose fields are those of WorkbookNotes. */
export type CheckedPart = TableKind | "notes";
