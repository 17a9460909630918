import type { CellEdit } from "../../../sheet/cellEdit";
import type { CalendarEvent } from "../files/CalendarEvent";
import type { MailDraft } from "../files/mailDraft";
import type { DocumentTable } from "../paper/DocumentTable";
import type { Paper } from "../paper/Paper";

/** What a document is saved as beside paper and values. */
type OwnFile =
  | { readonly kind: "calendar"; readonly events: readonly CalendarEvent[] }
  | { readonly kind: "letters"; readonly letters: readonly LenderLetter[] }
  /** A page of HTML of its own, and the same without its script to be looked at. */
  | { readonly kind: "page"; readonly html: string; readonly preview: string };

/** A letter to one lender, and the cells that note it as asked: all blank so far. */
export interface LenderLetter extends MailDraft {
  readonly lender: string;
  readonly asked: readonly CellEdit[];
}

/** Something to hand over, ready to be looked at, printed and saved. */
export interface HandOverDocument {
  readonly paper: Paper;
  /** Its rows as values; null where it has none. */
  readonly table: DocumentTable | null;
  readonly ownFile: OwnFile | null;
  /** What it lacks and what to do about it, a plain sentence each. */
  readonly missing: readonly string[];
}
