import { isoFromSerial } from "../../domain/dates/isoFromSerial";
import { readQuantity } from "../../sheet/readQuantity";
import { cellIn } from "../cellIn";
import { dayIn } from "../dayIn";
import { defineRule } from "../defineRule";
import { textIn } from "../textIn";

// Common practice, no source: how a short count is noted, in the five languages of the headings.
const SHORT =
  /\b(?:missing|short|lost|only \d+|\d+ (?:still )?(?:out|to come|outstanding)|not all|part(?:ial(?:ly)?)?|manque|manquante?s?|perdue?s?|falta|faltan|perdid[oa]s?|manca|mancano|pers[oi]|fehlt|fehlen|verloren)\b/i;

/** A blank means that all came back, and that is right nearly always: only a word in the row that says otherwise is reported. */
export const quantityBackMissing = defineRule({
  id: "quantityBackMissing",
  about: "Several pieces back, Quantity back blank, and a word in the row that says some are missing.",
  why: "A blank counts as all back, so the missing piece is no longer looked for.",
  severity: "warning",
  fixable: false,
  scope: "row",
  tables: ["pieces"],
  needs: ["quantity", "quantityBack", "back"],
  messages: {
    partial: '{{quantity}} went out and Back is {{back}}, but the row says "{{word}}". Type how many came back.',
  },
  check(row, report) {
    const back = dayIn(row, "back");
    if (back === null || cellIn(row, "quantityBack") !== null) return;
    const quantity = readQuantity(cellIn(row, "quantity"), "");
    if (!quantity.ok || quantity.value === null || quantity.value < 2) return;
    const word = [textIn(row, "conditionBack"), textIn(row, "note")]
      .map((text) => SHORT.exec(text ?? "")?.[0])
      .find((found) => found !== undefined);
    if (word === undefined) return;
    const data = { quantity: quantity.value, back: isoFromSerial(back), word };
    report({ row, field: "quantityBack", messageId: "partial", data });
  },
});
