import { lookKey } from "../sheet/lookKey";
import type { CheckedRow } from "./checkedRow";
import type { CheckedWorkbook } from "./checkedWorkbook";
import { dayIn } from "./dayIn";
import { textIn } from "./textIn";

/** A row of a looks table whose look has a name. */
interface LookToCome {
  readonly row: CheckedRow;
  /** As typed. */
  readonly look: string;
  readonly key: string;
}

/** The listed looks of the day and of days to come, and those without a day: once it is past there is nothing left to bring. */
export function looksToCome({ tables }: CheckedWorkbook, asOf: number): readonly LookToCome[] {
  return tables.flatMap((table) => {
    if (table.kind !== "looks" || table.columnOf["look"] === undefined) return [];
    return table.dataRows.flatMap((index) => {
      const row = { table, row: index };
      const day = dayIn(row, "date");
      const look = textIn(row, "look");
      const key = look === null ? "" : lookKey(look);
      return look === null || key === "" || (day !== null && day < asOf) ? [] : [{ row, look, key }];
    });
  });
}
