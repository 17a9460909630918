import { choicesFor } from "../../../src/pane/columns/choicesFor";
import { withColumnChoice } from "../../../src/pane/columns/withColumnChoice";
import type { KindColumnChoice } from "../../../src/sheet/columnChoices";
import { parseKeptChoices } from "../../../src/sheet/parseKeptChoices";
import { readWorkbook } from "../../../src/sheet/readWorkbook";
import { fakePort } from "../fakePort";

const first = ["Piece", "Lender", "Out", "Due", "Ins. amt intern"];
const second = ["Piece", "Lender", "Out", "Return date", "Value", "Fig. 2"];
const sheet = {
  name: "Both jobs",
  rows: [first, ["a", "Ado", 46080, 46090, 100], [null], [null], second, ["b", "Ado", 46080, 46090, 200, 300]],
  tables: [
    { name: "JobA", row: 0, column: 0, rowCount: 2, columnCount: 5 },
    { name: "JobB", row: 4, column: 0, rowCount: 2, columnCount: 6 },
  ],
};

/** Both tables as they are read with these choices, kept in the workbook and read back. */
async function tablesWith(choices: readonly KindColumnChoice[]) {
  const workbook = await fakePort([sheet]).readWorkbook();
  if (!workbook.ok) throw new Error("the fake workbook cannot be read");
  const kept = parseKeptChoices(JSON.stringify({ columns: { "Both jobs": choices }, kinds: {} }));
  expect(kept.unreadable).toBe(0);
  const { tables } = readWorkbook(workbook.value, kept.columns, kept.kinds);
  return { tables, choices: kept.columns["Both jobs"] ?? [], columns: kept.columns };
}

async function choosing(
  before: readonly KindColumnChoice[],
  tableIndex: 0 | 1,
  heading: string,
  field: string | null,
): Promise<readonly KindColumnChoice[]> {
  const { tables } = await tablesWith(before);
  const table = tables[tableIndex]!;
  const other = tables[1 - tableIndex]!.headings;
  return withColumnChoice(before, table, table.headings.indexOf(heading), field, [other]);
}

test("a choice for one table leaves the other as it was", async () => {
  const chosen = await choosing([], 0, "Ins. amt intern", "value");
  const { tables } = await tablesWith(chosen);
  expect(tables.map(({ columnOf }) => columnOf["value"])).toEqual([4, 4]);
});

test("each of two tables has its own column for one field", async () => {
  const chosen = await choosing(await choosing([], 0, "Ins. amt intern", "value"), 1, "Fig. 2", "value");
  const { tables, columns } = await tablesWith(chosen);
  expect(tables.map(({ columnOf }) => columnOf["value"])).toEqual([4, 5]);
  expect(tables.map((table) => choicesFor(table, columns).map(({ heading }) => heading))).toEqual([
    ["Ins. amt intern"],
    ["Fig. 2"],
  ]);
});

test("that a column of one table is not what it says is not said of the other's", async () => {
  const chosen = await choosing([], 0, "Due", null);
  const { tables } = await tablesWith(chosen);
  expect(tables.map(({ columnOf }) => columnOf["due"])).toEqual([undefined, 3]);
});
