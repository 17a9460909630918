import { isoFromSerial } from "../../domain/dates/isoFromSerial";
import { readIsOutside } from "../../sheet/readIsOutside";
import { readKind } from "../../sheet/readKind";
import { cellIn } from "../cellIn";
import type { CheckedRow } from "../checkedRow";
import type { CheckFacts } from "../checkFacts";
import { dayIn } from "../dayIn";
import { defineRule } from "../defineRule";
import { holdsSomething } from "../holdsSomething";
import { listedRow } from "../listedRow";
import { lookName } from "../lookName";
import { solesTape } from "../solesTape";
import { textIn } from "../textIn";

/** Soles are taped the day before: common practice, no source. */
const DAYS_BEFORE = 1;

/** Only where the notes of other shoes speak of tape, so that the sheet keeps count of it, and the look is shot on the day or the next. */
export const solesNotTaped = defineRule({
  id: "solesNotTaped",
  about:
    "Shoes of a look shot outside today or tomorrow whose note says nothing of tape, while that of other shoes does.",
  why: "Bare soles are worn after one walk outside, and a worn sole is the price of the pair.",
  severity: "note",
  fixable: false,
  scope: "table",
  tables: ["pieces"],
  uses: ["looks"],
  needs: ["look", "note"],
  messages: {
    bare: "Look {{look}} is shot outside on {{day}}. Tape the soles, painter's tape with cloth gaffer tape over it, and say so in the note.",
  },
  check(table, report, facts) {
    const shoes = table.dataRows.map((row) => ({ table, row })).filter((row) => isForFeet(row, facts));
    const isTaped = (row: CheckedRow): boolean => solesTape.taped.test(textIn(row, "note") ?? "");
    if (!shoes.some(isTaped)) return;
    for (const row of shoes) {
      if (isTaped(row) || solesTape.cloth.test(textIn(row, "note") ?? "")) continue;
      if (["back", "settled", "tapeOff"].some((field) => holdsSomething(row, field))) continue;
      for (const { name, key } of facts.looksOf(row)) {
        const listed = listedRow(key, row, facts);
        const day = listed === null ? null : dayIn(listed, "date");
        if (listed === null || day === null || day < facts.asOf || day > facts.asOf + DAYS_BEFORE) continue;
        const where = readIsOutside(cellIn(listed, "where"), "");
        if (!where.ok || where.value !== true) continue;
        report({ row, field: "note", messageId: "bare", data: { look: lookName(name), day: isoFromSerial(day) } });
        break;
      }
    }
  },
});

function isForFeet(row: CheckedRow, facts: CheckFacts): boolean {
  const thing = textIn(row, "kind") ?? textIn(row, "description") ?? "";
  const kind = facts.once("kind", thing, () => readKind(thing));
  return kind === "shoes" || kind === "boots";
}
