import { xmlAttribute } from "../../sheet/xmlAttribute";
import { elementsOf } from "../save/elementsOf";
import type { SavingFilter, SavingFilterColumn } from "../save/SavingFilter";

/**
 * A filter as a part keeps it; null where it has a criterion that is no list of values (a comparison, the highest ten, a
 * colour, a day of a month): such a filter stays in the file and its rows stay hidden, as they were.
 */
export function parseFilter(element: string): SavingFilter | null {
  const reference = xmlAttribute(/^<[^>]*>/.exec(element)?.[0] ?? "", "ref") ?? "";
  // A column may say only that it has no button.
  const filtering = elementsOf(element, "filterColumn").filter(
    (column) => !column.endsWith("/>") || /<.*</s.test(column),
  );
  const columns = filtering.map((column): SavingFilterColumn | null => {
    const values = elementsOf(column, "filters")[0];
    if (values === undefined || /<(?:\w+:)?dateGroupItem\b/.test(values)) return null;
    return {
      offset: Number(xmlAttribute(/^<[^>]*>/.exec(column)?.[0] ?? "", "colId") ?? 0),
      values: elementsOf(values, "filter").map((value) => xmlAttribute(value, "val") ?? ""),
      isBlankShown: /^(?:1|true)$/.test(xmlAttribute(/^<[^>]*>/.exec(values)?.[0] ?? "", "blank") ?? ""),
      tests: [],
      isEveryTest: false,
    };
  });
  const known = columns.filter((column) => column !== null);
  return known.length < columns.length || reference === "" ? null : { reference, columns: known };
}
