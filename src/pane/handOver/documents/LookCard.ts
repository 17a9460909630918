import type { PaperPicture } from "../paper/Paper";
import type { LookPicture } from "../pictures/LookPicture";

/** One look of the day as papers for the team tell it, in shooting order. */
export interface LookCard {
  readonly key: string;
  /** "Look 7". */
  readonly name: string;
  readonly talent: string;
  /** null where the look carries no date. */
  readonly day: number | null;
  /** Set, and indoors or outdoors, as far as they are said. */
  readonly place: string;
  readonly isShot: boolean;
  /** hh:mm; null where no call is known. */
  readonly times: {
    readonly changeFrom: string;
    readonly readyBy: string;
    readonly shootFrom: string;
    readonly shootUntil: string;
  } | null;
  readonly pieces: readonly string[];
  readonly note: string;
  readonly pictures: readonly LookPicture[];
  /** The pictures of its pieces, each by the piece's name. */
  readonly piecePictures: readonly PaperPicture[];
  /** Where its Photo cell says a picture is kept: a link, or "". */
  readonly link: string;
}
