import type { OpenFinding } from "../../../src/pane/check/OpenFinding";
import { initialPaneState } from "../../../src/pane/state/initialPaneState";
import type { PaneAction } from "../../../src/pane/state/PaneAction";
import { paneReducer } from "../../../src/pane/state/paneReducer";
import type { PaneState } from "../../../src/pane/state/PaneState";
import type { Cell } from "../../../src/sheet/cell";

const start = initialPaneState("today", 46086);
const after = (state: PaneState, ...actions: readonly PaneAction[]): PaneState => actions.reduce(paneReducer, state);
const workbook = (name: string) => ({
  workbook: { name, dateSystem: 1900 as const, sheets: [] },
  tables: [],
  unread: [],
  leftOut: [],
});

test("the day is today until one is chosen, and follows the clock over midnight", () => {
  expect(start.asOf).toBe(46086);
  expect(after(start, { type: "day turned", today: 46087 })).toMatchObject({ asOf: 46087, today: 46087 });
});

test("a chosen day stays when the clock passes midnight", () => {
  expect(after(start, { type: "day chosen", asOf: 46100 }, { type: "day turned", today: 46087 })).toMatchObject({
    asOf: 46100,
    today: 46087,
  });
});

/** A workbook whose head says which day it counts for. */
const withOwnDay = (name: string, day: number) => ({
  workbook: {
    name,
    dateSystem: 1900 as const,
    sheets: [
      {
        sheetId: "s",
        name: "Job",
        visible: true,
        isProtected: false,
        firstRow: 0,
        firstColumn: 0,
        values: [["As-of day", day]],
        formulas: [[null, null]],
        tables: [],
      },
    ],
  },
  tables: [],
  unread: [],
  leftOut: [],
});

test("the day the sheet counts for goes before today, and is followed when it changes", () => {
  const read = after(start, { type: "workbook read", read: withOwnDay("a.xlsx", 46119) });
  expect(read.asOf).toBe(46119);
  expect(after(read, { type: "workbook read", read: withOwnDay("a.xlsx", 46120) }).asOf).toBe(46120);
  expect(after(read, { type: "day turned", today: 46087 })).toMatchObject({ asOf: 46119, today: 46087 });
});

test("a day chosen by hand stays through readings until the sheet's day is followed again, or another file comes", () => {
  const read = after(start, { type: "workbook read", read: withOwnDay("a.xlsx", 46119) });
  const chosen = after(read, { type: "day chosen", asOf: 46086 });
  expect(after(chosen, { type: "workbook read", read: withOwnDay("a.xlsx", 46121) }).asOf).toBe(46086);
  expect(after(chosen, { type: "day followed" }).asOf).toBe(46119);
  expect(after(chosen, { type: "workbook read", read: withOwnDay("b.xlsx", 46122) }).asOf).toBe(46122);
  expect(after(chosen, { type: "workbook read", read: workbook("c.xlsx") }).asOf).toBe(46086);
});

test("a problem keeps what is shown", () => {
  const shown = after(
    start,
    { type: "workbook read", read: workbook("a.xlsx") },
    { type: "workbook checked", findings: [{} as OpenFinding] },
  );
  const later = after(shown, { type: "told", kind: "problem", sentence: "The sheet is protected." });
  expect(later.findings).toBe(shown.findings);
  expect(later.read).toBe(shown.read);
  expect(later.notices.map((notice) => notice.sentence)).toEqual(["The sheet is protected."]);
});

test("the same sentence stands once, with a new number so that it is announced again", () => {
  const twice = after(
    start,
    { type: "told", kind: "problem", sentence: "a" },
    { type: "told", kind: "problem", sentence: "b" },
    { type: "told", kind: "problem", sentence: "a" },
  );
  expect(twice.notices).toEqual([
    { id: 2, kind: "problem", sentence: "b" },
    { id: 3, kind: "problem", sentence: "a" },
  ]);
});

test("at most three messages stand at once", () => {
  const many = after(
    start,
    ...["a", "b", "c", "d"].map((sentence) => ({ type: "told", kind: "problem", sentence }) as const),
  );
  expect(many.notices.map((notice) => notice.sentence)).toEqual(["b", "c", "d"]);
});

test("a dismissed message goes and the others stay", () => {
  const told = after(
    start,
    { type: "told", kind: "done", sentence: "a" },
    { type: "told", kind: "done", sentence: "b" },
  );
  expect(after(told, { type: "notice dismissed", id: 1 }).notices.map((notice) => notice.sentence)).toEqual(["b"]);
});

test("a step that was written offers to put it back, and putting it back offers to do it again", () => {
  const receipt = { label: "Make 3 dates", prior: [] };
  const written = after(start, { type: "told", kind: "problem", sentence: "old" }, { type: "step written", receipt });
  expect(written.lastStep).toEqual({ receipt, label: "Make 3 dates", isPutBack: false, isSeen: false });
  expect(written.notices).toEqual([]);
  const back = { label: "whatever the host says", prior: [] };
  const restored = after(written, { type: "step put back", receipt: back });
  expect(restored.lastStep).toEqual({ receipt: back, label: "Make 3 dates", isPutBack: true, isSeen: false });
  expect(after(restored, { type: "step put back", receipt }).lastStep?.isPutBack).toBe(false);
  expect(after(restored, { type: "restore dismissed" }).lastStep).toBeNull();
});

test("another file starts clean: no findings, messages, kept texts or step of the one before", () => {
  const used = after(
    start,
    { type: "workbook read", read: workbook("a.xlsx") },
    { type: "workbook checked", findings: [] },
    { type: "told", kind: "problem", sentence: "x" },
    { type: "step written", receipt: { label: "x", prior: [] } },
    { type: "text kept", key: "cover", text: "GBP" },
  );
  expect(after(used, { type: "workbook read", read: workbook("a.xlsx") }).kept).toEqual({ cover: "GBP" });
  expect(after(used, { type: "workbook read", read: workbook("b.xlsx") })).toMatchObject({
    findings: null,
    notices: [],
    lastStep: null,
    kept: {},
  });
});

/** One sheet whose first cells, in a column, hold these. */
const holding = (...values: readonly Cell[]) => {
  const { sheets, ...of } = withOwnDay("a.xlsx", 46119).workbook;
  const cells = values.map((value) => [value]);
  const sheet = { ...sheets[0]!, values: cells, formulas: cells.map(() => [null]) };
  return { ...workbook("a.xlsx"), workbook: { ...of, sheets: [sheet] } };
};
const twoDates = {
  label: "Make 2 dates",
  prior: [0, 1].map((row) => ({
    at: { sheetId: "s", row, column: 0 },
    expected: 46090 + row,
    value: `${9 + row} Mar 2026`,
  })),
};

test("the offer to put a step back goes once the sheet holds nothing of it any more, as after the user's own undo", () => {
  const seen = after(
    start,
    { type: "workbook read", read: holding("9 Mar 2026", "10 Mar 2026") },
    { type: "step written", receipt: twoDates },
    { type: "workbook read", read: holding(46090, 46091) },
  );
  expect(seen.lastStep).toMatchObject({ label: "Make 2 dates" });
  expect(after(seen, { type: "workbook read", read: holding(46090, 5) }).lastStep).toBe(seen.lastStep);
  expect(after(seen, { type: "workbook read", read: holding("9 Mar 2026", "10 Mar 2026") }).lastStep).toBeNull();
});

test("a reading that began before the step was written does not take its offer away", () => {
  const written = after(
    start,
    { type: "step written", receipt: twoDates },
    { type: "workbook read", read: holding("9 Mar 2026", "10 Mar 2026") },
  );
  expect(written.lastStep).toMatchObject({ label: "Make 2 dates", isSeen: false });
});

test("a step that built something keeps its offer, whatever the cells hold", () => {
  const built = after(
    start,
    { type: "step written", receipt: { label: "A new sheet", prior: [] } },
    { type: "workbook read", read: holding(1) },
    { type: "workbook read", read: holding(2) },
  );
  expect(built.lastStep).toMatchObject({ label: "A new sheet" });
});

test("the findings are told together with the reading they were found in", () => {
  const first = after(start, { type: "workbook read", read: holding(1) }, { type: "workbook checked", findings: [] });
  const later = after(first, { type: "workbook read", read: holding(2) });
  expect(later.checkedRead).toBe(first.read);
  expect(after(later, { type: "workbook checked", findings: [] }).checkedRead).toBe(later.read);
});
