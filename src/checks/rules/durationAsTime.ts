import { cellIn } from "../cellIn";
import { defineRule } from "../defineRule";
import { durationFields } from "../durationFields";
import { isTyped } from "../isTyped";
import { replaceCell } from "../replaceCell";

/** Nothing on a shoot day is meant to take longer; a longer time is likely a time of day in the wrong column. */
const LONGEST_MINUTES = 180;

/**
 * 0:15 is a fraction of a day that nobody types by hand, so the minutes are sure; a plain 0.5 may be half an hour, half a minute or
 * noon, so that is only suggested.
 */
export const durationAsTime = defineRule({
  id: "durationAsTime",
  about: "A duration typed as a time of day (0:15) where minutes are wanted (15).",
  why: "The day cannot be planned from it: 0:15 is a hundredth of a day to the sheet, not a quarter of an hour.",
  severity: "error",
  fixable: true,
  scope: "cell",
  tables: ["looks", "stops"],
  fields: durationFields,
  messages: {
    asTime: "{{clock}} is a time of day. Type the minutes: {{minutes}}.",
    fraction: "{{number}} is a part of a day, which would be {{minutes}} minutes. Type the minutes.",
  },
  check(row, field, report) {
    const cell = cellIn(row, field);
    const text = typeof cell === "string" ? /^\s*(\d{1,2}):([0-5]\d)\s*(?:h|hrs?|hours?)?\s*$/i.exec(cell) : null;
    const isFraction = typeof cell === "number" && cell > 0 && cell < 1;
    if (text === null && !isFraction) return;
    const exact = text === null ? Number(cell) * 1440 : Number(text[1]) * 60 + Number(text[2]);
    const minutes = Math.round(exact);
    const isSure = text !== null || (Math.abs(exact - minutes) < 1e-6 && !isRound(Number(cell)));
    const repair = { label: `Make it ${minutes} minutes`, edits: [replaceCell(row, field, minutes, "0")] };
    const isMendable = isTyped(row, field) && minutes > 0;
    const clock = `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}`;
    const suggestions = isMendable ? [repair] : [];
    if (!isSure)
      return report({ row, field, messageId: "fraction", data: { number: Number(cell), minutes }, suggestions });
    const remark = { row, field, messageId: "asTime", data: { clock, minutes } } as const;
    report(isMendable && minutes <= LONGEST_MINUTES ? { ...remark, fix: repair } : { ...remark, suggestions });
  },
});

/** A fraction that people type (0.5, 0.25), as against one that a clock makes (0.010416...). */
function isRound(fraction: number): boolean {
  return Math.abs(fraction * 1000 - Math.round(fraction * 1000)) < 1e-9;
}
