import { showGiven } from "../../domain/showGiven";
import { readDate } from "../../sheet/readDate";
import { readDone } from "../../sheet/readDone";
import { readFlag } from "../../sheet/readFlag";
import { cellIn } from "../cellIn";
import { defineRule } from "../defineRule";

// Common practice, no source: how a piece that never comes back is noted, in the five languages of the headings.
const SETTLED =
  /lost|missing|stolen|bought|buy|purchas|sold|kept|keep|gift|given|donat|paid|pay|invoice|charge|writ\w*.?off|destroy|damag|compensat|replac|refund|insur|claim|settl|closed|perd[uio]|\bpers[oa]\b|vole|rachet|achet|offert|cadeau|vendu|paye|factur|rembours|remplac|verloren|gestohlen|gekauft|geschenk|verkauft|bezahlt|rechnung|ersetzt|rubat|comprat|acquist|regal|vendut|pagat|fattur|robad|comprad|vendid/;

/** "tbc" and the like settle nothing, and are read so. */
export const settledNotUnderstood = defineRule({
  id: "settledNotUnderstood",
  about: "Words in Settled that do not say lost, bought, gifted or the like.",
  why: "Whatever stands there takes the piece out of the value at risk and of what is late.",
  severity: "warning",
  fixable: false,
  scope: "cell",
  tables: ["pieces"],
  fields: { pieces: ["settled"] },
  messages: {
    counts:
      '"{{given}}" in Settled counts as no longer out. Write lost, bought or gifted if it is so, or clear the cell.',
  },
  check(row, field, report, facts) {
    const cell = cellIn(row, field);
    if (typeof cell !== "string") return;
    const isClear = facts.once("settled", cell, () => {
      if (readDone(cell, "") !== true || readFlag(cell, "").ok || readDate(cell, "").ok) return true;
      const plain = cell.normalize("NFD").replace(/[\u0300-\u036f]/g, "");
      return SETTLED.test(plain.toLowerCase());
    });
    if (!isClear) report({ row, field, messageId: "counts", data: { given: showGiven(cell) } });
  },
});
