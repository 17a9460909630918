import type { FieldValue } from "../domain/fieldValue";
import type { RequestAnswer } from "../domain/loans/requestRow";
import type { RequestRows } from "../domain/loans/requestRows";
import { argumentAt } from "./argumentAt";
import { readAnswer } from "./readAnswer";
import { type RequestSource, RequestRowView } from "./requestRowView";
import type { Table } from "./table";

/**
 * The rows of a requests table, each field read from its cell when it is asked for and no cell read otherwise.
 *
 * A 0 is blank, as some hosts send blank cells so. A problem names the heading and the row, counted from 1 in the range as
 * passed.
 */
export function readRequests(table: Table): RequestRows {
  const { cells, columnOf, dataRows } = table;
  const column = (field: keyof RequestSource["columns"]): number => columnOf[field] ?? -1;
  const answerColumn = column("answer");
  // The same few answers stand in all rows, and reading one costs more than the rest of its row.
  const answerOf = new Map<string, FieldValue<RequestAnswer>>();
  const answerAt = (row: number): FieldValue<RequestAnswer> => {
    if (answerColumn < 0) return null;
    const raw = cells[row]![answerColumn];
    if (raw === null || raw === undefined || raw === "") return null;
    if (typeof raw !== "string") return readAnswer(raw, argumentAt(table, row, answerColumn));
    let answer = answerOf.get(raw);
    if (answer === undefined) answerOf.set(raw, (answer = readAnswer(raw, "")));
    return answer;
  };
  const columns: RequestSource["columns"] = {
    asked: column("asked"),
    neededBy: column("neededBy"),
    answer: answerColumn,
    answered: column("answered"),
    collected: column("collected"),
  };
  const source: RequestSource = { table, columns, answerAt };
  return { count: dataRows.length, at: (index) => new RequestRowView(source, dataRows[index]!) };
}
