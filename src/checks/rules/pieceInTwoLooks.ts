import type { PlannedLook } from "../../domain/day/plannedDay";
import { readQuantity } from "../../sheet/readQuantity";
import { cellIn } from "../cellIn";
import type { CheckedRow } from "../checkedRow";
import type { CheckFacts } from "../checkFacts";
import { dayIn } from "../dayIn";
import { defineRule } from "../defineRule";
import { lookName } from "../lookName";

/** The planned times of the looks are compared, not their order: a piece is needed from the start of the change to the end of the shot. */
export const pieceInTwoLooks = defineRule({
  id: "pieceInTwoLooks",
  about: "A piece in two looks that need it at the same time.",
  why: "One of the two waits on set until the other is shot.",
  severity: "warning",
  fixable: false,
  scope: "row",
  tables: ["pieces"],
  uses: ["looks", "day"],
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
    const keys = new Set(named.map(({ key }) => key));
    for (const planned of plannedLooks(row, keys, facts)) {
      const spans = planned.map(spanOf).sort((a, b) => a.from - b.from);
      for (const [at, span] of spans.entries()) {
        const wearing = spans.slice(0, at).filter((earlier) => earlier.until > span.from + A_SECOND);
        if (wearing.length < (quantity.value || 1)) continue;
        const last = wearing.reduce((latest, earlier) => (earlier.until > latest.until ? earlier : latest));
        const data = { look: last.look, until: clock(last.until), other: span.look, from: clock(span.from) };
        return report({ row, field: "look", messageId: "overlap", data });
      }
    }
  },
});

const A_SECOND = 1 / 86_400;

/** The looks of a piece as planned, day by day; a piece with a shoot day is asked about that day alone. */
function plannedLooks(
  row: CheckedRow,
  keys: ReadonlySet<string>,
  facts: CheckFacts,
): readonly (readonly PlannedLook[])[] {
  const shoot = dayIn(row, "shoot");
  return facts.days().flatMap(({ date, plan }) => {
    if (!plan.ok || (shoot !== null && date !== null && date !== shoot)) return [];
    const looks = plan.value.looks.filter(({ look }) => keys.has(look.key));
    return looks.length < 2 ? [] : [looks];
  });
}

function spanOf({ look, steps, readyBy, shootUntil }: PlannedLook): { look: string; from: number; until: number } {
  return {
    look: lookName(String(look.label)),
    from: steps.find(({ kind }) => kind === "change")?.from ?? readyBy,
    until: shootUntil,
  };
}

function clock(time: number): string {
  const minutes = Math.round(time * 1440);
  return `${String(Math.floor(minutes / 60)).padStart(2, "0")}:${String(minutes % 60).padStart(2, "0")}`;
}
