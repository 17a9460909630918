import type { Look } from "../domain/day/look";
import { looksByNumber } from "../sheet/looksByNumber";
import { looksNamed } from "../sheet/looksNamed";
import { nameKey } from "../sheet/nameKey";
import { readLooks } from "../sheet/readLooks";
import { readTerms } from "../sheet/readTerms";
import type { SheetTable } from "../sheet/sheetTable";
import { withOwnLooks } from "../sheet/withOwnLooks";
import type { WorkbookNotes } from "../sheet/workbookNotes";
import { checkedDaysOf } from "./checkedDaysOf";
import type { CheckedWorkbook } from "./checkedWorkbook";
import type { CheckFacts } from "./checkFacts";
import { lenderBookOf } from "./lenderBookOf";
import { lenderTally } from "./lenderTally";
import { type Loan, loanIn } from "./loanIn";
import { lookBookOf } from "./lookBookOf";
import { lookPieces } from "./lookPieces";
import { readDay } from "./readDay";
import { textIn } from "./textIn";

/** The facts of one run over a workbook, each worked out when a rule first asks for it. */
export function checkFactsOf(workbook: CheckedWorkbook, asOf: number, notes: WorkbookNotes): CheckFacts {
  const worked = new Map<string, Map<string, unknown>>();
  const loans = new Map<SheetTable, (Loan | null)[]>();

  // The same texts stand in many rows, and several rules ask after each.
  function once<T>(about: string, text: string, work: () => T): T {
    let answers = worked.get(about);
    if (answers === undefined) worked.set(about, (answers = new Map()));
    if (!answers.has(text)) answers.set(text, work());
    return answers.get(text) as T;
  }

  const facts: CheckFacts = {
    asOf,
    workbook,
    notes,
    once,
    lenders: () => once("lenders", "", () => lenderBookOf(workbook)),
    lenderNames: () => once("lender names", "", () => lenderTally(workbook)),
    looks: () => once("looks", "", () => lookBookOf(workbook)),
    lookPieces: () => once("look pieces", "", () => lookPieces(workbook, facts.looksOf)),
    days: () => once("days", "", () => checkedDaysOf(workbook, notes)),
    terms: (raw) =>
      typeof raw === "string" ? once("terms", raw, () => readTerms(raw, "Terms")) : readTerms(raw, "Terms"),
    day: (raw) => (typeof raw === "string" ? once("day", raw, () => readDay(raw)) : readDay(raw)),
    loan: (row) => {
      let ofTable = loans.get(row.table);
      if (ofTable === undefined) loans.set(row.table, (ofTable = []));
      const known = ofTable[row.row];
      return known === undefined ? (ofTable[row.row] = loanIn(row, asOf)) : known;
    },
    plans: () =>
      once("plans", "", () => facts.days().flatMap(({ date, plan }) => (plan.ok ? [{ date, plan: plan.value }] : []))),
    plansApart: () =>
      once("plans apart", "", () =>
        facts.days().flatMap(({ date, apart }) => (apart.ok ? [{ date, plan: apart.value }] : [])),
      ),
    looksOf: (row) => {
      const text = textIn(row, "look");
      const named = text === null ? NO_LOOKS : once("looks named", text, () => looksNamed(text, facts.looks()));
      const listing = once("looks by number", "", () => looksByNumber(listedLooks(workbook)));
      const number = listing.size === 0 ? null : textIn(row, "piece");
      const own = number === null ? undefined : listing.get(nameKey(number));
      return own === undefined ? named : withOwnLooks(named, own);
    },
  };
  return facts;
}

const NO_LOOKS = [] as const;

/** The looks of every table that can be read; the cells of the others have findings of their own. */
function listedLooks(workbook: CheckedWorkbook): readonly Look[] {
  return workbook.tables.flatMap((table) => {
    if (table.kind !== "looks" || table.columnOf["pieces"] === undefined) return [];
    const looks = readLooks(table);
    return looks.ok ? looks.value : [];
  });
}
