import { isoFromSerial } from "../dates/isoFromSerial";
import { isProblem } from "../isProblem";
import type { PieceRow } from "../loans/pieceRow";
import { whyNotThere } from "../loans/whyNotThere";
import type { Clash } from "./clash";
import { clockSeconds } from "./clockSeconds";
import { type DatedLook, type DatedPlan, looksOfPiece } from "./looksOfPiece";
import type { NeededPieces, NeedingLook } from "./neededPiece";
import { type PieceOverlap, pieceOverlaps } from "./pieceOverlaps";
import { sayLook } from "./sayLook";

/** The looks a piece names, and what each can mean. */
type Meant = readonly { readonly name: string; readonly dated: readonly DatedLook[] }[];

/**
 * What keeps pieces from their looks, piece by piece: first where it is not out, or back already, on the day of the look;
 * then where two looks need it at once.
 *
 * The day is the look's date, else the piece's shoot day; with neither only what overlaps is told. A cell that matters
 * and cannot be read is the reason of a row of its own.
 */
export function clashes(pieces: NeededPieces, days: readonly DatedPlan[]): readonly Clash[] {
  const found: Clash[] = [];
  // Many pieces name their looks alike, and have one shoot day.
  const known = new Map<readonly NeedingLook[], Map<number | null, Meant>>();
  for (let index = 0; index < pieces.count; index++) {
    const { row, looks } = pieces.at(index);
    if (isProblem(row.look)) found.push({ piece: named(row), look: row.look, otherLook: null, why: row.look });
    else if (looks.length > 0) {
      const shoot = typeof row.shoot === "number" ? row.shoot : null;
      let byShoot = known.get(looks);
      if (byShoot === undefined) known.set(looks, (byShoot = new Map<number | null, Meant>()));
      let meant = byShoot.get(shoot);
      if (meant === undefined) {
        meant = looks.map(({ name, key }) => ({ name, dated: looksOfPiece(key, shoot, days) }));
        byShoot.set(shoot, meant);
      }
      addNotThere(found, row, meant, pieces.isBorrowed);
      if (meant.length > 1) addOverlaps(found, row, meant);
    }
  }
  return found;
}

function named({ piece, description }: PieceRow): Clash["piece"] {
  return piece ?? description;
}

function addNotThere(found: Clash[], row: PieceRow, meant: Meant, isBorrowed: NeededPieces["isBorrowed"]): void {
  for (const { name, dated } of meant) {
    const only = dated.length === 1 ? dated[0]! : null;
    const day = only?.day.date ?? row.shoot;
    if (day === null) continue;
    const why = isProblem(day) ? day : whyNotThere(row, day);
    if (why === null || (why === "never out" && !isBorrowed(row))) continue;
    const look = dated[0]?.planned.look.label ?? name;
    const said = isProblem(why) ? why : sayNotThere(why, row, day as number);
    found.push({ piece: named(row), look, otherLook: null, why: said });
  }
}

function addOverlaps(found: Clash[], row: PieceRow, meant: Meant): void {
  const quantity = row.quantity || 1;
  const looks = meant.flatMap(({ dated }) => dated);
  for (const overlap of pieceOverlaps(looks, isProblem(quantity) ? 1 : quantity)) {
    const why = isProblem(quantity) ? quantity : sayOverlap(overlap);
    const { wearing, needing } = overlap;
    found.push({ piece: named(row), look: wearing.look.label, otherLook: needing.look.label, why });
  }
}

function sayOverlap({ wearing, needing, from, until }: PieceOverlap): string {
  const minutes = Math.ceil((clockSeconds(until) - clockSeconds(from)) / 60);
  const said = `${minutes} minute${minutes === 1 ? "" : "s"}`;
  return `${sayLook(needing.look.label)} needs it ${said} before ${sayLook(wearing.look.label)} is done`;
}

function sayNotThere(why: "never out" | "out later" | "already back", { out, back }: PieceRow, day: number): string {
  const needed = `needed ${isoFromSerial(day)}`;
  if (why === "never out") return `not out, ${needed}`;
  if (why === "out later") return `out only ${isoFromSerial(out as number)}, ${needed}`;
  return `back ${isoFromSerial(back as number)}, ${needed}`;
}
