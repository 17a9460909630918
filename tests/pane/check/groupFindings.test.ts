import { checkReducer, initialCheckState } from "../../../src/pane/check/checkReducer";
import { groupFindings } from "../../../src/pane/check/groupFindings";
import { openGroups } from "../../../src/pane/check/openGroups";
import { sayStanding } from "../../../src/pane/check/sayStanding";
import { finding } from "./finding";

const all = initialCheckState.filter;
const one = (ruleId: string, severity: "error" | "warning" | "note", row: number, isFixable = false) => ({
  id: `${ruleId} ${row}`,
  key: `${ruleId} ${row}`,
  finding: finding({
    ruleId,
    severity,
    at: { sheetId: "s0", row, column: 0 },
    ...(isFixable ? { fix: { label: "fix", edits: [] } } : {}),
  }),
});
const found = [
  one("spaces", "note", 1),
  one("late", "warning", 2),
  one("text", "warning", 3, true),
  one("late", "warning", 4),
  one("twoDays", "error", 5),
];

test("findings are grouped by severity, then by rule in the order of the rules, then in sheet order", () => {
  const groups = groupFindings(found, all, ["twoDays", "text", "late", "spaces"]);
  expect(groups.map(({ severity, count }) => [severity, count])).toEqual([
    ["error", 1],
    ["warning", 3],
    ["note", 1],
  ]);
  expect(
    groups[1]?.rules.map(({ ruleId, findings, fixableCount }) => [ruleId, findings.map(({ id }) => id), fixableCount]),
  ).toEqual([
    ["text", ["text 3"], 1],
    ["late", ["late 2", "late 4"], 0],
  ]);
});

test("no finding is lost or doubled when nothing is filtered", () => {
  const ids = groupFindings(found, all, []).flatMap(({ rules }) =>
    rules.flatMap(({ findings }) => findings.map(({ id }) => id)),
  );
  expect([...ids].sort()).toEqual(found.map(({ id }) => id).sort());
});

test("severities and kinds that are filtered out are left out, with their headings", () => {
  const hidden = checkReducer(initialCheckState, { type: "severity toggled", severity: "warning" });
  expect(groupFindings(found, hidden.filter, []).map(({ severity }) => severity)).toEqual(["error", "note"]);
  const shownAgain = checkReducer(hidden, { type: "severity toggled", severity: "warning" });
  expect(groupFindings(found, shownAgain.filter, [])).toHaveLength(3);
  const late = checkReducer(hidden, { type: "rule chosen", ruleId: "late" });
  expect(groupFindings(found, late.filter, []).map(({ count }) => count)).toEqual([2]);
  expect(checkReducer(late, { type: "filter cleared" }).filter).toEqual(all);
});

test("few findings all stand open; of many only the most serious do, until others are opened by hand", () => {
  const few = groupFindings(found, all, []);
  expect(openGroups(few, {}).size).toBe(4);
  expect(openGroups(few, { "error twoDays": false }).has("error twoDays")).toBe(false);
  const many = groupFindings(
    [...found, ...Array.from({ length: 20 }, (_, row) => one("late", "warning", row + 9))],
    all,
    [],
  );
  expect([...openGroups(many, {})]).toEqual(["error twoDays"]);
  expect([...openGroups(many, { "note spaces": true })]).toEqual(["error twoDays", "note spaces"]);
});

test("the standing is said in words, most serious first, with one and many told apart", () => {
  expect(sayStanding(found)).toBe("1 error, 3 warnings and 1 note");
  expect(sayStanding([one("late", "warning", 1)])).toBe("1 warning");
  expect(sayStanding([])).toBe("Nothing found");
});
