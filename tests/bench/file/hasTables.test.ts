import { hasTables } from "../../../src/bench/file/hasTables";
import { fileSnapshot } from "../../../src/bench/file/fileSnapshot";
import { writeKeptPart } from "../../../src/bench/save/writeKeptPart";
import { plainWorkbook } from "../plainWorkbook";
import { openBytes, openSample } from "../save/openSample";

const PIECES = [
  ["Piece", "Lender", "Value", "Due"],
  ["Camel coat", "Maison Quillet", 1250, 46119],
];

test("the sample has tables, the file's own by their names", async () => {
  const sample = await openSample();
  expect(hasTables(sample)).toBe(true);
  const loans = fileSnapshot(sample).sheets.find(({ name }) => name === "Loans");
  expect(loans?.tables).toMatchObject([{ name: "Loans", row: 3, column: 0 }]);
});

test.each([
  ["in the corner", "A1"],
  ["further in", "C5"],
])("headings with rows below are a table, %s", async (_, cell) => {
  expect(hasTables(await openBytes(await plainWorkbook(PIECES, cell)))).toBe(true);
});

test.each([
  ["nothing at all", []],
  ["a note", [["Call Maison Quillet on Monday"]]],
  [
    "headings of another trade",
    [
      ["Shift", "Ward"],
      ["Early", "3B"],
    ],
  ],
])("%s is no table", async (_, rows) => {
  expect(hasTables(await openBytes(await plainWorkbook(rows)))).toBe(false);
});

test("a kind that the file keeps for an area makes a table of it", async () => {
  const file = await openBytes(
    await plainWorkbook([
      ["What", "Whose"],
      ["Camel coat", "Maison Quillet"],
    ]),
  );
  expect(hasTables(file)).toBe(false);
  const columns = [
    { kind: "pieces", field: "piece", heading: "What" },
    { kind: "pieces", field: "lender", heading: "Whose" },
  ];
  const kinds = [{ kind: "pieces", headings: ["What", "Whose"] }];
  const kept = new Map([["columns", JSON.stringify({ columns: { Sheet1: columns }, kinds: { Sheet1: kinds } })]]);
  expect(hasTables({ ...file, parts: writeKeptPart(file.parts, kept) })).toBe(true);
});
