import type { PaneState } from "./PaneState";

/** The pane before anything has been read. */
export function initialPaneState(viewId: string, today: number): PaneState {
  return {
    viewId,
    asOf: today,
    today,
    isDayChosen: false,
    read: null,
    findings: null,
    checkedRead: null,
    isReading: false,
    notices: [],
    nextNoticeId: 1,
    lastStep: null,
    kept: {},
  };
}
