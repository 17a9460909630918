import { isoFromSerial } from "../../../domain/dates/isoFromSerial";
import { returnDay } from "../../../domain/loans/returnDay";
import { nameKey } from "../../../sheet/nameKey";
import { sayCount } from "../../sayCount";
import { sayDay } from "../../sayDay";
import { namePiece } from "../../today/namePiece";
import type { PieceTable } from "../../today/PieceTable";
import { sendsToday } from "../../today/sendsToday";
import type { CalendarEvent } from "../files/CalendarEvent";
import { stableKey } from "../files/stableKey";
import { fieldText } from "./fieldText";
import type { HandOverDocument } from "./HandOverDocument";
import type { HandOverSource } from "./HandOverSource";
import { heldPieces, type HeldPiece } from "./heldPieces";
import type { LenderCard } from "./LenderCard";
import { lenderCards } from "./lenderCards";
import { unreadCells } from "./unreadCells";

/** What one lender is due on one day. Its first piece tells it from others, also once that piece is back. */
interface DueGroup {
  readonly lender: string;
  readonly due: number;
  readonly first: string;
  readonly held: HeldPiece[];
}

/** A calendar of what is to go back and what is to be sent: an entry for each lender and day, from what is out on the day looked at. */
export function dueCalendar(source: HandOverSource): HandOverDocument {
  const { held, untold } = heldPieces(source.pieces, source.asOf, false);
  const groups = dueGroups(source.pieces, held).filter((group) => group.held.length > 0);
  const cards = lenderCards(source.read.tables);
  const sends = sendsToday(source.pieces, source.read, source.asOf);
  const sendByOf = new Map(sends.lines.map(({ at, sendBy }) => [`${at.sheetId} ${at.row}`, sendBy]));
  const used = new Set<string>();
  const events = groups
    .flatMap((group) => eventsOf(group, cards.get(nameKey(group.lender)), sendByOf, source.calendarId, used))
    .sort((a, b) => a.day - b.day);
  const withoutDue = held.filter(({ row }) => returnDay(row) === null).length;
  const table = {
    headings: ["Date", "What", "Pieces"],
    rows: events.map(({ day, summary, description }) => [isoFromSerial(day), summary, description]),
  };
  return {
    paper: {
      title: `Due dates ${isoFromSerial(source.asOf)}`,
      pages: [
        {
          title: "Due dates and sends",
          blocks: [
            {
              kind: "facts",
              facts: [
                ["Job", source.job.job],
                ["Out on", sayDay(source.asOf)],
              ],
            },
            { kind: "table", caption: "Entries", table },
          ],
        },
      ],
    },
    table: events.length === 0 ? null : table,
    ownFile: events.length === 0 ? null : { kind: "calendar", events },
    missing: [
      ...(events.length === 0 ? [`Nothing that is out on ${sayDay(source.asOf)} has a day it is due.`] : []),
      ...(withoutDue > 0
        ? [`${sayCount(withoutDue, "row has", "rows have")} no due day and so no entry: fill the column Due.`]
        : []),
      ...(sends.isAnyCourierKnown
        ? []
        : ["No lender has courier days, so there are no entries for sending: fill the column Courier days."]),
      ...unreadCells(held, ["due"]),
      ...untold,
    ],
  };
}

function dueGroups(tables: readonly PieceTable[], held: readonly HeldPiece[]): readonly DueGroup[] {
  const heldOf = new Map(held.map((piece) => [piece.row, piece]));
  const groups = new Map<string, DueGroup>();
  for (const { rows } of tables) {
    for (const row of rows) {
      const due = returnDay(row);
      if (typeof due !== "number") continue;
      const lender = fieldText(row.lender);
      const key = `${nameKey(lender) || lender} ${due}`;
      let group = groups.get(key);
      if (group === undefined) {
        const first = fieldText(row.piece) || fieldText(row.description) || String(row.row);
        groups.set(key, (group = { lender, due, first, held: [] }));
      }
      const piece = heldOf.get(row);
      if (piece !== undefined) group.held.push(piece);
    }
  }
  return [...groups.values()];
}

function eventsOf(
  { lender, due, first, held }: DueGroup,
  card: LenderCard | undefined,
  sendByOf: ReadonlyMap<string, number>,
  calendarId: string,
  used: Set<string>,
): readonly CalendarEvent[] {
  const uid = (what: string): string => {
    const stem = `${what}-${stableKey(`${nameKey(lender) || lender}\n${nameKey(first) || first}`)}`;
    let own = stem;
    for (let again = 2; used.has(own); again++) own = `${stem}-${again}`;
    used.add(own);
    return `${own}@${calendarId}`;
  };
  const who = lender === "" ? "(no lender)" : lender;
  const count = sayCount(
    held.reduce((sum, { quantity }) => sum + quantity, 0),
    "piece",
    "pieces",
  );
  const description = held
    .map(({ row, quantity }) => (quantity === 1 ? namePiece(row) : `${quantity} × ${namePiece(row)}`))
    .join("\n");
  const address = card?.address ?? "";
  const events: CalendarEvent[] = [
    { uid: uid("due"), day: due, summary: `Due back: ${count} to ${who}`, description, location: address },
  ];
  const sendBy = held
    .map(({ table, row }) => sendByOf.get(`${table.sheetId} ${table.firstRow + row.row}`))
    .find((day) => day !== undefined);
  if (sendBy !== undefined && sendBy !== due) {
    const summary = `Send by courier: ${count} to ${who}, due ${isoFromSerial(due)}`;
    events.push({ uid: uid("send"), day: sendBy, summary, description, location: "" });
  }
  return events;
}
