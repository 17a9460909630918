import { showGiven } from "../../domain/showGiven";
import { readMinutes } from "../../sheet/readMinutes";
import { cellIn } from "../cellIn";
import { defineRule } from "../defineRule";
import { durationFields } from "../durationFields";

const CLOCK = /^\s*\d{1,2}:[0-5]\d/;

/** "15 min" and "1h30" are read as they are meant; 0:15 has a rule of its own. */
export const durationNotRead = defineRule({
  id: "durationNotRead",
  about: "Something in a column of minutes that is no number of minutes.",
  why: "The day cannot be planned until every look says how long it takes.",
  severity: "error",
  fixable: false,
  scope: "cell",
  tables: ["looks", "stops"],
  fields: durationFields,
  messages: {
    noMinutes: '"{{given}}" is not a number of minutes. Type one like 15.',
  },
  check(row, field, report) {
    const cell = cellIn(row, field);
    if (cell === null || typeof cell === "object" || (typeof cell === "number" && cell > 0 && cell < 1)) return;
    if ((typeof cell === "string" && CLOCK.test(cell)) || readMinutes(cell, "").ok) return;
    report({ row, field, messageId: "noMinutes", data: { given: showGiven(cell) } });
  },
});
