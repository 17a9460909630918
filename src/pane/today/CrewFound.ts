import type { Crew } from "../../domain/day/crew";
import type { CellPosition } from "../../sheet/cellPosition";

/** The people of the day, and the cell where they are listed: null where the workbook does not say and the smallest crew is taken. */
export interface CrewFound {
  readonly crew: Crew;
  readonly place: { readonly at: CellPosition; readonly sheetName: string } | null;
}
