import { looksOfPiece } from "../../domain/day/looksOfPiece";
import { neededFrom } from "../../domain/day/neededFrom";
import { nameKey } from "../../sheet/nameKey";
import { readOpening } from "../../sheet/readOpening";
import { cellIn } from "../cellIn";
import type { CheckedRow } from "../checkedRow";
import type { CheckFacts } from "../checkFacts";
import { dayIn } from "../dayIn";
import { defineRule } from "../defineRule";
import { lookName } from "../lookName";
import { sayClock } from "../../domain/sayClock";
import { textIn } from "../textIn";

/** A piece that goes out on the day of its look is with the stylist from the lender's opening on at the soonest; the way is not counted. */
export const talentBeforePiece = defineRule({
  id: "talentBeforePiece",
  about: "A talent who is changed into a look before a piece of it, collected that day, can be fetched.",
  why: "The talent stands in hair and make-up, and the clothes are behind a closed door.",
  severity: "warning",
  fixable: false,
  scope: "row",
  tables: ["pieces"],
  uses: ["looks", "day", "lenders", "notes"],
  reads: { notes: ["crew", "days"] },
  needs: ["look", "out", "lender"],
  messages: {
    closed:
      "Look {{look}} is changed at {{from}} that day, but {{lender}} opens only at {{opens}}. Collect the piece the day before, or call the talent later.",
  },
  check(row, report, facts) {
    const out = dayIn(row, "out");
    if (out === null || out < facts.asOf) return;
    const named = facts.looksOf(row);
    const lender = textIn(row, "lender");
    if (named.length === 0 || lender === null) return;
    const opens = opensAt(lender, facts);
    if (opens === null) return;
    for (const { key } of named) {
      for (const { day, planned } of looksOfPiece(key, dayIn(row, "shoot"), facts.plans())) {
        if ((day.date ?? dayIn(row, "shoot")) !== out) continue;
        // Where nobody says when the day begins, its hours are made up.
        const isTimed =
          planned.look.arrivesAt !== null ||
          facts.days().some((each) => each.said.call !== null && each.plan.ok && each.plan.value === day.plan);
        const from = neededFrom(planned);
        if (!isTimed || from >= opens) continue;
        const data = {
          look: lookName(String(planned.look.label)),
          from: sayClock(from),
          lender,
          opens: sayClock(opens),
        };
        return report({ row, field: "out", messageId: "closed", data });
      }
    }
  },
});

function opensAt(lender: string, facts: CheckFacts): number | null {
  const listed: CheckedRow | undefined = facts.lenders()?.get(nameKey(lender))?.row;
  if (listed === undefined) return null;
  const opening = facts.once("opening", lender, () =>
    readOpening(cellIn(listed, "open"), cellIn(listed, "close"), "", ""),
  );
  return opening.ok && opening.value !== null ? Math.min(...opening.value.map(({ from }) => from)) : null;
}
