import type { Worksheet } from "@cj-tech-master/excelts";
import { areaOfReference } from "../../sheet/areaOfReference";

/** The sheet's tables, in the shape the grid's table plugin keeps them. */
export function tableResource(worksheet: Worksheet): { tables: unknown[] } | null {
  const tables = worksheet.getTables().flatMap((table) => {
    const { name, displayName = name, tableRef, ref, headerRow, columns } = table.model;
    const area = areaOfReference(tableRef ?? ref);
    if (area === null) return [];
    return [
      {
        id: displayName,
        name: displayName,
        range: area,
        options: { showHeader: headerRow !== false, tableStyleId: "table-default-0" },
        filters: { tableColumnFilterList: [] },
        columns: columns.map((column, index) => ({
          id: `${displayName}-${index}`,
          displayName: column.name,
          dataType: "none",
          formula: "",
          meta: {},
          style: {},
        })),
        meta: {},
      },
    ];
  });
  return tables.length === 0 ? null : { tables };
}
