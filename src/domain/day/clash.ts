import type { Problem } from "../problem";

/** A piece that a look cannot have: another look needs it at the same time, or it is not on the rail that day. */
export interface Clash {
  /** The piece's number, else its description. */
  readonly piece: string | Problem | null;
  readonly look: string | number | Problem;
  /** null where no other look is in the way. */
  readonly otherLook: string | number | null;
  /** Why, in a few words; a problem where a cell on which it turns cannot be read. */
  readonly why: string | Problem;
}
