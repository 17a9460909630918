import { emptyFilterValue } from "../file/emptyFilterValue";
import type { FilterTest, SavingFilterColumn } from "./SavingFilter";

/** What one column of a table is filtered by, as the grid keeps it. */
export type GridTableFilter =
  | { readonly filterType: "manual"; readonly values: readonly string[] }
  | {
      readonly filterType: "condition";
      readonly filterInfo: {
        readonly conditionType: string;
        readonly compareType: string;
        readonly expectedValue?: unknown;
      };
    };

/** How the grid's comparisons are said in a file: each test's operator and its value around the expected one. */
const TESTS: Readonly<Record<string, readonly [FilterTest["operator"], (expected: string) => string]>> = {
  equal: ["equal", (expected) => expected],
  notEqual: ["notEqual", (expected) => expected],
  contains: ["equal", (expected) => `*${expected}*`],
  notContains: ["notEqual", (expected) => `*${expected}*`],
  startsWith: ["equal", (expected) => `${expected}*`],
  endsWith: ["equal", (expected) => `*${expected}`],
  greaterThan: ["greaterThan", (expected) => expected],
  greaterThanOrEqual: ["greaterThanOrEqual", (expected) => expected],
  lessThan: ["lessThan", (expected) => expected],
  lessThanOrEqual: ["lessThanOrEqual", (expected) => expected],
};

/**
 * What a table is filtered by. A comparison that a file has no word for, such as "this month", is left out: the rows that
 * it hides stay hidden all the same.
 */
export function tableFiltersOf(filters: readonly (GridTableFilter | null | undefined)[]): SavingFilterColumn[] {
  return filters.flatMap((filter, offset): SavingFilterColumn[] => {
    if (filter === null || filter === undefined) return [];
    if (filter.filterType === "manual") {
      const values = filter.values.filter((value) => value !== emptyFilterValue);
      const isBlankShown = values.length < filter.values.length;
      return [{ offset, values, isBlankShown, tests: [], isEveryTest: false }];
    }
    const { conditionType, compareType, expectedValue } = filter.filterInfo;
    const tests = conditionType === "string" || conditionType === "number" ? testsOf(compareType, expectedValue) : [];
    const isEveryTest = compareType === "between";
    return tests.length === 0 ? [] : [{ offset, values: null, isBlankShown: false, tests, isEveryTest }];
  });
}

function testsOf(compareType: string, expected: unknown): FilterTest[] {
  if (Array.isArray(expected)) {
    const [low, high] = expected.map(String);
    if (low === undefined || high === undefined) return [];
    if (compareType === "between")
      return [
        { operator: "greaterThanOrEqual", value: low },
        { operator: "lessThanOrEqual", value: high },
      ];
    if (compareType === "notBetween")
      return [
        { operator: "lessThan", value: low },
        { operator: "greaterThan", value: high },
      ];
    return [];
  }
  const test = TESTS[compareType];
  if (test === undefined || (typeof expected !== "string" && typeof expected !== "number")) return [];
  return [{ operator: test[0], value: test[1](String(expected)) }];
}
