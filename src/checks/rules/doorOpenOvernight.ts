import { sayClock } from "../../domain/sayClock";
import { readOpening } from "../../sheet/readOpening";
import { cellIn } from "../cellIn";
import { defineRule } from "../defineRule";
import { isTyped } from "../isTyped";
import { replaceCell } from "../replaceCell";

/** A door that is open longer than this across midnight is that of no showroom, shop or press office. */
const LONGEST_NIGHT = 14 / 24;
const HALF_DAY = 1 / 2;

/** A bare "6" beside "9" is read as the evening; a cell that holds the time 06:00 says the morning. */
export const doorOpenOvernight = defineRule({
  id: "doorOpenOvernight",
  about:
    "Opening times that run through the night into the next morning, most likely an evening typed without its half of the day.",
  why: "Read as they stand, a run may be planned for a door that has been closed for hours.",
  severity: "warning",
  fixable: false,
  scope: "row",
  tables: ["stops", "lenders"],
  needs: ["open"],
  messages: {
    overnight: "Open from {{opens}} until {{closes}} the next morning. If the evening is meant, type {{evening}}.",
  },
  check(row, report) {
    const opening = readOpening(cellIn(row, "open") || null, cellIn(row, "close") || null, "", "");
    if (!opening.ok) return;
    for (const { from, until } of opening.value ?? []) {
      if (until <= 1 || until - from <= LONGEST_NIGHT) continue;
      const field = row.table.columnOf["close"] === undefined || cellIn(row, "close") === null ? "open" : "close";
      const closes = until - 1;
      const evening = sayClock(closes + HALF_DAY);
      const suggestions =
        typeof cellIn(row, field) === "number" && isTyped(row, field)
          ? [{ label: `Write ${evening}`, edits: [replaceCell(row, field, closes + HALF_DAY)] }]
          : [];
      const data = { opens: sayClock(from), closes: sayClock(closes), evening };
      return report({ row, field, messageId: "overnight", data, suggestions });
    }
  },
});
