import { cellIn } from "../cellIn";
import { defineRule } from "../defineRule";

export const minutesOutOfOrder = defineRule({
  id: "minutesOutOfOrder",
  about: "Low, likely and high minutes of a change that are not in that order.",
  why: "The chance that the day ends by wrap is worked out between them.",
  severity: "error",
  fixable: false,
  scope: "row",
  tables: ["looks"],
  needs: [],
  messages: {
    outOfOrder: "{{first}} {{less}} is above {{second}} {{more}}. Low is the least, high the most.",
  },
  check(row, report) {
    const pairs = [
      ["low", "likely"],
      ["likely", "high"],
      ["low", "high"],
    ] as const;
    for (const [first, second] of pairs) {
      const less = cellIn(row, first);
      const more = cellIn(row, second);
      if (typeof less !== "number" || typeof more !== "number" || less <= more || more < 1) continue;
      const heading = (field: string): string => row.table.headings[row.table.columnOf[field] ?? -1]?.trim() ?? field;
      report({
        row,
        field: first,
        messageId: "outOfOrder",
        data: { first: heading(first), less, second: heading(second), more },
      });
      return;
    }
  },
});
