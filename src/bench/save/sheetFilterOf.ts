import { BooleanNumber } from "@univerjs/core";
import type { Area } from "../../sheet/areaOfReference";
import { referenceOf } from "./referenceOf";
import type { FilterTest, SavingFilter, SavingFilterColumn } from "./SavingFilter";

/** A sheet's own filter as the grid keeps it; its columns count from the sheet's first. */
export interface GridFilter {
  readonly ref: Area;
  readonly filterColumns?: readonly {
    readonly colId: number;
    readonly filters?: { readonly blank?: boolean; readonly filters?: readonly string[] };
    readonly customFilters?: {
      readonly and?: BooleanNumber;
      readonly customFilters: readonly { readonly val: string | number; readonly operator?: string }[];
    };
  }[];
  /** Rows of the sheet that it hides. */
  readonly cachedFilteredOut?: readonly number[];
}

/** A sheet's own filter as saving sees it; a column filtered by its colour has no place here. */
export function sheetFilterOf({ ref, filterColumns = [] }: GridFilter): SavingFilter {
  const columns = filterColumns.flatMap(({ colId, filters, customFilters }): SavingFilterColumn[] => {
    const offset = colId - ref.startColumn;
    if (filters !== undefined) {
      const values = filters.filters ?? [];
      return [{ offset, values, isBlankShown: filters.blank === true, tests: [], isEveryTest: false }];
    }
    if (customFilters === undefined) return [];
    const tests = customFilters.customFilters.map(({ val, operator }) => ({
      operator: (operator ?? "equal") as FilterTest["operator"],
      value: String(val),
    }));
    return [
      { offset, values: null, isBlankShown: false, tests, isEveryTest: customFilters.and === BooleanNumber.TRUE },
    ];
  });
  return { reference: referenceOf(ref), columns };
}
