import { isoFromSerial } from "../../domain/dates/isoFromSerial";
import type { PieceRow } from "../../domain/loans/pieceRow";
import type { PieceRows } from "../../domain/loans/pieceRows";
import { amountFromTenThousandths } from "../../domain/value/amountFromTenThousandths";
import { tenThousandths } from "../../domain/value/tenThousandths";
import { valueCurve } from "../../domain/value/valueCurve";
import type { ValueStep } from "../../domain/value/valueStep";
import { withStepsAt } from "../../domain/value/withStepsAt";
import type { CoverNote } from "../../sheet/coverNote";
import { coverStated } from "../../sheet/coverStated";
import { readPieces } from "../../sheet/readPieces";
import type { CheckedWorkbook } from "../checkedWorkbook";
import { defineRule } from "../defineRule";

/**
 * The value is that of COVERGAP: the back day counts, and pieces without a value, or with one that cannot be read, add nothing.
 * A note or a row without a date speaks of every day that has no cover of its own. Days that are over are left alone, and so are
 * values in two currencies.
 */
export const coverPassed = defineRule({
  id: "coverPassed",
  about: "More on the rail than the insurance limit that the workbook states.",
  why: "What is above the limit of the insurance is the stylist's own risk.",
  severity: "warning",
  fixable: false,
  scope: "workbook",
  tables: ["day", "pieces"],
  uses: ["notes"],
  reads: { notes: ["covers"] },
  messages: {
    passed:
      "{{value}} on the rail on {{day}}, {{over}} above the cover of {{cover}}. Have the cover raised for that time, or take pieces in later or back sooner.",
  },
  check(workbook, report, facts) {
    const { covers } = facts.notes;
    if (covers.length === 0) return;
    const curve = valueCurve(allPieces(workbook), true);
    if (!curve.ok) return;
    const { currency } = curve.value;
    const { everyDay, byDay } = coverStated(covers, "all", currency, true);
    const steps = withStepsAt(curve.value.steps, [facts.asOf, ...byDay.keys()]).filter(({ day }) => day >= facts.asOf);
    const say = (note: CoverNote, held: ValueStep | null): void => {
      const cover = note.limit.ok ? note.limit.value.amount : Infinity;
      if (held === null || held.value <= tenThousandths(cover)) return;
      const value = amountFromTenThousandths(held.value);
      const over = amountFromTenThousandths(held.value - tenThousandths(cover));
      report({ cell: note, messageId: "passed", data: { value, day: isoFromSerial(held.day), over, cover } });
    };
    for (const [day, note] of byDay) say(note, steps.find((step) => step.day === day) ?? null);
    if (everyDay !== null) say(everyDay, highestOf(steps.filter(({ day }) => !byDay.has(day))));
  },
});

/** The pieces of all tables as those of one. */
function allPieces({ tables }: CheckedWorkbook): PieceRows {
  const rows = tables.filter(({ kind }) => kind === "pieces").map(readPieces);
  const found: PieceRow[] = rows.flatMap(({ count, at }) => Array.from({ length: count }, (_, index) => at(index)));
  return { count: found.length, at: (index) => found[index]!, hasCurrencies: false };
}

/** The first of those that are highest. */
function highestOf(steps: readonly ValueStep[]): ValueStep | null {
  let highest: ValueStep | null = null;
  for (const step of steps) if (step.value > (highest?.value ?? 0)) highest = step;
  return highest;
}
