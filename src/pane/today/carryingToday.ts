import { carriedGrams } from "../../domain/carry/carriedGrams";
import type { CarriedPiece } from "../../domain/carry/carriedPieces";
import { cautionForCarrying } from "../../domain/carry/cautionForCarrying";
import { pieceGrams } from "../../domain/carry/pieceGrams";
import { isProblem } from "../../domain/isProblem";
import type { PieceRow } from "../../domain/loans/pieceRow";
import { quantityHeld } from "../../domain/loans/quantityHeld";
import { returnDay } from "../../domain/loans/returnDay";
import type { Problem } from "../../domain/problem";
import { sayProblem } from "../../domain/wording";
import { cellName } from "../../sheet/cellName";
import { nameKey } from "../../sheet/nameKey";
import { readCarriedPieces } from "../../sheet/readCarriedPieces";
import type { SheetTable } from "../../sheet/sheetTable";
import { cellText } from "../cellText";
import type { CarriedLoad, CarryGroup, CarryPart } from "./CarryGroup";
import { namePiece } from "./namePiece";
import type { PieceTable } from "./PieceTable";
import { placeOf } from "./placeOf";
import type { UntoldLine } from "./untoldLine";

const GRAMS_PER_KG = 1000;

/** One row that goes back, with so many pieces as are held. */
interface Going {
  readonly table: SheetTable;
  readonly row: PieceRow;
  readonly due: number;
  readonly quantity: number;
  readonly piece: CarriedPiece;
}

/**
 * What is carried back on a day, what is late among it, and on the next day on which anything is due: weighed as CARRIED weighs, for
 * the pieces that are held. null where no table of pieces says a weight, a kind or a description.
 */
export function carryingToday(pieces: readonly PieceTable[], asOf: number): readonly CarryGroup[] | null {
  const weighable = pieces.filter(({ table: { columnOf } }) =>
    ["weight", "kind", "description"].some((field) => columnOf[field] !== undefined),
  );
  if (weighable.length === 0) return null;
  const going = weighable.flatMap((table) => goingIn(table, asOf));
  const now = going.filter(({ due }) => due <= asOf);
  const next = Math.min(...going.filter(({ due }) => due > asOf).map(({ due }) => due));
  const groups = [now, going.filter(({ due }) => due === next)];
  return groups.flatMap((rows, index) => (rows.length === 0 ? [] : [groupOf(rows, index === 0 ? asOf : next)]));
}

function goingIn({ table, rows }: PieceTable, asOf: number): readonly Going[] {
  const carried = readCarriedPieces(table, GRAMS_PER_KG);
  return rows.flatMap((row, index) => {
    const quantity = quantityHeld(row, asOf);
    const due = returnDay(row);
    if (isProblem(quantity) || quantity === 0 || due === null || isProblem(due)) return [];
    // Read only now: most rows are not on their way back.
    return [{ table, row, due, quantity, piece: { ...carried.at(index), quantity } }];
  });
}

function groupOf(rows: readonly Going[], day: number): CarryGroup {
  const known = rows.filter(({ piece }) => !isProblem(pieceGrams(piece)));
  const load = loadOf(known);
  const isBagged = known.some(({ table, row }) => cellText(table, row.row, "bag") !== "");
  return {
    day,
    ...load,
    pieces: countOf(rows),
    caution: cautionForCarrying(load.weighedGrams + load.estimatedGrams),
    lenders: partsOf(known, "lender", false),
    bags: isBagged ? partsOf(known, "bag", true) : null,
    untold: rows.flatMap((going) => {
      const problem = pieceGrams(going.piece);
      return isProblem(problem) ? [untoldWeight(going, problem)] : [];
    }),
  };
}

function loadOf(rows: readonly Going[]): CarriedLoad {
  const grams = carriedGrams({ count: rows.length, at: (index) => rows[index]!.piece });
  const { weighedGrams, estimatedGrams } = grams.ok ? grams.value : { weighedGrams: 0, estimatedGrams: 0 };
  return { pieces: countOf(rows), weighedGrams, estimatedGrams };
}

function countOf(rows: readonly Going[]): number {
  return rows.reduce((sum, { quantity }) => sum + quantity, 0);
}

/** The rows by lender or by bag, in the order of the sheet; those without one last. */
function partsOf(rows: readonly Going[], field: "lender" | "bag", isLifted: boolean): readonly CarryPart[] {
  const parts = new Map<string, { readonly name: string; readonly rows: Going[] }>();
  // Names repeat down a sheet, and the key of one costs more than all the rest of the row.
  const partOf = new Map<string, { readonly name: string; readonly rows: Going[] }>();
  for (const going of rows) {
    const name = cellText(going.table, going.row.row, field);
    let part = partOf.get(name);
    if (part === undefined) {
      const key = nameKey(name) || name;
      part = parts.get(key) ?? { name, rows: [] };
      parts.set(key, part);
      partOf.set(name, part);
    }
    part.rows.push(going);
  }
  return [...parts.values()]
    .sort((a, b) => Number(a.name === "") - Number(b.name === ""))
    .map(({ name, rows: of }) => {
      const load = loadOf(of);
      const { table, row } = of[0]!;
      const isBag = isLifted && name !== "";
      return {
        name,
        at: placeOf(table, row.row, [field]),
        sheetName: table.sheetName,
        ...load,
        caution: isBag ? cautionForCarrying(load.weighedGrams + load.estimatedGrams) : null,
      };
    });
}

/** The sentence names the cell as the sheet shows it; a function can only count the rows it was given. */
function untoldWeight({ table, row }: Going, problem: Problem): UntoldLine {
  const at = placeOf(table, row.row, isProblem(row.weight) ? ["weight"] : ["kind", "description", "weight"]);
  const heading = table.headings[at.column - table.firstColumn]?.trim() ?? "";
  const argument = `${heading} ${cellName(at.row, at.column)}`.trim();
  const facts = "argument" in problem.facts ? { ...problem.facts, argument } : problem.facts;
  const sentence = sayProblem({ ...problem, facts } as Problem);
  return { at, sheetName: table.sheetName, name: namePiece(row), sentence };
}
