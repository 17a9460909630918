import type { AreaKinds } from "./areaKinds";
import type { ColumnChoices } from "./columnChoices";

/** Everything chosen by hand about how the workbook's tables are read; kept in the workbook as JSON. */
export interface KeptChoices {
  readonly columns: ColumnChoices;
  readonly kinds: AreaKinds;
}
