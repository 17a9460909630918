import type { ColumnChoice } from "./columnChoice";
import { headingVocabulary } from "./headingVocabulary";
import { hintOfChosen } from "./hintOfChosen";
import { readHeading, type ColumnHint } from "./readHeading";
import { sameHeading } from "./sameHeading";
import type { TableKind } from "./tableKind";

/** Which column is which field, and where several could be. */
export interface AssignedColumns {
  /** Field to column, in the order of the vocabulary; a field that two headings could be is not here. */
  readonly columnOf: Readonly<Partial<Record<string, number>>>;
  readonly hintOf: Readonly<Partial<Record<string, ColumnHint>>>;
  /** Fields that more than one heading could be, with those columns. */
  readonly contested: ReadonlyMap<string, readonly number[]>;
  /** Choices whose heading is not in the row. */
  readonly absent: readonly ColumnChoice[];
}

/**
 * Gives each heading its field: first what was chosen by hand, then the plain headings, then those that give way, each to
 * the first of its fields that no plainer heading has; of these, one that can be a single field is plainer.
 */
export function assignColumns(
  headings: readonly string[],
  kind: TableKind,
  choices: readonly ColumnChoice[],
): AssignedColumns {
  const columnsOf = new Map<string, number[]>();
  const hints = new Map<number, ColumnHint>();
  const taken = new Set<number>();
  const absent: ColumnChoice[] = [];
  for (const choice of choices) {
    if (choice.heading === null) continue;
    const column = columnHeaded(headings, choice.heading);
    if (column < 0) absent.push(choice);
    else {
      columnsOf.set(choice.field, [column]);
      taken.add(column);
      const hint = hintOfChosen(kind, choice.field, choice.heading);
      if (hint !== undefined) hints.set(column, hint);
    }
  }
  const chosen = new Set(choices.map((choice) => choice.field));
  const givingWay: { column: number; fields: string[] }[] = [];
  headings.forEach((heading, column) => {
    const meaning = heading === "" ? null : readHeading(kind, heading);
    if (meaning === null) return;
    if (taken.has(column)) return;
    hints.set(column, meaning.hint);
    const plain = meaning.readings.find((reading) => !reading.givesWay);
    const fields = meaning.readings.map((reading) => reading.field).filter((field) => !chosen.has(field));
    if (plain === undefined) givingWay.push({ column, fields });
    else if (!chosen.has(plain.field)) append(columnsOf, plain.field, column);
  });
  // What can be one field alone goes first: in "No., Item" the number is the piece's, and Item its description.
  for (const isAlone of [true, false]) {
    const given = new Set(columnsOf.keys());
    for (const { column, fields } of givingWay.filter((one) => (one.fields.length === 1) === isAlone)) {
      const field = fields.find((name) => !given.has(name));
      if (field !== undefined) append(columnsOf, field, column);
    }
  }

  const columnOf: Partial<Record<string, number>> = {};
  const hintOf: Partial<Record<string, ColumnHint>> = {};
  const contested = new Map<string, readonly number[]>();
  for (const field of headingVocabulary(kind).canonical.keys()) {
    const columns = columnsOf.get(field);
    if (columns === undefined) continue;
    const [column] = columns;
    if (columns.length > 1) contested.set(field, columns);
    else {
      columnOf[field] = column;
      const hint = hints.get(column!);
      if (hint !== undefined && (hint.currency !== null || hint.unit !== null)) hintOf[field] = hint;
    }
  }
  return { columnOf, hintOf, contested, absent };
}

/** The column under a heading: one typed exactly so before one that says the same. */
function columnHeaded(headings: readonly string[], heading: string): number {
  const exact = headings.findIndex((typed) => typed.trim() === heading.trim());
  return exact >= 0 ? exact : headings.findIndex((typed) => sameHeading(typed, heading));
}

function append(columnsOf: Map<string, number[]>, field: string, column: number): void {
  const columns = columnsOf.get(field);
  if (columns === undefined) columnsOf.set(field, [column]);
  else columns.push(column);
}
