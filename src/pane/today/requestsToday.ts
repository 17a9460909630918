import { isProblem } from "../../domain/isProblem";
import type { ChaseDays } from "../../domain/loans/chaseDays";
import { chaseReason } from "../../domain/loans/chaseReason";
import type { RequestRow } from "../../domain/loans/requestRow";
import { sayProblem } from "../../domain/wording";
import { nameKey } from "../../sheet/nameKey";
import { readRequests } from "../../sheet/readRequests";
import type { SheetTable } from "../../sheet/sheetTable";
import { cellText } from "../cellText";
import type { ReadTables } from "../state/ReadTables";
import { chaseDaysByLender } from "./chaseDaysByLender";
import { contactsByLender } from "./contactsByLender";
import { placeOf } from "./placeOf";
import type { RequestLine } from "./RequestLine";
import type { UntoldLine } from "./untoldLine";

/** What is to be chased and fetched. */
export interface RequestsToday {
  /** Unanswered requests as CHASEROWS lists them; null where no table says when what was asked and answered. */
  readonly chase: readonly RequestLine[] | null;
  /** Lent and not yet fetched, the soonest need first; null where no table says so. */
  readonly collect: readonly RequestLine[] | null;
  readonly untold: readonly UntoldLine[];
}

/**
 * The requests to chase on a day, with the patience that CHASEROWS has of itself, by each lender's own closed weekdays and the closed
 * days that the workbook lists, as the sheet check has them; and all that is lent and not fetched, near or not.
 *
 * Where nobody keeps what was collected, it is what CHASEROWS lists: lent, and the need near or past.
 */
export function requestsToday(read: ReadTables, asOf: number): RequestsToday {
  const has = ({ columnOf }: SheetTable, field: string): boolean => columnOf[field] !== undefined;
  const tables = read.tables.filter(
    (table) => table.kind === "requests" && (has(table, "answer") || has(table, "answered")),
  );
  const isChased = (table: SheetTable): boolean => has(table, "asked");
  const isCollected = (table: SheetTable): boolean =>
    has(table, "collected") || (has(table, "asked") && has(table, "neededBy"));
  if (tables.length === 0) return { chase: null, collect: null, untold: [] };
  const contactOf = contactsByLender(read.tables);
  const daysOf = chaseDaysByLender(read, asOf);
  const [chase, collect, untold]: [RequestLine[], RequestLine[], UntoldLine[]] = [[], [], []];
  for (const table of tables) {
    const requests = readRequests(table);
    const isCollectionKept = has(table, "collected");
    for (let index = 0; index < requests.count; index++) {
      const request = requests.at(index);
      const lender = cellText(table, request.row, "lender");
      const days = daysOf(lender);
      const reason = isChased(table) ? chaseReason(request, days) : null;
      const toLine = (fields: readonly string[]): RequestLine => ({
        at: placeOf(table, request.row, fields),
        sheetName: table.sheetName,
        lender: lender === "" ? `row ${table.firstRow + request.row + 1}` : lender,
        contact: contactOf.get(nameKey(lender)) ?? "",
        wanted: cellText(table, request.row, "wanted"),
        collect: cellText(table, request.row, "collect"),
        asked: typeof request.asked === "number" ? request.asked : null,
        neededBy: typeof request.neededBy === "number" ? request.neededBy : null,
        isCollectionKept,
        isChased: reason === "unanswered" || reason === "not collected",
      });
      if (reason === "untold" || (reason !== null && isProblem(request.neededBy))) {
        untold.push(...untoldIn(table, request));
      } else if (reason === "unanswered") chase.push(toLine(["answer", "answered"]));
      const isOpen = isCollectionKept ? isToCollect(request, days) : reason === "not collected";
      if (isOpen && isCollected(table) && (isCollectionKept || !isProblem(request.neededBy))) {
        collect.push(toLine(["collected", "neededBy"]));
      }
    }
  }
  // Sorting is stable: ties keep the order of the sheet.
  const bySoonest = (a: RequestLine, b: RequestLine): number =>
    a.neededBy === b.neededBy ? 0 : (a.neededBy ?? Infinity) - (b.neededBy ?? Infinity);
  return {
    chase: tables.some(isChased) ? chase.sort(bySoonest) : null,
    collect: tables.some(isCollected) ? collect.sort(bySoonest) : null,
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
