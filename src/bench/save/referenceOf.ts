import { cellName } from "../../sheet/cellName";
import type { Area } from "../../sheet/areaOfReference";

/** An area as a reference with both its corners, "B2:F11". */
export function referenceOf({ startRow, startColumn, endRow, endColumn }: Area): string {
  return `${cellName(startRow, startColumn)}:${cellName(endRow, endColumn)}`;
}
