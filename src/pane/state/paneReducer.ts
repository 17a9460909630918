import { sheetDay } from "../today/sheetDay";
import type { Notice } from "./Notice";
import type { PaneAction } from "./PaneAction";
import type { PaneState } from "./PaneState";
import type { ReadTables } from "./ReadTables";
import { stepStands } from "./stepStands";

/** More than this many messages at once push the work out of a narrow pane; the oldest go first. */
const MOST_NOTICES = 3;

/** The pane after something happened. Pure: reading, checking and writing are done elsewhere and arrive here as actions. */
export function paneReducer(state: PaneState, action: PaneAction): PaneState {
  switch (action.type) {
    case "view chosen":
      return { ...state, viewId: action.viewId };
    case "day chosen":
      return { ...state, asOf: action.asOf, isDayChosen: true };
    case "day followed":
      return onItsDay({ ...state, isDayChosen: false });
    case "day turned":
      return action.today === state.today ? state : onItsDay({ ...state, today: action.today });
    case "reading began":
      return { ...state, isReading: true };
    case "reading ended":
      return { ...state, isReading: false };
    case "workbook read":
      return onItsDay(
        state.read !== null && state.read.workbook.name !== action.read.workbook.name
          ? // Another file: what was chosen, found, said, kept and written belongs to the one before.
            {
              ...state,
              read: action.read,
              isDayChosen: false,
              findings: null,
              checkedRead: null,
              notices: [],
              lastStep: null,
              kept: {},
            }
          : { ...state, read: action.read, lastStep: stepAfter(state.lastStep, action.read) },
      );
    case "workbook checked":
      return { ...state, findings: action.findings, checkedRead: state.read };
    case "told":
      return told(state, action.kind, action.sentence);
    case "notice dismissed":
      return { ...state, notices: state.notices.filter((notice) => notice.id !== action.id) };
    case "step written":
      return {
        ...withoutProblems(state),
        lastStep: { receipt: action.receipt, label: action.receipt.label, isPutBack: false, isSeen: false },
      };
    case "step put back":
      // The label of the step stays, whatever the host calls the putting back.
      return state.lastStep === null
        ? state
        : {
            ...withoutProblems(state),
            lastStep: {
              ...state.lastStep,
              receipt: action.receipt,
              isPutBack: !state.lastStep.isPutBack,
              isSeen: false,
            },
          };
    case "restore dismissed":
      return { ...state, lastStep: null };
    case "text kept":
      return { ...state, kept: { ...state.kept, [action.key]: action.text } };
  }
}

/** Gone once the user took the step back without the pane, since there is nothing left to put back. */
function stepAfter(step: PaneState["lastStep"], { workbook }: ReadTables): PaneState["lastStep"] {
  if (step === null) return null;
  if (stepStands(step.receipt, workbook)) return step.isSeen ? step : { ...step, isSeen: true };
  return step.isSeen ? null : step;
}

/** A day chosen by hand stays; else the pane counts for the day the sheet's own functions count for, or today. */
function onItsDay(state: PaneState): PaneState {
  if (state.isDayChosen) return state;
  const own = state.read === null ? null : sheetDay(state.read.workbook);
  return { ...state, asOf: own?.day ?? state.today };
}

/** A sentence that is shown already moves to the end instead of standing twice. */
function told(state: PaneState, kind: Notice["kind"], sentence: string): PaneState {
  const others = state.notices.filter((notice) => notice.sentence !== sentence);
  const notices = [...others, { id: state.nextNoticeId, kind, sentence }].slice(-MOST_NOTICES);
  return { ...state, notices, nextNoticeId: state.nextNoticeId + 1 };
}

/** What could not be done before has now been done, or something else was: the old complaint would mislead. */
function withoutProblems(state: PaneState): PaneState {
  return { ...state, notices: state.notices.filter((notice) => notice.kind !== "problem") };
}
