import { useMemo, useRef } from "react";
import { NoTables } from "../frame/NoTables";
import { usePane } from "../frame/usePane";
import { useSteadyList } from "../frame/useSteadyList";
import { functionDocs } from "../functions/functionDocs";
import { BesideList } from "./BesideList";
import { FormulaGapList } from "./FormulaGapList";
import { formulaGaps } from "./formulaGaps";
import { LeftOutList } from "./LeftOutList";
import { LostSheets } from "./LostSheets";
import { readBeside } from "./readBeside";
import { TableCard } from "./TableCard";
import { UnreadCard } from "./UnreadCard";
import { useColumnsStyles } from "./useColumnsStyles";
import { useKeptChoices } from "./useKeptChoices";

/** Which heading was read as what, and the way to say otherwise. */
export function ColumnsView() {
  const styles = useColumnsStyles();
  const { read } = usePane().state;
  const kept = useKeptChoices();
  const root = useRef<HTMLDivElement>(null);
  useSteadyList(root);
  const gaps = useMemo(() => (read === null ? [] : formulaGaps(read, kept.columns, functionDocs)), [read, kept]);

  const beside = useMemo(() => (read === null ? { found: [], unread: [] } : readBeside(read)), [read]);

  if (read === null) return null;
  return (
    <div ref={root}>
      {read.tables.length > 0 && (
        <p className={styles.lead} tabIndex={-1}>
          Which heading is read as what. Where it is wrong, choose what is right; that is kept in the workbook, and the
          check and the day count with it at once.
        </p>
      )}
      {!kept.isRead && <p className={styles.note}>What was chosen before could not be read yet.</p>}
      {kept.unreadable > 0 && (
        <p className={styles.note}>
          {`Some of what was chosen before (${kept.unreadable}) cannot be read and is not used. It goes when you next choose something.`}
        </p>
      )}
      <FormulaGapList gaps={gaps} />
      {read.tables.length === 0 && read.unread.length === 0 && <NoTables />}
      {read.tables.map((table) => (
        <TableCard
          key={`${table.sheetId} ${table.firstRow} ${table.firstColumn}`}
          table={table}
          otherHeadings={read.tables
            .filter((other) => other !== table && other.sheetId === table.sheetId && other.kind === table.kind)
            .map(({ headings }) => headings)}
          kept={kept}
        />
      ))}
      <BesideList found={beside.found} />
      {beside.unread.length > 0 && (
        <section>
          <h2 className={styles.heading}>Not read</h2>
          {beside.unread.map((area) => (
            <UnreadCard key={`${area.sheetId} ${area.row} ${area.column}`} area={area} kept={kept} />
          ))}
        </section>
      )}
      <LeftOutList areas={read.leftOut} kept={kept} />
      <LostSheets kept={kept} />
    </div>
  );
}
