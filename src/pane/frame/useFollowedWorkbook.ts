import { useEffect, useRef } from "react";
import type { Dispatch, MutableRefObject } from "react";
import { sayProblem } from "../../domain/wording";
import { parseKeptChoices } from "../../sheet/parseKeptChoices";
import { readWorkbook } from "../../sheet/readWorkbook";
import type { SheetTable } from "../../sheet/sheetTable";
import { nameFindings } from "../check/nameFindings";
import { columnsKey } from "../columns/columnsKey";
import { checkAfter } from "../state/checkAfter";
import { followWorkbook } from "../state/followWorkbook";
import type { WorkbookFollower } from "../state/followWorkbook";
import type { PaneAction } from "../state/PaneAction";
import { pause } from "../state/pause";
import type { PaneHost } from "../PaneHost";

/** Follows the host's workbook for as long as the pane is there; what comes of it goes to the reducer. */
export function useFollowedWorkbook(
  { port, today }: PaneHost,
  asOf: number,
  keptKeys: readonly string[],
  dispatch: Dispatch<PaneAction>,
): MutableRefObject<WorkbookFollower | null> {
  const follower = useRef<WorkbookFollower | null>(null);
  const asOfNow = useRef(asOf);
  asOfNow.current = asOf;

  useEffect(() => {
    async function readKept(): Promise<void> {
      for (const key of keptKeys) {
        const kept = await port.readKept(key);
        if (kept.ok) dispatch({ type: "text kept", key, text: kept.value });
        else dispatch({ type: "told", kind: "problem", sentence: sayProblem(kept.problem) });
      }
    }
    let tables: readonly SheetTable[] = [];
    follower.current = followWorkbook(
      port,
      asOfNow.current,
      {
        findTables: (workbook, { columns, kinds }) => readWorkbook(workbook, columns, kinds),
        readChoices: async () => {
          const kept = await port.readKept(columnsKey);
          return kept.ok ? parseKeptChoices(kept.value) : null;
        },
        check: checkAfter,
      },
      {
        began: () => {
          dispatch({ type: "day turned", today: today() });
          dispatch({ type: "reading began" });
        },
        read: (read, isWhole) => {
          tables = read.tables;
          dispatch({ type: "workbook read", read });
          // After a whole reading it may be another file, with texts of its own.
          if (isWhole) void readKept();
        },
        // Named once here: the view, its count and what is announced all go by the names.
        checked: (findings) => dispatch({ type: "workbook checked", findings: nameFindings(findings, tables) }),
        failed: (problem) => dispatch({ type: "told", kind: "problem", sentence: sayProblem(problem) }),
        ended: () => dispatch({ type: "reading ended" }),
      },
      pause,
    );
    return () => {
      follower.current?.stop();
      follower.current = null;
    };
  }, [port, today, keptKeys, dispatch]);

  const isFirstDay = useRef(true);
  useEffect(() => {
    if (!isFirstDay.current) follower.current?.checkFor(asOf);
    isFirstDay.current = false;
  }, [asOf]);

  return follower;
}
