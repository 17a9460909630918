import { readIsOutside } from "../../sheet/readIsOutside";
import { readKind } from "../../sheet/readKind";
import { cellIn } from "../cellIn";
import { defineRule } from "../defineRule";
import { holdsSomething } from "../holdsSomething";
import { listedRow } from "../listedRow";
import { lookName } from "../lookName";
import { solesTape } from "../solesTape";
import { textIn } from "../textIn";

/** Only where the note says that the soles are taped: most sheets do not, and tape is put on the day before. */
export const solesTapedForInside = defineRule({
  id: "solesTapedForInside",
  about: "Shoes of a look that is shot outside, whose note speaks of tape but not of cloth gaffer tape.",
  why: "Painter's tape alone wears through outside, and a worn sole is the price of the pair.",
  severity: "note",
  fixable: false,
  scope: "row",
  tables: ["pieces"],
  uses: ["looks"],
  needs: ["look", "note"],
  messages: {
    noGaffer: "Look {{look}} is shot outside. Put cloth gaffer tape over the painter's tape, and say so in the note.",
  },
  check(row, report, facts) {
    const note = textIn(row, "note");
    if (note === null || !solesTape.taped.test(note) || solesTape.cloth.test(note) || solesTape.takenOff.test(note))
      return;
    if (holdsSomething(row, "back") || holdsSomething(row, "tapeOff")) return;
    const thing = textIn(row, "kind") ?? textIn(row, "description") ?? "";
    const kind = facts.once("kind", thing, () => readKind(thing));
    if (kind !== "shoes" && kind !== "boots") return;
    for (const { name, key } of facts.looksOf(row)) {
      const listed = listedRow(key, row, facts);
      const where = listed === null ? null : readIsOutside(cellIn(listed, "where"), "");
      if (where === null || !where.ok || where.value !== true) continue;
      return report({ row, field: "note", messageId: "noGaffer", data: { look: lookName(name) } });
    }
  },
});
