import type { CellRule, Rule, RowRule, TableRule, WorkbookRule } from "./rule";

/**
 * One rule of the sheet check.
 *
 * Its message ids are checked against its messages where it is written; outside they are plain text,
 * so that rules of every scope stand in one list.
 */
export function defineRule<const MessageId extends string>(
  rule: CellRule<MessageId> | RowRule<MessageId> | TableRule<MessageId> | WorkbookRule<MessageId>,
): Rule {
  return rule as unknown as Rule;
}
