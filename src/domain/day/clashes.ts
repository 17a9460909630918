import { isoFromSerial } from "../dates/isoFromSerial";
import { isProblem } from "../isProblem";
import type { PieceRow } from "../loans/pieceRow";
import { whyNotThere } from "../loans/whyNotThere";
import type { Clash } from "./clash";
import { clockSeconds } from "./clockSeconds";
import { type DatedPlan, looksOfPiece } from "./looksOfPiece";
import type { NeededPiece } from "./neededPiece";
import { type PieceOverlap, pieceOverlaps } from "./pieceOverlaps";
import { sayLook } from "./sayLook";

/**
 * What keeps a piece from its looks: first where it is not out, or back already, on the day of the look; then where two
 * looks need it at once.
 *
 * The day is the look's date, else the piece's shoot day; with neither only what overlaps is told. A cell that matters
 * and cannot be read is the reason of a row of its own.
 */
export function clashes({ row, looks, isBorrowed }: NeededPiece, days: readonly DatedPlan[]): readonly Clash[] {
  const piece = row.piece ?? row.description;
  if (isProblem(row.look)) return [{ piece, look: row.look, otherLook: null, why: row.look }];
  const shoot = typeof row.shoot === "number" ? row.shoot : null;
  const found: Clash[] = [];
  const meant = looks.map(({ name, key }) => ({ name, dated: looksOfPiece(key, shoot, days) }));
  for (const { name, dated } of meant) {
    const [only, other] = dated;
    const day = other === undefined ? (only?.day.date ?? row.shoot) : row.shoot;
    if (day === null) continue;
    const why = isProblem(day) ? day : whyNotThere(row, day);
    if (why === null || (why === "never out" && !isBorrowed)) continue;
    const look = only?.planned.look.label ?? name;
    found.push({ piece, look, otherLook: null, why: isProblem(why) ? why : sayNotThere(why, row, day as number) });
  }
  if (looks.length < 2) return found;
  const quantity = row.quantity || 1;
  const overlaps = pieceOverlaps(
    meant.flatMap(({ dated }) => dated),
    isProblem(quantity) ? 1 : quantity,
  );
  for (const overlap of overlaps) {
    const why = isProblem(quantity) ? quantity : sayOverlap(overlap);
    found.push({ piece, look: overlap.wearing.look.label, otherLook: overlap.needing.look.label, why });
  }
  return found;
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
