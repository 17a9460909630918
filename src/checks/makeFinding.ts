import { readCell } from "../sheet/readCell";
import type { Finding } from "./finding";
import type { Remark, Rule } from "./rule";
import { sayMessage } from "./sayMessage";

/** The finding that a rule's remark comes to, with its place in the workbook. */
export function makeFinding(rule: Rule, remark: Remark<string>): Finding {
  const { table, row } = remark.row;
  const column = table.columnOf[remark.field] ?? 0;
  return {
    ruleId: rule.id,
    messageId: remark.messageId,
    severity: rule.severity,
    at: { sheetId: table.sheetId, row: table.firstRow + row, column: table.firstColumn + column },
    sheetName: table.sheetName,
    heading: table.headings[column] ?? "",
    raw: readCell(table.cells[row]?.[column]),
    data: remark.data,
    message: sayMessage(rule.messages[remark.messageId] ?? remark.messageId, remark.data),
    why: rule.why,
    ...(remark.fix === undefined ? {} : { fix: remark.fix }),
    suggestions: remark.suggestions ?? [],
  };
}
