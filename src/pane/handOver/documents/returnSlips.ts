import { amountFromTenThousandths } from "../../../domain/value/amountFromTenThousandths";
import { isoFromSerial } from "../../../domain/dates/isoFromSerial";
import { returnDay } from "../../../domain/loans/returnDay";
import { valueHeld } from "../../../domain/value/valueHeld";
import { sayCount } from "../../sayCount";
import { sayDay } from "../../sayDay";
import { sayList } from "../../sayList";
import type { DocumentCell } from "../paper/DocumentTable";
import type { PaperPage } from "../paper/Paper";
import { byLender, type LenderPieces } from "./byLender";
import { cellText } from "../../cellText";
import { fieldText } from "./fieldText";
import type { HandOverDocument } from "./HandOverDocument";
import type { HandOverSource } from "./HandOverSource";
import { heldPieces, type HeldPiece } from "./heldPieces";
import { heldValue } from "./heldValue";
import type { LenderCard } from "./LenderCard";
import { lenderCards } from "./lenderCards";
import { piecePictures } from "./piecePictures";
import { talentNamed } from "./talentNamed";
import { unreadCells } from "./unreadCells";

const HEADINGS = [
  "Piece",
  "Description",
  "Slip",
  "Size",
  "Colour",
  "Quantity",
  "Value",
  "Currency",
  "Due",
  "Condition out",
  "Condition back",
];

/** What proves a return; on paper it stands once for all the pieces, as values in each row. */
const PROOF = ["Returned how", "Tracking", "Received by"];

function proofOf({ table, row }: HeldPiece): DocumentCell[] {
  return ["returnedHow", "tracking", "receivedBy"].map((field) => cellText(table, row.row, field));
}

/**
 * A slip for each lender that goes with its pieces: what comes back, in what condition, and who took it.
 *
 * Lists what is held on the day, and what comes back on it. Nothing of who wears what stands on it; a description that names a talent is told.
 */
export function returnSlips(source: HandOverSource): HandOverDocument {
  const { held, untold } = heldPieces(source.pieces, source.asOf, true);
  const cards = lenderCards(source.read.tables);
  const all = byLender(held);
  const lenders = all.filter(({ key }) => source.lenderKey === null || key === source.lenderKey);
  const pages = lenders.map((lender) => slip(lender, cards.get(lender.key), source));
  const rows = lenders.flatMap(({ name, pieces }) =>
    pieces.map((piece): DocumentCell[] => [name, ...slipRow(piece), ...proofOf(piece)]),
  );
  return {
    paper: { title: `Return slips ${isoFromSerial(source.asOf)}`, pages },
    table: rows.length === 0 ? null : { headings: ["Lender", ...HEADINGS, ...PROOF], rows },
    ownFile: null,
    missing: [
      ...(pages.length === 0 ? [`Nothing is out on ${sayDay(source.asOf)}, so there is no slip to write.`] : []),
      ...lenders.flatMap(({ key, name }) =>
        key === ""
          ? ["Some pieces name no lender and stand on a slip of their own: fill their column Lender."]
          : cards.has(key)
            ? []
            : [`${name} is not in the table of lenders, so its slip has no address.`],
      ),
      ...talentNamed(
        lenders.flatMap(({ pieces }) => pieces),
        held,
      ),
      ...unreadCells(
        lenders.flatMap(({ pieces }) => pieces),
        ["due", "value"],
      ),
      ...untold,
    ],
  };
}

function slip({ name, pieces }: LenderPieces, card: LenderCard | undefined, source: HandOverSource): PaperPage {
  const count = pieces.reduce((sum, { quantity }) => sum + quantity, 0);
  const { job, stylist, reached } = source.job;
  const pictures = piecePictures(pieces, source);
  // What the sheet does not say yet is written in by hand when the pieces go.
  const isTold = oneOf(pieces, "returnedHow") !== "" || oneOf(pieces, "tracking") !== "";
  const toFillIn = isTold ? [] : ["Returned how, and its tracking number"];
  return {
    title: `Return to ${name === "" ? "(no lender)" : name}`,
    blocks: [
      {
        kind: "facts",
        facts: [
          ["Contact", card?.contact ?? ""],
          ["Address", card?.address ?? ""],
          ["Job", job],
          ["From", [stylist, reached].filter((part) => part !== "").join(", ")],
          ["Day", sayDay(source.asOf)],
          ["Slips", oneOf(pieces, "slip")],
          ["Terms", card?.terms ?? ""],
          ["Cleaning", card?.cleaning ?? ""],
          ["Pieces", sayCount(count, "piece", "pieces")],
          ["Value", heldValue(pieces)],
        ],
      },
      { kind: "table", caption: "What comes back", table: { headings: HEADINGS, rows: pieces.map(slipRow) } },
      ...(pictures.length === 0 ? [] : [{ kind: "pictures", pictures } as const]),
      {
        kind: "facts",
        facts: [
          ["Returned how", oneOf(pieces, "returnedHow")],
          ["Tracking", oneOf(pieces, "tracking")],
          ["Received by", oneOf(pieces, "receivedBy")],
        ],
      },
      { kind: "text", text: "Counted and looked over together; what is missing or damaged is noted above." },
      { kind: "lines", words: [...toFillIn, "Handed over by, date and time", "Received by, name and signature"] },
    ],
  };
}

function slipRow({ table, row, quantity }: HeldPiece): DocumentCell[] {
  const value = valueHeld(row, quantity);
  const due = returnDay(row);
  return [
    fieldText(row.piece),
    fieldText(row.description) || fieldText(row.kind),
    cellText(table, row.row, "slip"),
    cellText(table, row.row, "size"),
    cellText(table, row.row, "colour"),
    quantity,
    typeof value === "number" ? amountFromTenThousandths(value) : null,
    fieldText(row.currency),
    typeof due === "number" ? isoFromSerial(due) : "",
    fieldText(row.conditionOut),
    fieldText(row.conditionBack),
  ];
}

/** What the pieces say under a field, each once. */
function oneOf(pieces: readonly HeldPiece[], field: string): string {
  return sayList(
    [...new Set(pieces.map(({ table, row }) => cellText(table, row.row, field)))].filter((each) => each !== ""),
  );
}
