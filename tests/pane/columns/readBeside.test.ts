import { readBeside } from "../../../src/pane/columns/readBeside";
import { readSheets } from "../readSheets";

test("lists in use are named as what they are, and what is left is what was not read", async () => {
  const read = await readSheets([
    {
      name: "Job",
      rows: [
        ["Closed", "Why", null, "What", "How many", null, "Look", "Song", "Singer"],
        [46115, "Good Friday", null, "dressers", 2, null, 1, "Blue", "Mina"],
        [null, null, null, null, null, null, null, null, null],
        ["Insurance limit, all pieces", 120000, null, null, null, null, null, null, null],
        ["Insurance limit, one piece", 5000, null, null, null, null, null, null, null],
      ],
      tables: [
        { name: "ClosedDays", row: 0, column: 0, rowCount: 2, columnCount: 2 },
        { name: "People", row: 0, column: 3, rowCount: 2, columnCount: 2 },
        { name: "Songs", row: 0, column: 6, rowCount: 2, columnCount: 3 },
      ],
    },
  ]);
  const { found, unread } = readBeside(read);
  expect(found.map(({ place: { at }, what }) => [at.row, at.column, what])).toEqual([
    [0, 0, "Closed days, 1 day"],
    [0, 3, "The people of the day"],
    [3, 1, "The cover of all pieces"],
    [4, 1, "The cover of one piece"],
  ]);
  expect(unread.map(({ tableName }) => tableName)).toEqual(["Songs"]);
});
