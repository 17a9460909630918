import { calendarOf } from "../../domain/dates/calendarOf";
import { isProblem } from "../../domain/isProblem";
import { chaseDays, type ChaseDays } from "../../domain/loans/chaseDays";
import { chaseReason } from "../../domain/loans/chaseReason";
import { chaseRows } from "../../domain/loans/chaseRows";
import type { RequestRow } from "../../domain/loans/requestRow";
import { usualPatienceDays } from "../../domain/loans/usualPatienceDays";
import { sayProblem } from "../../domain/wording";
import { nameKey } from "../../sheet/nameKey";
import { readClosedDaysFound } from "../../sheet/readClosedDaysFound";
import { readRequests } from "../../sheet/readRequests";
import type { SheetTable } from "../../sheet/sheetTable";
import { cellText } from "../cellText";
import type { ReadTables } from "../state/ReadTables";
import { contactsByLender } from "./contactsByLender";
import { placeOf } from "./placeOf";
import type { RequestLine } from "./RequestLine";
import type { UntoldLine } from "./untoldLine";

const SATURDAY_AND_SUNDAY = 0b1100000;

/** What is to be chased and fetched. */
export interface RequestsToday {
  /** Unanswered requests as CHASEROWS lists them; null where no table says when what was asked and answered. */
  readonly chase: readonly RequestLine[] | null;
  /** Lent and not yet fetched, the soonest need first; null where no table keeps what was collected. */
  readonly collect: readonly RequestLine[] | null;
  readonly untold: readonly UntoldLine[];
}

/**
 * The requests to chase on a day, with the patience that CHASEROWS has of itself and the closed days that the workbook lists, and all
 * that is lent and not fetched, near or not.
 *
 * Where nobody keeps what was collected it stands among the pieces, and nothing is said of it.
 */
export function requestsToday(read: ReadTables, asOf: number): RequestsToday {
  const calendar = calendarOf(SATURDAY_AND_SUNDAY, readClosedDaysFound(read.workbook.sheets).days);
  const days = chaseDays(asOf, usualPatienceDays, calendar);
  const has = ({ columnOf }: SheetTable, field: string): boolean => columnOf[field] !== undefined;
  const tables = read.tables.filter(
    (table) => table.kind === "requests" && (has(table, "answer") || has(table, "answered")),
  );
  if (!days.ok || tables.length === 0) return { chase: null, collect: null, untold: [] };
  const contactOf = contactsByLender(read.tables);
  const toLine = (table: SheetTable, request: RequestRow, fields: readonly string[]): RequestLine => {
    const lender = cellText(table, request.row, "lender");
    return {
      at: placeOf(table, request.row, fields),
      sheetName: table.sheetName,
      lender: lender === "" ? `row ${table.firstRow + request.row + 1}` : lender,
      contact: contactOf.get(nameKey(lender)) ?? "",
      wanted: cellText(table, request.row, "wanted"),
      collect: cellText(table, request.row, "collect"),
      asked: typeof request.asked === "number" ? request.asked : null,
      neededBy: typeof request.neededBy === "number" ? request.neededBy : null,
    };
  };
  const chasing = tables.filter((table) => has(table, "asked"));
  const collecting = tables.filter((table) => has(table, "collected"));
  const untold: UntoldLine[] = [];
  const chase = chasing.flatMap((table) => {
    const requests = readRequests(table);
    const indexOf = new Map(table.dataRows.map((row, index) => [row, index]));
    return chaseRows(requests, days.value).flatMap(({ row, unread }) => {
      const request = requests.at(indexOf.get(row)!);
      if (unread !== undefined) untold.push(...untoldIn(table, request));
      const isUnanswered = unread === undefined && chaseReason(request, days.value) === "unanswered";
      return isUnanswered ? [toLine(table, request, ["answer", "answered"])] : [];
    });
  });
  const collect = collecting.flatMap((table) => {
    const requests = readRequests(table);
    return table.dataRows.flatMap((_, index) => {
      const request = requests.at(index);
      return isToCollect(request, days.value) ? [toLine(table, request, ["collected"])] : [];
    });
  });
  // Sorting is stable: ties keep the order of the sheet.
  const bySoonest = (a: RequestLine, b: RequestLine): number =>
    a.neededBy === b.neededBy ? 0 : (a.neededBy ?? Infinity) - (b.neededBy ?? Infinity);
  return {
    chase: chasing.length === 0 ? null : chase.sort(bySoonest),
    collect: collecting.length === 0 ? null : collect.sort(bySoonest),
    untold,
  };
}

/** Whether something is lent and not fetched, whatever the day it is needed. */
function isToCollect(request: RequestRow, { lastAsked }: ChaseDays): boolean {
  const { row, asked, answer, answered, collected, neededBy } = request;
  const someDay = typeof neededBy === "number" ? neededBy : 0;
  const whenever = { row, asked, answer, answered, collected, neededBy: someDay };
  return chaseReason(whenever, { lastAsked, lastNear: Infinity }) === "not collected";
}

/** The first cell of a request that keeps it from being told, with its sentence. */
function untoldIn(table: SheetTable, request: RequestRow): readonly UntoldLine[] {
  for (const field of ["answer", "collected", "answered", "asked", "neededBy"] as const) {
    const held = request[field];
    if (!isProblem(held)) continue;
    const at = placeOf(table, request.row, [field]);
    const name = cellText(table, request.row, "lender") || `row ${at.row + 1}`;
    return [{ at, sheetName: table.sheetName, name, sentence: sayProblem(held) }];
  }
  return [];
}
