import { looksOfPiece } from "../../domain/day/looksOfPiece";
import { pieceOverlaps } from "../../domain/day/pieceOverlaps";
import type { PlannedLook } from "../../domain/day/plannedDay";
import { readQuantity } from "../../sheet/readQuantity";
import { cellIn } from "../cellIn";
import { dayIn } from "../dayIn";
import { defineRule } from "../defineRule";
import { lookName } from "../lookName";
import { sayClock } from "../../domain/sayClock";

/** The planned times of the looks are compared, not their order: a piece is needed from the start of the change to the end of the shot, as if no look waited for it. */
export const pieceInTwoLooks = defineRule({
  id: "pieceInTwoLooks",
  about: "A piece in two looks that need it at the same time.",
  why: "One of the two waits on set until the other is shot.",
  severity: "warning",
  fixable: false,
  scope: "row",
  tables: ["pieces"],
  uses: ["looks", "day", "notes"],
  reads: { notes: ["crew", "days"] },
  needs: ["look"],
  messages: {
    overlap:
      "Look {{other}} is changed from {{from}}, while look {{look}} wears this piece until {{until}}. Move one of them, or find a second piece.",
  },
  check(row, report, facts) {
    const named = facts.looksOf(row);
    if (named.length < 2) return;
    const quantity = readQuantity(cellIn(row, "quantity"), "");
    if (!quantity.ok) return;
    const looks = named.flatMap(({ key }) => looksOfPiece(key, dayIn(row, "shoot"), facts.plansApart()));
    const [first] = pieceOverlaps(looks, quantity.value || 1);
    if (first === undefined) return;
    const { wearing, needing, from, until } = first;
    const data = { look: nameOf(wearing), until: sayClock(until), other: nameOf(needing), from: sayClock(from) };
    report({ row, field: "look", messageId: "overlap", data });
  },
});

function nameOf({ look }: PlannedLook): string {
  return lookName(String(look.label));
}
