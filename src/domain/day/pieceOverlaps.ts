import { clockSeconds } from "./clockSeconds";
import type { DatedLook } from "./looksOfPiece";
import { neededFrom } from "./neededFrom";
import type { PlannedLook } from "./plannedDay";

/** Two looks of a day that need the same piece at once. */
export interface PieceOverlap {
  /** The one that still wears it. */
  readonly wearing: PlannedLook;
  /** The one that needs it from then on. */
  readonly needing: PlannedLook;
  /** From when until when both need it, as fractions of a day. */
  readonly from: number;
  readonly until: number;
}

/**
 * Where looks need a piece at once, of which there are `quantity`: day by day, soonest first.
 *
 * The times planned are compared and not the order: a look needs its pieces from the start of its change, or where it has
 * none of its shot, up to but not with the end of its shot. Of several that still wear it the one that is done last is named.
 */
export function pieceOverlaps(looks: readonly DatedLook[], quantity: number): readonly PieceOverlap[] {
  return [...new Set(looks.map(({ day }) => day))].flatMap((day) =>
    overlapsOfDay(
      looks.filter((look) => look.day === day).map(({ planned }) => planned),
      quantity,
    ),
  );
}

function overlapsOfDay(looks: readonly PlannedLook[], quantity: number): readonly PieceOverlap[] {
  const needs = looks
    .map((planned) => ({ planned, from: neededFrom(planned), until: planned.shootUntil }))
    .sort((a, b) => a.from - b.from);
  return needs.flatMap(({ planned, from, until }, at) => {
    const wearing = needs.slice(0, at).filter((earlier) => clockSeconds(earlier.until) > clockSeconds(from));
    if (wearing.length < quantity || until <= from) return [];
    const last = wearing.reduce((latest, earlier) => (earlier.until > latest.until ? earlier : latest));
    return { wearing: last.planned, needing: planned, from, until: last.until };
  });
}
