import type { PaperSize } from "./paper/PaperSize";
import type { LookPicture } from "./pictures/LookPicture";

/** What the view alone remembers: what is to be handed over, and for whom. */
export interface HandOverState {
  readonly kindId: string;
  /** null for every lender. */
  readonly lenderKey: string | null;
  /** null for the day that Today would show. */
  readonly day: number | null;
  readonly paperSize: PaperSize;
  readonly bagLimitTyped: string;
  readonly pictures: readonly LookPicture[];
  /** Whether slips show the pictures of their pieces. */
  readonly isPictured: boolean;
  /** Files that are no picture, by name. */
  readonly unreadFiles: readonly string[];
}
