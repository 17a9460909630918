import { isoFromSerial } from "../../../domain/dates/isoFromSerial";
import type { RequestRow } from "../../../domain/loans/requestRow";
import type { Cell } from "../../../sheet/cell";
import type { CellEdit } from "../../../sheet/cellEdit";
import { nameKey } from "../../../sheet/nameKey";
import { readRequests } from "../../../sheet/readRequests";
import type { SheetTable } from "../../../sheet/sheetTable";
import { sayCount } from "../../sayCount";
import { sayDay } from "../../sayDay";
import { sayList } from "../../sayList";
import { placeOf } from "../../today/placeOf";
import { mailAddressIn } from "../files/mailAddressIn";
import { cellText } from "../../cellText";
import type { HandOverDocument, LenderLetter } from "./HandOverDocument";
import type { HandOverSource } from "./HandOverSource";
import type { LenderCard } from "./LenderCard";
import { lenderCards } from "./lenderCards";
import { shootDays } from "./shootDays";

/** What one lender is to be asked for. */
interface Asking {
  readonly key: string;
  readonly name: string;
  readonly contact: string;
  readonly wanted: string[];
  readonly asked: CellEdit[];
}

/** A letter to each lender that is still to be asked: rows of requests with a lender, and nothing under Asked and Answer. */
export function requestLetters(source: HandOverSource): HandOverDocument {
  const tables = source.read.tables.filter(({ kind }) => kind === "requests");
  const cards = lenderCards(source.read.tables);
  const all = askings(tables, source.asOf);
  const shown = all.filter(({ key }) => source.lenderKey === null || key === source.lenderKey);
  const days = daysAhead(shootDays(source.read), source.asOf);
  const letters = shown.map((asking) => letterTo(asking, cards.get(asking.key), days, source));
  return {
    paper: {
      title: `Request letters ${isoFromSerial(source.asOf)}`,
      pages: letters.map(({ subject, body }) => ({ title: subject, blocks: [{ kind: "text", text: body }] })),
    },
    table: null,
    ownFile: letters.length === 0 ? null : { kind: "letters", letters },
    missing: gaps(source, tables, letters, days),
  };
}

/** A lender is asked for days to come, not for those that have been; where all have been, they are what is known. */
function daysAhead(days: readonly number[], asOf: number): readonly number[] {
  const ahead = days.filter((day) => day >= asOf);
  return ahead.length > 0 ? ahead : days;
}

function askings(tables: readonly SheetTable[], day: number): readonly Asking[] {
  const askingOf = new Map<string, Asking>();
  for (const table of tables) {
    const requests = readRequests(table);
    for (let index = 0; index < requests.count; index++) {
      const request = requests.at(index);
      const { row } = request;
      const name = cellText(table, row, "lender");
      if (name === "" || request.asked !== null || request.answer !== null) continue;
      const key = nameKey(name) || name;
      let asking = askingOf.get(key);
      if (asking === undefined) {
        asking = { key, name, contact: cellText(table, row, "contact"), wanted: [], asked: [] };
        askingOf.set(key, asking);
      }
      asking.wanted.push(wantedLine(table, request));
      asking.asked.push(...askedEdit(table, row, day));
    }
  }
  return [...askingOf.values()];
}

function wantedLine(table: SheetTable, request: RequestRow): string {
  const { neededBy, row } = request;
  const parts = [cellText(table, row, "wanted") || "(say what is wanted)"];
  if (typeof neededBy === "number") parts.push(`needed by ${sayDay(neededBy)}`);
  const collect = cellText(table, row, "collect");
  if (collect !== "")
    parts.push(`to be collected ${/^\d+(?:\.\d+)?$/.test(collect) ? sayDay(Math.floor(Number(collect))) : collect}`);
  return `- ${parts.join("; ")}`;
}

/** The step that notes a request as asked; none where the cell holds anything, a formula among it. */
function askedEdit(table: SheetTable, row: number, day: number): readonly CellEdit[] {
  const column = table.columnOf["asked"];
  if (column === undefined) return [];
  const held = (table.cells[row]?.[column] ?? null) as Cell;
  if ((held !== null && held !== "") || (table.formulas[row]?.[column] ?? null) !== null) return [];
  return [{ at: placeOf(table, row, ["asked"]), expected: held, value: day, numberFormat: "yyyy-mm-dd" }];
}

function letterTo(
  { name, contact, wanted, asked }: Asking,
  card: LenderCard | undefined,
  days: readonly number[],
  source: HandOverSource,
): LenderLetter {
  const { job, stylist, reached, direction, credit, responsible } = source.job;
  const shoot = sayList(days.map(sayDay));
  const contactSaid = contact || (card?.contact ?? "");
  const to = mailAddressIn(contactSaid);
  const greeted =
    to === ""
      ? contactSaid
      : contactSaid
          .replace(to, "")
          .replace(/[<>(),;\s]+/g, " ")
          .trim();
  const what = job === "" ? "a shoot" : job;
  const paragraphs = [
    `Dear ${greeted || name},`,
    `I am styling ${what}${shoot === "" ? "" : `, to be photographed on ${shoot},`} and would like to ask you for the loan of the following:`,
    wanted.join("\n"),
    ...(direction === "" ? [] : [`The direction: ${direction}`]),
    factsOf(card, days, responsible, stylist, job),
    ...(credit === "" ? [] : [`Credit: ${credit}`]),
    "Please let me know what you can lend, and when and where it can be collected.",
    ["With thanks", stylist, reached].filter((part) => part !== "").join("\n"),
  ];
  const subject = ["Loan request", job, days.length === 0 ? "" : days.map(isoFromSerial).join(", ")];
  return {
    lender: name,
    to,
    subject: `${subject.filter((part) => part !== "").join(", ")}: ${name}`,
    body: paragraphs.join("\n\n"),
    asked,
  };
}

/** What a letter of responsibility is filled in from; what is not known is left for the lender's own form. */
function factsOf(
  card: LenderCard | undefined,
  days: readonly number[],
  responsible: string,
  stylist: string,
  job: string,
): string {
  const last = days.at(-1);
  const facts: readonly (readonly [string, string])[] = [
    ["Responsible", responsible],
    ["Borrowed by", stylist],
    ["For", job],
    ["Last shoot day", last === undefined ? "" : sayDay(last)],
    ["Return, on your terms", card?.terms ?? ""],
  ];
  const said = facts.filter(([, says]) => says !== "").map(([word, says]) => `- ${word}: ${says}`);
  const rest =
    "Pieces are counted and their condition noted with you, against your slip, when they go out and when they come back.";
  return ["For your letter of responsibility:", ...said, rest].join("\n");
}

function gaps(
  source: HandOverSource,
  tables: readonly SheetTable[],
  letters: readonly LenderLetter[],
  days: readonly number[],
): readonly string[] {
  if (tables.length === 0)
    return [
      "The workbook has no table of requests: a row of headings such as Lender, Asked, Wanted, Needed by, Answer makes one.",
    ];
  if (letters.length === 0) return ["Nobody is left to be asked: every request has something under Asked or Answer."];
  const { job, stylist, direction, credit, responsible } = source.job;
  const lacking = Object.entries({
    Job: job,
    Stylist: stylist,
    Direction: direction,
    Credit: credit,
    Responsible: responsible,
  })
    .filter(([, says]) => says === "")
    .map(([word]) => word);
  const withoutAddress = letters.filter(({ to }) => to === "").length;
  return [
    ...(lacking.length > 0 ? [`The letters do not say: ${sayList(lacking)}. Fill them in under The job.`] : []),
    ...(days.length === 0 ? ["No day of the shoot is known: fill the column Date of the looks."] : []),
    ...(withoutAddress > 0
      ? [
          `${sayCount(withoutAddress, "lender has", "lenders have")} no mail address under Contact; the draft is left without one.`,
        ]
      : []),
    ...(tables.some(({ columnOf }) => columnOf["asked"] === undefined)
      ? ["The requests have no column Asked, so they cannot be marked."]
      : []),
  ];
}
