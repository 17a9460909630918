import type { Finding } from "../../../src/checks/finding";

/** A finding of which a test says only what matters to it. */
export function finding(part: Partial<Finding>): Finding {
  return {
    ruleId: "dateAsText",
    messageId: "typed",
    severity: "warning",
    at: { sheetId: "s0", row: 1, column: 0 },
    sheetName: "Loans",
    heading: "Due",
    raw: "5 Mar 2026",
    data: {},
    message: "It is text.",
    why: "Text does not sort.",
    suggestions: [],
    ...part,
  };
}
