import { nameFindings } from "../../../src/pane/check/nameFindings";
import { readSheets } from "../readSheets";
import { finding } from "./finding";

const headings = ["Piece", "Description", "Lender", "Out", "Due", "Back", "Value"];
const coat = ["7", "wool coat", "Ado", 46080, "5 Mar 2026", null, 400];
const slip = ["8", "silk slip", "Ado", 46080, "5 Mar 2026", null, 300];
const due = { column: 4, sheetId: "s0" };

async function keyOf(
  rows: readonly (readonly (string | number | null)[])[],
  row: number,
  raw: string,
): Promise<string> {
  const { tables } = await readSheets([{ name: "Loans", rows: [headings, ...rows] }]);
  expect(tables).toHaveLength(1);
  return nameFindings([finding({ at: { ...due, row }, raw })], tables)[0]?.key ?? "";
}

test("a finding keeps its key when rows are inserted above it or the table is sorted", async () => {
  const before = await keyOf([coat, slip], 2, "5 Mar 2026");
  expect(await keyOf([slip, coat], 1, "5 Mar 2026")).toBe(before);
  expect(await keyOf([coat, ["6", "felt hat", "Ado", 46080, 46090, null, 90], slip], 3, "5 Mar 2026")).toBe(before);
});

test("a finding gets another key when its cell holds something else, so that it comes back after being ignored", async () => {
  expect(await keyOf([coat, slip], 2, "6 Mar 2026")).not.toBe(await keyOf([coat, slip], 2, "5 Mar 2026"));
});

test("the same slip in two rows has two keys", async () => {
  expect(await keyOf([coat, slip], 1, "5 Mar 2026")).not.toBe(await keyOf([coat, slip], 2, "5 Mar 2026"));
});

test("another rule, message, sheet or heading is another key", () => {
  const keys = nameFindings(
    [
      finding({}),
      finding({ ruleId: "x" }),
      finding({ messageId: "x" }),
      finding({ sheetName: "x" }),
      finding({ heading: "x" }),
    ],
    [],
  ).map(({ key }) => key);
  expect(new Set(keys).size).toBe(5);
});

test("rows that are alike in everything share a key and still have ids of their own", async () => {
  const { tables } = await readSheets([{ name: "Loans", rows: [headings, coat, coat] }]);
  const named = nameFindings([finding({ at: { ...due, row: 1 } }), finding({ at: { ...due, row: 2 } })], tables);
  expect(named[0]?.key).toBe(named[1]?.key);
  expect(named[0]?.id).not.toBe(named[1]?.id);
});

test("a row that nothing names goes by its number", async () => {
  const nameless = [null, null, null, 46080, "5 Mar 2026", null, 400];
  expect(await keyOf([coat, nameless, nameless], 2, "5 Mar 2026")).not.toBe(
    await keyOf([coat, nameless, nameless], 3, "5 Mar 2026"),
  );
});
