import { isoFromSerial } from "../../domain/dates/isoFromSerial";
import type { PieceRow } from "../../domain/loans/pieceRow";
import type { PieceRows } from "../../domain/loans/pieceRows";
import { amountFromTenThousandths } from "../../domain/value/amountFromTenThousandths";
import { tenThousandths } from "../../domain/value/tenThousandths";
import { valueCurve } from "../../domain/value/valueCurve";
import type { ValueStep } from "../../domain/value/valueStep";
import { readPieces } from "../../sheet/readPieces";
import type { CheckedRow } from "../checkedRow";
import type { CheckedWorkbook } from "../checkedWorkbook";
import { dayIn } from "../dayIn";
import { defineRule } from "../defineRule";
import { holdsSomething } from "../holdsSomething";
import { moneyIn } from "../moneyIn";

/**
 * The value is that of COVERGAP: the back day counts, and pieces without a value, or with one that cannot be read, add nothing.
 * A row without a date speaks of every day. Days that are over are left alone, and so are values in two currencies.
 */
export const coverPassed = defineRule({
  id: "coverPassed",
  about: "More on the rail than the cover that the day's row names.",
  why: "What is above the limit of the insurance is the stylist's own risk.",
  severity: "warning",
  fixable: false,
  scope: "workbook",
  tables: ["day", "pieces"],
  messages: {
    passed:
      "{{value}} on the rail on {{day}}, {{over}} above the cover of {{cover}}. Have the cover raised for that time, or take pieces in later or back sooner.",
  },
  check(workbook, report, facts) {
    const covers = coversOf(workbook);
    if (covers.length === 0) return;
    const curve = valueCurve(allPieces(workbook), true);
    if (!curve.ok) return;
    const { steps } = curve.value;
    for (const { row, date, cover } of covers) {
      if (date !== null && date < facts.asOf) continue;
      const held = date === null ? highestFrom(steps, facts.asOf) : valueOn(steps, date);
      const value = held?.value ?? 0;
      if (held === null || value <= tenThousandths(cover)) continue;
      const over = amountFromTenThousandths(value - tenThousandths(cover));
      const data = { value: amountFromTenThousandths(value), day: isoFromSerial(held.day), over, cover };
      report({ row, field: "cover", messageId: "passed", data });
    }
  },
});

interface Cover {
  readonly row: CheckedRow;
  readonly date: number | null;
  readonly cover: number;
}

function coversOf({ tables }: CheckedWorkbook): readonly Cover[] {
  const rows = tables.flatMap((table) =>
    table.kind === "day" && table.columnOf["cover"] !== undefined ? table.dataRows.map((row) => ({ table, row })) : [],
  );
  return rows.flatMap((row) => {
    const cover = moneyIn(row, "cover");
    const date = dayIn(row, "date");
    if (cover.is !== "number" || cover.amount <= 0) return [];
    return date === null && holdsSomething(row, "date") ? [] : [{ row, date, cover: cover.amount }];
  });
}

/** The pieces of all tables as those of one. */
function allPieces({ tables }: CheckedWorkbook): PieceRows {
  const rows = tables.filter(({ kind }) => kind === "pieces").map(readPieces);
  const found: PieceRow[] = rows.flatMap(({ count, at }) => Array.from({ length: count }, (_, index) => at(index)));
  return { count: found.length, at: (index) => found[index]!, hasCurrencies: false };
}

function valueOn(steps: readonly ValueStep[], day: number): { readonly day: number; readonly value: number } | null {
  const step = steps.filter((each) => each.day <= day).at(-1);
  return step === undefined ? null : { day, value: step.value };
}

/** The first of the days from a day on that are highest. */
function highestFrom(
  steps: readonly ValueStep[],
  day: number,
): { readonly day: number; readonly value: number } | null {
  let highest = valueOn(steps, day);
  for (const step of steps) if (step.day > day && step.value > (highest?.value ?? 0)) highest = step;
  return highest;
}
