import { isoFromSerial } from "../../../domain/dates/isoFromSerial";
import { isProblem } from "../../../domain/isProblem";
import type { Problem } from "../../../domain/problem";
import { carryingAdvice } from "../../../domain/carry/carryingAdvice";
import { cautionForCarrying } from "../../../domain/carry/cautionForCarrying";
import type { BagPiece } from "../../../domain/carry/bags/bagPiece";
import { packedBagsOf } from "../../../domain/carry/bags/packedBagsOf";
import { pieceGrams } from "../../../domain/carry/pieceGrams";
import { sayCarryingCaution } from "../../../domain/carry/sayCarryingCaution";
import { sayProblem } from "../../../domain/wording";
import { nameKey } from "../../../sheet/nameKey";
import { readBagPieces } from "../../../sheet/readBagPieces";
import { sayCount } from "../../sayCount";
import { sayDay } from "../../sayDay";
import { namePiece } from "../../today/namePiece";
import type { DocumentCell } from "../paper/DocumentTable";
import type { PaperBlock, PaperPage } from "../paper/Paper";
import { cellText } from "../../cellText";
import { fieldText } from "./fieldText";
import type { HandOverDocument } from "./HandOverDocument";
import type { HandOverSource } from "./HandOverSource";
import { heldPieces, type HeldPiece } from "./heldPieces";

const GRAMS_PER_KG = 1000;
const HEADINGS = ["Piece", "Description", "Lender", "Quantity", "Weight kg", "Due"];

/** Pieces of one row that go into one bag. */
interface PackedRow {
  readonly piece: HeldPiece;
  readonly quantity: number;
  /** Of one piece. */
  readonly grams: number | Problem;
}

/** What is held of a row, as it is packed. */
interface WeighedPiece {
  readonly piece: HeldPiece;
  readonly carried: BagPiece;
}

/** A bag by its name in the sheet, or by its number where the pane has packed. "" for what is in none. */
interface Bag {
  readonly name: string;
  readonly rows: PackedRow[];
}

/**
 * A list for each bag of what is out on the day: by the column Bag where any of it is filled, else packed as BAGS packs, into the
 * fewest bags at or under the limit.
 */
export function packingLists(source: HandOverSource): HandOverDocument {
  const { held, untold } = heldPieces(source.pieces, source.asOf, false);
  const weighed = weighedPieces(source, held);
  const isBagged = held.some(({ table, row }) => cellText(table, row.row, "bag") !== "");
  const packed = isBagged ? { bags: bagsOfSheet(weighed), problems: [] } : packedHere(weighed, source.bagLimitGrams);
  const pages = packed.bags.map((bag) => bagPage(bag, isBagged, source));
  const rows = packed.bags.flatMap(({ name, rows: of }) => of.map((row): DocumentCell[] => [name, ...bagRow(row)]));
  const isWeightUnknown = packed.bags.some((bag) => bag.rows.some(({ grams }) => isProblem(grams)));
  return {
    paper: { title: `Packing lists ${isoFromSerial(source.asOf)}`, pages },
    table: rows.length === 0 ? null : { headings: ["Bag", ...HEADINGS], rows },
    ownFile: null,
    missing: [
      ...(held.length === 0 ? [`Nothing is out on ${sayDay(source.asOf)}, so there is nothing to pack.`] : []),
      ...(held.length > 0 && !isBagged
        ? ["The sheet says no bags (column Bag), so the pieces are packed here by weight, as BAGS does."]
        : []),
      ...(isWeightUnknown ? ["Some pieces cannot be weighed: fill their column Weight or Kind."] : []),
      ...packed.problems,
      ...untold,
    ],
  };
}

/** What is held, with what it weighs, table by table and row by row. */
function weighedPieces({ pieces }: HandOverSource, held: readonly HeldPiece[]): readonly WeighedPiece[] {
  return pieces.flatMap(({ table }) => {
    const read = readBagPieces(table, GRAMS_PER_KG);
    const indexOf = new Map(table.dataRows.map((row, index) => [row, index]));
    return held.flatMap((piece) => {
      const carried = piece.table === table ? read[indexOf.get(piece.row.row) ?? -1] : undefined;
      return carried === undefined ? [] : [{ piece, carried: { ...carried, quantity: piece.quantity } }];
    });
  });
}

function bagsOfSheet(weighed: readonly WeighedPiece[]): readonly Bag[] {
  const bags = new Map<string, Bag>();
  for (const { piece, carried } of weighed) {
    const name = cellText(piece.table, piece.row.row, "bag");
    const key = nameKey(name) || name;
    let bag = bags.get(key);
    if (bag === undefined) bags.set(key, (bag = { name, rows: [] }));
    bag.rows.push({ piece, quantity: piece.quantity, grams: pieceGrams(carried) });
  }
  return [...bags.values()];
}

/** Packs what is held; each single piece comes back in the order of the rows. */
function packedHere(
  weighed: readonly WeighedPiece[],
  limitGrams: number,
): { readonly bags: readonly Bag[]; readonly problems: readonly string[] } {
  const packed = packedBagsOf(
    weighed.map(({ carried }) => carried),
    limitGrams,
    GRAMS_PER_KG,
  );
  if (!packed.ok) return { bags: [], problems: [sayProblem(packed.problem)] };
  const bags = new Map<string, Bag>();
  const problems: string[] = [];
  let at = 0;
  for (const { piece } of weighed) {
    for (let single = 0; single < piece.quantity; single++) {
      const one = packed.value.pieces[at++];
      if (one === undefined) continue;
      if (isProblem(one.bag) && single === 0)
        problems.push(`${namePiece(piece.row)} is in no bag: ${sayProblem(one.bag)}`);
      const name = isProblem(one.bag) ? "" : String(one.bag);
      let bag = bags.get(name);
      if (bag === undefined) bags.set(name, (bag = { name, rows: [] }));
      const last = bag.rows.at(-1);
      if (last?.piece === piece) bag.rows[bag.rows.length - 1] = { ...last, quantity: last.quantity + 1 };
      else bag.rows.push({ piece, quantity: 1, grams: one.grams });
    }
  }
  return {
    bags: [...bags.values()].sort((a, b) => (Number(a.name) || Infinity) - (Number(b.name) || Infinity)),
    problems,
  };
}

function bagPage({ name, rows }: Bag, isBagged: boolean, source: HandOverSource): PaperPage {
  const count = rows.reduce((sum, { quantity }) => sum + quantity, 0);
  const known = rows.flatMap(({ grams, quantity }) => (isProblem(grams) ? [] : [grams * quantity]));
  const grams = known.reduce((sum, each) => sum + each, 0);
  const isWhole = known.length === rows.length;
  const caution = cautionForCarrying(grams);
  const blocks: PaperBlock[] = [
    {
      kind: "facts",
      facts: [
        ["Job", source.job.job],
        ["Packed for", sayDay(source.asOf)],
        ["Pieces", sayCount(count, "piece", "pieces")],
        ["Weight", `${(grams / GRAMS_PER_KG).toFixed(1)} kg${isWhole ? "" : " and what cannot be weighed"}`],
      ],
    },
    ...(caution === null || name === "" ? [] : [{ kind: "caution", text: sayCarryingCaution(caution) } as const]),
    { kind: "table", caption: "In this bag", table: { headings: HEADINGS, rows: rows.map(bagRow) } },
    {
      kind: "caution",
      text: `Weights are the sheet’s, else typical for the kind; bag, hangers and covers are not counted. ${carryingAdvice} Split what feels heavy, whatever the figure says.`,
    },
    { kind: "lines", words: ["Packed by", "Counted back by"] },
  ];
  const title = name === "" ? (isBagged ? "In no bag yet" : "In no bag") : isBagged ? name : `Bag ${name}`;
  // A heading "A" or "12" would not say of what.
  return { title: /^(\p{L}|\p{L}?\d+)$/u.test(title) ? `Bag ${title}` : title, blocks };
}

function bagRow({ piece, quantity, grams }: PackedRow): DocumentCell[] {
  const { row } = piece;
  const due = row.extendedTo ?? row.due;
  return [
    fieldText(row.piece),
    fieldText(row.description) || fieldText(row.kind),
    fieldText(row.lender),
    quantity,
    isProblem(grams) ? null : Math.round(grams) / GRAMS_PER_KG,
    typeof due === "number" ? isoFromSerial(due) : "",
  ];
}
