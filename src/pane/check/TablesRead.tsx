import { mergeClasses } from "@fluentui/react-components";
import type { WorkbookTables } from "../../sheet/readWorkbook";
import { GoToCell } from "../frame/GoToCell";
import { TableHead } from "../frame/TableHead";
import { UnreadAreas } from "../frame/UnreadAreas";
import { sayTableRows } from "../sayTableRows";
import { useCheckStyles } from "./useCheckStyles";

/** Which tables were read: where, and what as. */
export function TablesRead({ tables, unread }: Pick<WorkbookTables, "tables" | "unread">) {
  const styles = useCheckStyles();
  return (
    <details className={styles.details}>
      <summary className={styles.detailsSummary}>
        {tables.length === 1 ? "The table that was read" : `The ${tables.length} tables that were read`}
        {unread.length > 0 && `, and ${unread.length} that could not be`}
      </summary>
      <table className={styles.preview}>
        <TableHead
          headings={["Headings at", "Read as"]}
          className={mergeClasses(styles.previewCell, styles.previewHeading)}
        />
        <tbody>
          {tables.map((table) => (
            <tr key={`${table.sheetId} ${table.firstRow} ${table.firstColumn}`}>
              <td className={styles.previewCell}>
                <GoToCell
                  at={{ sheetId: table.sheetId, row: table.firstRow + table.headingRow, column: table.firstColumn }}
                  sheetName={table.sheetName}
                />
              </td>
              <td className={styles.previewCell}>{sayTableRows([table])}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <UnreadAreas unread={unread} />
    </details>
  );
}
