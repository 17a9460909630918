import { useMemo } from "react";
import type { Dispatch, MutableRefObject } from "react";
import type { Outcome } from "../../domain/outcome";
import { sayProblem } from "../../domain/wording";
import type { Problem } from "../../domain/problem";
import type { WriteReceipt } from "../../sheet/cellEdit";
import { parseKeptChoices } from "../../sheet/parseKeptChoices";
import { columnsKey } from "../columns/columnsKey";
import type { WorkbookFollower } from "../state/followWorkbook";
import type { PaneHost } from "../PaneHost";
import type { PaneAction } from "../state/PaneAction";
import type { PaneState } from "../state/PaneState";
import type { PaneActions } from "./PaneActions";

/** The actions of the pane over a port: each asks the port, then tells the reducer what came of it. */
export function usePaneActions(
  { port, callFunction }: Pick<PaneHost, "port" | "callFunction">,
  dispatch: Dispatch<PaneAction>,
  latest: MutableRefObject<PaneState>,
  follower: MutableRefObject<WorkbookFollower | null>,
): PaneActions {
  return useMemo(() => {
    const refuse = (problem: Problem): false => {
      dispatch({ type: "told", kind: "problem", sentence: sayProblem(problem) });
      // What was shown may be older than the workbook; looking again is the usual remedy.
      follower.current?.readAgain();
      return false;
    };
    const lookAgain = ({ prior, opposite }: WriteReceipt): void => {
      // Sheets that came or went change the workbook as a whole.
      if (opposite !== undefined) follower.current?.readAgain();
      else follower.current?.readSheetsAgain([...new Set(prior.map(({ at }) => at.sheetId))]);
    };
    const written = (done: Outcome<WriteReceipt>): boolean => {
      if (!done.ok) return refuse(done.problem);
      dispatch({ type: "step written", receipt: done.value });
      lookAgain(done.value);
      return true;
    };
    return {
      chooseView: (viewId) => dispatch({ type: "view chosen", viewId }),
      chooseDay: (asOf) => dispatch({ type: "day chosen", asOf }),
      followDay: () => dispatch({ type: "day followed" }),
      goTo: async (at) => {
        const gone = await port.goTo(at);
        return gone.ok || refuse(gone.problem);
      },
      activeCell: async () => {
        const at = await port.activeCell();
        if (!at.ok) refuse(at.problem);
        return at.ok ? at.value : null;
      },
      selection: async () => {
        const area = await port.selection();
        if (!area.ok) refuse(area.problem);
        return area.ok ? area.value : null;
      },
      listPictures: () => port.listPictures(),
      showPictures: (keys) => port.showPictures(keys),
      callFunction,
      write: async (label, edits) => written(await port.write(label, edits)),
      build: async (label, plan) => written(await port.build(label, plan)),
      putBack: async () => {
        const step = latest.current.lastStep;
        if (step === null) return false;
        const restored = await port.restore(step.receipt);
        if (!restored.ok) return refuse(restored.problem);
        dispatch({ type: "step put back", receipt: restored.value });
        lookAgain(restored.value);
        return true;
      },
      dismissRestore: () => dispatch({ type: "restore dismissed" }),
      keep: async (key, text) => {
        const kept = await port.writeKept(key, text);
        if (!kept.ok) return refuse(kept.problem);
        dispatch({ type: "text kept", key, text });
        if (key === columnsKey) follower.current?.readAs(parseKeptChoices(text));
        return true;
      },
      readAgain: () => follower.current?.readAgain(),
      dismissNotice: (id) => dispatch({ type: "notice dismissed", id }),
    };
  }, [port, callFunction, dispatch, latest, follower]);
}
