import { UnreadAreas } from "./UnreadAreas";
import { usePane } from "./usePane";

/** Said where a workbook holds no table that can be read, with what to do about it. */
export function NoTables() {
  const { read } = usePane().state;
  const sheetCount = read?.workbook.sheets.length ?? 0;
  return (
    <section>
      <h2>No table could be read</h2>
      <p>
        {sheetCount === 1 ? "The sheet was looked through" : `All ${sheetCount} sheets were looked through`}, and none
        has a row of headings that is understood in its first 20 rows.
      </p>
      <p>Type the headings in one row, one in each cell, with the rows straight below. For a list of pieces:</p>
      <p>
        <b>Piece, Description, Lender, Value, Out, Due, Back</b>
      </p>
      <p>
        For lenders: <b>Lender, Terms, Courier days</b>. For looks: <b>Look, Order, Talent, Change, Shooting</b>. The
        order does not matter, and columns of your own may stand between. The pane looks again as soon as you type.
      </p>
      <UnreadAreas unread={read?.unread ?? []} />
    </section>
  );
}
