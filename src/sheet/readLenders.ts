import { parseTerms } from "../domain/dates/terms/parseTerms";
import { fail } from "../domain/fail";
import type { FieldValue } from "../domain/fieldValue";
import type { LenderRow } from "../domain/loans/lenderRow";
import type { Outcome } from "../domain/outcome";
import { showGiven } from "../domain/showGiven";
import { succeed } from "../domain/succeed";
import { readClosedWeekdays } from "./readClosedWeekdays";
import { readNumber } from "./readNumber";
import { readOpening } from "./readOpening";
import { readTerms } from "./readTerms";
import { readText } from "./readText";
import { readTimeOfDay } from "./readTimeOfDay";
import type { Table } from "./table";

/**
 * The rows of a lenders table in sheet order. Problems name the heading and the row, counted from 1 in the range as passed.
 *
 * A 0 in a text, the terms or the closed weekdays is blank, as some hosts send blanks so; 0 courier days are none.
 */
export function readLenders(table: Table): readonly LenderRow[] {
  return table.dataRows.map((row) => {
    const cellOf = (field: string): unknown => {
      const column = table.columnOf[field];
      return column === undefined ? null : table.cells[row]?.[column];
    };
    const nameOf = (field: string): string => `${table.headings[table.columnOf[field] ?? -1] || field}, row ${row + 1}`;
    const read = <T>(
      field: string,
      reader: (raw: unknown, argument: string) => Outcome<T | null>,
      zeroIsBlank = true,
    ) => {
      const raw = cellOf(field);
      return zeroIsBlank && raw === 0 ? null : valueOf(reader(raw, nameOf(field)));
    };
    // Midnight to midnight is no opening: some hosts send two blanks so.
    const isBothZero = cellOf("open") === 0 && cellOf("close") === 0;
    return {
      row,
      lender: read("lender", readText),
      kind: read("kind", readText),
      contact: read("contact", readText),
      address: read("address", readText),
      terms: read("terms", readTerms),
      closedWeekdays: read("closedWeekdays", readClosedWeekdays),
      courierDays: read("courierDays", readCourierDays, false),
      opening: isBothZero
        ? null
        : valueOf(readOpening(cellOf("open"), cellOf("close"), nameOf("open"), nameOf("close"))),
      cutOff: read("cutOff", readTimeOfDay),
      receivesUntil: read("receivesUntil", readTimeOfDay),
    };
  });
}

function valueOf<T>(outcome: Outcome<T | null>): FieldValue<T> {
  return outcome.ok ? outcome.value : outcome.problem;
}

/** "2", "2 days" and "next day" are said of couriers; the words are those of terms. */
function readCourierDays(raw: unknown, argument: string): Outcome<number | null> {
  const expected = "whole working days in transit, such as 1";
  const days = readNumber(raw, argument, expected);
  if (days.ok) {
    const isUsable = days.value === null || (Number.isInteger(days.value) && days.value >= 0 && days.value <= 60);
    return isUsable ? days : fail("argument-not-usable", { argument, given: showGiven(days.value ?? ""), expected });
  }
  const terms = typeof raw === "string" ? parseTerms(raw, argument) : null;
  if (terms === null || !terms.ok || (terms.value.kind !== "days" && terms.value.kind !== "working days")) return days;
  return terms.value.count <= 60 ? succeed(terms.value.count) : days;
}
