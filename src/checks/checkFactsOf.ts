import type { Terms } from "../domain/dates/terms/terms";
import type { Outcome } from "../domain/outcome";
import { readTerms } from "../sheet/readTerms";
import type { CheckedDay } from "./checkedDay";
import { checkedDaysOf } from "./checkedDaysOf";
import type { CheckedWorkbook } from "./checkedWorkbook";
import type { CheckFacts } from "./checkFacts";
import type { DayReading } from "./dayReading";
import type { LenderBook } from "./lenderBook";
import { lenderBookOf } from "./lenderBookOf";
import { lenderTally } from "./lenderTally";
import type { LookBook } from "./lookBook";
import { lookBookOf } from "./lookBookOf";
import type { NameTally } from "./nameTally";
import { readDay } from "./readDay";

/** The facts of one run over a workbook, each worked out when a rule first asks for it. */
export function checkFactsOf(workbook: CheckedWorkbook, asOf: number): CheckFacts {
  let lenders: LenderBook | null | undefined;
  let names: readonly NameTally[] | undefined;
  let looks: LookBook | null | undefined;
  let plans: readonly CheckedDay[] | undefined;
  const days = new Map<string, DayReading>();
  const terms = new Map<string, Outcome<Terms | null>>();
  return {
    asOf,
    workbook,
    lenders: () => (lenders === undefined ? (lenders = lenderBookOf(workbook)) : lenders),
    lenderNames: () => (names ??= lenderTally(workbook)),
    looks: () => (looks === undefined ? (looks = lookBookOf(workbook)) : looks),
    days: () => (plans ??= checkedDaysOf(workbook)),
    terms: (raw) => {
      if (typeof raw !== "string") return readTerms(raw, "Terms");
      let reading = terms.get(raw);
      if (reading === undefined) terms.set(raw, (reading = readTerms(raw, "Terms")));
      return reading;
    },
    day: (raw) => {
      if (typeof raw !== "string") return readDay(raw);
      // The same text stands in many rows, and four rules ask after it.
      let reading = days.get(raw);
      if (reading === undefined) days.set(raw, (reading = readDay(raw)));
      return reading;
    },
  };
}
