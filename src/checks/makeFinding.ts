import type { NotedCell } from "../sheet/notedCell";
import { readCell } from "../sheet/readCell";
import type { CheckedRow } from "./checkedRow";
import type { Finding } from "./finding";
import type { Remark, Rule } from "./rule";
import { sayMessage } from "./sayMessage";

/** The finding that a rule's remark comes to, with its place in the workbook. */
export function makeFinding(rule: Rule, remark: Remark<string>): Finding {
  const { at, sheetName, heading, raw } = "cell" in remark ? remark.cell : cellOf(remark.row, remark.field);
  return {
    ruleId: rule.id,
    messageId: remark.messageId,
    severity: rule.severity,
    at,
    sheetName,
    heading,
    raw,
    data: remark.data,
    message: sayMessage(rule.messages[remark.messageId] ?? remark.messageId, remark.data),
    why: rule.why,
    ...(remark.fix === undefined ? {} : { fix: remark.fix }),
    suggestions: remark.suggestions ?? [],
  };
}

function cellOf({ table, row }: CheckedRow, field: string): NotedCell {
  const column = table.columnOf[field] ?? 0;
  return {
    at: { sheetId: table.sheetId, row: table.firstRow + row, column: table.firstColumn + column },
    sheetName: table.sheetName,
    heading: table.headings[column] ?? "",
    raw: readCell(table.cells[row]?.[column]),
  };
}
