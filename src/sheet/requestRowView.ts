import type { FieldValue } from "../domain/fieldValue";
import type { RequestAnswer, RequestRow } from "../domain/loans/requestRow";
import { dayAt } from "./dayAt";
import { doneAt } from "./doneAt";
import type { Table } from "./table";

/** A requests table, which column is which, and how its answers are read. */
export interface RequestSource {
  readonly table: Table;
  readonly columns: Readonly<Record<Exclude<keyof RequestRow, "row">, number>>;
  readonly answerAt: (row: number) => FieldValue<RequestAnswer>;
}

/** One row of a requests table, each field read from its cell when it is asked for; a class for the reason PieceRowView is one. */
export class RequestRowView implements RequestRow {
  constructor(
    private readonly source: RequestSource,
    readonly row: number,
  ) {}

  get asked(): RequestRow["asked"] {
    return dayAt(this.source.table, this.row, this.source.columns.asked);
  }
  get neededBy(): RequestRow["neededBy"] {
    return dayAt(this.source.table, this.row, this.source.columns.neededBy);
  }
  get answer(): RequestRow["answer"] {
    return this.source.answerAt(this.row);
  }
  get answered(): RequestRow["answered"] {
    return dayAt(this.source.table, this.row, this.source.columns.answered);
  }
  get collected(): RequestRow["collected"] {
    return doneAt(this.source.table, this.row, this.source.columns.collected);
  }
}
