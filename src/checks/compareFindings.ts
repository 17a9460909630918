import type { Finding } from "./finding";

/** The order of findings on one sheet: row, column, then rule and message, so that a list never jumps. */
export function compareFindings(a: Finding, b: Finding): number {
  return (
    a.at.row - b.at.row ||
    a.at.column - b.at.column ||
    (a.ruleId < b.ruleId ? -1 : a.ruleId > b.ruleId ? 1 : 0) ||
    (a.messageId < b.messageId ? -1 : a.messageId > b.messageId ? 1 : 0)
  );
}
