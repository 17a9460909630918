import type { ReadTables } from "../../state/ReadTables";
import type { DayLooks } from "../../today/DayLooks";
import type { PieceTable } from "../../today/PieceTable";
import type { JobFacts } from "../job/JobFacts";
import type { LookPicture } from "../pictures/LookPicture";
import type { SheetPictureShown } from "../pictures/SheetPictureShown";

/** Everything the documents are made from: the workbook as read, what is said of the job, and what was chosen. */
export interface HandOverSource {
  readonly read: ReadTables;
  readonly pieces: readonly PieceTable[];
  /** The looks of the day chosen, with the times that DAYPLAN gives; null where the workbook has no looks. */
  readonly looks: DayLooks | null;
  /** The day the figures are for. */
  readonly asOf: number;
  readonly job: JobFacts;
  readonly pictures: readonly LookPicture[];
  /** The pictures of the workbook itself, by the cells they belong to. */
  readonly sheetPictures: readonly SheetPictureShown[];
  /** The key of the one lender wanted; null for all. */
  readonly lenderKey: string | null;
  /** What one bag may weigh at most. */
  readonly bagLimitGrams: number;
  /** Tells this workbook's entries from those of another in one calendar. */
  readonly calendarId: string;
}
