import type { Drawn } from "./drawn";
import { typedAmount } from "./typedAmount";
import { typedDay } from "./typedDay";

/** A row of pieces as it is meant; null is blank. */
export interface MeantPiece {
  readonly piece: string;
  readonly lender: string | null;
  readonly valueCents: number | null;
  readonly quantity: number | null;
  readonly out: number | null;
  readonly due: number | null;
  readonly extendedTo: number | null;
  readonly back: number | null;
  readonly quantityBack: number | null;
  readonly settled: string | null;
  readonly conditionOut: string | null;
  readonly conditionBack: string | null;
}

/** A sheet as people keep it, and what its rows mean. */
export interface MessyPieces {
  readonly cells: readonly (readonly unknown[])[];
  readonly headings: readonly unknown[];
  readonly meant: readonly MeantPiece[];
  /** The cells of each meant row. */
  readonly typed: readonly (readonly unknown[])[];
}

const HEADINGS: Readonly<Record<keyof MeantPiece, readonly string[]>> = {
  piece: ["Piece", "ITEM", "Piece no."],
  lender: ["Lender", "Borrowed from", "Prêteur"],
  valueCents: ["Value", "insured value", "VALUE", "Valeur"],
  quantity: ["Quantity", "Qty"],
  out: ["Out", "Date out", "out "],
  due: ["Due", "Ret. due", "Return due"],
  extendedTo: ["Extended to"],
  back: ["Back", "Date back", "Returned"],
  quantityBack: ["Quantity back", "Qty back"],
  settled: ["Settled"],
  conditionOut: ["Condition out"],
  conditionBack: ["Condition back"],
};
const DAYS: readonly string[] = ["out", "due", "extendedTo", "back"];
const LENDERS = ["Maison Orla", "Rail & Co", "Halden Press", "Casa Brío"];

/**
 * Pieces in a messy sheet: columns in any order and with others between, other spellings of headings, blank rows, repeated headings,
 * a total at the bottom, days and amounts as text, three spellings of one lender, blanks of every kind.
 *
 * `from` is a day about which all of them were out.
 */
export function messyPieces(draw: Drawn, from: number): MessyPieces {
  const meant = Array.from({ length: draw.whole(0, 9) }, (_, index) => meantPiece(draw, from, index));
  const fields = draw.shuffled(Object.keys(HEADINGS) as (keyof MeantPiece)[]);
  const columns = fields.flatMap((field) => (draw.often(10) ? [field, null] : [field]));
  const headings = columns.map((field) => (field === null ? "Rack" : draw.one(HEADINGS[field])));
  const typed = meant.map((piece) => columns.map((field) => (field === null ? "A" : typedCell(draw, piece, field))));
  const blankRow = (): unknown[] => columns.map(() => draw.one([null, ""]));
  const cells: (readonly unknown[])[] = [];
  while (draw.often(15)) cells.push(blankRow());
  cells.push(headings);
  for (const row of typed) {
    if (draw.often(10)) cells.push(draw.one([blankRow(), headings]));
    cells.push(row);
  }
  if (draw.often(30) && typed.length > 0) cells.push(columns.map((field) => totalsCell(field)));
  if (draw.often(30)) cells.push(blankRow(), blankRow());
  return { cells, headings, meant, typed };
}

function meantPiece(draw: Drawn, from: number, index: number): MeantPiece {
  const out = draw.often(90) ? from + draw.whole(-15, 15) : null;
  const due = draw.often(85) ? (out ?? from) + draw.whole(0, 20) : null;
  const back = out !== null && draw.often(40) ? out + draw.whole(0, 25) : null;
  const quantity = draw.often(50) ? draw.whole(1, 5) : null;
  return {
    piece: `P${index + 1}`,
    lender: draw.often(90) ? draw.one(LENDERS) : null,
    valueCents: draw.often(85) ? draw.whole(1, 500_000) : null,
    quantity,
    out,
    due,
    extendedTo: due !== null && draw.often(15) ? due + draw.whole(1, 10) : null,
    back,
    quantityBack: back !== null && draw.often(50) ? draw.whole(1, quantity ?? 1) : null,
    settled: draw.often(10) ? draw.one(["lost", "bought", "gifted"]) : null,
    conditionOut: draw.one([null, "Good", "small mark on hem"]),
    conditionBack: back === null ? null : draw.one([null, "good", "as new", "Small mark on hem", "torn hem"]),
  };
}

function typedCell(draw: Drawn, piece: MeantPiece, field: keyof MeantPiece): unknown {
  const value = piece[field];
  // A blank day reaches some hosts as 0.
  if (value === null) return draw.one(DAYS.includes(field) ? [null, "", 0] : [null, ""]);
  if (DAYS.includes(field)) return typedDay(draw, value as number);
  if (field === "valueCents") return typedAmount(draw, value as number);
  if (field === "lender") return typedLender(draw, value as string);
  return value;
}

function typedLender(draw: Drawn, name: string): string {
  return draw.one([name, name.toUpperCase(), `${name} `, name.replace(" ", "  "), name.replace("í", "i"), `${name}.`]);
}

function totalsCell(field: keyof MeantPiece | null): unknown {
  return field === "piece" ? "Total" : field === "valueCents" ? 99_999 : null;
}
