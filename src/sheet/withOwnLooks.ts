import type { NeedingLook } from "../domain/day/neededPiece";

/** The looks that a piece names, then those that list the piece and that it does not name. */
export function withOwnLooks(named: readonly NeedingLook[], own: readonly NeedingLook[]): readonly NeedingLook[] {
  return [...named, ...own.filter(({ key }) => !named.some((look) => look.key === key))];
}
